#include "app/formulary/solution_form.h"

#include "app/formulary/days_edit.h"
#include "app/formulary/problem_words.h"
#include "app/formulary/solution_kind.h"
#include "app/formulary/source_edit.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/problem_line.h"
#include "app/widgets/theme.h"
#include "app/words/figure_words.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/formulary/field_of.h"
#include "core/formulary/solution_fields.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

using formulary::Figure;

namespace
{

constexpr int kFieldWidth = 160;
const std::string kComposition = "composition";

QuantityKind kindOf(Figure figure)
{
    switch (figure) {
    case Figure::FreshClearing:
        return QuantityKind::Time;
    case Figure::KeepsTray:
        return QuantityKind::Hours;
    case Figure::Replenish:
        return QuantityKind::Volume;
    default:
        return QuantityKind::Number;
    }
}

// What a bare number means; fields with a unit of their own say it themselves.
QString hint(Figure figure)
{
    switch (figure) {
    case Figure::Capacity:
        return SolutionForm::tr("films per litre");
    case Figure::Q10:
        return SolutionForm::tr("times longer, 10 °C colder");
    case Figure::OxygenFactor:
        return SolutionForm::tr("of fresh water, 1 is all");
    case Figure::Silver:
        return SolutionForm::tr("g");
    case Figure::Bromide:
        return SolutionForm::tr("mg as KBr");
    case Figure::SilverLimit:
        return SolutionForm::tr("g per litre");
    case Figure::TabularFactor:
        return SolutionForm::tr("times the clearing time");
    default:
        return {};
    }
}

bool isDays(Figure figure) { return figure == Figure::KeepsFull || figure == Figure::KeepsHalf; }

} // namespace

std::optional<std::vector<chemistry::WearStep>> readSteps(const QString& text,
                                                          const Wording& wording)
{
    std::vector<chemistry::WearStep> steps;
    for (const QString& part : text.split(u';', Qt::SkipEmptyParts)) {
        const QStringList pair = part.split(u':');
        if (pair.size() != 2)
            return std::nullopt;
        const auto from = readQuantity(QuantityKind::Number, pair[0].trimmed(), wording);
        const auto factor = readQuantity(QuantityKind::Number, pair[1].trimmed(), wording);
        if (!from.value || !factor.value)
            return std::nullopt;
        steps.push_back({chemistry::FilmsPerLitre(*from.value), *factor.value});
    }
    return steps;
}

QString stepsText(const std::vector<chemistry::WearStep>& steps, const Wording& wording)
{
    QStringList parts;
    for (const chemistry::WearStep& step : steps)
        parts << QStringLiteral("%1: %2").arg(numberText(step.from.value(), 2, wording.locale),
                                              numberText(step.factor, 3, wording.locale));
    return parts.join(QStringLiteral("; "));
}

SolutionForm::SolutionForm(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_name(new QLineEdit(this)), m_role(new QComboBox(this)),
      m_kind(new SolutionKind(wording, this)), m_composition(new QLineEdit(this))
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(Space::kGap);
    grid->setVerticalSpacing(3);
    grid->setColumnStretch(2, 1); // a source is a line, a figure a number
    int row = 0;
    const auto labelled = [&](const QString& name, QWidget* field) {
        auto* label = new PlainLabel(name, this);
        label->setBuddy(field);
        field->setAccessibleName(name);
        grid->addWidget(label, row, 0);
        return label;
    };
    labelled(tr("Name"), m_name);
    grid->addWidget(m_name, row++, 1, 1, 2);
    addProblem(grid, row++, "name");
    for (const std::string_view code : formulary::kRoleCodes)
        m_role->addItem(roleName(*formulary::roleFromCode(code)));
    labelled(tr("What it does"), m_role);
    grid->addWidget(m_role, row++, 1, 1, 2);
    labelled(tr("Made of"), m_composition);
    connect(m_composition, &QLineEdit::textChanged, m_composition, [this](const QString& text) {
        setPlainToolTip(m_composition, text); // it is often longer than the field
    });
    m_composition->setPlaceholderText(tr("grams per litre, and where that is from"));
    grid->addWidget(m_composition, row++, 1, 1, 2);
    auto* heading = new PlainLabel(tr("Where it is from"), this);
    heading->setFont(Theme::font(TextRole::CardTitle));
    setTone(heading, Tone::Quiet);
    grid->addWidget(heading, row++, 2);
    for (const Figure figure : {Figure::Capacity, Figure::KeepsFull, Figure::KeepsHalf,
                                Figure::KeepsTray, Figure::Q10, Figure::OxygenFactor}) {
        addFigure(grid, row, figure);
        if (figure == Figure::Capacity)
            addWear(grid, row);
    }
    for (const Figure figure : {Figure::Bromide, Figure::Silver, Figure::SilverLimit,
                                Figure::FreshClearing, Figure::TabularFactor, Figure::Replenish})
        addFigure(grid, row, figure);
    grid->addWidget(m_kind, row++, 0, 1, 3);
    grid->setRowStretch(row, 1);
    connect(m_kind, &SolutionKind::changed, this, &SolutionForm::changed);
    connect(m_role, &QComboBox::currentIndexChanged, this,
            [this](int role) { m_kind->setRole(static_cast<formulary::Role>(role)); });
    connect(m_name, &QLineEdit::textEdited, this, &SolutionForm::changed);
    connect(m_role, &QComboBox::currentIndexChanged, this, &SolutionForm::changed);
    connect(m_composition, &QLineEdit::textEdited, this, &SolutionForm::changed);
}

