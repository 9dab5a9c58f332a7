#include "app/formulary/solution_editor.h"

#include "app/formulary/implied_charts.h"
#include "app/formulary/problem_words.h"
#include "app/formulary/solution_form.h"
#include "app/formulary/solution_kind.h"
#include "app/widgets/card.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/explanations.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/formulary/implied.h"

#include <QEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kPreviewWidth = 280;
constexpr int kFormWidth = 700; // with less the sources could not be read beside the figures
constexpr int kLowest = 320;    // of the fields, which scroll by themselves

QString titleOf(SolutionEditor::Purpose purpose)
{
    switch (purpose) {
    case SolutionEditor::Purpose::Edit:
        return SolutionEditor::tr("Edit a solution");
    case SolutionEditor::Purpose::Copy:
        return SolutionEditor::tr("Copy a solution");
    case SolutionEditor::Purpose::New:
        break;
    }
    return SolutionEditor::tr("New solution");
}

QString sentenceOf(SolutionEditor::Purpose purpose)
{
    if (purpose == SolutionEditor::Purpose::Edit)
        return SolutionEditor::tr("What is mixed already keeps the figures it was mixed by. What "
                                  "you save here takes this solution's place for new batches.");
    return SolutionEditor::tr("Say for each figure where it is from.");
}

std::vector<FactorRow> impliedRows(const formulary::Solution& solution, const Wording& wording)
{
    std::vector<FactorRow> rows;
    if (!check(solution))
        return rows;
    for (const ImpliedFigure figure :
         {ImpliedFigure::OxygenLimit, ImpliedFigure::AgeAlone, ImpliedFigure::TrayByModel}) {
        if (const QString text = impliedText(figure, solution, wording); !text.isEmpty())
            rows.push_back({impliedName(figure), text});
    }
    if (solution.wear.rule != chemistry::WearRule::None) {
        const auto last = formulary::wearCurve(solution).back();
        rows.push_back({SolutionEditor::tr("Time of film %1 in a litre")
                            .arg(numberText(last.wear.value() + 1, 0, wording.locale)),
                        factorText(last.factor, wording.locale)});
    }
    if (solution.replenishPerFilm && solution.replenisher.empty())
        rows.push_back(
            {SolutionEditor::tr("Topped up this way, it settles at"),
             SolutionEditor::tr("%1 films per litre")
                 .arg(numberText(1000 / solution.replenishPerFilm->value(), 1, wording.locale))});
    return rows;
}

} // namespace

SolutionEditor::SolutionEditor(Purpose purpose, const formulary::Solution& start, Door& door,
                               const Wording& wording, QWidget* parent)
    : FormDialog(wording, titleOf(purpose), parent), m_purpose(purpose), m_door(&door),
      m_form(new SolutionForm(wording)), m_row(new FoldingRow), m_fields(new QScrollArea(this)),
      m_charts(new ImpliedCharts(this)), m_implied(new FactorRows(this)), m_start(start)
{
    formulary::Solution shown = start;
    if (purpose == Purpose::Copy)
        shown.name = tr("%1, copy").arg(shownName(start.name)).toStdString();
    m_replaces = purpose == Purpose::Edit ? start.id : std::string();
    std::vector<std::pair<std::string, std::string>> others;
    if (const formulary::Formulary* book = door.formulary()) {
        for (const auto& other : book->currentSolutions())
            others.emplace_back(other->id, other->name);
    }
    m_form->kind()->setOthers(others);
    m_form->setSolution(shown);

    auto* sentence = new PlainLabel(sentenceOf(purpose), this);
    sentence->setWordWrap(true);
    setTone(sentence, Tone::Quiet);
    body()->addWidget(sentence);
    auto* fields = new Card({}, this);
    m_fields->setWidgetResizable(true);
    m_fields->setFrameShape(QFrame::NoFrame);
    m_fields->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_fields->setWidget(m_form);
    m_form->setAutoFillBackground(false);
    m_fields->viewport()->setAutoFillBackground(false);
    m_form->layout()->setContentsMargins(2, 2, 12, 2);
    m_fields->setMinimumWidth(std::max(kFormWidth, m_form->minimumSizeHint().width() + 8));
    m_fields->setMinimumHeight(kLowest);
    fields->body()->addWidget(m_fields);
    m_row->addColumn(fields, 1);
    auto* preview = new QVBoxLayout;
    preview->setSpacing(Space::kGap);
    m_charts->setMinimumWidth(kPreviewWidth);
    preview->addWidget(m_charts, 1);
    auto* implied = new Card(tr("What these figures imply"), this);
    implied->body()->addWidget(m_implied);
    preview->addWidget(implied);
    m_row->addColumn(preview);
    body()->addLayout(m_row, 1);
    connect(m_form, &SolutionForm::changed, this, &SolutionEditor::showState);
    resize(1500, 860);
    showState();
    m_form->name()->setFocus();
    m_form->name()->selectAll();
}

bool SolutionEditor::event(QEvent* event)
{
    const bool done = FormDialog::event(event);
    if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest)
        fitFields();
    return done;
}

// Over the charts they do not scroll by themselves: the dialog does.
void SolutionEditor::fitFields()
{
    const int least =
        m_row->isFolded() ? std::max(kLowest, m_form->minimumSizeHint().height()) : kLowest;
    if (m_fields->minimumHeight() != least)
        m_fields->setMinimumHeight(least);
}

void SolutionEditor::showState()
{
    const QString problem = m_form->showProblem();
    const formulary::Solution solution = m_form->solution();
    const bool changed = m_purpose != Purpose::Edit || !(solution == m_start);
    // A form that nothing was typed into is not yet wrong.
    setRefusal(m_purpose == Purpose::New && solution.name.empty() ? QString() : problem);
    saveButton()->setEnabled(problem.isEmpty() && changed);
    setPlainToolTip(saveButton(), changed ? problem : tr("Nothing is changed."));
    formulary::Solution named = solution;
    named.id = "preview";
    if (named.name.empty())
        named.name = "preview";
    m_charts->setSolution(named, wording());
    m_implied->setRows(impliedRows(named, wording()));
    fitFields();
}

bool SolutionEditor::fieldsAreFine()
{
    showState();
    return m_form->showProblem().isEmpty();
}

Result<void> SolutionEditor::act()
{
    formulary::Solution solution = m_form->solution();
    solution.id = m_door->newId();
    solution.replaces = m_replaces;
    auto done = m_door->add(solution);
    if (done)
        m_saved = QString::fromStdString(solution.id);
    return done;
}

void SolutionEditor::showError(const Error& error)
{
    setRefusal(formularyProblem(error, wording()));
}

} // namespace ullage::app
