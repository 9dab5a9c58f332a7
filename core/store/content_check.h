// What a book says, read whole: that every entry can be read and agrees with its columns, every
// reference, the fold of every batch, and what the table of batches keeps of it.
#pragma once

#include "core/store/connection.h"
#include "core/store/progress.h"

#include <functional>

namespace ullage::store
{

struct ContentCheck {
    std::int64_t entries = 0;
    std::int64_t events = 0;
    std::int64_t batches = 0; ///< that were mixed
};

/// Reads everything once, the events batch by batch, so that no more than one batch is held in
/// memory. Everything wrong goes to `found`, with the entry or the batch it is about. `trusted`:
/// lines have hashes that vouch for what was read strictly when they were entered; without it
/// (a book of before) they are read as strictly as a journal, and hashes are not asked for.
/// StoreFailed where the store cannot be read, Cancelled.
Result<ContentCheck> checkContent(Connection& connection, bool trusted,
                                  const std::function<void(Error)>& found, const Watch& watch);

} // namespace ullage::store
