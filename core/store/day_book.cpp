#include "core/store/day_book.h"

#include "core/store/each_row.h"
#include "core/store/journal_codec.h"
#include "core/store/stored_moment.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

constexpr int kSlice = 20'000; // some tens of milliseconds of searching

// A mark in the shape of an event: what rows are sorted, timed and told apart by.
Event asEvent(const FilmMark& mark)
{
    return {mark.id, {}, mark.at, Noted{mark.note}, {}, mark.by};
}

} // namespace

Result<DayEntry> dayEntry(const DayRow& row)
{
    auto read = decodeStored(row.body);
    if (!read) {
        return tl::unexpected(read.error());
    }
    DayEntry entry;
    entry.key = row.key();
    if (auto* event = std::get_if<Event>(&read->what)) {
        entry.event = std::move(*event);
        entry.event.batch = row.batch;
    } else if (auto* mark = std::get_if<FilmMark>(&read->what)) {
        entry.event = asEvent(*mark);
        entry.mark = std::move(*mark);
    } else {
        return refuse(storeFailure(QStringLiteral("a row that nothing happened in")));
    }
    return entry;
}

DayBook::DayBook(SqlStore& store, SearchIndex* index)
    : m_store(store), m_index(index), m_texts(store), m_proof(store.connection()),
      m_name(store.connection(), QStringLiteral("SELECT name FROM batch WHERE id = ?")),
      m_mixing(store.connection(), LineProof::select("e.batch = ? AND e.kind = 'mixed' "
                                                     "ORDER BY e.seq DESC LIMIT 1")),
      m_thing(store.connection(),
              LineProof::select("e.type IN ('packet', 'chemical', 'supply', 'container') "
                                "AND e.id = ? ORDER BY e.seq LIMIT 1")),
      m_voidings(store.connection(), LineProof::select("e.voids = ? ORDER BY e.seq DESC")),
      m_ofRun(store.connection(), LineProof::select("e.run = ? ORDER BY e.seq")),
      m_actionsOfRun(store.connection(),
                     QStringLiteral("SELECT id, action FROM entry WHERE run = ? AND "
                                    "+kind = 'processed'")),
      // Skips from one name to the next; there are few, whatever the number of entries.
      m_people(store.connection(),
               QStringLiteral("WITH RECURSIVE one(name) AS (SELECT min(person) FROM entry WHERE "
                              "person IS NOT NULL UNION ALL SELECT (SELECT min(person) FROM entry "
                              "WHERE person > one.name) FROM one WHERE one.name IS NOT NULL) "
                              "SELECT name FROM one WHERE name IS NOT NULL")),
      m_bottles(store.connection(),
                QStringLiteral("SELECT id, name, solution, mixed_ms, ended_ms FROM batch "
                               "ORDER BY mixed_ms DESC, id LIMIT ?")),
      m_lines(store.connection(),
              QStringLiteral("SELECT seq, body FROM entry WHERE type = ? AND id = ?"))
{
}

Result<std::optional<DayKey>> DayBook::sliceEnd(const DayFilter& filter,
                                                const std::optional<DayKey>& after)
{
    const Query query = daySliceEnd(filter, after, kSlice);
    Statement statement(m_store.connection(), query.sql);
    std::optional<DayKey> end;
    return eachRow(statement.runWith(query.values),
                   [&](const Rows& row) -> Result<void> {
                       end = DayKey{row.number(0), row.number(1)};
                       return {};
                   })
        .map([&] { return end; });
}

Result<std::vector<DayRow>> DayBook::rows(const Query& query)
{
    Statement statement(m_store.connection(), query.sql);
    return madeOfRows(statement.runWith(query.values),
                      [](const Rows& row) -> Result<DayRow> { return dayRow(row); });
}

Result<DayPage> DayBook::page(const DayFilter& filter, const std::optional<DayKey>& after,
                              int limit, const Stop& stop)
{
    if (!filter.words.empty()) {
        return search(filter, after, limit, stop, [this](const DayRow& row) { return whole(row); });
    }
    DayPage page;
    const auto read = rows(dayRows(filter, after, limit));
    if (!read) {
        return saysDamaged(read.error()) ? pageAround(filter, after, limit, stop)
                                         : tl::unexpected(read.error());
    }
    for (const DayRow& row : *read) {
        auto entry = whole(row);
        if (!entry) {
            return saysDamaged(entry.error()) ? pageAround(filter, after, limit, stop)
                                              : tl::unexpected(entry.error());
        }
        page.entries.push_back(std::move(*entry));
    }
    page.more = static_cast<int>(read->size()) == limit;
    page.last = page.entries.empty() ? after : page.entries.back().key;
    return page;
}

Result<DayTotals> DayBook::count(const DayFilter& filter, const Stop& stop)
{
    if (!filter.words.empty()) {
        return countFound(filter, stop);
    }
    DayTotals totals;
    std::optional<DayKey> after;
    while (true) {
        if (stop && stop()) {
            totals.stopped = true;
            return totals;
        }
        const auto end = sliceEnd(filter, after);
        if (!end && saysDamaged(end.error())) {
            totals.damaged = true;
            return totals;
        }
        if (!end) {
            return tl::unexpected(end.error());
        }
        const Query query = dayCount(filter, after, *end);
        Statement statement(m_store.connection(), query.sql);
        auto fine = eachRow(statement.runWith(query.values), [&](const Rows& row) -> Result<void> {
            totals.entries += static_cast<int>(row.number(0));
            if (!row.isNull(1)) {
                totals.oldest = instantOf(row.number(1));
            }
            return {};
        });
        if (!fine && saysDamaged(fine.error())) {
            totals.damaged = true;
            return totals;
        }
        if (!fine) {
            return tl::unexpected(fine.error());
        }
        if (!*end) {
            return totals;
        }
        after = *end;
    }
}

} // namespace ullage::store
