// What the figures of a solution imply: how long it keeps by how full the bottle is, how its time
// grows with film, and what the model makes of an open tray.
#pragma once

#include "core/formulary/solution.h"
#include "core/formulary/vessel.h"

#include <optional>
#include <vector>

namespace ullage::formulary
{

/// The tray that published open-tray times are compared with: 1 L in one for 8×10 in sheets.
inline constexpr chemistry::SquareCentimetres kTraySurface{516};
inline constexpr chemistry::Millilitres kTrayVolume{1000};
/// The bottle that published keeping times are read on, and its two fillings.
inline constexpr chemistry::Millilitres kReferenceCapacity{1030};
inline constexpr chemistry::Millilitres kFullFilling{1000};
inline constexpr chemistry::Millilitres kHalfFilling{515};

/// How long `solution` keeps in a closed bottle filled to `volume`, opened once, at 20 °C: until it
/// is spent by the model, and never past its published full-bottle time. Empty without one.
std::optional<chemistry::Days> keepsFor(const Solution& solution, const Vessel& vessel,
                                        chemistry::Millilitres volume,
                                        const chemistry::AirConstants& constants = {});

struct KeepingPoint {
    chemistry::Millilitres volume;
    chemistry::Days time;
};

/// keepsFor() in the reference bottle made of `material`, from the full filling down to a
/// twentieth, at `points` (≥ 2) fillings evenly apart and at the half filling. Empty without
/// keeping times.
std::vector<KeepingPoint> keepingCurve(const Solution& solution, Material material, int points);

/// How long a litre in an open tray lasts by the model. Empty without keeping times.
std::optional<chemistry::Hours> trayTime(const Solution& solution,
                                         const chemistry::AirConstants& constants = {});

/// The limits, and where the ranges of the model's constants take them.
struct LimitsRange {
    chemistry::KeepingLimits limits;
    chemistry::MillimolesPerLitre oxygenLow;
    chemistry::MillimolesPerLitre oxygenHigh;
    chemistry::Days ageLow;
    chemistry::Days ageHigh;
    chemistry::MillimolesPerLitre fullTakesUp;                ///< in its published full-bottle time
    std::optional<chemistry::MillimolesPerLitre> halfTakesUp; ///< in its half-full one
};

/// Solved at every corner of the ranges of surface exchange and cap leak. Empty without keeping
/// times; corners at which no positive limits exist are passed over.
std::optional<LimitsRange> limitsRange(const Solution& solution);

struct WearPoint {
    chemistry::FilmsPerLitre wear;
    double factor = 1;
};

/// Factor on the time of the 1st, 2nd … film in a litre, up to the capacity (10 without one).
std::vector<WearPoint> wearCurve(const Solution& solution);

/// Oxygen that reaches what is in a closed bottle from outside, by way; mmol a day.
struct VesselFlows {
    double wall = 0;
    double cap = 0;
};
VesselFlows flows(const Vessel& vessel, const chemistry::AirConstants& constants = {});

} // namespace ullage::formulary
