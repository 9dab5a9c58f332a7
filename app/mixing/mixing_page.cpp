#include "app/mixing/mixing_page.h"

#include "app/mixing/choice_step.h"
#include "app/mixing/cool_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_bottle.h"
#include "app/mixing/mixing_step_list.h"
#include "app/mixing/mixing_words.h"
#include "app/mixing/water_step.h"
#include "app/mixing/words_step.h"
#include "app/widgets/card.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/page_header.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/prompts.h"
#include "app/widgets/scroll_room.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_button.h"
#include "app/words/cautions.h"
#include "app/words/error_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

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
      m_bottle(new MixingBottle(counting(door, std::move(steady)), m_wording, this)),
      m_plain(nullptr), m_steps(new Card({}, this)), m_cautions(new QScrollArea(this)),
      m_becomesCard(new Card({}, this)), m_safety(new WordsStep(TextRole::Heading, this)),
      m_problem(wrapped(this)), m_back(new QPushButton(this)), m_next(new QPushButton(this)),
      m_label(new QPushButton(this)), m_ask(new WhereFromButton(this)),
      m_caution(new CautionBox({}, this)), m_becomesName(new PlainLabel(this)),
      m_becomesWhat(wrapped(this)), m_becomes(new FactorRows(this))
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
    // Step by step, in a room that scrolls where the window is too low for it.
    for (QWidget* step : std::initializer_list<QWidget*>{
             m_bottle->choice(), m_safety, m_bottle->water(), m_bottle->dissolve(),
             m_bottle->topUp(), m_bottle->closing(), m_bottle->cooling()})
        m_stack->addWidget(new ScrollRoom(step));
    work->body()->addWidget(m_stack, 1);
    m_ask->setFigures([this] { return figures(); });
    setTone(m_problem, Tone::Discard);
    work->body()->addWidget(m_problem);
    auto* buttons = new QHBoxLayout;
    setButtonLook(m_next, ButtonLook::Primary);
    for (QPushButton* button : {m_back, m_next})
        button->setMinimumWidth(120);
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
    right->addWidget(m_cautions, 4);
    m_becomesName->setFont(Theme::font(TextRole::Heading));
    setTone(m_becomesWhat, Tone::Quiet);
    m_becomesCard->body()->addWidget(m_becomesName);
    m_becomesCard->body()->addWidget(m_becomesWhat);
    m_becomesCard->body()->addWidget(m_becomes);
    m_becomesCard->body()->addStretch();
    right->addWidget(m_becomesCard, 3);
    row->addColumn(right, 26);

    connect(m_bottle, &MixingBottle::changed, this, &MixingPage::showState);
    connect(m_list, &MixingStepList::stepWanted, this, [this](int step) {
        if (this->step() != Step::Done)
            goTo(Step(step));
    });
    connect(m_back, &QPushButton::clicked, this, &MixingPage::back);
    connect(m_next, &QPushButton::clicked, this, &MixingPage::next);
    connect(m_label, &QPushButton::clicked, this, [this] { emit labelWanted(m_logged); });
    connect(&door, &Door::wordingChanged, this, &MixingPage::wordAnew);
    retranslate();
}

ChoiceStep* MixingPage::choice() const { return m_bottle->choice(); }
WaterStep* MixingPage::water() const { return m_bottle->water(); }
DissolveStep* MixingPage::dissolve() const { return m_bottle->dissolve(); }
CoolStep* MixingPage::done() const { return m_bottle->cooling(); }

void MixingPage::wordAnew()
{
    m_wording = m_door->wording();
    m_bottle->setWording(m_wording);
    retranslate();
}

void MixingPage::retranslate()
{
    m_header->setTitle(tr("Mix a batch"));
    m_plain->setText(tr("Just log it…"));
    m_steps->setTitle(tr("From packet to bottle"));
    m_caution->setTitle(tr("Before you pour"));
    m_cautions->setAccessibleName(tr("Before you pour"));
    m_becomesCard->setTitle(tr("It will become"));
    m_label->setText(tr("Print its label…"));
    showState();
}

void MixingPage::begin(const formulary::Formulary& formulary,
                       const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
                       const QStringList& names)
{
    m_logged.clear();
    m_bottle->begin();
    choice()->setFormulary(formulary, freeVessels, names, m_door->packetsAtHand());
    goTo(Step::Choice);
}

