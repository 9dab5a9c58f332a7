#include "app/formulary/formulary_page.h"

#include "app/formulary/implied_charts.h"
#include "app/formulary/own_figures_card.h"
#include "app/formulary/solution_card.h"
#include "app/formulary/solution_editor.h"
#include "app/formulary/solution_list.h"
#include "app/formulary/times_tab.h"
#include "app/formulary/vessels_tab.h"
#include "app/widgets/card.h"
#include "app/widgets/explanation_view.h"
#include "app/widgets/page_header.h"
#include "app/widgets/prompts.h"
#include "app/widgets/scroll_room.h"
#include "app/widgets/seen_stack.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"
#include "app/words/shown_names.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kRoomForBothCurves = 940;
constexpr int kOwnTests = 380; // that much more where own tests stand below
// Where they stand below the figures and do not share a column of the window's height.
constexpr int kLeastUnder = 1390; // charts as they like to be, sources, own tests
constexpr int kLeastRight = 300;  // narrower than this a curve cannot be read

} // namespace

FormularyPage::FormularyPage(Door& door, QWidget* parent)
    : QWidget(parent), m_door(&door), m_tabs(new QTabBar(this)), m_stack(new SeenStack(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kPage, 22, Space::kPage, Space::kPage);
    column->setSpacing(20);
    auto* header = new PageHeader(tr("Formulary"), this);
    header->setDetail(tr("what solutions are, how they wear and keep, and who says so"));
    m_tabs->addTab(tr("Solutions"));
    m_tabs->addTab(tr("Bottles"));
    m_tabs->addTab(tr("Times"));
    m_tabs->setDrawBase(false);
    m_tabs->setExpanding(false);
    m_tabs->setAccessibleName(tr("Parts of the formulary"));
    header->addAtRight(m_tabs);
    m_new = header->addButton({});
    column->addWidget(header);
    column->addWidget(m_stack, 1);
    m_stack->addWidget(makeSolutions());
    m_vessels = new VesselsTab(*m_door, this);
    m_times = new TimesTab(*m_door, this);
    m_stack->addWidget(m_vessels);
    m_stack->addWidget(m_times);
    connect(m_tabs, &QTabBar::currentChanged, this, [this](int tab) { setTab(Tab(tab)); });
    connect(m_new, &QPushButton::clicked, this, &FormularyPage::makeNew);
    setTab(Tab::Solutions);
}

QWidget* FormularyPage::makeSolutions()
{
    auto* row = new ThreeColumns(ThreeColumns::Under::Second, this);
    auto* listCard = new Card;
    listCard->setAccessibleName(tr("Solutions"));
    m_list = new SolutionList(listCard);
    listCard->body()->addWidget(m_list);
    listCard->setMinimumWidth(190);
    listCard->setMaximumWidth(340);
    m_card = new SolutionCard;
    m_card->setMinimumWidth(290);
    auto* right = new QWidget;
    auto* room = new ScrollRoom(right);
    room->setMinimumWidth(kLeastRight);
    m_right = new QVBoxLayout(right);
    m_right->setContentsMargins(0, 0, 0, 0);
    m_right->setSpacing(Space::kGap);
    m_charts = new ImpliedCharts(right);
    m_whyCard = new Card(tr("Where from?"), right);
    m_why = new ExplanationView(ExplanationView::Heading::Hidden, m_whyCard);
    m_whyCard->body()->addWidget(m_why);
    m_why->showWhole();
    m_right->addWidget(m_charts, 6);
    m_right->addWidget(m_whyCard, 5);
    m_own = new OwnFiguresCard(right);
    m_right->addWidget(m_own);
    connect(m_own, &OwnFiguresCard::useWanted, this, &FormularyPage::takeOver);
    row->addColumn(listCard, 5);
    row->addColumn(m_card, 8);
    row->addColumn(room, 8);
    connect(m_list, &SolutionList::solutionChosen, this, &FormularyPage::showSolution);
    connect(m_list, &SolutionList::solutionOpened, this, [this] { edit(false); });
    connect(m_card, &SolutionCard::editWanted, this, [this] { edit(false); });
    connect(m_card, &SolutionCard::copyWanted, this, [this] { edit(true); });
    connect(m_card->figures(), &FigureList::figureChosen, this, [this](const Explanation& why) {
        m_whyCard->setTitle(tr("Where from? · %1").arg(why.title));
        m_why->setExplanation(why);
    });
    // Over the charts it does not scroll by itself: the page does.
    connect(row, &ThreeColumns::folded, m_card->figures(), &FigureList::showWhole);
    connect(row, &ThreeColumns::folded, this,
            [room](bool folded) { room->setMinimumHeight(folded ? kLeastUnder : 0); });
    return row;
}

