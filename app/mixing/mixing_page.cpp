#include "app/mixing/mixing_page.h"

#include "app/mixing/choice_step.h"
#include "app/mixing/cool_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_figures.h"
#include "app/mixing/mixing_step_list.h"
#include "app/mixing/mixing_words.h"
#include "app/mixing/water_step.h"
#include "app/widgets/card.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/page_header.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/prompts.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/scroll_room.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_button.h"
#include "app/words/cautions.h"
#include "app/words/error_words.h"
#include "app/words/formula_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

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
    : QWidget(parent), m_door(&door), m_counting(counting(door, std::move(steady))),
      m_wording(door.wording()), m_header(new PageHeader({}, this)),
      m_list(new MixingStepList(this)), m_stack(new QStackedWidget(this)),
      m_choice(new ChoiceStep(m_wording)), m_water(new WaterStep(m_counting, m_wording)),
      m_dissolve(new DissolveStep(m_counting)), m_plain(nullptr), m_steps(new Card({}, this)),
      m_cautions(new QScrollArea(this)), m_becomesCard(new Card({}, this)),
      m_done(new CoolStep(m_counting, m_wording, this)), m_problem(wrapped(this)),
      m_back(new QPushButton(this)), m_next(new QPushButton(this)), m_label(new QPushButton(this)),
      m_ask(new WhereFromButton(this)), m_caution(new CautionBox({}, this)),
      m_becomesName(new PlainLabel(this)), m_becomesWhat(wrapped(this)),
      m_becomes(new FactorRows(this))
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
    for (QWidget* step :
         std::initializer_list<QWidget*>{m_choice, makeSafety(), m_water, m_dissolve,
                                         makeWords(m_topUpHeading, m_topUp), makeClose(), m_done})
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

    connect(m_choice, &ChoiceStep::changed, this, &MixingPage::showState);
    connect(m_dissolve, &DissolveStep::changed, this, &MixingPage::showState);
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

void MixingPage::wordAnew()
{
    m_wording = m_door->wording();
    m_choice->setWording(m_wording);
    m_water->setWording(m_wording);
    m_dissolve->retranslate();
    m_done->setWording(m_wording);
    m_air->setWording(m_wording);
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
    m_safetyHeading->setText(tr("Before anything is opened"));
    m_closeHeading->setText(tr("Close and label"));
    m_airLabel->setText(tr("Air left in the bottle"));
    m_air->setName(tr("Air left in the bottle"));
    m_air->setPlaceholderText(tr("all there is above it, if left empty"));
    showState();
}

QWidget* MixingPage::makeSafety()
{
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    m_safetyHeading = new PlainLabel(page);
    m_safetyHeading->setFont(Theme::font(TextRole::Heading));
    m_safety = wrapped(page);
    column->addWidget(m_safetyHeading);
    column->addWidget(m_safety);
    column->addStretch();
    return page;
}

QWidget* MixingPage::makeWords(QLabel*& heading, QLabel*& words)
{
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    heading = wrapped(page);
    heading->setFont(Theme::font(TextRole::PageTitle));
    words = wrapped(page);
    column->addWidget(heading);
    column->addWidget(words);
    column->addStretch();
    return page;
}

QWidget* MixingPage::makeClose()
{
    QWidget* page = makeWords(m_closeHeading, m_closing);
    m_air = new QuantityField<chemistry::Millilitres>(QuantityKind::Volume, {}, m_wording, page);
    m_airLabel = new PlainLabel(page);
    m_airLabel->setBuddy(m_air);
    auto* column = static_cast<QVBoxLayout*>(page->layout());
    column->insertWidget(2, m_airLabel);
    column->insertWidget(3, m_air);
    connect(m_air, &QuantityEdit::valueChanged, this, &MixingPage::showState);
    return page;
}