SourceEdit* SolutionForm::addSource(QGridLayout* grid, int row, const std::string& key,
                                    const QString& name)
{
    auto* edit = new SourceEdit(name, this);
    m_sources[key] = edit;
    grid->addWidget(edit, row, 2);
    connect(edit, &SourceEdit::changed, this, &SolutionForm::changed);
    return edit;
}

QLabel* SolutionForm::addProblem(QGridLayout* grid, int row, const std::string& field)
{
    QLabel* problem = newProblemLine(this);
    m_problems[field] = problem;
    grid->addWidget(problem, row, 1, 1, 2);
    return problem;
}

void SolutionForm::addFigure(QGridLayout* grid, int& row, Figure figure)
{
    const formulary::FigureBounds& bounds = formulary::bounds(figure);
    const QString name = figureName(figure);
    Row made{figure};
    QWidget* field = nullptr;
    if (isDays(figure)) {
        made.days = new DaysEdit(name, m_wording, this);
        made.days->setRange(bounds.low, bounds.high);
        connect(made.days, &DaysEdit::valueChanged, this, &SolutionForm::changed);
        field = made.days;
    } else {
        made.quantity = new QuantityEdit(kindOf(figure), name, m_wording, this);
        made.quantity->setRange(bounds.low, bounds.high);
        made.quantity->setRequired(!bounds.optional);
        if (figure == Figure::FreshClearing)
            made.quantity->setMinutesUpTo(kMostClearingSeconds);
        if (const QString words = hint(figure); !words.isEmpty())
            made.quantity->setPlaceholderText(words);
        connect(made.quantity, &QuantityEdit::valueChanged, this, &SolutionForm::changed);
        field = made.quantity;
    }
    field->setMinimumWidth(kFieldWidth);
    const QString words = hint(figure);
    auto* label = new PlainLabel(
        words.isEmpty() ? name : tr("%1\n%2", "figure, its unit").arg(name, words), this);
    label->setBuddy(field);
    grid->addWidget(label, row, 0);
    grid->addWidget(field, row, 1);
    SourceEdit* source = addSource(grid, row++, std::string(bounds.source), name);
    if (!bounds.shared.empty())
        source->setPlaceholderText(tr("as for the full bottle"));
    addProblem(grid, row++, std::string(bounds.field));
    m_rows.push_back(made);
}

void SolutionForm::addWear(QGridLayout* grid, int& row)
{
    m_rule = new QComboBox(this);
    m_rule->addItem(tr("the same for every film"));
    m_rule->addItem(tr("+ % a film, on the first time"));
    m_rule->addItem(tr("+ % a film, on the time before"));
    m_rule->addItem(tr("in steps"));
    m_rule->setAccessibleName(wearName());
    m_rule->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_rule->setMinimumContentsLength(14);
    m_percent = new QuantityEdit(formulary::fieldOf(&chemistry::Wear::percent),
                                 tr("Percent per film"), m_wording, this);
    m_percent->setPlaceholderText(tr("percent"));
    m_steps = new QLineEdit(this);
    m_steps->setAccessibleName(tr("Steps"));
    m_steps->setPlaceholderText(tr("from films per litre: factor; …"));
    auto* field = new QWidget(this);
    auto* column = new QVBoxLayout(field);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    for (QWidget* part : std::initializer_list<QWidget*>{m_rule, m_percent, m_steps})
        column->addWidget(part);
    auto* label = new PlainLabel(wearName(), this);
    label->setBuddy(m_rule);
    grid->addWidget(label, row, 0);
    grid->addWidget(field, row, 1);
    grid->setAlignment(addSource(grid, row++, "wear", wearName()), Qt::AlignTop);
    addProblem(grid, row++, "wear");
    connect(m_rule, &QComboBox::currentIndexChanged, this, [this] {
        showWearFields();
        emit changed();
    });
    connect(m_percent, &QuantityEdit::valueChanged, this, &SolutionForm::changed);
    connect(m_steps, &QLineEdit::textEdited, this, &SolutionForm::changed);
}

