// How long a bottle takes to come to temperature, in a stirred bath or in room air:
//
//   T = T_around + (T0 − T_around)·e^(−t/τ),   τ ∝ V^⅓
//
// Simplifications: one time constant for the whole bottle, whatever it is made of; the surroundings
// keep their temperature. Two thermometer readings of the bottle at hand replace τ.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

namespace ullage::chemistry
{

enum class Surroundings { StirredBath, RoomAir };

/// τ of a bottle holding `volume` (> 0). Sources: kStirredBath, kRoomAir.
Seconds timeConstant(Millilitres volume, Surroundings surroundings);

/// τ from two readings `between` apart. Conflict for readings that do not approach the
/// surroundings: on both sides of them, not nearer at the second, or equal to them; and for no time
/// between.
Result<Seconds> timeConstantFrom(Celsius first, Celsius second, Celsius around, Seconds between);

/// After `time` in surroundings that keep theirs; `constant` > 0.
Celsius temperatureAfter(Celsius start, Celsius around, Seconds time, Seconds constant);

/// Time from `start` to `wanted`; 0 if it is there, not rounded. OutOfRange for what is never
/// reached: beyond the surroundings or at them, or away from them.
Result<Seconds> timeToReach(Celsius wanted, Celsius start, Celsius around, Seconds constant);

} // namespace ullage::chemistry
