// Whether a single line is what was entered, for readers that no fold vouches for.
#pragma once

#include "core/ledger/entry.h"
#include "core/store/chain.h"

#include <optional>
#include <utility>
#include <variant>

namespace ullage::store
{

/// Belongs to one thread, as its connection does.
class LineProof
{
public:
    explicit LineProof(Connection& connection);

    /// What faultOf() reads of entries called `e`, to stand in a SELECT: number, type, id, line,
    /// hash, and the hash of the entry before. The line is the fourth.
    static QString columns();
    static constexpr int kLine = 3; ///< the line's place among them
    /// The whole SELECT for entries `e` of which `which` holds; after the columns() their batch.
    static QString select(const char* which);
    static constexpr int kBatch = 6; ///< the batch's place

    /// What is wrong with the entry whose columns() begin at `first` in the row: NotAsEntered,
    /// named after it. Nothing for one that was faulty before books had hashes: it is read as it
    /// always was, if it can be. Fails with StoreFailed.
    Result<std::optional<Error>> faultOf(const Rows& row, int first = 0);
    /// The same, looked up by the entry's number.
    Result<std::optional<Error>> faultOf(std::int64_t entry);
    /// The entry itself, by columns() from 0 on; an event of the batch that select() gave, with its
    /// number. NotAsEntered, or what is wrong with its line, named after it.
    Result<ledger::Entry> entry(const Rows& row);
    /// The same where all are of one type; StoreFailed for a line of another.
    template <class What>
    Result<What> of(const Rows& row)
    {
        return entry(row).and_then([](ledger::Entry found) -> Result<What> {
            auto* what = std::get_if<What>(&found.what);
            return what ? Result<What>(std::move(*what)) : refuse(anotherType());
        });
    }

private:
    static Error anotherType();

    Connection& m_connection;
    Statement m_one;
    LineHasher m_hasher;
};

} // namespace ullage::store
