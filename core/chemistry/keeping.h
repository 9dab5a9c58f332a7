// How a solution is spent by standing: oxygen that reaches it, and age alone.
//
// A closed bottle passes oxygen to its solution from the air above it, through the wetted wall, and
// through wall and cap into that air:
//
//   q_wall = P·A·0.2095/d / 22.414 · p(T)      q_cap = leak / 22.414  mmol/day
//   f = min(1, V/Vb)                   q_head = (1−f)·q_wall + q_cap
//   τ = V_air/(24·k·S·H)               H = C_sat/c_air, without dimension
//   λ = 1/τ + q_head/n_air             n_eq = q_head/λ
//   taken up in t days = f·q_wall·t + [n_eq·t + (n−n_eq)(1−e^(−λt))/λ]/τ
//
// with p(T) = exp(−3765(1/T − 1/298.15)), and ages by t·exp(−E(1/T − 1/293.15)) if it is a
// developer, else by t. Both are linear in what flows in, so each amount is kept by the route it
// came (air shut in, wall, cap, pouring, open vessel).
//
// Simplifications: uptake is taken as independent of temperature (it changes 3 % per 10 °C); the
// exchange between air and solution has one rate; sulfite never runs out first. Two published
// keeping times fix two constants, so they are calibrated, not checked; a date is good to a factor
// of two, and below half full it is an extrapolation. Anything but a developer goes by the
// calendar, unless it has a half-full time of its own.
#pragma once

#include "core/chemistry/constants.h"
#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <optional>

namespace ullage::chemistry
{

/// The model's constants as one value, so that a range can be sampled. Units as in constants.h.
struct AirConstants {
    double bottleExchange = kBottleExchange.value; ///< cm/h
    double trayExchange = kTrayExchange.value;     ///< cm/h, without a published tray time
    double ageing = kAgeing.value;                 ///< K
    Place permeability;                            ///< in a wall's range
    Place capLeak;                                 ///< in the range of the default cap
    int halfOpenings =
        static_cast<int>(kHalfOpenings.value); ///< of the half-full bottle, 1 or more
    Place fullRounding; ///< in the half month either side of a full-bottle time of whole months
    Place halfRounding; ///< the same of a half-full one
};

/// What a bottle is to the air: its walls, cap and size.
struct Enclosure {
    Millilitres capacity;
    double wallFlow = 0; ///< mmol oxygen a day through the whole wall at 25 °C
    double capFlow = 0;  ///< q_cap, mmol oxygen a day
    SquareCentimetres surface;
};

/// Computes the flows. `permeability` in cm³·mm/(m²·day·atm) at 25 °C, 0 for glass; `wall` > 0.
Enclosure enclosure(Millilitres capacity, double permeability, Millimetres wall,
                    CubicCentimetresPerDay capLeak);

/// What a wall lets through at a temperature, against 25 °C: 0.81 at 20 °C.
double wallFactor(Celsius temperature);

/// The glass bottle of 1030 mL with a default cap on which published keeping times are read.
Enclosure referenceBottle(const AirConstants& constants = {});

/// Oxygen by the way it came. One quantity type a use: amounts in the air, or uptake per litre.
struct Routes {
    MillimolesPerLitre pouring;    ///< dissolved at mixing, topping up and pouring back
    MillimolesPerLitre bottleAir;  ///< from the air shut in
    MillimolesPerLitre wall;       ///< through the bottle's wall
    MillimolesPerLitre cap;        ///< past the cap
    MillimolesPerLitre openVessel; ///< while standing open

    [[nodiscard]] MillimolesPerLitre total() const
    {
        return pouring + bottleAir + wall + cap + openVessel;
    }
    Routes& operator*=(double factor);
};

/// The air in a closed bottle and the oxygen in it, by the way it came.
struct Headspace {
    Millilitres volume;
    Millimoles shutIn;
    Millimoles wall;
    Millimoles cap;

