#include "app/bench/run_sheet_paper.h"

#include "app/bench/bench_words.h"
#include "app/bench/plan_words.h"
#include "app/bench/sheet_words.h"
#include "app/paper/paper_parts.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct RunSheetPaper {
    Q_DECLARE_TR_FUNCTIONS(RunSheetPaper)
};

constexpr double kLetters = 3.4; // mm: a usual run with its cautions fits on one sheet
const QString kNothing = QStringLiteral("–");

QString bottleOf(const ledger::RunState& run, const ledger::RunStep& step)
{
    const ledger::RunBath* bath = run.bath(step.batch);
    return bath ? QString::fromStdString(bath->name) : QString();
}

PaperTable factsOf(const PlannedRun& planned, const Wording& wording)
{
    const ledger::RunState& run = planned.run;
    PaperTable facts;
    facts.columns = {{RunSheetPaper::tr("What")}, {RunSheetPaper::tr("Figure")}};
    for (const ledger::RunFilm& film : run.films) {
        const QString line = filmLine(film, wording);
        facts.rows.push_back({RunSheetPaper::tr("Film"),
                              film.name.empty() ? line
                                                : QStringLiteral("%1 · %2").arg(
                                                      QString::fromStdString(film.name), line)});
    }
    QStringList tank;
    if (!run.tank.name.empty())
        tank << QString::fromStdString(run.tank.name);
    if (run.tank.volume.value() > 0)
        tank << volumeText(run.tank.volume, wording);
    if (!tank.isEmpty())
        facts.rows.push_back({RunSheetPaper::tr("Tank"), tank.join(QStringLiteral(" · "))});
    facts.rows.push_back(
        {RunSheetPaper::tr("Thermometer"), shortTemperatureText(run.temperature, wording)});
    facts.rows.push_back({RunSheetPaper::tr("Whole run"), timeText(run.sheet.whole())});
    return facts;
}

// A box to tick, and room for the time that it really took.
PaperTable stepsOf(const ledger::RunState& run, const Wording& wording)
{
    PaperTable steps;
    steps.columns = {
        {QString(), false, true},          {RunSheetPaper::tr("Step")},
        {RunSheetPaper::tr("Time"), true}, {RunSheetPaper::tr("Took"), false, false, true},
        {RunSheetPaper::tr("Pour in")},    {RunSheetPaper::tr("Agitation")}};
    for (std::size_t i = 0; i < run.sheet.steps.size(); ++i) {
        const ledger::RunStep& step = run.sheet.steps[i];
        const bool still = step.kind == ledger::StepKind::PourBack;
        steps.rows.push_back({QString(), stepTitle(step, bottleOf(run, step)),
                              timeText(run.times[i].target), QString(),
                              step.pour ? pourText(*step.pour, run.temperature, wording) : kNothing,
                              still ? kNothing : agitationText(step.agitation)});
    }
    return steps;
}

const ledger::BathAfter* afterOf(const ledger::NextLoad& next, const ledger::RunBath& bath)
{
    for (const ledger::BathAfter& after : next.after) {
        if (after.judged < next.judged.size() && next.judged[after.judged].batch.id == bath.batch &&
            after.second == bath.second)
            return &after;
    }
    return nullptr;
}

PaperTable bottlesOf(const PlannedRun& planned, const Wording& wording)
{
    PaperTable bottles;
    bottles.columns = {{RunSheetPaper::tr("Bottle")},
                       {RunSheetPaper::tr("Bath")},
                       {RunSheetPaper::tr("Taken"), true},
                       {RunSheetPaper::tr("Then")},
                       {RunSheetPaper::tr("Left afterwards")}};
    bottles.none = RunSheetPaper::tr("No bottle of the shelf.");
    for (const ledger::RunBath& bath : planned.run.baths) {
        QStringList left;
        if (const ledger::BathAfter* after = afterOf(planned.next, bath)) {
            left << volumeText(after->volume, wording);
            if (after->filmsLeft)
                left << filmsLeftText(*after->filmsLeft, wording);
        }
        bottles.rows.push_back(
            {QString::fromStdString(bath.name), roleName(bath.role), volumeText(bath.used, wording),
             bath.oneShot ? RunSheetPaper::tr("poured away") : RunSheetPaper::tr("back into it"),
             left.isEmpty() ? kNothing : left.join(QStringLiteral(", "))});
    }
    return bottles;
}

QStringList cautionsOf(const ledger::RunState& run)
{
    QStringList lines = runCautions(run);
    for (const ledger::RunStep& step : run.sheet.steps) {
        // The steps say already what goes back where.
        if (step.kind != ledger::StepKind::PourBack)
            lines << stepCaution(step, bottleOf(run, step));
    }
    lines.removeAll(QString());
    lines.removeDuplicates();
    return lines;
}

} // namespace

PaperDocument runSheetPaper(const PlannedRun& planned, const PaperAbout& about)
{
    const Wording& wording = about.wording;
    const ledger::RunState& run = planned.run;
    PaperDocument document;
    document.title = RunSheetPaper::tr("Run sheet");
    document.under = underOf(about);
    document.letters = kLetters;
    for (const ledger::PlanProblem& problem : planned.next.plan.problems)
        document.blocks.emplace_back(PaperWords{problemText(problem, planned.next, wording), true});
    document.blocks.emplace_back(factsOf(planned, wording));
    document.blocks.emplace_back(stepsOf(run, wording));
    if (!planned.later.empty())
        document.blocks.emplace_back(PaperWords{laterText(planned.later, wording)});
    document.blocks.emplace_back(PaperBlank{RunSheetPaper::tr("Done on, by")});
    document.blocks.emplace_back(PaperBlank{RunSheetPaper::tr("To be noted")});
    document.blocks.emplace_back(PaperHeading{RunSheetPaper::tr("Bottles")});
    document.blocks.emplace_back(bottlesOf(planned, wording));
    document.blocks.emplace_back(PaperHeading{RunSheetPaper::tr("Cautions")});
    for (const QString& caution : cautionsOf(run))
        document.blocks.emplace_back(PaperWords{caution});
    const QStringList notes = timeNotes(run.sheet, planned.washRead, wording);
    if (!notes.isEmpty())
        document.blocks.emplace_back(PaperHeading{RunSheetPaper::tr("Where the times come from")});
    for (const QString& note : notes)
        document.blocks.emplace_back(PaperWords{note});
    return document;
}

} // namespace ullage::app