void SolutionForm::showWearFields()
{
    const auto rule = static_cast<chemistry::WearRule>(m_rule->currentIndex());
    m_percent->setVisible(rule == chemistry::WearRule::PerFilm ||
                          rule == chemistry::WearRule::Compound);
    m_steps->setVisible(rule == chemistry::WearRule::Steps);
}

void SolutionForm::setSolution(const formulary::Solution& solution)
{
    const QSignalBlocker quiet(this);
    m_start = solution;
    m_name->setText(shownName(solution.name));
    m_role->setCurrentIndex(static_cast<int>(solution.role));
    for (const Row& row : m_rows) {
        const auto value = formulary::value(solution, row.figure);
        if (row.days)
            row.days->setValue(value);
        else
            row.quantity->setValue(value);
    }
    m_rule->setCurrentIndex(static_cast<int>(solution.wear.rule));
    m_percent->setValue(solution.wear.percent);
    m_steps->setText(stepsText(solution.wear.steps, m_wording));
    showWearFields();
    m_kind->setSolution(solution);
    m_composition->setText(
        shownSource(QString::fromStdString(formulary::sourceLine(solution, kComposition))));
    m_composition->setCursorPosition(0);
    for (const auto& [key, edit] : m_sources)
        edit->setLine(formulary::sourceLine(solution, key));
}

chemistry::Wear SolutionForm::wear() const
{
    chemistry::Wear wear;
    wear.rule = static_cast<chemistry::WearRule>(m_rule->currentIndex());
    if (m_percent->isVisibleTo(this))
        wear.percent = m_percent->value().value_or(-1);
    if (wear.rule == chemistry::WearRule::Steps) {
        // Unchanged words keep the exact figures they stand for.
        wear.steps = m_steps->text() == stepsText(m_start.wear.steps, m_wording)
                         ? m_start.wear.steps
                         : readSteps(m_steps->text(), m_wording)
                               .value_or(std::vector<chemistry::WearStep>{});
    }
    return wear;
}

formulary::Solution SolutionForm::solution() const
{
    formulary::Solution made = m_start;
    made.name = keptName(m_start.name, m_name->text());
    made.role = static_cast<formulary::Role>(m_role->currentIndex());
    for (const Row& row : m_rows)
        formulary::setValue(made, row.figure, row.days ? row.days->value() : row.quantity->value());
    made.wear = wear();
    m_kind->put(made);
    const auto put = [&](const std::string& key, const std::string& line) {
        if (line.empty())
            made.sources.erase(key);
        else
            made.sources[key] = line;
    };
    put(kComposition,
        keptComposition(formulary::sourceLine(m_start, kComposition), m_composition->text()));
    for (const auto& [key, edit] : m_sources)
        put(key, edit->line());
    return made;
}

QString SolutionForm::fieldProblem(std::string& field) const
{
    for (const Row& row : m_rows) {
        const QString problem = row.days ? row.days->problem() : row.quantity->problem();
        if (!problem.isEmpty()) {
            field = formulary::bounds(row.figure).field;
            return problem;
        }
    }
    field = "wear";
    if (m_percent->isVisibleTo(this) && !m_percent->isValid())
        return m_percent->problem();
    if (m_steps->isVisibleTo(this) && !readSteps(m_steps->text(), m_wording))
        return tr("Steps: write them like %1.")
            .arg(stepsText({{chemistry::FilmsPerLitre(5), 1.15}}, m_wording));
    return m_kind->problem(field);
}

QString SolutionForm::sourceProblem(std::string& field) const
{
    for (const Row& row : m_rows) {
        const formulary::FigureBounds& bounds = formulary::bounds(row.figure);
        field = bounds.field;
        if (const QString problem = source(std::string(bounds.source))->problem();
            !problem.isEmpty())
            return problem;
    }
    field = "wear";
    const QString problem = source("wear")->problem();
    if (problem.isEmpty())
        field.clear();
    return problem;
}

QString SolutionForm::showProblem()
{
    std::string field;
    QString problem = fieldProblem(field);
    if (problem.isEmpty()) {
        formulary::Solution tried = solution();
        tried.id = "tried";
        if (const auto fine = check(tried); !fine) {
            field = fine.error().field;
            if (field.rfind("wear", 0) == 0)
                field = "wear";
            problem = formularyProblem(fine.error(), m_wording);
        }
    }
    if (problem.isEmpty())
        problem = sourceProblem(field);
    m_kind->showProblem(field, problem);
    for (const auto& [of, label] : m_problems)
        showIn(*label, of == field ? problem : QString());
    return problem;
}

QuantityEdit* SolutionForm::figure(Figure figure) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(),
                                    [=](const Row& row) { return row.figure == figure; });
    return found->quantity ? found->quantity : found->days->edit();
}

DaysEdit* SolutionForm::days(Figure figure) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(),
                                    [=](const Row& row) { return row.figure == figure; });
    return found->days;
}

SourceEdit* SolutionForm::source(const std::string& key) const { return m_sources.at(key); }

} // namespace ullage::app
