#include "app/mixing/mixing_page.h"

#include "app/mixing/choice_step.h"
#include "app/mixing/cool_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_set.h"
#include "app/mixing/mixing_step_list.h"
#include "app/mixing/mixing_words.h"
#include "app/mixing/water_step.h"
#include "app/mixing/words_step.h"
#include "app/widgets/card.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/edge_fade.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/page_header.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/problem_line.h"
#include "app/widgets/prompts.h"
#include "app/widgets/scroll_room.h"
#include "app/widgets/tab_order.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_button.h"
#include "app/words/error_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "app/words/weighing_words.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <functional>

namespace ullage::app
{

namespace
{

QLabel* wrapped(QWidget* parent)
{
    auto* label = new PlainLabel(parent);
    label->setWordWrap(true);
    return label;
}

// Moments of no calendar, only to be compared with each other.
std::function<chemistry::Instant()> counting(const Door& door, ledger::SteadyClock steady)
{
    if (!steady)
        return [&door] { return door.now(); };
    return [steady = std::move(steady)] { return chemistry::Instant(steady()); };
}

} // namespace

MixingPage::MixingPage(Door& door, ledger::SteadyClock steady, QWidget* parent)
    : QWidget(parent), m_door(&door), m_wording(door.wording()), m_header(new PageHeader({}, this)),
      m_list(new MixingStepList(this)), m_stack(new QStackedWidget(this)),
      m_set(new MixingSet(door, counting(door, std::move(steady)), m_wording, this)),
      m_plain(nullptr), m_steps(new Card({}, this)), m_cautions(new QScrollArea(this)),
      m_becomesCard(new Card({}, this)), m_safety(new WordsStep(TextRole::Heading, this)),
      m_problem(newProblemLine(this)), m_back(new QPushButton(this)), m_next(new QPushButton(this)),
      m_label(new QPushButton(this)), m_ask(new WhereFromButton(this)),
      m_caution(new CautionBox({}, this)), m_becomes(new FactorRows(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kPage, 22, Space::kPage, Space::kPage);
    column->setSpacing(20);
    // Beside the step's own buttons there is no room for it.
    m_header->addAtRight(m_ask);
    m_plain = m_header->addButton({});
    connect(m_plain, &QPushButton::clicked, this, &MixingPage::plainLogWanted);
    column->addWidget(m_header);
    auto* row = new FoldingRow;
    column->addLayout(row, 1);

    m_steps->body()->addWidget(m_list, 1);
    row->addColumn(m_steps, 28);

    auto* work = new Card({}, this);
    makePages();
    work->body()->addWidget(m_stack, 1);
    m_ask->setFigures([this] { return figures(); });
    work->body()->addWidget(m_problem);
    auto* buttons = new QHBoxLayout;
    setButtonLook(m_next, ButtonLook::Primary);
    for (QPushButton* button : {m_back, m_next})
        button->setMinimumWidth(100);
    buttons->addWidget(m_back);
    buttons->addStretch();
    buttons->addWidget(m_label);
    buttons->addWidget(m_next);
    work->body()->addLayout(buttons);
    row->addColumn(work, 60);

    auto* right = new QVBoxLayout;
    right->setSpacing(Space::kGap);
    // A low window shows the cautions by rolling, never by cutting them short.
    m_cautions->setWidgetResizable(true);
    m_cautions->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_cautions->setWidget(m_caution);
    fadeEdges(*m_cautions, FadeGround::Page);
    right->addWidget(m_cautions, 1); // what it becomes takes what it needs
    for (std::size_t i = 0; i < m_becomesName.size(); ++i) {
        m_becomesName[i] = new PlainLabel(this);
        m_becomesName[i]->setFont(Theme::font(TextRole::Heading));
        m_becomesWhat[i] = wrapped(this);
        setTone(m_becomesWhat[i], Tone::Quiet);
        m_becomesCard->body()->addWidget(m_becomesName[i]);
        m_becomesCard->body()->addWidget(m_becomesWhat[i]);
    }
    m_becomesCard->body()->addWidget(m_becomes);
    m_becomesCard->body()->addStretch();
    right->addWidget(m_becomesCard);
    row->addColumn(right, 26);

    connect(m_set, &MixingSet::changed, this, &MixingPage::showState);
    connect(m_set, &MixingSet::sheetWanted, this, [this](int bottle) {
        const MixingBottle& one = m_set->bottle(bottle);
        if (one.problem(Step::Choice).isEmpty())
            emit weighingSheetWanted({one.plan().name, one.plan().solution, one.plan().vessel,
                                      one.plan().makes, one.weighOut()});
    });
    connect(m_list, &MixingStepList::stepWanted, this, [this](int step) {
        const bool ofAll = Step(step) == Step::Choice || Step(step) == Step::Safety;
        if (this->step() != Step::Done)
            goTo({Step(step), ofAll ? 0 : m_at.bottle});
    });
    connect(m_back, &QPushButton::clicked, this, &MixingPage::back);
    connect(m_next, &QPushButton::clicked, this, &MixingPage::next);
    connect(m_label, &QPushButton::clicked, this, [this] { emit labelsWanted(m_logged); });
    connect(&door, &Door::wordingChanged, this, &MixingPage::wordAnew);
    retranslate();
}

// Step by step, each in a room that scrolls where the window is too low for it.
void MixingPage::makePages()
{
    const auto put = [this](std::initializer_list<QWidget*> parts) {
        if (parts.size() == 1)
            return m_stack->addWidget(new ScrollRoom(*parts.begin()));
        auto* page = new QWidget(this);
        auto* column = new QVBoxLayout(page);
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(Space::kGap);
        for (QWidget* part : parts)
            column->addWidget(part);
        column->addStretch();
        return m_stack->addWidget(new ScrollRoom(page));
    };
    const int safety = put({m_safety});
    const int done = put({this->done(0), this->done(1), this->done(2)});
    for (int i = 0; i < MixingSet::kMost; ++i) {
        const MixingBottle& bottle = m_set->bottle(i);
        m_pages[static_cast<std::size_t>(i)] = {
            i == 0 ? put({bottle.choice(), m_set->tooBox(1), m_set->tooBox(2)})
                   : put({m_set->heading(i), bottle.choice()}),
            safety,
            put({bottle.water()}),
            put({bottle.dissolve()}),
            put({bottle.topUp()}),
            put({bottle.closing()}),
            done};
    }
}

ChoiceStep* MixingPage::choice(int bottle) const { return m_set->bottle(bottle).choice(); }
WaterStep* MixingPage::water(int bottle) const { return m_set->bottle(bottle).water(); }
DissolveStep* MixingPage::dissolve(int bottle) const { return m_set->bottle(bottle).dissolve(); }
CoolStep* MixingPage::done(int bottle) const { return m_set->bottle(bottle).cooling(); }

void MixingPage::wordAnew()
{
    m_wording = m_door->wording();
    m_set->setWording(m_wording);
    retranslate();
}

void MixingPage::retranslate()
{
    m_header->setTitle(tr("Mix a batch"));
    m_plain->setText(tr("&Just log it…"));
    m_steps->setTitle(tr("From packet to bottle"));
    m_caution->setTitle(tr("Before you pour"));
    m_cautions->setAccessibleName(tr("Before you pour"));
    m_becomesCard->setTitle(tr("It will become"));
    showState();
}

void MixingPage::begin(const formulary::Formulary& formulary,
                       const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
                       const QStringList& names)
{
    m_logged.clear();
    m_set->begin(formulary, freeVessels, names);
    goTo({});
}

void MixingPage::goTo(const MixingSpot& spot)
{
    m_at = spot;
    m_stack->setCurrentIndex(
        m_pages[static_cast<std::size_t>(spot.bottle)][static_cast<std::size_t>(spot.stage)]);
    showState();
    orderTabs(*this); // rows of a formula and tests of a bottle come and go
    if (step() == Step::Choice)
        choice(spot.bottle)->solution()->setFocus(); // all that is asked can be gone through
    else if (const auto* room = qobject_cast<ScrollRoom*>(m_stack->currentWidget()))
        room->widget()->setFocus();
}

void MixingPage::next()
{
    if (!m_set->problem(m_at).isEmpty())
        return;
    if (step() == Step::Done) {
        emit finished(m_logged.front());
        return;
    }
    if (step() == Step::Choice && !sureWithWhatLacks())
        return;
    const auto way = m_set->way();
    const MixingSpot to = *(std::find(way.begin(), way.end(), m_at) + 1);
    if (to.stage == Step::Done && !log())
        return;
    m_set->goOn(m_at, to);
    goTo(to);
    if (step() == Step::Done)
        emit batchesLogged(m_logged);
}

QString MixingPage::inHand() const { return m_set->inHand(m_at); }

void MixingPage::back()
{
    const auto way = m_set->way();
    const auto at = std::find(way.begin(), way.end(), m_at);
    if (at == way.begin())
        emit finished({});
    else if (step() != Step::Done)
        goTo(*(at - 1));
}

// Asked where something can still be bought or counted, and once.
bool MixingPage::sureWithWhatLacks()
{
    const QStringList lacks = lackingLines(m_set->bottle(m_at.bottle).weighOut(), m_wording.locale);
    if (lacks.isEmpty())
        return true;
    const Question question{
        .title = tr("Too little in the cupboard"),
        .text = lacks.join(u'\n'),
        .detail = tr("It can be mixed all the same, with what stands elsewhere: what is here is "
                     "taken from the cupboard, and no more."),
        .yes = tr("Mix all the same")};
    return confirmOnce(this, question, m_sureOfLacks[static_cast<std::size_t>(m_at.bottle)]);
}

bool MixingPage::log()
{
    for (const int i : m_set->bottles()) {
        const MixingPlan& plan = m_set->bottle(i).plan();
        if (!m_littleQuestions[static_cast<std::size_t>(i)].sure(this, plan.makes, *plan.vessel,
                                                                 m_wording))
            return false;
    }
    const auto made = m_door->mixAll(m_set->batches(), {m_door->now(), std::nullopt});
    if (!made) {
        prompts().fail(
            this, m_set->isSet() ? tr("The set was not logged") : tr("The batch was not logged"),
            errorSentence(made.error(), m_wording));
        return false;
    }
    for (const std::string& id : *made)
        m_logged << QString::fromStdString(id);
    return true;
}

std::vector<Explanation> MixingPage::figures() const { return m_set->figures(m_at); }

void MixingPage::showSafety()
{
    QStringList lines = m_set->cautions();
    lines << tr("If you mix several: the developer first, then the stop "
                "bath, then the fixer, and the "
                "funnel washed between them.");
    m_safety->setWords(tr("Before anything is opened"), lines.join(QStringLiteral("\n\n")));
}

// Which step it is, and of a set of which bottle.
QString MixingPage::stepText() const
{
    const QString step = tr("step %1 of %2 · follow the packet; this only helps")
                             .arg(static_cast<int>(m_at.stage) + 1)
                             .arg(kSteps);
    if (!m_set->isSet() || m_at.stage == Step::Safety || m_at.stage == Step::Done)
        return step;
    return tr("bottle %1 of %2 · %3", "place, number, the step")
        .arg(m_set->number(m_at.bottle))
        .arg(m_set->bottles().size())
        .arg(step);
}

QString MixingPage::nextText() const
{
    const QString names[] = {tr("Go on"),      tr("I am ready"), tr("Water is ready"), tr("Go on"),
                             tr("It is full"), tr("Log it"),     tr("To the shelf")};
    const std::vector<int> in = m_set->bottles();
    if (step() != Step::Close || in.size() == 1)
        return names[static_cast<int>(step())];
    return m_at.bottle == in.back()
               ? tr("Log the set")
               : tr("Go on with %1")
                     .arg(m_set->bottle(in[static_cast<std::size_t>(m_set->number(m_at.bottle))])
                              .plan()
                              .name);
}

void MixingPage::showState()
{
    m_set->show(m_at);
    showSafety();
    const MixingPlan& plan = m_set->bottle(m_at.bottle).plan();
    m_list->setSteps(mixingSteps(plan, dissolve(m_at.bottle)->isClear(), m_wording));
    m_list->setCurrent(static_cast<int>(step()));
    m_header->setDetail(stepText());
    m_next->setText(plainCaption(nextText()));
    m_label->setText(m_set->isSet() ? tr("Print their labels…") : tr("Print its label…"));
    m_back->setText(m_at == MixingSpot() ? tr("Leave") : tr("Back"));
    m_back->setVisible(step() != Step::Done);
    m_label->setVisible(step() == Step::Done);
    const QString trouble = m_set->problem(m_at);
    showIn(*m_problem, step() == Step::Dissolve ? QString() : trouble);
    m_next->setEnabled(trouble.isEmpty());
    setPlainToolTip(m_next, trouble);
    m_ask->refresh();
    // On the page of safety the list stands in its middle: not a second time at the side.
    m_cautions->setVisible(step() != Step::Safety);
    if (step() == Step::Done)
        m_caution->setLines(m_set->cautions());
    else
        m_caution->setLines(plan.cautions());
    showBecomes();
}

// Of the bottle in hand; of all of a set where a step is about all of them, each in few lines.
void MixingPage::showBecomes()
{
    const bool ofAll = m_set->isSet() && (step() == Step::Safety || step() == Step::Done);
    const std::vector<int> bottles = ofAll ? m_set->bottles() : std::vector{m_at.bottle};
    for (std::size_t i = 0; i < m_becomesName.size(); ++i) {
        const bool shown = i < bottles.size();
        m_becomesName[i]->setVisible(shown);
        m_becomesWhat[i]->setVisible(shown);
        if (!shown)
            continue;
        const MixingPlan& plan = m_set->bottle(bottles[i]).plan();
        QString what = tr("%1, %2", "solution, volume")
                           .arg(plan.solution ? shownName(plan.solution->name) : QString(),
                                volumeText(plan.makes, m_wording));
        const auto rows =
            becomesRows(plan, m_door->now(), m_wording, ofAll ? Becomes::Shortest : Becomes::Whole);
        if (ofAll) {
            for (const FactorRow& row : rows) {
                QString value = row.value; // a date is not broken
                what += u'\n' + tr("%1: %2", "what of it, figure")
                                    .arg(row.label, value.replace(u' ', QChar::Nbsp));
            }
        } else {
            m_becomes->setRows(rows);
        }
        m_becomesName[i]->setText(plan.name);
        m_becomesWhat[i]->setText(what);
    }
    m_becomes->setVisible(!ofAll);
}

} // namespace ullage::app
