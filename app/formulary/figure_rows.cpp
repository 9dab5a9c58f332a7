#include "app/formulary/figure_rows.h"

#include "app/formulary/kind_rows.h"
#include "app/words/shown_names.h"
#include "app/words/source_words.h"
#include "core/formulary/implied.h"

#include <QCoreApplication>

namespace ullage::app
{

using formulary::Figure;
using formulary::Role;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FormularyPage)
};

// Whether one looks for the figure in a solution of this role even where it is not set.
bool belongs(Figure figure, Role role)
{
    switch (figure) {
    case Figure::Capacity:
    case Figure::KeepsFull:
    case Figure::KeepsHalf:
    case Figure::OxygenFactor:
        return true;
    case Figure::KeepsTray:
    case Figure::Q10:
    case Figure::Bromide:
        return role == Role::Developer;
    case Figure::Silver:
    case Figure::FreshClearing:
    case Figure::SilverLimit:
    case Figure::TabularFactor:
        return role == Role::Fixer;
    case Figure::Replenish:
        return role == Role::Developer || role == Role::Fixer;
    }
    return false;
}

// Whether it says anything: figures that always have a value say nothing at their neutral one.
bool says(const formulary::Solution& solution, Figure figure)
{
    const auto value = formulary::value(solution, figure);
    switch (figure) {
    case Figure::Silver:
    case Figure::Bromide:
        return *value > 0;
    case Figure::Q10:
        return false;
    default:
        return value.has_value();
    }
}

QString notKnown(Figure figure)
{
    switch (figure) {
    case Figure::SilverLimit:
        return Words::tr("none chosen");
    case Figure::Replenish:
        return Words::tr("not topped up by film");
    default:
        return Words::tr("not known");
    }
}

FigureRow entered(const formulary::Solution& solution, Figure figure, const Wording& wording)
{
    FigureRow row;
    row.label = figureName(figure);
    row.value = figureText(solution, figure, wording);
    row.why = explain(figure, solution, wording);
    row.known = !row.value.isEmpty();
    if (!row.known) {
        row.value = notKnown(figure);
        return row;
    }
    const std::string line = formulary::sourceLine(solution, figure);
    row.source = line.empty() ? Words::tr("no source given") : sourceText(line);
    row.grade = formulary::gradeOf(line);
    return row;
}

FigureRow worn(const formulary::Solution& solution, const Wording& wording)
{
    FigureRow row;
    row.label = wearName();
    row.value = wearText(solution.wear, wording);
    row.why = explainWear(solution, wording);
    row.known = solution.wear.rule != chemistry::WearRule::None;
    const std::string line = formulary::sourceLine(solution, "wear");
    row.source = sourceText(line);
    if (line.empty() && row.known)
        row.source = Words::tr("no source given");
    row.grade = formulary::gradeOf(line);
    return row;
}

FigureRow implied(ImpliedFigure figure, const formulary::Solution& solution, const Wording& wording)
{
    FigureRow row;
    row.label = impliedName(figure);
    row.value = impliedText(figure, solution, wording);
    row.source = impliedSource(figure, solution, wording);
    row.grade = chemistry::Grade::Computed;
    row.why = explain(figure, solution, wording);
    return row;
}

} // namespace

QString FigureRow::spoken() const
{
    QString text = Words::tr("%1: %2", "name, value").arg(label, value);
    if (!known)
        return text;
    text += QStringLiteral(". ") + gradeName(grade);
    return source.isEmpty() ? text : text + QStringLiteral(": ") + source;
}

std::vector<FigureRow> figureRows(const formulary::Solution& solution, const Wording& wording)
{
    std::vector<FigureRow> rows;
    const auto add = [&](Figure figure) {
        if (belongs(figure, solution.role) || says(solution, figure))
            rows.push_back(entered(solution, figure, wording));
    };
    const auto addUse = [&](UseFigure figure) {
        if (auto row = useRow(figure, solution, wording))
            rows.push_back(std::move(*row));
    };
    add(Figure::Capacity);
    addUse(UseFigure::OnceForAFilm);
    addUse(UseFigure::KindOfFixer);
    if (solution.role == Role::Developer || solution.wear.rule != chemistry::WearRule::None)
        rows.push_back(worn(solution, wording));
    for (const Figure figure : {Figure::FreshClearing, Figure::TabularFactor})
        add(figure);
    addUse(UseFigure::ShortestFix);
    for (const Figure figure :
         {Figure::KeepsFull, Figure::KeepsHalf, Figure::KeepsTray, Figure::Q10})
        add(figure);
    if (formulary::keepingLimits(solution)) {
        rows.push_back(implied(ImpliedFigure::OxygenLimit, solution, wording));
        rows.push_back(implied(ImpliedFigure::AgeAlone, solution, wording));
    }
    add(Figure::OxygenFactor);
    rows.push_back(implied(ImpliedFigure::Saturation, solution, wording));
    for (const Figure figure :
         {Figure::Bromide, Figure::Silver, Figure::SilverLimit, Figure::Replenish})
        add(figure);
    addUse(UseFigure::MostTurnovers);
    if (solution.keeping.tray && formulary::trayTime(solution))
        rows.push_back(implied(ImpliedFigure::TrayByModel, solution, wording));
    return rows;
}

QString compositionText(const formulary::Solution& solution)
{
    const std::string line = formulary::sourceLine(solution, "composition");
    return line.empty() ? Words::tr("composition not given")
                        : shownSource(QString::fromStdString(line));
}

} // namespace ullage::app