void MixingPage::begin(const formulary::Formulary& formulary,
                       const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
                       const QStringList& names)
{
    m_logged.clear();
    m_dissolve->reset();
    m_air->setValue(std::nullopt);
    m_choice->setFormulary(formulary, freeVessels, names, m_door->packetsAtHand());
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

QString MixingPage::problem() const
{
    switch (step()) {
    case Step::Choice:
        return m_choice->problem();
    case Step::Dissolve:
        return m_dissolve->isPoured() ? QString()
               : m_plan.liquid        ? tr("Say when the liquid is in.")
                                      : tr("Say when the powder is in.");
    case Step::Close:
        return m_air->problem();
    default:
        return {};
    }
}

void MixingPage::next()
{
    if (!problem().isEmpty())
        return;
    switch (step()) {
    case Step::Choice: {
        m_plan = m_choice->plan();
        const MixingPlan& before = m_water->plan();
        // Going back and on again without a change keeps what was typed there.
        if (before.solution != m_plan.solution || before.vessel != m_plan.vessel ||
            before.makes != m_plan.makes || before.powder() != m_plan.powder() ||
            before.displaced() != m_plan.displaced() || before.liquid != m_plan.liquid)
            m_water->setPlan(m_plan);
        m_air->setRange(0, (m_plan.vessel->capacity - m_plan.makes).value());
        break;
    }
    case Step::Close:
        if (!log())
            return;
        m_done->begin(m_plan.makes, m_water->filledUp());
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
    if (step() == Step::Done)
        return m_done->clock()->isHidden() ? QString() : tr("Cooling %1").arg(m_plan.name);
    if (!m_dissolve->isPoured() || m_plan.liquid)
        return tr("Mixing %1").arg(m_plan.name);
    return tr("Mixing %1 · %2", "batch, time to the next shake")
        .arg(m_plan.name, m_dissolve->shakeNow() && !m_dissolve->isClear()
                              ? tr("shake now", "in the rail")
                              : m_dissolve->clockText());
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
    if (!m_littleQuestion.sure(this, m_plan.makes, *m_plan.vessel, m_wording))
        return false;
    ledger::NewBatch batch;
    batch.solution = m_plan.solution->id;
    batch.vessel = m_plan.vessel->id;
    batch.volume = m_plan.makes;
    batch.name = m_plan.name.toStdString();
    if (m_plan.packet) {
        batch.packet = m_plan.packet->id;
        if (const auto taken = ledger::liquidFor(ledger::itemOf(*m_plan.packet), m_plan.makes))
            batch.takes.push_back({m_plan.packet->id, *taken});
    }
    // One deed, one undo; of a liquid there is nothing to be said.
    batch.dissolved = m_dissolve->isClear() && !m_plan.liquid;
    ledger::When when{m_door->now(), std::nullopt};
    when.airLeft = m_air->quantity();
    const auto made = m_door->mix(batch, when);
    if (!made) {
        prompts().fail(this, tr("The batch was not logged"),
                       errorSentence(made.error(), m_wording));
        return false;
    }
    m_logged = QString::fromStdString(*made);
    return true;
}

std::vector<Explanation> MixingPage::figures() const
{
    switch (step()) {
    case Step::Choice:
        return becomesFigures(m_plan, m_wording);
    case Step::Water:
        return m_water->figures();
    case Step::Dissolve:
        return m_plan.liquid ? std::vector<Explanation>()
                             : std::vector{dissolvingFigure(m_wording.locale)};
    case Step::Done:
        if (const auto clock = m_done->box()->figure(); clock && !m_done->clock()->isHidden())
            return {*clock};
        break;
    default:
        break;
    }
    return {};
}

void MixingPage::fillWords()
{
    const QString total = volumeText(m_plan.makes, m_wording);
    m_safety->setText((m_plan.solution ? mixingCautions(*m_plan.solution) : QStringList())
                          .join(QStringLiteral("\n\n")) +
                      QStringLiteral("\n\n") +
                      tr("If you mix several: the developer first, then the stop "
                         "bath, then the fixer, and the "
                         "funnel washed between them."));
    m_topUpHeading->setText(tr("Fill up to %1").arg(total));
    m_topUp->setText(fillUpText(m_plan, m_dissolve->isClear()));
    m_closing->setText(tr("Squeeze or press the air out as far as the bottle "
                          "allows, or fill it to the brim. "
                          "Write %1 on the label, what it is and today's date.")
                           .arg(m_plan.name));
    m_dissolve->setPouring(pouringText(m_plan, m_wording));
    m_dissolve->setOrder(m_plan.formula ? weighingLines(*m_plan.formula, m_wording.locale)
                                        : QStringList());
    m_done->setWords(tr("Logged as %1").arg(m_plan.name),
                     m_dissolve->isClear()
                         ? tr("It is clear and ready for a run when it has cooled down.")
                         : tr("It rests until it is clear. Mark it as dissolved on the shelf "
                              "then; "
                              "before that it is not offered for a run."));
}

void MixingPage::showState()
{
    if (step() == Step::Choice)
        m_plan = m_choice->plan();
    fillWords();
    const QString solution = m_plan.solution ? shownName(m_plan.solution->name) : QString();
    const QString total = volumeText(m_plan.makes, m_wording);
    m_list->setSteps(mixingSteps(m_plan, m_dissolve->isClear(), m_wording));
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
    m_caution->setLines(m_plan.solution ? mixingCautions(*m_plan.solution) : QStringList());
    m_becomesName->setText(m_plan.name);
    m_becomesWhat->setText(tr("%1, %2", "solution, volume").arg(solution, total));
    m_becomes->setRows(becomesRows(m_plan, m_door->now(), m_wording));
}

} // namespace ullage::app
