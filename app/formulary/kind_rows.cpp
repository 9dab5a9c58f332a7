#include "app/formulary/kind_rows.h"

#include "app/words/number_text.h"
#include "app/words/source_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FormularyPage)
};

struct Used {
    const char* field = "";
    QString label;
    QString value; ///< empty where nothing is said of it
    QString use;   ///< what is worked out with it
};

Used usedOf(UseFigure figure, const formulary::Solution& solution, const Wording& wording)
{
    switch (figure) {
    case UseFigure::OnceForAFilm:
        return {"one_shot_ml_per_film", Words::tr("For a film, used once"),
                solution.oneShotPerFilm ? volumeText(*solution.oneShotPerFilm, wording) : QString(),
                Words::tr("Used once and poured away: films left = volume in the bottle ÷ this.")};
    case UseFigure::KindOfFixer: {
        QString kind;
        if (solution.fixerKind)
            kind = *solution.fixerKind == formulary::FixerKind::Alkaline ? Words::tr("alkaline")
                                                                         : Words::tr("acid");
        return {"fixer_kind", Words::tr("Kind of fixer"), kind,
                Words::tr("Where no capacity is given, an acid fixer is counted with 20 films per "
                          "litre, an alkaline one with 25.")};
    }
    case UseFigure::ShortestFix:
        return {"fix_min_s", Words::tr("Shortest fixing time"),
                solution.fixMin ? timeText(*solution.fixMin) : QString(),
                Words::tr("A fixing time that clearing tests make shorter is raised to this.")};
    case UseFigure::MostTurnovers:
        break;
    }
    return {"turnover_limit", Words::tr("Replenisher at most"),
            solution.turnoverLimit
                ? Words::tr("%1 times its volume")
                      .arg(numberText(*solution.turnoverLimit, 1, wording.locale))
                : QString(),
            Words::tr("When more replenisher has gone in than this many times the volume first "
                      "mixed, the bottle is to be discarded.")};
}

} // namespace

std::optional<FigureRow> useRow(UseFigure figure, const formulary::Solution& solution,
                                const Wording& wording)
{
    const Used used = usedOf(figure, solution, wording);
    if (used.value.isEmpty())
        return std::nullopt;
    const std::string line = formulary::sourceLine(solution, used.field);
    FigureRow row;
    row.label = used.label;
    row.value = used.value;
    row.source = line.empty() ? Words::tr("no source given") : sourceText(line);
    row.grade = formulary::gradeOf(line);
    row.why.title = used.label;
    row.why.value = used.value;
    row.why.equation = used.use;
    row.why.grade = row.grade;
    if (!line.empty())
        row.why.notes << Words::tr("Source: %1").arg(row.source);
    return row;
}

} // namespace ullage::app
