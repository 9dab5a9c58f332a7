#include "core/ledger/air_advice.h"

#include "core/ledger/verdict.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Millilitres;

namespace
{

// Moves to a vessel and closes it with the air there is room for.
Batch movedTo(Batch batch, std::shared_ptr<const formulary::Vessel> vessel)
{
    batch.vessel = std::move(vessel);
    batch.standing.air = chemistry::freshAir(airAbove(*batch.vessel, batch.volume, std::nullopt));
    return batch;
}

Batch squeezed(Batch batch)
{
    batch.standing.air = chemistry::freshAir(Millilitres(0));
    return batch;
}

Batch toppedUp(Batch batch, Millilitres fresh)
{
    const Millilitres after = batch.volume + fresh;
    batch.standing =
        chemistry::toppedUp(batch.standing, batch.volume / after, saturation(*batch.solution));
    batch.volume = after;
    if (batch.limits->used(batch.standing) < 1) {
        batch.spentAfter.reset();
    }
    auto vessel = batch.vessel; // arguments may be evaluated in any order
    return movedTo(std::move(batch), std::move(vessel));
}

std::shared_ptr<const formulary::Vessel>
smallestFor(const Batch& batch, std::span<const std::shared_ptr<const formulary::Vessel>> atHand)
{
    std::shared_ptr<const formulary::Vessel> best;
    for (const auto& vessel : atHand) {
        const bool holds = vessel->capacity >= batch.volume;
        const bool smaller = vessel->capacity < (best ? best : batch.vessel)->capacity;
        if (holds && smaller) {
            best = vessel;
        }
    }
    return best;
}

} // namespace

std::string_view code(Route route) { return kRouteCodes[static_cast<std::size_t>(route)]; }

std::string_view code(Remedy remedy) { return kRemedyCodes[static_cast<std::size_t>(remedy)]; }

std::array<RouteShare, 5> routeShares(const Batch& batch)
{
    const chemistry::Routes& taken = batch.standing.taken;
    std::array<RouteShare, 5> shares{{{Route::Pouring, taken.pouring},
                                      {Route::BottleAir, taken.bottleAir},
                                      {Route::Wall, taken.wall},
                                      {Route::Cap, taken.cap},
                                      {Route::OpenVessel, taken.openVessel}}};
    const auto total = taken.total();
    for (RouteShare& share : shares) {
        share.share = total.value() > 0 ? share.taken / total : 0;
    }
    std::stable_sort(shares.begin(), shares.end(),
                     [](const auto& a, const auto& b) { return a.taken > b.taken; });
    return shares;
}

std::optional<AirAdvice> airAdvice(const Batch& batch,
                                   std::span<const std::shared_ptr<const formulary::Vessel>> atHand,
                                   const chemistry::AirConstants& constants)
{
    const auto dateOf = [&](const Batch& changed) { return *assess(changed, constants).discardBy; };
    if (!batch.limits || !batch.limits->airCounts() || !batch.inUse() ||
        !assess(batch, constants).discardBy) {
        return std::nullopt;
    }
    AirAdvice advice;
    advice.discardBy = dateOf(batch);
    const auto offer = [&](Remedy remedy, const Batch& changed) -> Help& {
        const auto date = dateOf(changed);
        return advice.helps.emplace_back(
            Help{remedy, date, chemistry::daysBetween(advice.discardBy, date), nullptr, {}});
    };
    if (batch.standing.air.volume.value() > 0) {
        offer(Remedy::Squeeze, squeezed(batch));
    }
    if (auto smaller = smallestFor(batch, atHand)) {
        offer(Remedy::SmallerBottle, movedTo(batch, smaller)).vessel = smaller;
    }
    if (enclosure(*batch.vessel, constants).wallFlow > 0) {
        formulary::Vessel glass = *batch.vessel;
        glass.material = formulary::Material::Glass;
        glass.permeability.reset();
        glass.wall.reset();
        offer(Remedy::Glass, movedTo(batch, std::make_shared<const formulary::Vessel>(glass)));
    }
    if (const auto room = batch.vessel->capacity - batch.volume; room.value() > 0) {
        offer(Remedy::TopUp, toppedUp(batch, room)).topUp = room;
    }
    std::stable_sort(advice.helps.begin(), advice.helps.end(),
                     [](const Help& a, const Help& b) { return a.gained > b.gained; });
    return advice;
}

} // namespace ullage::ledger
