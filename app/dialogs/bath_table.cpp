#include "app/dialogs/bath_table.h"

#include "app/dialogs/bottle_choice.h"
#include "app/widgets/elided_box.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/formulary_words.h"
#include "app/words/shown_names.h"
#include "app/words/verdict_words.h"
#include "core/ledger/two_baths.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>

#include <algorithm>

namespace ullage::app
{

namespace
{

using formulary::Role;

enum Column { Name, Which, Used, Lost, Air, Once };
const QString kTankFigure = QStringLiteral("tank");
const QString kLostFigure = QStringLiteral("lost");

// Whether runs take a bath of this role: 0 once somebody chose to go without, 1 once a bottle was
// taken again.
QString wantedFigure(ledger::BathPlace place)
{
    const auto code = formulary::code(place.role);
    return (place.second ? QStringLiteral("takes-second-") : QStringLiteral("takes-")) +
           QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
}

QString bottleText(const Bottle& bottle, const Wording& wording)
{
    const QString name = QString::fromStdString(bottle.batch.name);
    const QString state = bottle.assessment.shown == ledger::Verdict::Good
                              ? shelfLines(bottle.batch, bottle.assessment, wording).headline
                              : verdictWord(bottle.assessment.shown);
    // The solution's name last: where a box is narrow, it is what may be cut.
    return BathTable::tr("%1 · %2 · %3", "bottle, state, solution")
        .arg(name, state, shownName(bottle.batch.solution->name));
}

} // namespace

BathTable::BathTable(Door& door, QWidget* parent)
    : QWidget(parent), m_door(door), m_grid(new QGridLayout(this)), m_bottles(door.bottles())
{
    m_grid->setContentsMargins(0, 0, Space::kTight, 0); // no heading touches a bar beside it
    m_grid->setHorizontalSpacing(Space::kSmall);
    m_grid->setVerticalSpacing(Space::kSmall);
    m_grid->setColumnStretch(Which, 1);
    const std::pair<Column, QString> headings[]{{Which, tr("Bottle")},
                                                {Used, tr("Volume used")},
                                                {Lost, tr("Lost")},
                                                {Air, tr("Air left")},
                                                {Once, tr("One-shot")}};
    for (const auto& [column, text] : headings) {
        auto* label = new PlainLabel(text, this);
        label->setFont(Theme::font(TextRole::Small));
        setTone(label, Tone::Quiet);
        m_grid->addWidget(label, 0, column);
    }
    const auto present = [&](Role role) { return !bottlesFor(role, m_bottles).empty(); };
    setFocusPolicy(Qt::StrongFocus); // so that a label can be its buddy
    addLine(Role::Developer);
    setFocusProxy(m_lines.front().bottle);
    if (present(Role::Stop))
        addLine(Role::Stop);
    addLine(Role::Fixer);
    if (bottlesFor(Role::Fixer, m_bottles).size() > 1)
        addLine({Role::Fixer, true});
    for (const Role role : {Role::WashAid, Role::WettingAgent, Role::Other}) {
        if (present(role))
            addLine(role);
    }
}

void BathTable::addLine(ledger::BathPlace place)
{
    const int row = static_cast<int>(m_lines.size()) + 1;
    const QString name = bathName(place.role, place.second);
    auto* label = new PlainLabel(name, this);
    Line line{place, new ElidedBox(this), BathFigures::of(name, m_door.wording(), this)};
    label->setBuddy(line.bottle);
    m_grid->addWidget(label, row, Name);
    m_grid->addWidget(line.bottle, row, Which);
    line.bottle->setAccessibleName(tr("%1: bottle").arg(name));
    line.bottle->setMinimumWidth(200);
    const std::pair<Column, QuantityEdit*> cells[]{
        {Used, line.figures.used}, {Lost, line.figures.lost}, {Air, line.figures.air}};
    for (const auto& [column, edit] : cells) {
        edit->setFixedWidth(QuantityEdit::kRoom);
        m_grid->addWidget(edit, row, column);
        connect(edit, &QuantityEdit::valueChanged, this, &BathTable::changed);
    }
    m_grid->addWidget(line.figures.oneShot, row, Once, Qt::AlignCenter);

    fillBottles(line);
    line.figures.lost->setValue(m_door.lastFigure(kLostFigure));
    m_lines.push_back(line);
    showUse(line);
    showOnce(line);
    connect(line.bottle, &QComboBox::currentIndexChanged, this, [this, line] {
        showUse(line);
        showOnce(line);
        if (m_proposing)
            return;
        m_chosen.insert(line.place);
        emit changed();
    });
    connect(line.figures.oneShot, &QCheckBox::toggled, this, &BathTable::changed);
}

void BathTable::fillBottles(const Line& line) const
{
    const Role role = line.place.role;
    const bool main = role == Role::Developer || (role == Role::Fixer && !line.place.second);
    line.bottle->addItem(main ? tr("none") : tr("not used"), QString());
    for (const Bottle* bottle : bottlesFor(role, m_bottles))
        line.bottle->addItem(bottleText(*bottle, m_door.wording()),
                             QString::fromStdString(bottle->batch.id));
}

void BathTable::readAnew()
{
    const QSignalBlocker quiet(this);
    m_bottles = m_door.bottles();
    m_proposing = true;
    for (const Line& line : m_lines) {
        const QVariant before = line.bottle->currentData();
        line.bottle->clear();
        fillBottles(line);
        const int index = line.bottle->findData(before);
        if (index < 0)
            m_chosen.erase(line.place);
        line.bottle->setCurrentIndex(std::max(0, index));
    }
    m_proposing = false;
}

// Going without is remembered; a second fixing bath is wanted where one has been used.
bool BathTable::wanted(ledger::BathPlace place) const
{
    const bool usual =
        !place.second || std::any_of(m_bottles.begin(), m_bottles.end(), [&](const Bottle& bottle) {
            return bottle.batch.solution->role == place.role && ledger::isSecondBath(bottle.batch);
        });
    return m_door.lastFigure(wantedFigure(place)).value_or(usual ? 1 : 0) > 0;
}

void BathTable::showUse(const Line& line)
{
    const Bottle* bottle = bottleOf(line);
    line.figures.setAsked(bottle != nullptr);
    if (line.place.role == Role::Developer && m_parts > 0)
        line.figures.oneShot->setEnabled(false); // a dilution cannot go back
    if (!bottle)
        return;
    const auto usual = usualVolume(line);
    const bool fits = usual && *usual <= bottle->batch.volume;
    line.figures.used->setQuantity(fits ? usual : std::nullopt);
}

// As the bottle is used; a dilution is always poured away.
void BathTable::showOnce(const Line& line) const
{
    const QSignalBlocker quiet(line.figures.oneShot);
    const Bottle* bottle = bottleOf(line);
    const bool diluted = line.place.role == Role::Developer && m_parts > 0;
    line.figures.oneShot->setChecked(diluted || (bottle && bottle->batch.usedOnce()));
    line.figures.followOnce();
}

// What the tank took last; of a developer that is diluted its part.
std::optional<chemistry::Millilitres> BathTable::usualVolume(const Line& line) const
{
    const auto tank = m_door.lastFigure(kTankFigure);
    if (!tank)
        return std::nullopt;
    const chemistry::Millilitres whole(*tank);
    return line.place.role == Role::Developer ? ledger::stockNeeded(whole, m_parts) : whole;
}

void BathTable::setDilution(double parts)
{
    if (parts == m_parts)
        return;
    const QSignalBlocker quiet(this);
    const Line& developer = m_lines.front();
    const bool untouched = !developer.figures.used->quantity() ||
                           developer.figures.used->quantity() == usualVolume(developer);
    m_parts = parts;
    showOnce(developer);
    developer.figures.oneShot->setEnabled(parts == 0 && bottleOf(developer));
    if (untouched)
        showUse(developer);
}

const Bottle* BathTable::bottleOf(const Line& line) const
{
    const std::string id = line.bottle->currentData().toString().toStdString();
    const auto found = std::find_if(m_bottles.begin(), m_bottles.end(),
                                    [&](const Bottle& bottle) { return bottle.batch.id == id; });
    return found == m_bottles.end() ? nullptr : &*found;
}

const Bottle* BathTable::chosen(ledger::BathPlace place) const
{
    for (const Line& line : m_lines) {
        if (line.place == place)
            return bottleOf(line);
    }
    return nullptr;
}

std::vector<ledger::BathNeed> BathTable::needs() const
{
    std::vector<ledger::BathNeed> needs;
    for (const Line& line : m_lines) {
        const Role role = line.place.role;
        ledger::BathNeed need{.role = role,
                              .oneShot = line.figures.oneShot->isChecked(),
                              .required = (role == Role::Developer || role == Role::Fixer) &&
                                          !line.place.second,
                              .evenToDiscard = true,
                              .second = line.place.second};
        const bool chose = m_chosen.contains(line.place);
        const auto usual = usualVolume(line);
        if (const auto used = line.figures.used->quantity() ? line.figures.used->quantity()
                              : chose                       ? std::nullopt
                                                            : usual)
            need.volume = *used;
        if (chose || !wanted(line.place)) {
            const Bottle* bottle = bottleOf(line);
            need.chosen = bottle ? bottle->batch.id : ledger::kNoBottle;
        }
        needs.push_back(need);
    }
    return needs;
}

void BathTable::propose(const ledger::NextLoad& next)
{
    const QSignalBlocker quiet(this);
    m_proposing = true;
    for (const Line& line : m_lines) {
        if (m_chosen.contains(line.place))
            continue;
        const ledger::Judged* taken = next.taken(line.place);
        const int index =
            taken ? line.bottle->findData(QString::fromStdString(taken->batch.id)) : 0;
        if (index != line.bottle->currentIndex())
            line.bottle->setCurrentIndex(std::max(0, index));
    }
    m_proposing = false;
}

void BathTable::choose(const Bottle& bottle)
{
    const bool hasSecond = std::any_of(m_lines.begin(), m_lines.end(),
                                       [](const Line& line) { return line.place.second; });
    const ledger::BathPlace place(bottle.batch.solution->role,
                                  hasSecond && ledger::isSecondBath(bottle.batch));
    for (const Line& line : m_lines) {
        const int index = line.bottle->findData(QString::fromStdString(bottle.batch.id));
        if (index < 0 || line.place != place)
            continue;
        m_chosen.insert(line.place);
        line.bottle->setCurrentIndex(index);
    }
}

std::vector<ledger::Bath> BathTable::baths() const
{
    std::vector<ledger::Bath> baths;
    for (const Line& line : m_lines) {
        if (const Bottle* bottle = bottleOf(line))
            baths.push_back(line.figures.bath(bottle->batch.id, line.place.second));
    }
    return baths;
}

QStringList BathTable::problems() const
{
    QStringList problems;
    for (const Line& line : m_lines) {
        if (!bottleOf(line))
            continue;
        if (const QString problem = line.figures.problem(); !problem.isEmpty())
            problems << problem;
    }
    const Bottle* second = chosen({Role::Fixer, true});
    if (second && second == chosen(Role::Fixer))
        problems << tr("%1 cannot be both fixing baths.")
                        .arg(QString::fromStdString(second->batch.name));
    return problems;
}

void BathTable::remember() const
{
    for (const Line& line : m_lines) {
        // Where nothing could be chosen, or nothing was, nobody wanted to go without.
        if (bottleOf(line) || m_chosen.contains(line.place))
            m_door.setLastFigure(wantedFigure(line.place), bottleOf(line) ? 1 : 0);
        if (line.place.role != Role::Developer || !bottleOf(line))
            continue;
        const BathFigures& figures = line.figures;
        if (figures.used->value())
            m_door.setLastFigure(kTankFigure, *figures.used->value() * (m_parts + 1));
        m_door.setLastFigure(kLostFigure, figures.lost->value().value_or(0));
    }
}

} // namespace ullage::app
