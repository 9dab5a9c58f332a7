// Washing film: ways with their sources, and what fixer is left.
//
// Simplifications: the published ways are whole recipes and are not interpolated between; cold
// water lengthens the washes, not the rinse or the aid. Fill and dump assumes that each filling
// mixes fully with what film and tank carry over; what must diffuse out of the film first is not
// counted, so each filling needs its minutes of standing and turning.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace ullage::chemistry
{

enum class WashWay {
    Running, ///< running water
    Changes, ///< water changed whole every few minutes
    Aid,     ///< rinse, wash aid, short wash
};
inline constexpr std::array<WashWay, 3> kWashWays{WashWay::Running, WashWay::Changes, WashWay::Aid};

enum class WashBath { Rinse, Aid, Wash };

struct WashStep {
    WashBath bath = WashBath::Wash;
    Seconds time;
    std::optional<Seconds> changeEvery; ///< a full change of water each
    std::string_view source;
};

/// What washing takes longer in cold water: 3 from 10 to 15 °C, 1 from 18 °C up, between them a
/// straight line in its logarithm (assumed). Refuses below 10 and above 30 °C: no figure, no time.
Result<double> coldWashFactor(Celsius water);

/// The steps of a way in water of this temperature; not rounded.
Result<std::vector<WashStep>> washSteps(WashWay way, Celsius water);

/// Whether wash and fixer differ by more than kReticulation, so that the emulsion may wrinkle.
bool mayReticulate(Celsius fixer, Celsius water);

/// Share of the fixer left after `times` fillings of `filling`, when film and tank keep back
/// `carried` each time: (v/(V+v))^N.
double leftAfterDumps(Millilitres carried, Millilitres filling, int times);

/// Fillings until no more than `share` (> 0) is left; 0 if nothing need be done. `carried` and
/// `filling` > 0.
int dumpsNeeded(Millilitres carried, Millilitres filling, double share);

/// The share of what is carried over that leaves kThiosulfateLeft, which is of the ion, on film of
/// this area. `thiosulfate` as the anhydrous sodium salt, g/L; all > 0.
double shareForStorage(GramsPerLitre thiosulfate, Millilitres carried, SquareCentimetres film);

/// Share of the fixer left in an average negative after so long in running water.
double leftAfterRunning(Seconds time);

} // namespace ullage::chemistry
