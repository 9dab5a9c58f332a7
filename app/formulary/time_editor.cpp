#include "app/formulary/time_editor.h"

#include "app/charts/chart_view.h"
#include "app/formulary/editor_parts.h"
#include "app/formulary/formulary_charts.h"
#include "app/formulary/problem_words.h"
#include "app/formulary/source_edit.h"
#include "app/widgets/card.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/field_words.h"
#include "app/words/shown_names.h"
#include "core/chemistry/constants.h"
#include "core/formulary/field_of.h"
#include "core/formulary/notebook_fields.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr std::size_t kMostPairs = formulary::fieldOf(&formulary::DevelopmentFigure::times).most;

} // namespace

TimeEditor::TimeEditor(const formulary::DevelopmentFigure& start,
                       const formulary::Formulary& formulary, Door& door, const Wording& wording,
                       QWidget* parent)
    : FormDialog(wording,
                 start.id.empty() ? tr("New development time") : tr("Edit a development time"),
                 parent),
      m_replaces(start.id), m_door(&door), m_film(new QLineEdit(this)),
      m_developer(new QComboBox(this)), m_dilution(new QLineEdit(this)),
      m_index(new QuantityEdit(formulary::fieldOf(&formulary::DevelopmentFigure::exposureIndex),
                               fieldName("ei"), wording, this)),
      m_grid(new QGridLayout), m_more(new QPushButton(tr("Another temperature"), this)),
      m_source(new SourceEdit(tr("Development time"), this, Qt::Vertical)),
      m_notes(new QPlainTextEdit(this)), m_chart(makeChartView(this))
{
    m_film->setText(QString::fromStdString(start.film));
    fillDevelopers(formulary, start.developer);
    m_dilution->setText(shownName(start.dilution));
    m_dilution->setPlaceholderText(tr("stock, 1+1…"));
    m_index->setValue(start.exposureIndex);
    m_index->setPlaceholderText(tr("any"));
    m_source->setLine(start.source);
    m_source->setPlaceholderText(tr("the film's leaflet, a date"));
    m_notes->setPlainText(QString::fromStdString(start.notes));
    m_notes->setTabChangesFocus(true);
    m_notes->setFixedHeight(70);
    setButtonLook(m_more, ButtonLook::Quiet);

    auto* form = new QFormLayout;
    form->setVerticalSpacing(Space::kSmall);
    addField(*form, fieldName("film"), m_film);
    addField(*form, fieldName("developer"), m_developer);
    addField(*form, tr("Dilution"), m_dilution);
    addField(*form, fieldName("ei"), m_index);
    m_grid->setHorizontalSpacing(Space::kSmall);
    m_grid->setVerticalSpacing(6);
    auto* times = new QVBoxLayout;
    times->addLayout(m_grid);
    times->addWidget(m_more, 0, Qt::AlignLeft);
    form->addRow(fieldName("times"), times);
    addField(*form, tr("Where it is from"), m_source);
    addField(*form, tr("Notes"), m_notes);
    setPairs(start.times);

    auto* curve = new Card(tr("Time against temperature"), this);
    curve->body()->addWidget(m_chart);
    curve->setMinimumWidth(360);
    addCards(*body(), form, curve);
    connect(m_more, &QPushButton::clicked, this, [this] {
        addPair();
        m_pairs.back().temperature->setFocus();
    });
    connect(m_film, &QLineEdit::textEdited, this, &TimeEditor::showState);
    connect(m_source, &SourceEdit::changed, this, &TimeEditor::showState);
    connect(m_index, &QuantityEdit::valueChanged, this, &TimeEditor::showState);
    connect(m_developer, &QComboBox::currentIndexChanged, this, &TimeEditor::showState);
    resize(940, 720);
    showState();
    m_film->setFocus();
}

void TimeEditor::fillDevelopers(const formulary::Formulary& formulary, const std::string& chosen)
{
    const auto family = formulary.family(chosen);
    for (const auto& solution : formulary.currentSolutions()) {
        if (solution->role != formulary::Role::Developer)
            continue;
        m_developer->addItem(shownName(solution->name), QString::fromStdString(solution->id));
        m_q10.push_back(solution->q10);
        // What was entered for a solution since replaced is shown for its newest form.
        if (std::find(family.begin(), family.end(), solution->id) != family.end())
            m_developer->setCurrentIndex(m_developer->count() - 1);
    }
    // A solution that is no developer any more keeps its times; editing one must not move it.
    const auto kept = formulary.solution(chosen);
    if (kept && (m_developer->count() == 0 ||
                 std::find(family.begin(), family.end(),
                           m_developer->currentData().toString().toStdString()) == family.end())) {
        m_developer->insertItem(0, shownName(kept->name), QString::fromStdString(chosen));
        m_q10.insert(m_q10.begin(), kept->q10);
        m_developer->setCurrentIndex(0);
    }
}

