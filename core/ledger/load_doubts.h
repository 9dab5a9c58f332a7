// What of a load looks like a slip of the keys: more than a bottle can still do, more than a tank
// takes. Nothing is refused for it; whoever enters the load is asked.
#pragma once

#include "core/ledger/book.h"
#include "core/ledger/run_plan.h"

#include <span>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// Convention, no source: hand tanks end below this.
inline constexpr chemistry::Films kMostInATank{20};

struct LoadDoubts {
    chemistry::Films load;
    struct Beyond {
        std::string batch;
        chemistry::Films left; ///< what it can still do, less than the load
    };
    std::vector<Beyond> beyond; ///< in the order of the baths
    bool manyForATank = false;  ///< above kMostInATank

    [[nodiscard]] bool any() const { return manyForATank || !beyond.empty(); }
};

/// `judged` are bottles as they were when the load went through; what is thrown away after it is
/// not worn by it and is not looked at.
LoadDoubts doubtsOf(const FilmRun& run, std::span<const Judged> judged);

} // namespace ullage::ledger
