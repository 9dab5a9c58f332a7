// Reading a whole book to see that it is sound.
#pragma once

#include "core/store/sql_store.h"

#include <vector>

namespace ullage::store
{

struct BookCheck {
    int entries = 0;
    int events = 0;
    int batches = 0;
    /// What is wrong, each with the id it is about as subject; empty for a sound book.
    std::vector<Error> findings;
};

/// Checks the file (SQLite's own check and foreign keys), that every entry reads back and agrees
/// with its columns, every reference, the fold of every batch, and that the derived table of
/// batches says what the folds say. Fails only where the store cannot be read at all.
Result<BookCheck> checkBook(SqlStore& store);

} // namespace ullage::store
