// Goes through the rows of a statement.
#pragma once

#include "core/store/statement.h"

#include <utility>

namespace ullage::store
{

/// Hands every row to `take` until one is refused: `take(const Rows&)` gives a Result<void>. Takes
/// over what run() gave, so a statement that failed fails here.
template <class Take>
Result<void> eachRow(Result<Rows> rows, Take take)
{
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    while (true) {
        const auto more = rows->next();
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more) {
            return {};
        }
        if (Result<void> fine = take(std::as_const(*rows)); !fine) {
            return fine;
        }
    }
}

} // namespace ullage::store
