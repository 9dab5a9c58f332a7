// Topping up after a run: how much, and where it leads.
//
// A solution that is replenished has a rate for each film (its replenish_ml_per_film). What the run
// asks for is films × rate. Where the bottle has no room for that, as much as is missing is poured
// off first; pouring off changes no concentration, so the wear still comes to rest at 1000/rate
// (chemistry/replenishment.h).
#pragma once

#include "core/ledger/batch.h"

#include <optional>
#include <string>

namespace ullage::ledger
{

/// A top-up that is part of a run: entered with it, right after it, and undone with it.
struct RunTopUp {
    std::string batch;             ///< a bath of the run that is poured back
    chemistry::Millilitres volume; ///< added
    chemistry::Millilitres drawn;  ///< poured off before, to make room; 0 or more
    std::string from;              ///< batch it comes from, or empty for freshly mixed
    std::optional<chemistry::Millilitres> airLeft; ///< after it; empty: not said
    std::string solution = {};                     ///< the replenisher it is, or empty
    /// The bottle that this replenisher is drawn from; empty where it is not kept in one.
    std::string drawnFrom = {};
};

/// What a run of `films` through this batch asks for, `lost` having been lost in it. Empty without
/// a rate, without film, and for a rate that would replace all that is there: then a fresh batch is
/// the better advice. `from` and `airLeft` are left to the user. Not rounded; `batch` as before the
/// run.
std::optional<RunTopUp> topUpAfter(const Batch& batch, chemistry::Films films,
                                   chemistry::Millilitres lost);

/// The replenisher that takes all of its wear away again, each film its measure; empty for a
/// solution without one, and where nothing is due.
std::optional<chemistry::Millilitres> replenisherDue(const Batch& batch);

/// The replenisher used so far in volumes of what was first mixed.
double turnovers(const Batch& batch);

/// Where the wear comes to rest if every film is followed by its top-up: at 1000/rate with fresh
/// solution, at nothing with a replenisher of its own. Empty without a rate.
std::optional<chemistry::FilmsPerLitre> wearAtRest(const formulary::Solution& solution);

/// Whether that lies below the capacity, so that topping up holds the solution within it. True
/// where there is no capacity.
bool restHolds(const formulary::Solution& solution);

} // namespace ullage::ledger
