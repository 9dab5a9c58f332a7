// What the figures of a solution imply: how long it keeps by how full the bottle is, how its time
// grows with film, and what the model makes of an open tray.
#pragma once

#include "core/formulary/solution.h"
#include "core/formulary/vessel.h"

#include <optional>
#include <vector>

namespace ullage::formulary
{

/// The tray that published open-tray times are compared with: 1 L in one for 8×10 in sheets, whose
/// surface is taken as that of the sheet (80 sq in).
inline constexpr chemistry::SquareCentimetres kTraySurface{516.13};
inline constexpr chemistry::Millilitres kTrayVolume{1000};
/// The bottle that published keeping times are read on, and its two fillings.
inline constexpr chemistry::Millilitres kReferenceCapacity{1030};
inline constexpr chemistry::Millilitres kFullFilling{1000};
inline constexpr chemistry::Millilitres kHalfFilling{515};

/// How long `solution` keeps in a closed bottle filled to `volume`, at 20 °C: until it is spent by
/// the model, and never past its published full-bottle time. The bottle is opened `openings` times
/// (1 or more) at equal intervals, filling it counted in; where that is left open, as published
/// times are read: one filled like the full reference bottle once, any other as often as the
/// half-full one. Not rounded. Empty without keeping times. `volume` > 0.
std::optional<chemistry::Days> keepsFor(const Solution& solution, const Vessel& vessel,
                                        chemistry::Millilitres volume,
                                        std::optional<int> openings = {},
                                        const chemistry::AirConstants& constants = {});

/// The half-full keeping time that goes with an oxygen limit of `limit` beside the published
/// full-bottle time: the one that calibrate() finds this limit from. Where so low a limit leaves
/// age no share, by air alone, and no limits can be solved from it. Empty without keeping times and
/// where air does not count. `limit` > 0.
std::optional<chemistry::Days> halfTimeFor(const Solution& solution,
                                           chemistry::MillimolesPerLitre limit);

struct KeepingPoint {
    chemistry::Millilitres volume;
    chemistry::Days time;
};

/// keepsFor() in the reference bottle made of `material`, from the full filling down to a
/// twentieth, at `points` (≥ 2) fillings evenly apart and at the half filling. Empty without
/// keeping times.
std::vector<KeepingPoint> keepingCurve(const Solution& solution, Material material, int points);

/// How long a fresh litre in an open tray takes by the model until it has taken up what it can:
/// age, two days of it, is left out, as where an entered tray time gives the exchange. 0 at the
/// least. The entered time is not asked, so that the two can be compared. Empty without keeping
/// times and where air does not count.
std::optional<chemistry::Hours> trayTime(const Solution& solution,
                                         const chemistry::AirConstants& constants = {});

/// What spends the solution by standing, and where the ranges of the model's constants take it.
struct LimitsRange {
    chemistry::KeepingLimits limits; ///< all below likewise infinite where air does not count
    chemistry::MillimolesPerLitre oxygenLow;
    chemistry::MillimolesPerLitre oxygenHigh;
    chemistry::Days ageLow;
    chemistry::Days ageHigh;
    chemistry::MillimolesPerLitre fullTakesUp;                ///< in its published full-bottle time
    std::optional<chemistry::MillimolesPerLitre> halfTakesUp; ///< in its half-full one
};

/// Solved at every corner of the ranges of surface exchange, cap leak, rounding of the published
/// times and openings of the half-full bottle. Empty without keeping times; corners at which no
/// positive limits exist are passed over. Without a half-full time the oxygen limit has the range
/// of kOxygenLimit instead.
std::optional<LimitsRange> limitsRange(const Solution& solution);

struct WearPoint {
    chemistry::FilmsPerLitre wear; ///< found by the film: 0 for the first
    double factor = 1;             ///< on the first film's time
};

/// Factor on the time of the 1st, 2nd … film in a litre, while the wear is below the capacity (10
/// without one); one point at the least. Beyond 60 films only of every second, third … one.
std::vector<WearPoint> wearCurve(const Solution& solution);

/// Oxygen that comes in from outside at 20 °C, by way; mmol a day. Through the whole wall and past
/// the cap of a bottle without oxygen in it, the most there can be.
struct VesselFlows {
    double wall = 0;
    double cap = 0;
};
VesselFlows flows(const Vessel& vessel, const chemistry::AirConstants& constants = {});

} // namespace ullage::formulary
