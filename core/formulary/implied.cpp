#include "core/formulary/implied.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <limits>

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

// In the reference bottle, opened so often at equal intervals.
chemistry::MillimolesPerLitre takenUp(const Solution& solution, Millilitres volume, Days time,
                                      int openings)
{
    const chemistry::Closed closed{chemistry::referenceBottle(), volume, saturation(solution)};
    auto state = fresh(solution, kReferenceCapacity - volume);
    for (int i = 0; i < openings; ++i) {
        state.air = chemistry::freshAir(kReferenceCapacity - volume);
        state = chemistry::stand(state, time / openings, closed);
    }
    return state.taken.total();
}

// When `limits` are used up in a bottle opened so often at equal intervals; its published
// full-bottle time at the latest.
Days spentAfter(const chemistry::KeepingLimits& limits, const Solution& solution,
                const chemistry::Closed& closed, Millilitres air, int times,
                const AirConstants& constants)
{
    const auto missing = [&](double days) {
        auto state = fresh(solution, {});
        for (int i = 0; i < times; ++i) {
            state.air = chemistry::freshAir(air);
            state = chemistry::stand(state, Days(days / times), closed, constants);
        }
        return limits.used(state) - 1;
    };
    const double latest = solution.keeping.full->value();
    const double now = missing(0);
    const double atLatest = missing(latest);
    if (now >= 0 || atLatest <= 0) {
        return now >= 0 ? Days(0) : *solution.keeping.full;
    }
    std::uintmax_t iterations = 200;
    const auto [low, high] = boost::math::tools::toms748_solve(
        missing, 0.0, latest, now, atLatest, boost::math::tools::eps_tolerance<double>(50),
        iterations);
    return Days((low + high) / 2);
}

// Every combination of the ends of what the limits are solved with.
std::vector<AirConstants> corners()
{
    constexpr int kEnds = 5;
    std::vector<AirConstants> all;
    for (unsigned which = 0; which < 1U << kEnds; ++which) {
        const auto end = [&](unsigned bit) { return (which >> bit & 1U) != 0 ? 1.0 : 0.0; };
        AirConstants corner;
        corner.bottleExchange = at(chemistry::kBottleExchange, end(0));
        corner.capLeak = end(1);
        corner.fullRounding = end(2);
        corner.halfRounding = end(3);
        corner.halfOpenings = static_cast<int>(end(4) > 0 ? chemistry::kHalfOpenings.high
                                                          : chemistry::kHalfOpenings.low);
        all.push_back(corner);
    }
    return all;
}

} // namespace

std::optional<Days> keepsFor(const Solution& solution, const Vessel& vessel, Millilitres volume,
                             std::optional<int> openings, const AirConstants& constants)
{
    const auto limits = keepingLimits(solution, constants);
    if (!limits) {
        return std::nullopt;
    }
    chemistry::Closed closed{enclosure(vessel, constants), volume, saturation(solution)};
    closed.agesByWarmth = solution.role == Role::Developer;
    const bool full = volume / vessel.capacity >= kFullFilling / kReferenceCapacity;
    const int times = openings.value_or(full ? 1 : constants.halfOpenings);
    return spentAfter(*limits, solution, closed, airAbove(vessel, volume, std::nullopt), times,
                      constants);
}

std::optional<Days> halfTimeFor(const Solution& solution, chemistry::MillimolesPerLitre limit)
{
    const auto limits = keepingLimits(solution);
    if (!limits || !limits->airCounts()) {
        return std::nullopt;
    }
    const Days full = *solution.keeping.full;
    const double byAge = 1 - takenUp(solution, kFullFilling, full, 1) / limit;
    const chemistry::KeepingLimits wanted{
        limit, Days(byAge > 0 ? full.value() / byAge : std::numeric_limits<double>::infinity())};
    const chemistry::Closed closed{chemistry::referenceBottle(), kHalfFilling,
                                   saturation(solution)};
    const AirConstants usual;
    return spentAfter(wanted, solution, closed, kReferenceCapacity - kHalfFilling,
                      usual.halfOpenings, usual);
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
    if (!limits || !limits->airCounts()) {
        return std::nullopt;
    }
    const auto held = saturation(solution);
    const double anHour = chemistry::openUptake(chemistry::Hours(1), kTraySurface, kTrayVolume,
                                                held, constants.trayExchange) /
                          limits->oxygen;
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
    for (const AirConstants& corner : corners()) {
        if (const auto there = keepingLimits(solution, corner)) {
            range.oxygenLow = std::min(range.oxygenLow, there->oxygen);
            range.oxygenHigh = std::max(range.oxygenHigh, there->oxygen);
            range.ageLow = std::min(range.ageLow, there->age);
            range.ageHigh = std::max(range.ageHigh, there->age);
        }
    }
    if (!solution.keeping.half && limits->airCounts()) {
        // The oxygen limit is then a constant of the model, with a range of its own.
        range.oxygenLow = chemistry::MillimolesPerLitre(chemistry::kOxygenLimit.low);
        range.oxygenHigh = chemistry::MillimolesPerLitre(chemistry::kOxygenLimit.high);
    }
    range.fullTakesUp = takenUp(solution, kFullFilling, *solution.keeping.full, 1);
    if (solution.keeping.half) {
        range.halfTakesUp =
            takenUp(solution, kHalfFilling, *solution.keeping.half, AirConstants().halfOpenings);
    }
    return range;
}

std::vector<WearPoint> wearCurve(const Solution& solution)
{
    constexpr double kShown = 10;
    const auto capacity = capacityOf(solution);
    const double last = capacity ? capacity->value() : kShown;
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
    const chemistry::Celsius usual(chemistry::kReferenceTemperature.value);
    return {bottle.wallFlow * chemistry::wallFactor(usual), bottle.capFlow};
}

} // namespace ullage::formulary
