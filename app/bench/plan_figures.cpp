#include "app/bench/plan_figures.h"

#include "app/bench/bench_words.h"
#include "app/bench/wash_edit.h"
#include "app/words/explanations.h"
#include "app/words/number_text.h"
#include "core/chemistry/process_constants.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

using chemistry::Grade;
using chemistry::Seconds;
using formulary::Figure;
using formulary::Role;
using ledger::RunStep;
using ledger::StepKind;
using ledger::TimeSource;
using ledger::WashKind;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PlanFigures)
};

const RunStep* find(const ledger::RunSheet& sheet, StepKind kind)
{
    const auto found = std::find_if(sheet.steps.begin(), sheet.steps.end(),
                                    [&](const RunStep& step) { return step.kind == kind; });
    return found == sheet.steps.end() ? nullptr : &*found;
}

// A time that stands in the template and nowhere else.
ExplainedConstant ofTemplate(const QString& name, Seconds time, const ledger::LoadWishes& wishes)
{
    ExplainedConstant line{name, timeText(time), {}, {}, {}};
    if (wishes.sheet.id.empty()) {
        line.source = Words::tr("your template");
    } else {
        line.source = Words::tr("no published source; edit the template to change it");
        line.grade = Grade::CommonPractice;
    }
    return line;
}

Explanation developing(const ledger::LoadWishes& wishes, const ledger::Judged& developer,
                       const ledger::DevelopingFactors& so, Seconds planned,
                       const QString& timeSource, const Wording& wording)
{
    Explanation why =
        explainTime({wishes.pairs, timeSource, *wishes.temperature, so}, developer.batch, wording);
    why.value = timeText(planned); // the clock keeps whole seconds, the shelf five
    return why;
}

Explanation fixing(const ledger::LoadWishes& wishes, const ledger::NextLoad& reckoning,
                   const RunStep& step, const Wording& wording)
{
    const QLocale& locale = wording.locale;
    const ledger::FixingFactors& so = *reckoning.sheet->fixing;
    const ledger::Judged* fixer = reckoning.taken(Role::Fixer);
    Explanation why;
    why.title = Words::tr("Fixing time");
    why.value = timeText(step.planned);
    if (so.baths > 1)
        why.notes << Words::tr("For each of two baths: the film clears in the first and stays as "
                               "long again in the second.");
    if (so.clearing) {
        why.equation = Words::tr("Fixing time = fixing ÷ clearing × clearing time at 20 °C × what "
                                 "the cold adds.");
        why.inputs.push_back({so.from == ledger::ClearingFrom::Tests
                                  ? Words::tr("Clearing time, by this bottle's tests")
                                  : Words::tr("Clearing time, of the fresh solution"),
                              clearingText(*so.clearing, wording.locale)});
    } else {
        why.equation = Words::tr("No clearing time is known of this fixer, so the template's time "
                                 "stands × what the cold adds. A clearing test makes it the "
                                 "bottle's own.");
        why.constants.push_back(ofTemplate(so.baths > 1
                                               ? Words::tr("The template's times, of both baths")
                                               : Words::tr("The template's time"),
                                           so.time * (1 / so.cold), wishes));
    }
    why.inputs.push_back(
        {Words::tr("The cold, %1").arg(temperatureText(*wishes.temperature, wording)),
         factorText(so.cold, locale)});
    if (so.clearing && fixer) {
        if (!wishes.tabularGrain)
            why.constants.push_back(
                explained(Words::tr("Fixing ÷ clearing"), chemistry::kFixFactor, locale));
        else if (fixer->batch.solution->tabularFactor)
            why.constants.push_back(
                explained(*fixer->batch.solution, Figure::TabularFactor, wording));
        else
            why.constants.push_back(
                explained(Words::tr("For tabular grains"), chemistry::kTabularFixFactor, locale));
        if (so.from == ledger::ClearingFrom::SolutionFigure)
            why.constants.push_back(
                explained(*fixer->batch.solution, Figure::FreshClearing, wording));
    }
    why.constants.push_back(
        explained(Words::tr("Colder bath: twice the time"), chemistry::kFixDoubling, locale));
    gradeByConstants(why);
    return why;
}

std::vector<ExplainedConstant> published(WashKind kind, const QLocale& locale)
{
    switch (kind) {
    case WashKind::Running:
        return {explained(Words::tr("Running water"), chemistry::kWashRunning, locale)};
    case WashKind::Changes:
        return {explained(Words::tr("Whole"), chemistry::kWashChanges, locale),
                explained(Words::tr("A full change every"), chemistry::kWashChangeEvery, locale)};
    case WashKind::Aid:
        return {explained(Words::tr("Rinse"), chemistry::kWashRinse, locale),
                explained(Words::tr("Wash aid"), chemistry::kWashAid, locale),
                explained(Words::tr("Wash after it"), chemistry::kWashAfterAid, locale)};
    case WashKind::AsTemplate:
    case WashKind::FillAndDump:
        break;
    }
    return {};
}

