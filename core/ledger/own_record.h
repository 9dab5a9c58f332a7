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

struct OwnRecord {
    /// A fixer's, in films per litre: from clearing tests, each beside the fresh test of its film.
    std::optional<chemistry::OwnFigure> capacity;
    /// A developer's with the rule per film, in percent: from control strips.
    std::optional<chemistry::OwnFigure> wear;
    std::vector<OwnTest> tests; ///< what either is made of
};

/// From the batches of this solution, whole folds; others are passed over only if they hold no
/// test that counts. A test counts in the bottle it was made in; of a bottle of unknown history no
/// clearing test does.
OwnRecord ownRecord(const formulary::Solution& solution, const std::vector<Batch>& batches);

} // namespace ullage::ledger
