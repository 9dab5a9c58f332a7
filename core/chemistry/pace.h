// How fast film comes, and when the last one that a bottle can do will have come.
//
// Loads arrive at a constant rate with prior Gamma(1, 30 days); k loads in T days make it
// Gamma(1 + k, 30 + T) (NIST/SEMATECH e-Handbook 8.4.6). The wait for m more loads is then
// (30 + T)·y/(1 − y) days with y from Beta(m, 1 + k). Simplification: no seasons, no courses.
#pragma once

#include "core/chemistry/quantities.h"

#include <optional>

namespace ullage::chemistry
{

struct Pace {
    int loads = 0; ///< in the time observed
    Days observed; ///< at most 180 days
};

inline constexpr Days kPaceWindow{180};
inline constexpr Days kPacePriorTime{30};
inline constexpr double kPacePriorLoads = 1;

/// What is believed of the rate at which loads come: Gamma(shape, time).
struct RateBelief {
    double shape = kPacePriorLoads;
    Days time = kPacePriorTime;
};

/// The prior after the loads seen.
RateBelief belief(const Pace& pace);

/// Chance that loads come further apart than `between` (> 0) on average.
double chanceSlowerThan(const RateBelief& belief, Days between);

/// Loads still to come: what is left over the mean load, rounded up, 1e9 at most. 0 if nothing is
/// left.
int loadsLeft(Films left, Films meanLoad);

/// Days until `loads` (> 0) more have come, at a probability in (0, 1).
Days waitFor(int loads, const Pace& pace, double probability);

/// Chance that `loads` (> 0) more come within `time`; 0 for no time or less.
double chanceWithin(int loads, const Pace& pace, Days time);

} // namespace ullage::chemistry