MixingPage::Step MixingPage::step() const { return Step(m_stack->currentIndex()); }

void MixingPage::goTo(Step step)
{
    m_stack->setCurrentIndex(static_cast<int>(step));
    showState();
    if (const auto* room = qobject_cast<ScrollRoom*>(m_stack->currentWidget()))
        room->widget()->setFocus();
}

QString MixingPage::problem() const { return m_bottle->problem(step()); }

void MixingPage::next()
{
    if (!problem().isEmpty())
        return;
    switch (step()) {
    case Step::Choice:
        m_bottle->settle();
        break;
    case Step::Close:
        if (!log())
            return;
        m_bottle->closed();
        break;
    case Step::Done:
        emit finished(m_logged);
        return;
    default:
        break;
    }
    goTo(Step(static_cast<int>(step()) + 1));
    if (step() == Step::Done)
        emit batchLogged(m_logged);
}

QString MixingPage::inHand() const
{
    if (step() == Step::Choice)
        return {};
    if (step() != Step::Done)
        return m_bottle->inHand();
    return done()->clock()->isHidden() ? QString() : tr("Cooling %1").arg(m_bottle->plan().name);
}

void MixingPage::back()
{
    if (step() == Step::Choice)
        emit finished({});
    else if (step() != Step::Done)
        goTo(Step(static_cast<int>(step()) - 1));
}

bool MixingPage::log()
{
    const MixingPlan& plan = m_bottle->plan();
    if (!m_littleQuestion.sure(this, plan.makes, *plan.vessel, m_wording))
        return false;
    const auto made = m_door->mix(m_bottle->batch(), {m_door->now(), std::nullopt});
    if (!made) {
        prompts().fail(this, tr("The batch was not logged"),
                       errorSentence(made.error(), m_wording));
        return false;
    }
    m_logged = QString::fromStdString(*made);
    return true;
}

std::vector<Explanation> MixingPage::figures() const { return m_bottle->figures(step()); }

void MixingPage::showSafety()
{
    const auto& solution = m_bottle->plan().solution;
    QStringList lines = solution ? mixingCautions(*solution) : QStringList();
    lines << tr("If you mix several: the developer first, then the stop "
                "bath, then the fixer, and the "
                "funnel washed between them.");
    m_safety->setWords(tr("Before anything is opened"), lines.join(QStringLiteral("\n\n")));
}

void MixingPage::showState()
{
    if (step() == Step::Choice)
        m_bottle->readChoice();
    m_bottle->fillWords();
    showSafety();
    const MixingPlan& plan = m_bottle->plan();
    const QString solution = plan.solution ? shownName(plan.solution->name) : QString();
    const QString total = volumeText(plan.makes, m_wording);
    m_list->setSteps(mixingSteps(plan, dissolve()->isClear(), m_wording));
    m_list->setCurrent(static_cast<int>(step()));
    m_header->setDetail(tr("step %1 of %2 · follow the packet; this only helps")
                            .arg(static_cast<int>(step()) + 1)
                            .arg(kSteps));
    const QString names[] = {tr("Go on"),      tr("I am ready"), tr("Water is ready"), tr("Go on"),
                             tr("It is full"), tr("Log it"),     tr("To the shelf")};
    m_next->setText(names[static_cast<int>(step())]);
    m_back->setText(step() == Step::Choice ? tr("Leave") : tr("Back"));
    m_back->setVisible(step() != Step::Done);
    m_label->setVisible(step() == Step::Done);
    const QString trouble = problem();
    m_problem->setText(step() == Step::Dissolve ? QString() : trouble);
    m_problem->setVisible(!m_problem->text().isEmpty());
    m_next->setEnabled(trouble.isEmpty());
    setPlainToolTip(m_next, trouble);
    m_ask->refresh();
    // On the page of safety the list stands in its middle: not a second time at the side.
    m_cautions->setVisible(step() != Step::Safety);
    m_caution->setLines(plan.solution ? mixingCautions(*plan.solution) : QStringList());
    m_becomesName->setText(plan.name);
    m_becomesWhat->setText(tr("%1, %2", "solution, volume").arg(solution, total));
    m_becomes->setRows(becomesRows(plan, m_door->now(), m_wording));
}

} // namespace ullage::app
