// Reading a whole book to see that it is sound.
#pragma once

#include "core/store/fault_names.h"
#include "core/store/progress.h"
#include "core/store/sql_store.h"

#include <vector>

namespace ullage::store
{

struct BookCheck {
    std::int64_t entries = 0;
    std::int64_t events = 0;
    std::int64_t batches = 0;
    /// What is wrong, each with the entry, or else the batch or table, it is about as subject;
    /// empty for a sound book. The first kMostFaults (chain.h) of them.
    std::vector<Error> findings;
    std::int64_t unlisted = 0; ///< findings beyond those
    FaultNames names;          ///< what the findings are about
};

/// Checks the file (SQLite's own check and foreign keys), the schema against the program's own, the
/// chain and what was seen of it last, that every entry reads back and agrees with its columns,
/// every reference, the fold of every batch, and that the derived table of batches says what the
/// folds say. All from one moment's view, in bounded memory; others may write meanwhile. Where the
/// file cannot be read on, that is a finding too. Fails only with Cancelled, or where nothing can
/// be read at all.
Result<BookCheck> checkBook(SqlStore& store, const Watch& watch = {});

} // namespace ullage::store
