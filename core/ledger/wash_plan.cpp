#include "core/ledger/wash_plan.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

using chemistry::WashBath;
using chemistry::WashWay;

namespace
{

constexpr chemistry::Celsius kUsualWater{20};
const Agitation kAllTheTime{AgitationKind::Continuous};

TemplateStep stepOf(const chemistry::WashStep& wash)
{
    TemplateStep step{StepKind::Wash, wash.time, 1, {}};
    if (wash.bath == WashBath::Rinse) {
        step.kind = StepKind::Rinse;
        step.agitation = kAllTheTime;
    } else if (wash.bath == WashBath::Aid) {
        step.kind = StepKind::WashAid;
        step.agitation = kAllTheTime;
    } else if (wash.changeEvery) {
        step.kind = StepKind::FillAndDump;
        step.changes = static_cast<int>(std::ceil(wash.time / *wash.changeEvery));
        step.agitation = kAllTheTime;
    }
    return step;
}

std::vector<TemplateStep> stepsOf(const WashPlan& plan)
{
    if (plan.kind == WashKind::FillAndDump) {
        return {{StepKind::FillAndDump, plan.each * plan.fills, plan.fills, kAllTheTime}};
    }
    std::vector<TemplateStep> steps;
    // Published ways at the usual temperature cannot be refused.
    const auto published = chemistry::washSteps(*wayOf(plan.kind), kUsualWater);
    for (const chemistry::WashStep& wash : *published) {
        steps.push_back(stepOf(wash));
    }
    return steps;
}

} // namespace

bool washes(StepKind kind)
{
    return kind == StepKind::Rinse || kind == StepKind::WashAid || kind == StepKind::Wash ||
           kind == StepKind::FillAndDump;
}

std::optional<WashWay> wayOf(WashKind kind)
{
    switch (kind) {
    case WashKind::Running:
        return WashWay::Running;
    case WashKind::Changes:
        return WashWay::Changes;
    case WashKind::Aid:
        return WashWay::Aid;
    case WashKind::AsTemplate:
    case WashKind::FillAndDump:
        break;
    }
    return std::nullopt;
}

RunTemplate withWash(RunTemplate sheet, const WashPlan& plan)
{
    if (plan.kind == WashKind::AsTemplate) {
        return sheet;
    }
    // From the last fixing bath on: what rinses between two of them is no washing.
    const auto fixes = [](const auto& step) { return roleOf(step.kind) == formulary::Role::Fixer; };
    const auto last = std::find_if(sheet.steps.rbegin(), sheet.steps.rend(), fixes);
    const auto fix = last == sheet.steps.rend() ? sheet.steps.end() : std::prev(last.base());
    std::vector<TemplateStep> kept(sheet.steps.begin(), fix);
    std::optional<std::size_t> place;
    for (auto step = fix; step != sheet.steps.end(); ++step) {
        const bool ofAid = step->kind == StepKind::PourBack && step != fix &&
                           std::prev(step)->kind == StepKind::WashAid;
        if (washes(step->kind) || ofAid) {
            place = place.value_or(kept.size());
        } else {
            if (step->kind == StepKind::WettingAgent) {
                place = place.value_or(kept.size());
            }
            kept.push_back(*step);
        }
    }
    const auto wash = stepsOf(plan);
    kept.insert(kept.begin() + static_cast<std::ptrdiff_t>(place.value_or(kept.size())),
                wash.begin(), wash.end());
    sheet.steps = std::move(kept);
    return sheet;
}

std::optional<double> shareLeft(const WashPlan& plan)
{
    return plan.kind == WashKind::FillAndDump
               ? std::optional(chemistry::leftAfterDumps(plan.carried, plan.filling, plan.fills))
               : std::nullopt;
}

} // namespace ullage::ledger
