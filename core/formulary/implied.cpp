#include "core/formulary/implied.h"

#include <algorithm>
#include <cmath>

namespace ullage::formulary
{

using chemistry::AirConstants;
using chemistry::Days;
using chemistry::Millilitres;

namespace
{

chemistry::Standing fresh(const Solution& solution, Millilitres air)
{
    chemistry::Standing state;
    state.taken.pouring = saturation(solution);
    state.air = chemistry::freshAir(air);
    return state;
}

chemistry::MillimolesPerLitre takenUp(const Solution& solution, Millilitres volume, Days time)
{
    const chemistry::Closed closed{chemistry::referenceBottle(), volume, saturation(solution)};
    return chemistry::stand(fresh(solution, kReferenceCapacity - volume), time, closed)
        .taken.total();
}

} // namespace

std::optional<Days> keepsFor(const Solution& solution, const Vessel& vessel, Millilitres volume,
                             const AirConstants& constants)
{
    const auto limits = keepingLimits(solution, constants);
    if (!limits) {
        return std::nullopt;
    }
    const chemistry::Closed closed{enclosure(vessel, constants), volume, saturation(solution)};
    const auto state = fresh(solution, airAbove(vessel, volume, std::nullopt));
    return std::min(chemistry::daysUntilSpent(state, closed, *limits, constants),
                    *solution.keeping.full);
}

std::vector<KeepingPoint> keepingCurve(const Solution& solution, Material material, int points)
{
    Vessel bottle;
    bottle.capacity = kReferenceCapacity;
    bottle.material = material;
    constexpr double kLeastShare = 0.05;
    const Millilitres least = kReferenceCapacity * kLeastShare;
    std::vector<Millilitres> fillings{kHalfFilling};
    for (int i = 0; i < points; ++i) {
        fillings.push_back(kFullFilling - (kFullFilling - least) * (i / (points - 1.0)));
    }
    std::sort(fillings.begin(), fillings.end(), [](auto a, auto b) { return a > b; });
    std::vector<KeepingPoint> curve;
    for (const Millilitres volume : fillings) {
        if (const auto time = keepsFor(solution, bottle, volume)) {
            curve.push_back({volume, *time});
        }
    }
    return curve;
}

std::optional<chemistry::Hours> trayTime(const Solution& solution, const AirConstants& constants)
{
    const auto limits = keepingLimits(solution, constants);
    if (!limits) {
        return std::nullopt;
    }
    const auto held = saturation(solution);
    const double anHour =
        chemistry::openUptake(chemistry::Hours(1), kTraySurface, kTrayVolume, held, constants) /
            limits->oxygen +
        1 / (24 * limits->age.value());
    return chemistry::Hours(std::max(0.0, 1 - held / limits->oxygen) / anHour);
}

std::optional<LimitsRange> limitsRange(const Solution& solution)
{
    const auto limits = keepingLimits(solution);
    if (!limits) {
        return std::nullopt;
    }
    LimitsRange range;
    range.limits = *limits;
    range.oxygenLow = range.oxygenHigh = limits->oxygen;
    range.ageLow = range.ageHigh = limits->age;
    for (const double exchange :
         {chemistry::kBottleExchange.low, chemistry::kBottleExchange.high}) {
        for (const double capShare : {-1.0, 1.0}) {
            AirConstants corner;
            corner.bottleExchange = exchange;
            corner.capLeakShare = capShare;
            if (const auto there = keepingLimits(solution, corner)) {
                range.oxygenLow = std::min(range.oxygenLow, there->oxygen);
                range.oxygenHigh = std::max(range.oxygenHigh, there->oxygen);
                range.ageLow = std::min(range.ageLow, there->age);
                range.ageHigh = std::max(range.ageHigh, there->age);
            }
        }
    }
    if (!solution.keeping.half) {
        // The oxygen limit is then a constant of the model, with a range of its own.
        range.oxygenLow = chemistry::MillimolesPerLitre(chemistry::kOxygenLimit.low);
        range.oxygenHigh = chemistry::MillimolesPerLitre(chemistry::kOxygenLimit.high);
    }
    range.fullTakesUp = takenUp(solution, kFullFilling, *solution.keeping.full);
    if (solution.keeping.half) {
        range.halfTakesUp = takenUp(solution, kHalfFilling, *solution.keeping.half);
    }
    return range;
}

std::vector<WearPoint> wearCurve(const Solution& solution)
{
    constexpr double kShown = 10;
    const double last = solution.capacity ? solution.capacity->value() : kShown;
    // A solution that does thousands of films needs no thousand points.
    const double step = std::max(1.0, std::ceil(last / 60));
    std::vector<WearPoint> curve;
    for (double done = 0; done < last - 1e-9 || curve.empty(); done += step) {
        const chemistry::FilmsPerLitre wear(done);
        curve.push_back({wear, chemistry::wearFactor(solution.wear, wear)});
    }
    return curve;
}

VesselFlows flows(const Vessel& vessel, const AirConstants& constants)
{
    const auto bottle = enclosure(vessel, constants);
    return {bottle.wallFlow, bottle.capFlow};
}

} // namespace ullage::formulary
