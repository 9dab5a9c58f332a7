// The templates the program brings, and what a template must keep to.
#include "core/ledger/run_sheet.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace ullage::ledger
{

using chemistry::Seconds;

namespace
{

constexpr Seconds kUserFix{390}; // 6–7 min is common practice for a packaged fixer

Agitation intervals(double first, double each, double every)
{
    return {AgitationKind::Intervals, Seconds(first), Seconds(each), Seconds(every)};
}

TemplateStep line(StepKind kind, double seconds, int changes = 1, Agitation agitation = {})
{
    return {kind, Seconds(seconds), changes, agitation};
}

std::vector<TemplateStep> steps(bool acid, bool fillAndDump, bool twoBaths = false)
{
    const Agitation all{AgitationKind::Continuous};
    std::vector<TemplateStep> made{
        line(StepKind::PreWet, 180, 3), line(StepKind::Develop, 0, 1, intervals(30, 10, 60)),
        line(StepKind::PourBack, 20),
        acid ? line(StepKind::AcidStop, 30, 1, all) : line(StepKind::WaterStop, 60, 2, all)};
    if (acid) {
        made.push_back(line(StepKind::PourBack, 20));
    }
    const double fix = kUserFix.value() / (twoBaths ? 2 : 1);
    for (const StepKind kind : {StepKind::Fix, StepKind::SecondFix}) {
        if (kind == StepKind::Fix || twoBaths) {
            made.push_back(line(kind, fix, 1, intervals(30, 10, 30)));
            made.push_back(line(StepKind::PourBack, 20));
        }
    }
    const std::vector<TemplateStep> rest{
        line(StepKind::Rinse, 60, 2, all), line(StepKind::WashAid, 120, 1, intervals(30, 10, 30)),
        fillAndDump ? line(StepKind::FillAndDump, 600, 10, all) : line(StepKind::Wash, 300),
        line(StepKind::WettingAgent, 60)};
    std::copy(rest.begin(), rest.end(), std::back_inserter(made));
    return made;
}

} // namespace

std::vector<RunTemplate> usualTemplates()
{
    return {{{}, "water-stop", steps(false, false)},
            {{}, "acid-stop", steps(true, false)},
            {{}, "fill-and-dump", steps(false, true)},
            {{}, "two-baths", steps(false, false, true)}};
}

Result<void> check(const RunTemplate& sheet)
{
    if (auto fine = checkRange("steps", static_cast<double>(sheet.steps.size()), 1, 40, "");
        !fine) {
        return fine;
    }
    std::set<StepKind> bottled;
    for (const TemplateStep& step : sheet.steps) {
        const std::string kind(code(step.kind));
        if (roleOf(step.kind) && !bottled.insert(step.kind).second) {
            return refuse({.code = ErrorCode::Conflict, .field = "steps", .text = kind});
        }
        if (step.kind == StepKind::PourBack && bottled.empty()) {
            return refuse({.code = ErrorCode::Conflict, .field = "steps", .text = kind});
        }
        if (step.kind == StepKind::SecondFix && !bottled.contains(StepKind::Fix)) {
            return refuse({.code = ErrorCode::Conflict, .field = "steps", .text = kind});
        }
        if (step.kind != StepKind::Develop) {
            if (auto fine = checkRange("time_s", step.time.value(), 1, 14'400, "s"); !fine) {
                return fine;
            }
        }
        if (auto fine = checkRange("changes", step.changes, 1, 20, ""); !fine) {
            return fine;
        }
        if (auto fine = check(step.agitation); !fine) {
            return fine;
        }
    }
    return {};
}

} // namespace ullage::ledger