void TimeEditor::addPair()
{
    const int row = static_cast<int>(m_pairs.size());
    const QString number = wording().locale.toString(row + 1);
    const Pair pair{new QuantityField<chemistry::Celsius>(
                        formulary::fieldOf(&chemistry::TimeAtTemperature::temperature),
                        tr("Temperature %1").arg(number), wording(), this),
                    new QuantityField<chemistry::Seconds>(
                        formulary::fieldOf(&chemistry::TimeAtTemperature::time),
                        tr("Time %1").arg(number), wording(), this)};
    pair.temperature->setRequired(false); // an empty pair is left out
    pair.time->setRequired(false);
    pair.time->setPlaceholderText(tr("m:ss"));
    m_grid->addWidget(pair.temperature, row, 0);
    m_grid->addWidget(pair.time, row, 1);
    connect(pair.temperature, &QuantityEdit::valueChanged, this, &TimeEditor::showState);
    connect(pair.time, &QuantityEdit::valueChanged, this, &TimeEditor::showState);
    m_pairs.push_back(pair);
    m_more->setEnabled(m_pairs.size() < kMostPairs);
}

void TimeEditor::setPairs(const std::vector<chemistry::TimeAtTemperature>& times)
{
    for (const auto& time : times) {
        addPair();
        m_pairs.back().temperature->setQuantity(time.temperature);
        m_pairs.back().time->setQuantity(time.time);
    }
    while (m_pairs.size() < 3)
        addPair();
    if (times.empty())
        m_pairs.front().temperature->setQuantity(chemistry::Celsius(20));
}

QuantityEdit* TimeEditor::temperature(int pair) const
{
    return m_pairs[static_cast<std::size_t>(pair)].temperature;
}

QuantityEdit* TimeEditor::time(int pair) const
{
    return m_pairs[static_cast<std::size_t>(pair)].time;
}

formulary::DevelopmentFigure TimeEditor::figure() const
{
    formulary::DevelopmentFigure made;
    made.film = m_film->text().trimmed().toStdString();
    made.developer = m_developer->currentData().toString().toStdString();
    const std::string stock = "stock"; // as the journal has it, whatever it is called here
    made.dilution = keptName(stock, m_dilution->text());
    made.exposureIndex = m_index->value();
    for (const Pair& pair : m_pairs) {
        const auto temperature = pair.temperature->quantity();
        const auto time = pair.time->quantity();
        if (temperature && time)
            made.times.push_back({*temperature, *time});
    }
    made.source = m_source->line();
    made.notes = m_notes->toPlainText().trimmed().toStdString();
    made.replaces = m_replaces;
    return made;
}

QString TimeEditor::problem() const
{
    if (!m_index->isValid())
        return m_index->problem();
    for (const Pair& pair : m_pairs) {
        if (!pair.temperature->isValid())
            return pair.temperature->problem();
        if (!pair.time->isValid())
            return pair.time->problem();
        if (pair.time->value() && !pair.temperature->value())
            return tr("A time without its temperature.");
        if (pair.temperature->value() && !pair.time->value())
            return tr("A temperature without its time.");
    }
    formulary::DevelopmentFigure tried = figure();
    tried.id = "tried";
    const auto fine = check(tried);
    return fine ? m_source->problem() : formularyProblem(fine.error(), wording());
}

void TimeEditor::showState()
{
    const QString trouble = problem();
    saveButton()->setEnabled(trouble.isEmpty());
    setRefusal(m_film->text().isEmpty() && figure().times.empty() ? QString() : trouble);
    const int developer = m_developer->currentIndex();
    const double q10 =
        developer < 0 ? chemistry::kQ10.value : m_q10[static_cast<std::size_t>(developer)];
    m_chart->setChart(developmentChart(figure().times, q10, wording()));
}

bool TimeEditor::fieldsAreFine()
{
    showState();
    return problem().isEmpty();
}

Result<void> TimeEditor::act()
{
    formulary::DevelopmentFigure made = figure();
    made.id = m_door->newId();
    auto done = m_door->add(made);
    if (done)
        m_saved = QString::fromStdString(made.id);
    return done;
}

void TimeEditor::showError(const Error& error) { setRefusal(formularyProblem(error, wording())); }

} // namespace ullage::app
