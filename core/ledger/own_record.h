// What a darkroom's own tests say of a solution, gathered from all its bottles
// (chemistry/own_figures.h has the estimates). Proposals: nothing is taken over by itself.
#pragma once

#include "core/chemistry/own_figures.h"
#include "core/ledger/batch.h"

#include <optional>
#include <vector>

namespace ullage::ledger
{

/// One test as the estimate sees it: at this wear, so many times what a fresh bath needs.
struct OwnTest {
    chemistry::FilmsPerLitre wear;
    double times = 1;
};

/// A look or a strip as the estimate of the oxygen limit sees it.
struct OwnTrial {
    /// The limit that it would just have reached its end by: N ÷ (1 − age's share). One that passed
    /// says that the limit is higher, one that failed that it is lower; infinite where age alone
    /// had spent it.
    chemistry::MillimolesPerLitre limit;
    bool passed = false;
};

struct OwnRecord {
    /// A fixer's, in films per litre: from clearing tests, each beside the fresh test of its film.
    std::optional<chemistry::OwnFigure> capacity;
    /// A developer's with the rule per film, in percent: from control strips.
    std::optional<chemistry::OwnFigure> wear;
    std::vector<OwnTest> tests; ///< what either is made of
    /// A developer's oxygen limit, in mmol/L: from looks and strips of bottles that were worn
    /// little.
    std::optional<chemistry::OwnFigure> oxygen;
    /// The same as the days that a half-full bottle keeps (formulary::halfTimeFor()).
    std::optional<chemistry::OwnFigure> halfDays;
    std::vector<OwnTrial> trials; ///< what it is made of
};

/// From the batches of this solution, whole folds; others are passed over only if they hold no
/// test that counts. A test counts in the bottle it was made in; of a bottle of unknown history no
/// clearing test, look or strip does.
OwnRecord ownRecord(const formulary::Solution& solution, const std::vector<Batch>& batches);

} // namespace ullage::ledger
