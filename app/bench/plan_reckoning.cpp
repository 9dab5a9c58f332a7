#include "app/bench/plan_reckoning.h"

#include <algorithm>
#include <utility>

namespace ullage::app
{

using formulary::Role;

namespace
{

std::vector<ledger::BathNeed> needs(const PlanWishes& wishes)
{
    std::vector<ledger::BathNeed> all;
    for (const ledger::TemplateStep& step : wishes.sheet.steps) {
        const auto role = ledger::roleOf(step.kind);
        const auto chosen = role ? wishes.chosen.find(*role) : wishes.chosen.end();
        if (!role || (chosen != wishes.chosen.end() && chosen->second == kNoBottle))
            continue;
        const bool main = *role == Role::Developer || *role == Role::Fixer;
        ledger::BathNeed need{*role, wishes.tank.volume, false, main,
                              chosen == wishes.chosen.end() ? std::string() : chosen->second};
        if (*role == Role::Developer) {
            need.volume = ledger::stockNeeded(wishes.tank.volume, wishes.parts);
            need.oneShot = wishes.oneShot || wishes.parts > 0; // a dilution cannot go back
        }
        all.push_back(need);
    }
    return all;
}

} // namespace

const ledger::Judged* Reckoning::taken(Role role) const
{
    const ledger::BathChoice* bath = plan.bath(role);
    return bath && bath->taken ? &judged[bath->candidates[*bath->taken].judged] : nullptr;
}

Reckoning reckon(const PlanWishes& wishes, std::vector<ledger::Judged> judged)
{
    Reckoning made{.judged = std::move(judged)};
    made.plan =
        ledger::planRun({ledger::loadOf(wishes.films), wishes.tank, needs(wishes)}, made.judged);
    if (!wishes.temperature) {
        made.refusal = Error{.code = ErrorCode::Missing, .field = "temperature_c"};
        return made;
    }
    ledger::SheetRequest request{.sheet = wishes.sheet,
                                 .temperature = *wishes.temperature,
                                 .pairs = wishes.pairs,
                                 .tabularGrain = wishes.tabularGrain,
                                 .washWater = wishes.washWater};
    for (const ledger::BathChoice& bath : made.plan.baths) {
        if (const ledger::Judged* taken = made.taken(bath.need.role))
            request.baths.push_back({taken, bath.need.oneShot});
    }
    auto sheet = ledger::makeSheet(request);
    if (sheet)
        made.sheet = std::move(*sheet);
    else
        made.refusal = sheet.error();
    return made;
}

ledger::RunState readyRun(const PlanWishes& wishes, const Reckoning& reckoning,
                          chemistry::Instant now)
{
    ledger::RunState state;
    state.savedAt = now;
    state.temperature = *wishes.temperature;
    state.tank = wishes.tank;
    state.films = wishes.films;
    state.sheet = *reckoning.sheet;
    for (const ledger::BathChoice& bath : reckoning.plan.baths) {
        if (const ledger::Judged* taken = reckoning.taken(bath.need.role))
            state.baths.push_back({bath.need.role, taken->batch.id, taken->batch.name,
                                   bath.need.volume, bath.need.oneShot, taken->batch.wear.value()});
    }
    for (const ledger::RunStep& step : state.sheet.steps)
        state.times.push_back({step.planned, step.planned, {}, {}, false, {}, {}});
    return state;
}

} // namespace ullage::app
