// Statistics of a whole book: reads and folds every batch that has to do with the period.
#pragma once

#include "core/ledger/statistics.h"
#include "core/ledger/store_port.h"

#include <functional>

namespace ullage::ledger
{

struct StatisticsRequest {
    Period period;
    Calendar calendar;      ///< called on the reader's thread
    chemistry::Instant now; ///< batches in use are counted as of it
    bool bottles = false;   ///< with the lists of those mixed and ended in the period
    /// Told after every batch how many of how many are done; false gives up. May be empty; called
    /// on the reader's thread.
    std::function<bool(int done, int all)> progress;
};

/// Empty if it was given up. It reads one batch after another and keeps none. Refuses what the
/// store refuses to hand out (StoreFailed, NotAsEntered) and what a fold refuses: one batch that
/// cannot be read leaves no statistics.
Result<std::optional<Statistics>> readStatistics(StorePort& store,
                                                 const formulary::Formulary& formulary,
                                                 const StatisticsRequest& request);

/// The same with the formulary read too.
Result<std::optional<Statistics>> readStatistics(StorePort& store,
                                                 const StatisticsRequest& request);

} // namespace ullage::ledger