Explanation washing(const ledger::LoadWishes& wishes, const ledger::RunSheet& sheet,
                    const ledger::WashPlan& plan, const Wording& wording)
{
    const QLocale& locale = wording.locale;
    Explanation why;
    why.title = Words::tr("Washing");
    why.equation = Words::tr("Each step's time, × what the cold adds to washes in water under "
                             "18 °C: from 10 to 15 °C the whole factor, between 15 and 18 °C "
                             "less and less.");
    why.constants = published(plan.kind, locale);
    Seconds whole;
    bool cold = false;
    for (const RunStep& step : sheet.steps) {
        if (!ledger::washes(step.kind))
            continue;
        whole += step.planned;
        why.inputs.push_back({stepTitle(step, {}), timeText(step.planned)});
        cold = cold || step.source == TimeSource::ColdWash;
    }
    for (const ledger::TemplateStep& line : wishes.sheet.steps) {
        if (plan.kind == WashKind::AsTemplate && ledger::washes(line.kind))
            why.constants.push_back(ofTemplate(stepKindName(line.kind), line.time, wishes));
    }
    why.value = timeText(whole);
    const auto water = wishes.washWater.value_or(*wishes.temperature);
    why.inputs.push_back({wishes.washWater ? Words::tr("Tap water")
                                           : Words::tr("Tap water, taken as warm as the reading"),
                          temperatureText(water, wording)});
    if (cold)
        why.constants.push_back(explained(Words::tr("Cold water"), chemistry::kColdWash, locale));
    if (const auto share = ledger::shareLeft(plan)) {
        why.inputs.push_back(
            {Words::tr("Water of one filling"), volumeText(plan.filling, wording)});
        why.inputs.push_back(
            {Words::tr("Held back by film and tank"), volumeText(plan.carried, wording)});
        why.inputs.push_back({Words::tr("Fixer left"), shareLeftText(*share, locale)});
        why.notes << Words::tr("Fixer left = (held back ÷ (held back + filling)) to the power of "
                               "the fillings, if every filling mixes fully. What must come out of "
                               "the film first is not counted.");
    }
    gradeByConstants(why);
    return why;
}

// Pre-wet, pouring back, stop and wetting agent: times without chemistry.
Explanation others(const ledger::LoadWishes& wishes, const ledger::RunSheet& sheet)
{
    Explanation why;
    why.title = Words::tr("Other steps");
    why.equation = Words::tr("Their times and all agitation stand in the template.");
    Seconds whole;
    for (const RunStep& step : sheet.steps) {
        const auto role = ledger::roleOf(step.kind);
        if (ledger::washes(step.kind) || role == Role::Developer || role == Role::Fixer)
            continue;
        whole += step.planned;
        why.constants.push_back(ofTemplate(stepKindName(step.kind), step.planned, wishes));
    }
    why.value = timeText(whole);
    gradeByConstants(why);
    return why;
}

} // namespace

std::vector<Explanation> sheetFigures(const ledger::LoadWishes& wishes,
                                      const ledger::NextLoad& reckoning,
                                      const ledger::WashPlan& wash, const QString& timeSource,
                                      const Wording& wording)
{
    std::vector<Explanation> all;
    if (!reckoning.sheet || !wishes.temperature)
        return all;
    const ledger::RunSheet& sheet = *reckoning.sheet;
    const ledger::Judged* developer = reckoning.taken(Role::Developer);
    if (const RunStep* step = find(sheet, StepKind::Develop); step && developer)
        all.push_back(
            developing(wishes, *developer, *sheet.developing, step->planned, timeSource, wording));
    if (const RunStep* step = find(sheet, StepKind::Fix))
        all.push_back(fixing(wishes, reckoning, *step, wording));
    if (std::any_of(sheet.steps.begin(), sheet.steps.end(),
                    [](const RunStep& step) { return ledger::washes(step.kind); }))
        all.push_back(washing(wishes, sheet, wash, wording));
    all.push_back(others(wishes, sheet));
    for (const Role role : {Role::Developer, Role::Fixer}) {
        const ledger::Judged* bottle = reckoning.taken(role);
        if (!bottle || !bottle->assessment.filmsLeft)
            continue;
        Explanation why =
            explain(BottleFigure::FilmsLeft, bottle->batch, bottle->assessment, wording);
        why.title = Words::tr("%1 in %2", "films left, bottle")
                        .arg(why.title, QString::fromStdString(bottle->batch.name));
        all.push_back(why);
    }
    return all;
}

} // namespace ullage::app
