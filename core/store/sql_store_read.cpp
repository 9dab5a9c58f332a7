// What SqlStore finds.
#include "core/store/journal_codec.h"
#include "core/store/sql_statements.h"

#include <algorithm>

namespace ullage::store
{

using namespace ledger;

namespace
{

chemistry::Instant instant(std::int64_t milliseconds)
{
    return chemistry::Instant(std::chrono::milliseconds(milliseconds));
}

Result<bool> any(Result<Rows> rows) { return rows ? rows->next() : tl::unexpected(rows.error()); }

// Calls `take` for every row; stops at the first failure.
template <class Take>
Result<void> each(Result<Rows> rows, Take take)
{
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    while (true) {
        const Result<bool> more = rows->next();
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more) {
            return {};
        }
        if (Result<void> fine = take(*rows); !fine) {
            return fine;
        }
    }
}

template <class T>
Result<std::optional<T>> firstOf(Result<std::vector<T>> found)
{
    if (!found) {
        return tl::unexpected(found.error());
    }
    return found->empty() ? std::optional<T>() : std::optional<T>(std::move(found->front()));
}

// Entries of one type, by their lines.
template <class What>
Result<std::vector<What>> entriesFrom(Result<Rows> rows)
{
    std::vector<What> found;
    return each(std::move(rows),
                [&](const Rows& row) -> Result<void> {
                    auto entry = decodeStored(row.bytes(0));
                    if (!entry) {
                        return tl::unexpected(entry.error());
                    }
                    auto* what = std::get_if<What>(&entry->what);
                    if (!what) {
                        return refuse(storeFailure(QStringLiteral("a line of another type")));
                    }
                    found.push_back(std::move(*what));
                    return {};
                })
        .map([&] { return std::move(found); });
}

} // namespace

Result<std::int64_t> SqlStore::lastEntry()
{
    std::int64_t last = 0;
    return each(m_statements->lastEntry.run(),
                [&](const Rows& row) -> Result<void> {
                    last = row.number(0);
                    return {};
                })
        .map([&] { return last; });
}

Result<std::optional<bool>> SqlStore::sameContent(const Entry& entry)
{
    std::optional<bool> same;
    return each(m_statements->bodyOf.run(std::string(entry.type()), entry.id()),
                [&](const Rows& row) -> Result<void> {
                    same = store::sameContent(row.bytes(0), encode(entry));
                    return {};
                })
        .map([&] { return same; });
}

Result<std::vector<Entry>> SqlStore::definitions()
{
    std::vector<Entry> found;
    return each(m_statements->definitions.run(),
                [&](const Rows& row) -> Result<void> {
                    auto entry = decodeStored(row.bytes(0));
                    if (!entry) {
                        return tl::unexpected(entry.error());
                    }
                    found.push_back(std::move(*entry));
                    return {};
                })
        .map([&] { return std::move(found); });
}

Result<std::vector<Event>> SqlStore::eventsFrom(Result<Rows> rows)
{
    std::vector<Event> found;
    return each(std::move(rows),
                [&](const Rows& row) -> Result<void> {
                    auto entry = decodeStored(row.bytes(0));
                    if (!entry) {
                        return tl::unexpected(entry.error());
                    }
                    auto* event = std::get_if<Event>(&entry->what);
                    if (!event) {
                        return refuse(storeFailure(QStringLiteral("an event's line is no event")));
                    }
                    // A voiding need not name its batch on its line; the book found out which.
                    event->batch = row.text(1);
                    found.push_back(std::move(*event));
                    return {};
                })
        .map([&] { return std::move(found); });
}

Result<std::optional<Event>> SqlStore::event(const std::string& id)
{
    return firstOf(eventsFrom(m_statements->event.run(id)));
}

Result<std::vector<Event>> SqlStore::eventsOf(const std::string& batch)
{
    return eventsFrom(m_statements->eventsOf.run(batch));
}

Result<std::vector<Event>> SqlStore::eventsOfAction(std::int64_t action)
{
    return eventsFrom(m_statements->eventsOfAction.run(action));
}

Result<std::optional<FilmRecord>> SqlStore::film(const std::string& id)
{
    return firstOf(entriesFrom<FilmRecord>(m_statements->film.run(id)));
}

Result<std::vector<FilmMark>> SqlStore::marksOf(const std::string& film)
{
    return entriesFrom<FilmMark>(m_statements->marksOf.run(film));
}

Result<std::vector<FilmMark>> SqlStore::marksOfAction(std::int64_t action)
{
    return entriesFrom<FilmMark>(m_statements->marksOfAction.run(action));
}

Result<std::vector<BatchState>> SqlStore::statesFrom(Result<Rows> rows)
{
    std::vector<BatchState> found;
    return each(std::move(rows),
                [&](const Rows& row) -> Result<void> {
                    BatchState state{row.text(0), row.text(1), row.text(2), instant(row.number(3)),
                                     std::nullopt};
                    if (!row.isNull(4)) {
                        state.endedAt = instant(row.number(4));
                    }
                    found.push_back(std::move(state));
                    return {};
                })
        .map([&] { return std::move(found); });
}

Result<std::optional<BatchState>> SqlStore::batch(const std::string& id)
{
    return firstOf(statesFrom(m_statements->batch.run(id)));
}

Result<std::vector<BatchState>> SqlStore::batches(chemistry::Instant at, bool ended)
{
    const std::int64_t moment = at.time_since_epoch().count();
    return statesFrom(ended ? m_statements->batches.run(moment)
                            : m_statements->batchesInUse.run(moment, moment));
}

Result<std::vector<Event>> SqlStore::mixings(chemistry::Instant from, chemistry::Instant to)
{
    return eventsFrom(m_statements->mixings.run(std::int64_t{from.time_since_epoch().count()},
                                                std::int64_t{to.time_since_epoch().count()}));
}

Result<bool> SqlStore::has(std::string_view type, const std::string& id)
{
    return any(m_statements->has.run(std::string(type), id));
}

Result<bool> SqlStore::hasRun(const std::string& run) { return any(m_statements->hasRun.run(run)); }

Result<std::vector<Action>> SqlStore::actions(int count)
{
    std::vector<Action> found;
    return each(m_statements->actions.run(count),
                [&](const Rows& row) -> Result<void> {
                    found.push_back({row.number(0), static_cast<ActionMode>(row.number(1)),
                                     row.text(2), row.text(3), row.number(4)});
                    return {};
                })
        .map([&] {
            std::reverse(found.begin(), found.end());
            return std::move(found);
        });
}

} // namespace ullage::store
