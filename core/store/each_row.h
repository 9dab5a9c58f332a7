// Goes through the rows of a statement.
#pragma once

#include "core/store/statement.h"

#include <string>
#include <type_traits>
#include <utility>
#include <vector>

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

/// What `make(const Rows&)` gives for every row, which is a Result, until one is refused.
template <class Make>
auto madeOfRows(Result<Rows> rows, Make make)
    -> Result<std::vector<typename std::invoke_result_t<Make, const Rows&>::value_type>>
{
    std::vector<typename std::invoke_result_t<Make, const Rows&>::value_type> found;
    return eachRow(std::move(rows),
                   [&](const Rows& row) -> Result<void> {
                       auto made = make(row);
                       if (!made) {
                           return tl::unexpected(std::move(made.error()));
                       }
                       found.push_back(std::move(*made));
                       return {};
                   })
        .map([&] { return std::move(found); });
}

/// The texts that stand first in the rows.
inline Result<std::vector<std::string>> firstTexts(Result<Rows> rows)
{
    return madeOfRows(std::move(rows),
                      [](const Rows& row) -> Result<std::string> { return row.text(0); });
}

} // namespace ullage::store
