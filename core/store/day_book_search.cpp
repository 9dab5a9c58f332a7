// Looking for words: rows that an index leads to, or else all of them, newest first, and of those
// the ones that hold the words.
#include "core/store/day_book.h"

#include "core/store/day_search.h"
#include "core/store/stored_moment.h"

#include <algorithm>
#include <limits>

namespace ullage::store
{

namespace
{

constexpr int kStep = 500;        // rows between two looks at whether to go on
constexpr int kLookedAt = 10'000; // rows for one page; then what was found is handed over

// A row before which none of the filter's period stands.
std::optional<DayKey> startOf(const DayFilter& filter, const std::optional<DayKey>& after)
{
    if (!after && filter.until) {
        return DayKey{filter.until->time_since_epoch().count(),
                      std::numeric_limits<std::int64_t>::min()};
    }
    return after;
}

bool isBefore(const std::optional<DayKey>& key, const std::optional<chemistry::Instant>& from)
{
    return key && from && key->atMs < from->time_since_epoch().count();
}

} // namespace

Result<DayPage> DayBook::search(const DayFilter& filter, const std::optional<DayKey>& after,
                                int limit, const Stop& stop,
                                const std::function<Result<DayEntry>(const DayRow&)>& take)
{
    const std::vector<FoldedWord> words(filter.words.begin(), filter.words.end());
    std::unique_ptr<DaySearch> lead;
    if (m_index && filter.batch.empty()) { // a bottle's own rows are few
        auto led = DaySearch::lead(m_store, m_texts, *m_index, filter, words);
        if (!led) {
            return tl::unexpected(led.error());
        }
        lead = std::move(*led);
    }
    DayPage page;
    page.last = startOf(filter, after);
    page.more = true;
    const auto left = [&] { return limit - static_cast<int>(page.entries.size()); };
    for (int looked = 0; page.more && left() > 0 && looked < kLookedAt;) {
        if (stop && stop()) {
            page.stopped = true;
            break;
        }
        std::optional<DayKey> on = page.last;
        Query query;
        if (lead) {
            const auto some = lead->next(page.last, kStep);
            if (!some) {
                return tl::unexpected(some.error());
            }
            if (!*some) {
                lead.reset(); // the index failed: from here on foot
                continue;
            }
            looked += static_cast<int>((*some)->keys.size());
            page.more = !(*some)->all && !isBefore((*some)->on, filter.from);
            on = (*some)->on;
            query = dayRowsOf(filter, (*some)->keys);
        } else {
            query = dayRows(filter, page.last, kStep);
        }
        auto found = rows(query);
        if (!found) {
            return tl::unexpected(found.error());
        }
        if (!lead) {
            looked += static_cast<int>(found->size());
            page.more = static_cast<int>(found->size()) == kStep;
            on = found->empty() ? on : found->back().key();
        }
        std::sort(found->begin(), found->end(), [](const DayRow& a, const DayRow& b) {
            return std::pair(a.atMs, a.seq) > std::pair(b.atMs, b.seq);
        });
        for (const DayRow& row : *found) {
            const auto holds = m_texts.holds(row, words);
            if (!holds) {
                return tl::unexpected(holds.error());
            }
            if (!*holds) {
                continue;
            }
            auto entry = take(row);
            if (!entry) {
                return tl::unexpected(entry.error());
            }
            page.entries.push_back(std::move(*entry));
            if (left() == 0) {
                on = row.key();
                page.more = page.more || &row != &found->back();
                break;
            }
        }
        page.last = on;
    }
    return page;
}

Result<DayTotals> DayBook::countFound(const DayFilter& filter, const Stop& stop)
{
    const auto moment = [](const DayRow& row) -> Result<DayEntry> {
        DayEntry entry;
        entry.key = row.key();
        return entry;
    };
    DayTotals totals;
    std::optional<DayKey> after;
    while (true) {
        const auto page = search(filter, after, kMostCounted + 1 - totals.entries, stop, moment);
        if (!page) {
            return tl::unexpected(page.error());
        }
        totals.entries += static_cast<int>(page->entries.size());
        if (!page->entries.empty()) {
            totals.oldest = instantOf(page->entries.back().key.atMs);
        }
        totals.stopped = page->stopped;
        totals.more = totals.entries > kMostCounted;
        if (totals.stopped || totals.more || !page->more) {
            totals.entries = std::min(totals.entries, kMostCounted);
            return totals;
        }
        after = page->last;
    }
}

} // namespace ullage::store