    [[nodiscard]] Millimoles total() const { return shutIn + wall + cap; }
};

/// Fresh air of this volume shut in.
Headspace freshAir(Millilitres volume);

/// A solution standing in a closed bottle.
struct Standing {
    Routes taken; ///< oxygen taken up since mixing, per litre
    Days aged;    ///< age at 20 °C that would have spent as much
    Headspace air;
};

/// What stays the same while a bottle stands closed.
struct Closed {
    Enclosure bottle;
    Millilitres volume;            ///< of solution, > 0
    MillimolesPerLitre saturation; ///< C_sat of the solution
    Celsius temperature{kReferenceTemperature.value};
    bool agesByWarmth = true; ///< a developer; anything else ages a day in a day
};

/// Arrhenius factor on a developer's ageing against 20 °C; 1 at 20 °C.
double ageingFactor(Celsius temperature, const AirConstants& constants = {});

/// The state after `time` ≥ 0 closed. Splitting a time in two changes nothing (to 1e-9).
Standing stand(Standing state, Days time, const Closed& closed, const AirConstants& constants = {});

/// The state after topping up with fresh solution: `share` (0 to 1) of the new volume is the old
/// solution. The air is left as it was.
Standing toppedUp(Standing state, double share, MillimolesPerLitre saturation);

/// Whether a bottle holds less than the half-full one that keeping times are published for: what
/// the model says of it is an extrapolation.
bool belowHalfFull(Millilitres volume, Millilitres capacity);

/// Oxygen taken up by standing open, per litre of `volume`: k_tray·A·C_sat·h. `exchange` is k_tray
/// in cm/h, as trayExchange() says.
MillimolesPerLitre openUptake(Hours time, SquareCentimetres surface, Millilitres volume,
                              MillimolesPerLitre saturation, double exchange);

/// Published keeping times of a solution: in a full bottle and, if given, a half-full one and an
/// open tray.
struct KeepingTimes {
    Days full;
    std::optional<Days> half = {};
    std::optional<Hours> tray = {}; ///< a litre in an 8×10 in tray
    bool developer = true;
};

/// What spends a solution: so much oxygen, or so much age at 20 °C.
struct KeepingLimits {
    MillimolesPerLitre oxygen;               ///< N_c; infinite where air does not count
    Days age;                                ///< L0
    std::optional<double> trayExchange = {}; ///< cm/h, by its own published tray time

    /// Whether oxygen spends it at all.
    [[nodiscard]] bool airCounts() const { return std::isfinite(oxygen.value()); }

    /// s = N/N_c + g; spent at 1.
    [[nodiscard]] double used(const Standing& state) const
    {
        return state.taken.total() / oxygen + state.aged / age;
    }
};

/// The rate at which the solution takes oxygen up in an open vessel, cm/h: by its published tray
/// time, else that of `constants`.
double trayExchange(const std::optional<KeepingLimits>& limits, const AirConstants& constants = {});

/// Solves the two limits from the published times by running the model on the reference bottle: the
/// full one opened when it was filled, the half-full one `halfOpenings` times at equal intervals. A
/// tray time then gives the exchange that uses up N_c in it. Without a half-full time N_c of a
/// developer is kOxygenLimit; anything else is not spent by air and keeps for the full-bottle time.
/// Refuses times that no positive limits can give (Conflict).
Result<KeepingLimits> calibrate(const KeepingTimes& times, MillimolesPerLitre saturation,
                                const AirConstants& constants = {});

/// When `state` standing on reaches s = 1: days from now, 0 if it has; at most 200 years.
Days daysUntilSpent(const Standing& state, const Closed& closed, const KeepingLimits& limits,
                    const AirConstants& constants = {});

/// The whole number of months a published time is, if it is one (to 1e-6 of a month).
std::optional<int> wholeMonths(Days time);

/// `start` + a published time: calendar months where it is whole months, else days.
Instant addKeepingTime(Instant start, Days time);

} // namespace ullage::chemistry
