// The day book of a damaged file: what can be read, around what cannot. The indexes still tell
// where entries stand, so each is read by itself.
#include "core/store/day_book.h"

#include "core/store/each_row.h"
#include "core/store/stored_moment.h"

#include <deque>

namespace ullage::store
{

namespace
{

DayEntry holeAt(const DayKey& key, std::int64_t entries)
{
    DayEntry hole;
    hole.key = key;
    hole.event.at = instantOf(key.atMs);
    hole.event.what = ledger::Noted{};
    hole.fault = Error{.code = ErrorCode::BookDamaged};
    hole.hole = DayHole{entries, instantOf(key.atMs), instantOf(key.atMs)};
    return hole;
}

// What stands side by side and cannot be read is one gap.
void addHole(DayPage& page, const DayKey& key)
{
    if (page.entries.empty() || !page.entries.back().hole) {
        page.entries.push_back(holeAt(key, 0));
    }
    DayHole& hole = *page.entries.back().hole;
    ++hole.entries;
    hole.oldest = instantOf(key.atMs);
    page.entries.back().key = key;
}

} // namespace

struct DayBook::Keys {
    std::vector<DayKey> found;
    bool broken = false; ///< an index cannot be read on after these
};

Result<DayBook::Keys> DayBook::keysAfter(const DayFilter& filter,
                                         const std::optional<DayKey>& after, int limit)
{
    Keys keys;
    const Query query = dayKeys(filter, after, limit);
    Statement statement(m_store.connection(), query.sql);
    auto fine = eachRow(statement.runWith(query.values), [&](const Rows& row) -> Result<void> {
        keys.found.push_back({row.number(0), row.number(1)});
        return {};
    });
    keys.broken = !fine;
    return fine || saysDamaged(fine.error()) ? Result<Keys>(std::move(keys))
                                             : tl::unexpected(fine.error());
}

// Below a page of an index that is gone: from the oldest on, up to where it breaks off. The last of
// what can be read, newest first; several, because to look for what comes after the very last may
// lead by the page that is gone.
std::vector<DayKey> DayBook::readableAgain(const DayFilter& filter,
                                           const std::optional<DayKey>& after)
{
    constexpr int kAll = -1;
    constexpr std::size_t kSeveral = 16;
    const Query query = dayKeys(filter, after, kAll, DayOrder::OldestFirst);
    Statement statement(m_store.connection(), query.sql);
    std::deque<DayKey> last;
    (void)eachRow(statement.runWith(query.values), [&](const Rows& row) -> Result<void> {
        last.push_front(DayKey{row.number(0), row.number(1)});
        if (last.size() > kSeveral) {
            last.pop_back();
        }
        return {};
    });
    return {last.begin(), last.end()};
}

Result<std::optional<DayEntry>> DayBook::oneAt(const DayFilter& filter, const DayKey& key)
{
    const auto read = rows(dayRowsOf(filter, {key}));
    if (!read) {
        return tl::unexpected(read.error());
    }
    if (read->empty()) {
        return std::nullopt; // the filter does not let it through
    }
    return whole(read->front()).map([](DayEntry entry) { return std::optional(std::move(entry)); });
}

// The entry itself, or that there is one which cannot be read.
Result<void> DayBook::addAt(const DayFilter& filter, const DayKey& key, DayPage& page)
{
    auto entry = oneAt(filter, key);
    if (!entry && !saysDamaged(entry.error())) {
        return tl::unexpected(entry.error());
    }
    if (!entry) {
        addHole(page, key);
    } else if (*entry) {
        page.entries.push_back(std::move(**entry));
    }
    page.last = key;
    return {};
}

Result<DayPage> DayBook::pageAround(const DayFilter& filter, const std::optional<DayKey>& after,
                                    int limit, const Stop& stop)
{
    DayPage page;
    page.last = after;
    const auto keys = keysAfter(filter, after, limit);
    if (!keys) {
        return tl::unexpected(keys.error());
    }
    for (const DayKey& key : keys->found) {
        if (stop && stop()) {
            page.stopped = true;
            return page;
        }
        if (auto fine = addAt(filter, key, page); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    page.more = static_cast<int>(keys->found.size()) == limit;
    if (!keys->broken) {
        return page;
    }
    // Whatever stood there, not even its number is known.
    const auto below = readableAgain(filter, page.last);
    const DayKey end = below.empty() ? page.last.value_or(DayKey{}) : below.front();
    if (page.entries.empty() || !page.entries.back().hole) {
        page.entries.push_back(holeAt(page.last.value_or(end), 0));
    }
    DayHole& hole = *page.entries.back().hole;
    hole.entries = 0;
    hole.oldest = instantOf(end.atMs);
    page.more = !below.empty();
    for (const DayKey& key : below) {
        if (auto fine = addAt(filter, key, page); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return page;
}

} // namespace ullage::store
