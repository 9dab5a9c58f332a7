// What a darkroom's own tests say about a solution, over all its bottles.
//
// Each estimate is Bayesian: the packet's figure is the prior, so that two tests say little and
// twenty say much. They are proposals: nothing is taken over by itself.
//
// Simplifications: the spread of a test is one number (10 % of a clearing time, 0.05 of a time
// factor, 15 % of s), common practice without a source; all bottles of a solution are alike.
#pragma once

#include "core/chemistry/quantities.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace ullage::chemistry
{

/// An estimate with the span that holds it 8 times in 10.
struct OwnFigure {
    double value = 0;
    double low = 0;
    double high = 0;
    int tests = 0;   ///< that went into it
    int bottles = 0; ///< that they were made in
};

/// A clearing test of a worn fixer beside a fresh one of the same film in the same bottle; both at
/// 20 °C.
struct WornClearing {
    FilmsPerLitre wear; ///< > 1
    Seconds at20;
    Seconds fresh;         ///< > 0
    std::string film = {}; ///< that both were made with
};

/// Capacity in films per litre from the rise of clearing times, y = t/fresh − 1 = β·w. The tests of
/// one film in one bottle share the error of its fresh test. `published` > 0 is the prior's middle,
/// its sd half of that. Empty with fewer than four tests in two bottles, and while a rise is not
/// certain (the span would reach beyond every capacity).
std::optional<OwnFigure> ownFixerCapacity(std::span<const std::vector<WornClearing>> bottles,
                                          FilmsPerLitre published);

/// A control strip of a developer with a reference density.
struct StripMeasure {
    FilmsPerLitre wear;
    double factorInForce = 1; ///< wear × strip factor on the time it was developed for
    double density = 0;       ///< > 0
    double reference = 0;     ///< > 0

    /// Factor on the time of a fresh bath that would have given the reference density.
    [[nodiscard]] double wanted() const;
};

/// Percent per film of the rule *per-film* from control strips. `published` (percent, > 0) is the
/// prior's middle and sd. Empty with fewer than five strips in two bottles.
std::optional<OwnFigure> ownDeveloperWear(std::span<const std::vector<StripMeasure>> bottles,
                                          double published);

/// A bottle that was looked at: did it still work, at this oxygen and this share of life gone by
/// age?
struct KeepingTrial {
    MillimolesPerLitre oxygen;
    double agePart = 0;
    bool passed = false;
};

/// How likely such a trial comes out so where the oxygen limit is `limit` > 0: a pass with 0.02 +
/// 0.96·Φ(−ln s/0.15), s = N/limit + age's part.
double trialChance(const KeepingTrial& trial, MillimolesPerLitre limit);

/// Oxygen limit N_c in mmol/L from looks and strips of little-worn bottles; a bottle gives its last
/// pass and its first failure. `calibrated` > 0 is the prior's middle, a factor of two each way its
/// 90 % span. Empty with fewer than five trials in three bottles, or none that failed.
std::optional<OwnFigure> ownOxygenLimit(std::span<const std::vector<KeepingTrial>> bottles,
                                        MillimolesPerLitre calibrated);

} // namespace ullage::chemistry
