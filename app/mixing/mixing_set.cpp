#include "app/mixing/mixing_set.h"

#include "app/mixing/choice_step.h"
#include "app/mixing/cool_step.h"
#include "app/mixing/mixing_page.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QCheckBox>

#include <algorithm>

namespace ullage::app
{

namespace
{

// What goes with a developer, in the order of mixing.
constexpr std::array kMateRoles{formulary::Role::Stop, formulary::Role::Fixer};

} // namespace

MixingSet::MixingSet(Door& door, const std::function<chemistry::Instant()>& now,
                     const Wording& wording, QWidget* page)
    : QObject(page), m_door(&door)
{
    for (int i = 0; i < kMost; ++i) {
        auto* bottle = new MixingBottle(now, wording, this);
        connect(bottle, &MixingBottle::changed, this, &MixingSet::changed);
        connect(bottle, &MixingBottle::sheetWanted, this, [this, i] { emit sheetWanted(i); });
        m_bottles[static_cast<std::size_t>(i)] = bottle;
    }
    for (Mate& mate : m_mates) {
        mate = {new QCheckBox(page), new PlainLabel(page)};
        mate.heading->setFont(Theme::font(TextRole::Heading));
        mate.heading->setWordWrap(true);
        connect(mate.too, &QCheckBox::toggled, this, &MixingSet::changed);
    }
}

void MixingSet::begin(const formulary::Formulary& formulary,
                      const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
                      const QStringList& names)
{
    m_formulary = formulary;
    m_freeVessels = freeVessels;
    m_names = names;
    for (MixingBottle* bottle : m_bottles)
        bottle->begin();
    lookIntoCupboard();
    m_bottles[0]->choice()->setItems(m_items);
    m_bottles[0]->choice()->setFormulary(formulary, freeVessels, names, m_door->packetsAtHand());
}

void MixingSet::setWording(const Wording& wording)
{
    for (MixingBottle* bottle : m_bottles)
        bottle->setWording(wording);
}

std::optional<formulary::Role> MixingSet::roleOf(int bottle)
{
    return bottle > 0 ? std::optional(kMateRoles[static_cast<std::size_t>(bottle - 1)])
                      : std::nullopt;
}

std::vector<int> MixingSet::bottles() const
{
    std::vector<int> in{0};
    for (int i = 1; i < kMost; ++i) {
        if (tooBox(i)->isChecked() && !tooBox(i)->isHidden())
            in.push_back(i);
    }
    return in;
}

int MixingSet::number(int bottle) const
{
    const std::vector<int> in = bottles();
    return static_cast<int>(std::find(in.begin(), in.end(), bottle) - in.begin()) + 1;
}

std::vector<MixingSpot> MixingSet::way() const
{
    using Stage = MixingStage;
    const std::vector<int> in = bottles();
    std::vector<MixingSpot> way;
    for (const int bottle : in)
        way.push_back({Stage::Choice, bottle});
    way.push_back({Stage::Safety, 0});
    for (const int bottle : in) {
        for (const Stage stage : {Stage::Water, Stage::Dissolve, Stage::TopUp, Stage::Close})
            way.push_back({stage, bottle});
    }
    way.push_back({Stage::Done, 0});
    return way;
}

// One that cannot be read has nothing: whoever mixes is not to be held up by it.
void MixingSet::lookIntoCupboard()
{
    auto state = m_door->cupboard();
    m_items = state ? std::move(state->items) : std::vector<ledger::ItemHere>();
}

// One after the other, so that what one takes is gone for the next.
void MixingSet::weigh()
{
    std::vector<ledger::NewBatch::Take> promised;
    for (const int i : bottles()) {
        bottle(i).weigh(m_items, promised);
        for (const ledger::NewBatch::Take& take : bottle(i).weighOut().takes())
            promised.push_back(take);
    }
}

std::vector<ledger::NewBatch> MixingSet::batches()
{
    lookIntoCupboard();
    weigh();
    std::vector<ledger::NewBatch> all;
    for (const int i : bottles())
        all.push_back(bottle(i).batch());
    return all;
}

void MixingSet::goOn(const MixingSpot& from, const MixingSpot& to)
{
    if (from.stage == MixingStage::Choice)
        bottle(from.bottle).settle();
    if (to.stage == MixingStage::Choice)
        offer(to.bottle);
    if (from.stage == MixingStage::Close)
        bottle(from.bottle).closed();
}

// From a packet that is here, the first that ends, if one is; into a bottle that none before it is
// mixed into.
void MixingSet::offer(int at)
{
    auto vessels = m_freeVessels;
    QStringList names = m_names;
    for (const int before : bottles()) {
        if (before >= at)
            break;
        const MixingPlan& plan = bottle(before).plan();
        std::erase_if(vessels, [&](const auto& one) { return one->id == plan.vessel->id; });
        names << plan.name;
    }
    ChoiceStep* choice = bottle(at).choice();
    const bool first = !choice->plan().solution;
    const auto packets = m_door->packetsAtHand();
    choice->setItems(m_items);
    choice->setFormulary(m_formulary, vessels, names, packets,
                         kMateRoles[static_cast<std::size_t>(at - 1)]);
    for (const ledger::Packet& packet : packets) {
        if (first && choice->choosePacket(QString::fromStdString(packet.id)))
            break;
    }
}

void MixingSet::show(const MixingSpot& at)
{
    if (at.stage == MixingStage::Choice)
        bottle(at.bottle).readChoice();
    tooBox(1)->setText(MixingPage::tr("Its s&top bath too"));
    tooBox(2)->setText(MixingPage::tr("Its fi&xer too"));
    const QString first = m_bottles[0]->plan().name;
    heading(1)->setText(MixingPage::tr("The stop bath that goes with %1").arg(first));
    heading(2)->setText(MixingPage::tr("The fixer that goes with %1").arg(first));
    const auto& solution = m_bottles[0]->plan().solution;
    const auto all = m_formulary.currentSolutions();
    const auto have = [&](formulary::Role role) {
        return std::any_of(all.begin(), all.end(),
                           [role](const auto& one) { return one->role == role; });
    };
    for (std::size_t i = 0; i < m_mates.size(); ++i) {
        QCheckBox* too = m_mates[i].too;
        setPlainToolTip(too, MixingPage::tr("A set: all are chosen first, then mixed one after the "
                                            "other, and logged as one"));
        too->setVisible(solution && solution->role == formulary::Role::Developer &&
                        have(kMateRoles[i]));
        m_bottles[i + 1]->cooling()->setVisible(too->isChecked() && !too->isHidden());
    }
    weigh();
    for (MixingBottle* bottle : m_bottles)
        bottle->fillWords();
}

QString MixingSet::problem(const MixingSpot& at) const
{
    if (at == MixingSpot() && isSet() && bottles().size() > m_freeVessels.size())
        return MixingPage::tr("That takes %1 empty bottles, and there are only %n.", nullptr,
                              static_cast<int>(m_freeVessels.size()))
            .arg(bottles().size());
    return bottle(at.bottle).problem(at.stage);
}

QStringList MixingSet::cautions() const
{
    QStringList lines;
    for (const int i : bottles())
        lines << bottle(i).plan().cautions();
    lines.removeDuplicates();
    return lines;
}

std::vector<Explanation> MixingSet::figures(const MixingSpot& at) const
{
    if (at.stage != MixingStage::Done)
        return bottle(at.bottle).figures(at.stage);
    std::vector<Explanation> all;
    for (const int i : bottles()) {
        for (const Explanation& one : bottle(i).figures(at.stage))
            all.push_back(one);
    }
    return all;
}

QString MixingSet::inHand(const MixingSpot& at) const
{
    if (at.stage == MixingStage::Choice)
        return {};
    QStringList cooling;
    for (const int i : bottles()) {
        const MixingBottle& one = bottle(i);
        if (at.stage != MixingStage::Done && (one.isDissolving() || i == at.bottle))
            return one.inHand();
        if (!one.cooling()->clock()->isHidden())
            cooling << one.plan().name;
    }
    if (cooling.size() > 1)
        return MixingPage::tr("Cooling %n bottles", nullptr, static_cast<int>(cooling.size()));
    return cooling.isEmpty() ? QString() : MixingPage::tr("Cooling %1").arg(cooling.front());
}

} // namespace ullage::app
