#include "app/formulary/times_tab.h"

#include "app/charts/chart.h"
#include "app/charts/chart_view.h"
#include "app/formulary/formulary_charts.h"
#include "app/formulary/formulary_table.h"
#include "app/formulary/problem_words.h"
#include "app/formulary/time_editor.h"
#include "app/widgets/card.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/prompts.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_not.h"
#include "app/words/figure_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "app/words/source_words.h"
#include "core/formulary/time_curve.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

TimesTab::TimesTab(Door& door, QWidget* parent)
    : QWidget(parent), m_door(&door),
      m_table(new FormularyTable(tr("Development times"),
                                 {tr("Developer"), tr("Dilution"), tr("Film"), tr("EI"),
                                  tr("At %1").arg(QStringLiteral("20 °C")), tr("Source")},
                                 {3, 4}, 0, this)),
      m_empty(new EmptyState(tr("No development times yet"),
                             tr("Enter what the film's leaflet says for your developer. The "
                                "program brings no times and guesses none: no figure, no time."),
                             this)),
      m_detail(new Card({}, this)), m_chart(makeChartView(this)), m_source(new PlainLabel(this)),
      m_notes(new PlainLabel(this)), m_edit(new QPushButton(tr("Edit…"), this)),
      m_withdraw(new QPushButton(tr("Delete…"), this))
{
    auto* row = new FoldingRow(this);
    auto* list = new Card({}, this);
    list->body()->addWidget(m_table, 1);
    list->body()->addWidget(m_empty, 1);
    m_detail->setMinimumWidth(340);
    m_chart->setMinimumHeight(220);
    m_detail->body()->addWidget(m_chart, 1);
    for (QLabel* label : {m_source, m_notes}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        m_detail->body()->addWidget(label);
    }
    setTone(m_notes, Tone::Quiet);
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {m_edit, m_withdraw}) {
        setButtonLook(button, ButtonLook::Quiet);
        buttons->addWidget(button);
    }
    buttons->addStretch();
    m_detail->body()->addLayout(buttons);
    row->addColumn(list, 2);
    row->addColumn(m_detail, 1);
    connect(m_table, &FormularyTable::rowChosen, this, &TimesTab::showFigure);
    connect(m_table, &FormularyTable::rowOpened, this, &TimesTab::edit);
    connect(m_edit, &QPushButton::clicked, this, &TimesTab::edit);
    connect(m_withdraw, &QPushButton::clicked, this, &TimesTab::withdraw);
    connect(m_empty->addButton(tr("New time…"), true), &QPushButton::clicked, this,
            &TimesTab::makeNew);
}

void TimesTab::setFormulary(const formulary::Formulary& formulary, const Wording& wording)
{
    m_formulary = formulary;
    m_wording = wording;
    std::vector<FormularyTableModel::Row> rows;
    for (const auto& figure : formulary.notebook().current()) {
        const auto developer = formulary.solution(figure->developer);
        // The curve's own figure, so that rows compare at one temperature.
        const auto at20 =
            formulary::timeAt20(figure->times, developer ? developer->q10 : chemistry::kQ10.value);
        const QString index = figure->exposureIndex
                                  ? numberText(*figure->exposureIndex, 1, wording.locale)
                                  : tr("any");
        rows.push_back(
            {QString::fromStdString(figure->id),
             {{shownName(developer ? developer->name : figure->developer), {}},
              {shownName(figure->dilution), {}},
              {QString::fromStdString(figure->film), {}},
              {index, figure->exposureIndex.value_or(0),
               figure->exposureIndex ? QVariant(*figure->exposureIndex) : QVariant()},
              {at20 ? timeText(*at20, TimeStep::FiveSeconds) : QStringLiteral("—"),
               at20 ? at20->value() : 0.0, at20 ? QVariant(at20->value()) : QVariant(QString())},
              {gradeName(formulary::gradeOf(figure->source)), {}}}});
    }
    const bool any = !rows.empty();
    m_table->setVisible(any);
    m_empty->setVisible(!any);
    m_detail->setVisible(any);
    m_table->setUnits({{4, tr("s", "seconds")}});
    m_table->setRows(std::move(rows));
    showFigure(m_table->chosen());
}

std::shared_ptr<const formulary::DevelopmentFigure> TimesTab::chosen() const
{
    return m_formulary.notebook().figure(m_table->chosen().toStdString());
}

void TimesTab::showFigure(const QString&)
{
    const auto figure = chosen();
    for (QPushButton* button : {m_edit, m_withdraw})
        setWhyNot(button, figure ? QString() : tr("Choose a time first."));
    if (!figure)
        return;
    const auto developer = m_formulary.solution(figure->developer);
    const double q10 = developer ? developer->q10 : chemistry::kQ10.value;
    const ChartSpec spec = developmentChart(figure->times, q10, m_wording);
    m_detail->setTitle(
        tr("%1 · time against temperature").arg(QString::fromStdString(figure->film)));
    m_chart->setChart(spec);
    const MaybeGrade grade = formulary::gradeOf(figure->source);
    const QString source = sourceOnly(figure->source);
    if (source.isEmpty())
        m_source->setText(grade ? gradeName(grade) : tr("no source given"));
    else
        m_source->setText(grade ? tr("%1 (%2)", "source, grade").arg(source, gradeName(grade))
                                : source);
    m_notes->setText(figure->notes.empty() ? spec.summary : QString::fromStdString(figure->notes));
}

void TimesTab::makeNew() { openEditor({}); }

void TimesTab::edit()
{
    if (const auto figure = chosen())
        openEditor(*figure);
}

void TimesTab::openEditor(const formulary::DevelopmentFigure& start)
{
    auto* editor = new TimeEditor(start, m_formulary, *m_door, m_wording, this);
    editor->setAttribute(Qt::WA_DeleteOnClose);
    connect(editor, &QDialog::accepted, this, [this, editor] { m_table->choose(editor->saved()); });
    editor->open();
}

void TimesTab::withdraw()
{
    const auto figure = chosen();
    if (!figure)
        return;
    Question question;
    question.title = tr("Delete a development time");
    question.text = tr("Delete the time for %1?").arg(QString::fromStdString(figure->film));
    question.detail = tr("Runs that were timed by it stay as they are.");
    question.yes = tr("Delete");
    question.danger = true;
    if (!prompts().confirm(this, question))
        return;
    formulary::DevelopmentFigure gone = *figure;
    gone.id = m_door->newId();
    gone.replaces = figure->id;
    gone.withdrawn = true;
    gone.times.clear();
    if (const auto done = m_door->add(gone); !done)
        prompts().fail(this, question.title, formularyProblem(done.error(), m_wording));
}

} // namespace ullage::app
