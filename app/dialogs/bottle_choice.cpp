#include "app/dialogs/bottle_choice.h"

#include "core/ledger/run_plan.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace ullage::app
{

using chemistry::Millilitres;

std::vector<const Bottle*> bottlesFor(formulary::Role role, const std::vector<Bottle>& bottles)
{
    std::vector<const Bottle*> found;
    for (const Bottle& bottle : bottles) {
        if (bottle.batch.solution->role == role)
            found.push_back(&bottle);
    }
    const auto key = [](const Bottle* bottle) {
        return std::tuple(bottle->assessment.verdict == ledger::Verdict::Discard,
                          !knownClear(bottle->batch), bottle->batch.mixedAt);
    };
    std::stable_sort(found.begin(), found.end(),
                     [&](const Bottle* a, const Bottle* b) { return key(a) < key(b); });
    return found;
}

std::vector<Bottle> bottlesAt(Door& door, chemistry::Instant at)
{
    if (at + std::chrono::minutes(1) > door.now())
        return door.bottles();
    std::vector<Bottle> then;
    for (const ledger::BatchState& state : door.standingAt(at)) {
        if (auto batch = door.batch(state.id, at)) {
            auto assessment = ledger::assess(*batch);
            then.push_back({std::move(*batch), std::move(assessment)});
        }
    }
    return then;
}

namespace
{

// Under whichever line of the vessel it was put there.
const Bottle* batchIn(const formulary::Vessel& vessel, const formulary::Formulary& formulary,
                      const std::vector<Bottle>& bottles)
{
    const auto found = std::find_if(bottles.begin(), bottles.end(), [&](const Bottle& bottle) {
        const auto now = formulary.vesselNow(bottle.batch.vessel->id);
        return now && now->id == vessel.id;
    });
    return found == bottles.end() ? nullptr : &*found;
}

} // namespace

std::vector<std::shared_ptr<const formulary::Vessel>>
freeVessels(const formulary::Formulary& formulary, const std::vector<Bottle>& bottles)
{
    auto vessels = formulary.currentVessels();
    std::erase_if(vessels,
                  [&](const auto& vessel) { return batchIn(*vessel, formulary, bottles); });
    return vessels;
}

std::vector<VesselChoice> vesselsFor(Millilitres volume, const formulary::Formulary& formulary,
                                     const std::vector<Bottle>& bottles)
{
    std::vector<VesselChoice> choices;
    for (const auto& vessel : formulary.currentVessels())
        choices.push_back({vessel, batchIn(*vessel, formulary, bottles)});
    const auto key = [&](const VesselChoice& choice) {
        const bool small = choice.vessel->capacity < volume;
        const bool leaks = choice.vessel->material > formulary::Material::Pet;
        return std::tuple(choice.holds != nullptr, small, leaks,
                          small ? -choice.vessel->capacity.value()
                                : choice.vessel->capacity.value());
    };
    std::stable_sort(choices.begin(), choices.end(),
                     [&](const auto& a, const auto& b) { return key(a) < key(b); });
    return choices;
}

Millilitres usualVolume(const formulary::Vessel& vessel)
{
    const double capacity = vessel.capacity.value();
    constexpr double kStep = 250; // packets and graduates come in quarters of a litre
    constexpr double kNear = 0.9; // a bottle is a little bigger than what it is sold as
    const double whole = std::floor(capacity / kStep) * kStep;
    return Millilitres(whole >= kNear * capacity ? whole : capacity);
}

} // namespace ullage::app
