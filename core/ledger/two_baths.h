// Two fixing baths, one after the other: which is the second, which goes with which, and when the
// first makes room. The film clears in the first and stays as long again in the second (NAVEDTRA
// 14209, Life of a Fixing Bath).
#pragma once

#include "core/ledger/run_plan.h"

#include <optional>
#include <vector>

namespace ullage::ledger
{

/// Whether a fixer was the second bath of its last load.
bool isSecondBath(const Batch& batch);

/// Whether `second` was the second bath of a load that `first` was the first one of, and nothing
/// has changed that since.
bool goesBefore(const Batch& first, const Batch& second);

/// Index of the bath that follows this fixer: the partner of its loads, else a second bath of the
/// same solution whose own first is not in use any more. Empty where there is none, or where it is
/// the second itself.
std::optional<std::size_t> secondBathAfter(const Batch& first,
                                           const std::vector<const Batch*>& batches);

/// A first bath that has doubled its clearing time, and the one that takes its place.
struct ExchangeDue {
    std::size_t first = 0;
    std::size_t second = 0;
};
/// The exchange that is due on this shelf, if one is.
std::optional<ExchangeDue> exchangeDue(const std::vector<Judged>& judged);

} // namespace ullage::ledger