void FormularyPage::setFormulary(const formulary::Formulary& formulary, const Wording& wording)
{
    // Definitions never change once entered, so the same ones in the same order are the same book.
    if (m_shown && formulary.solutions() == m_formulary.solutions() &&
        formulary.vessels() == m_formulary.vessels() &&
        formulary.notebook().all() == m_formulary.notebook().all() &&
        wording.units == m_wording.units && wording.locale == m_wording.locale)
        return;
    m_shown = true;
    m_formulary = formulary;
    m_wording = wording;
    m_list->setFormulary(formulary);
    showSolution();
    m_vessels->setFormulary(formulary, wording);
    m_times->setFormulary(formulary, wording);
}

void FormularyPage::setTab(Tab tab)
{
    const int index = static_cast<int>(tab);
    m_tabs->setCurrentIndex(index);
    m_stack->setCurrentIndex(index);
    switch (tab) {
    case Tab::Solutions:
        m_new->setText(tr("New solution…"));
        break;
    case Tab::Bottles:
        m_new->setText(tr("New bottle…"));
        break;
    case Tab::Times:
        m_new->setText(tr("New time…"));
        break;
    }
}

FormularyPage::Tab FormularyPage::tab() const { return Tab(m_tabs->currentIndex()); }

QString FormularyPage::chosenSolution() const { return m_list->chosen(); }

void FormularyPage::chooseSolution(const QString& id)
{
    setTab(Tab::Solutions);
    m_list->choose(id);
}

void FormularyPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void FormularyPage::arrange()
{
    const bool both = height() >= kRoomForBothCurves + (m_own->isHidden() ? 0 : kOwnTests);
    m_charts->setBoth(both);
    m_right->setStretch(0, both ? 9 : 6);
}

void FormularyPage::showSolution()
{
    const auto solution = m_formulary.solution(m_list->chosen().toStdString());
    m_card->setVisible(solution != nullptr);
    m_charts->setVisible(solution != nullptr);
    m_whyCard->setVisible(solution != nullptr);
    m_own->clear();
    if (!solution)
        return;
    m_card->setSolution(*solution, m_wording);
    m_charts->setSolution(*solution, m_wording);
    emit solutionShown(m_list->chosen());
}

void FormularyPage::setOwnRecord(const QString& solution, const ledger::OwnRecord& record,
                                 int bottles)
{
    const auto shown = m_formulary.solution(m_list->chosen().toStdString());
    if (shown && solution == m_list->chosen())
        m_own->setOffers(ownOffers(*shown, record, bottles, QDate::currentDate(), m_wording));
    arrange();
}

// Never by itself: a new version, which whoever mixes next is offered.
void FormularyPage::takeOver(const formulary::Solution& changed)
{
    const Question question{
        .title = tr("Use your own figure?"),
        .text = tr("%1 gets a new version with what your tests say.").arg(shownName(changed.name)),
        .detail = tr("What is mixed already keeps the figures it was mixed by."),
        .yes = tr("Use it")};
    if (!prompts().confirm(this, question))
        return;
    formulary::Solution made = changed;
    made.replaces = changed.id;
    made.id = m_door->newId();
    if (const auto done = m_door->add(made); !done)
        return prompts().fail(this, tr("Your own figure is not used"),
                              errorSentence(done.error(), m_wording));
    m_list->choose(QString::fromStdString(made.id));
}

void FormularyPage::edit(bool copy)
{
    const auto solution = m_formulary.solution(m_list->chosen().toStdString());
    if (!solution)
        return;
    openEditor(copy ? SolutionEditor::Purpose::Copy : SolutionEditor::Purpose::Edit, *solution);
}

void FormularyPage::makeNew()
{
    switch (tab()) {
    case Tab::Solutions: {
        formulary::Solution blank;
        blank.role = formulary::Role::Developer;
        openEditor(SolutionEditor::Purpose::New, blank);
        break;
    }
    case Tab::Bottles:
        m_vessels->makeNew();
        break;
    case Tab::Times:
        m_times->makeNew();
        break;
    }
}

void FormularyPage::openEditor(SolutionEditor::Purpose purpose, const formulary::Solution& start)
{
    auto* editor = new SolutionEditor(purpose, start, *m_door, m_wording, this);
    editor->setAttribute(Qt::WA_DeleteOnClose);
    connect(editor, &QDialog::accepted, this, [this, editor] {
        // The book told its change already, or will when it is asked next.
        m_list->choose(editor->saved());
    });
    editor->open();
}

} // namespace ullage::app
