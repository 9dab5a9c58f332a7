#include "core/chemistry/keeping.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <limits>

namespace ullage::chemistry
{

namespace
{

// Below this the air is a film under the cap: what comes in goes straight through.
constexpr double kLeastAir = 0.5;
constexpr Days kHorizon{200 * 365.25};
constexpr Millilitres kReferenceCapacity{1030};
constexpr Millilitres kFull{1000};
constexpr Millilitres kHalf{515};
// The tray that open-tray times are published for, a litre in one of 8×10 in.
constexpr SquareCentimetres kTray{516.13};

Standing freshIn(const Enclosure& bottle, Millilitres volume, MillimolesPerLitre saturation)
{
    Standing state;
    state.taken.pouring = saturation;
    state.air = freshAir(bottle.capacity - volume);
    return state;
}

double ageingOf(const Closed& closed, const AirConstants& constants)
{
    return closed.agesByWarmth ? ageingFactor(closed.temperature, constants) : 1;
}

// A time of whole months, anywhere in the half month either side that was rounded away.
Days unrounded(Days time, Place place)
{
    if (!place || !wholeMonths(time)) {
        return time;
    }
    const double reach = kTimeRounding.value * kMonth.value;
    const double low = time.value() - reach;
    return Days(low * std::pow((time.value() + reach) / low, *place));
}

// Uptake of the reference bottle, opened so often at equal intervals, filling it counted in.
MillimolesPerLitre takenUp(Millilitres volume, Days time, int openings,
                           MillimolesPerLitre saturation, const AirConstants& constants)
{
    const Enclosure bottle = referenceBottle(constants);
    const Closed closed{bottle, volume, saturation};
    Standing state = freshIn(bottle, volume, saturation);
    for (int i = 0; i < openings; ++i) {
        state.air = freshAir(bottle.capacity - volume);
        state = stand(state, time / openings, closed, constants);
    }
    return state.taken.total();
}

} // namespace

Enclosure enclosure(Millilitres capacity, double permeability, Millimetres wall,
                    CubicCentimetresPerDay capLeak)
{
    const double size = std::pow(capacity.value() / 1000, 2.0 / 3);
    constexpr double kSquareCentimetresInSquareMetre = 1e4;
    const double area = kWallArea.value * size / kSquareCentimetresInSquareMetre;
    Enclosure result;
    result.capacity = capacity;
    result.wallFlow = permeability * area * kOxygenInAir.value / wall.value() / kMolarVolume.value;
    result.capFlow = capLeak.value() / kMolarVolume.value;
    result.surface = SquareCentimetres(kSurface.value * size);
    return result;
}

Enclosure referenceBottle(const AirConstants& constants)
{
    return enclosure(kReferenceCapacity, 0, Millimetres(1),
                     CubicCentimetresPerDay(at(kCapLeak, constants.capLeak)));
}

double wallFactor(Celsius temperature)
{
    const double reference = Celsius(kWallTemperature.value).kelvin();
    return std::exp(-kWallWarmth.value * (1 / temperature.kelvin() - 1 / reference));
}

Routes& Routes::operator*=(double factor)
{
    pouring *= factor;
    bottleAir *= factor;
    wall *= factor;
    cap *= factor;
    openVessel *= factor;
    return *this;
}

Headspace freshAir(Millilitres volume)
{
    const double held = std::max(0.0, volume.value());
    return {Millilitres(held), Millimoles(kAirOxygen.value * held), {}, {}};
}

double ageingFactor(Celsius temperature, const AirConstants& constants)
{
    const double reference = Celsius(kReferenceTemperature.value).kelvin();
    return std::exp(-constants.ageing * (1 / temperature.kelvin() - 1 / reference));
}

Standing stand(Standing state, Days time, const Closed& closed, const AirConstants& constants)
{
    const double t = time.value();
    state.aged += time * ageingOf(closed, constants);

    const Litres solution = litres(closed.volume);
    const Enclosure& bottle = closed.bottle;
    const double wetted = std::min(1.0, closed.volume / bottle.capacity);
    const double wallFlow = bottle.wallFlow * wallFactor(closed.temperature);
    const double throughWet = wetted * wallFlow;
    const double intoHeadWall = (1 - wetted) * wallFlow;
    const auto take = [&](MillimolesPerLitre& route, double amount) {
        route += Millimoles(amount) / solution;
    };

    if (state.air.volume.value() < kLeastAir) {
        take(state.taken.wall, (throughWet + intoHeadWall) * t);
        take(state.taken.cap, bottle.capFlow * t);
        return state;
    }

    // 1/τ: the share of the air's oxygen that the surface passes a day.
    const double solubility =
        closed.saturation.value() / 1000 / kAirOxygen.value; // mmol/mL both: no dimension
    const double passed = 24 * constants.bottleExchange * bottle.surface.value() * solubility /
                          state.air.volume.value();
    const double fullAir = kAirOxygen.value * state.air.volume.value();
    const double lambda = passed + (intoHeadWall + bottle.capFlow) / fullAir;
    const double faded = -std::expm1(-lambda * t); // 1 − e^(−λt)

    // The equation is linear in inflow and in what was there, so it holds for each route alone.
    const auto exchange = [&](Millimoles& inAir, double inflow, MillimolesPerLitre& route) {
        const double balance = inflow / lambda;
        const double above = inAir.value() - balance;
        take(route, passed * (balance * t + above * faded / lambda));
        inAir = Millimoles(inAir.value() - above * faded);
    };
    take(state.taken.wall, throughWet * t);
    exchange(state.air.shutIn, 0, state.taken.bottleAir);
    exchange(state.air.wall, intoHeadWall, state.taken.wall);
    exchange(state.air.cap, bottle.capFlow, state.taken.cap);
    return state;
}

Standing toppedUp(Standing state, double share, MillimolesPerLitre saturation)
{
    state.aged *= share;
    state.taken *= share;
    state.taken.pouring += saturation * (1 - share);
    return state;
}

bool belowHalfFull(Millilitres volume, Millilitres capacity)
{
    return volume / capacity < kHalf / kReferenceCapacity;
}

MillimolesPerLitre openUptake(Hours time, SquareCentimetres surface, Millilitres volume,
                              MillimolesPerLitre saturation, double exchange)
{
    const double amount =
        exchange * surface.value() * saturation.value() * time.value() / 1000; // cm³ to L
    return Millimoles(amount) / litres(volume);
}

double trayExchange(const std::optional<KeepingLimits>& limits, const AirConstants& constants)
{
    return limits && limits->trayExchange ? *limits->trayExchange : constants.trayExchange;
}

Result<KeepingLimits> calibrate(const KeepingTimes& times, MillimolesPerLitre saturation,
                                const AirConstants& constants)
{
    const Days full = unrounded(times.full, constants.fullRounding);
    if (!times.half && !times.developer) {
        return KeepingLimits{MillimolesPerLitre(std::numeric_limits<double>::infinity()), full};
    }
    const double fullTaken = takenUp(kFull, full, 1, saturation, constants).value();
    double perOxygen = 1 / kOxygenLimit.value; // 1/N_c
    if (times.half) {
        const Days half = unrounded(*times.half, constants.halfRounding);
        const double halfTaken =
            takenUp(kHalf, half, constants.halfOpenings, saturation, constants).value();
        const double ratio = half / full;
        perOxygen = (1 - ratio) / (halfTaken - ratio * fullTaken);
    }
    const double perAge = (1 - perOxygen * fullTaken) / full.value(); // 1/L0
    if (!std::isfinite(perOxygen) || perOxygen <= 0 || !std::isfinite(perAge) || perAge <= 0) {
        Error error{.code = ErrorCode::Conflict,
                    .field = times.half ? "keeping.half_days" : "keeping.full_days",
                    .allowed = times.half ? "shorter than full_days, and no shorter than the air "
                                            "of a half-full bottle can explain"
                                          : "short enough that age is left beside the cap's leak",
                    .number = times.half ? times.half->value() : times.full.value()};
        error.unit = "days";
        return refuse(std::move(error));
    }
    KeepingLimits limits{MillimolesPerLitre(1 / perOxygen), Days(1 / perAge)};
    if (times.tray) {
        const auto anHour = openUptake(Hours(1), kTray, kFull, saturation, 1); // at 1 cm/h
        limits.trayExchange = (limits.oxygen - saturation) / (anHour * times.tray->value());
    }
    return limits;
}

Days daysUntilSpent(const Standing& state, const Closed& closed, const KeepingLimits& limits,
                    const AirConstants& constants)
{
    const auto missing = [&](double days) {
        return limits.used(stand(state, Days(days), closed, constants)) - 1;
    };
    const double now = missing(0);
    if (now >= 0) {
        return Days(0);
    }
    // Age alone would spend it by then, so the root lies before.
    double latest = -now * limits.age.value() / ageingOf(closed, constants) * (1 + 1e-12);
    latest = std::min(latest, kHorizon.value());
    const double atLatest = missing(latest);
    if (atLatest <= 0) {
        return Days(latest);
    }
    std::uintmax_t iterations = 200;
    const auto [low, high] = boost::math::tools::toms748_solve(
        missing, 0.0, latest, now, atLatest, boost::math::tools::eps_tolerance<double>(50),
        iterations);
    return Days((low + high) / 2);
}

std::optional<int> wholeMonths(Days time)
{
    const double months = time.value() / kMonth.value;
    const double nearest = std::round(months);
    if (nearest >= 1 && std::abs(months - nearest) < 1e-6) {
        return static_cast<int>(nearest);
    }
    return std::nullopt;
}

Instant addKeepingTime(Instant start, Days time)
{
    const auto months = wholeMonths(time);
    return months ? addMonths(start, *months) : addDays(start, time);
}

} // namespace ullage::chemistry
