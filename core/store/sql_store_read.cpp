// What SqlStore finds.
#include "core/store/chain_growth.h"
#include "core/store/each_row.h"
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

// A line of the book that cannot be read, by its place.
Error placed(Error error, const Rows& row, int seq, int type, int id)
{
    error.entry = row.number(seq);
    error.entryType = QString::fromUtf8(row.blob(type)).toStdString();
    error.subject = QString::fromUtf8(row.blob(id)).toStdString();
    return error;
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
Result<std::vector<What>> entriesFrom(LineProof& proof, Result<Rows> rows)
{
    std::vector<What> found;
    return eachRow(std::move(rows),
                   [&](const Rows& row) -> Result<void> {
                       auto entry = proof.entry(row);
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

// Its hash is over every entry before it, too.
Result<Newest> SqlStore::newest()
{
    Newest newest;
    return eachRow(m_statements->newest.run(),
                   [&](const Rows& row) -> Result<void> {
                       newest = {row.number(0), row.blob(1).toStdString()};
                       return {};
                   })
        .map([&] { return std::move(newest); });
}

Result<std::optional<bool>> SqlStore::sameContent(const Entry& entry)
{
    std::optional<bool> same;
    return eachRow(m_statements->bodyOf.run(std::string(entry.type()), entry.id()),
                   [&](const Rows& row) -> Result<void> {
                       same = store::sameContent(row.bytes(0), encode(entry));
                       return {};
                   })
        .map([&] { return same; });
}

// One that is not as it was entered is left out and kept among the faults: a single bad byte must
// not hide a whole book.
Result<std::vector<Entry>> SqlStore::definitions()
{
    std::vector<Entry> found;
    std::vector<Error> unread;
    return eachRow(m_statements->definitions.run(),
                   [&](const Rows& row) -> Result<void> {
                       auto entry = m_statements->proof.entry(row);
                       if (entry) {
                           found.push_back(std::move(*entry));
                       } else if (entry.error().code == ErrorCode::StoreFailed) {
                           return tl::unexpected(entry.error());
                       } else {
                           unread.push_back(entry.error());
                       }
                       return {};
                   })
        .map([&] {
            m_unread = std::move(unread);
            return std::move(found);
        });
}

Result<std::vector<Event>> SqlStore::eventsFrom(Result<Rows> rows)
{
    std::vector<Event> found;
    return eachRow(std::move(rows),
                   [&](const Rows& row) -> Result<void> {
                       auto entry = m_statements->proof.entry(row);
                       if (!entry) {
                           return tl::unexpected(entry.error());
                       }
                       auto* event = std::get_if<Event>(&entry->what);
                       if (!event) {
                           return refuse(
                               storeFailure(QStringLiteral("an event's line is no event")));
                       }
                       found.push_back(std::move(*event));
                       return {};
                   })
        .map([&] { return std::move(found); });
}

Result<std::optional<Event>> SqlStore::event(const std::string& id)
{
    return firstOf(eventsFrom(m_statements->event.run(id)));
}

// What a fold is given is what was entered, or it is not given.
Result<std::vector<Event>> SqlStore::eventsOf(const std::string& batch)
{
    std::vector<Event> found;
    std::vector<std::int64_t> entries;
    std::optional<Error> unread;
    std::optional<BatchChain> kept;
    BatchChain chain;
    auto fine = eachRow(m_statements->eventsOf.run(batch), [&](const Rows& row) -> Result<void> {
        const QByteArray body = row.blob(0);
        chain = {chain.entries + 1,
                 m_growth->hasher().next(chain.hash, row.blob(2), row.blob(3), body)};
        entries.push_back(row.number(6));
        if (const auto hash = digestFromBytes(row.blob(5)); hash && !row.isNull(4)) {
            kept = BatchChain{row.number(4), *hash};
        }
        auto entry = decodeStored(body);
        auto* event = entry ? std::get_if<Event>(&entry->what) : nullptr;
        if (event) {
            event->batch = row.text(1); // a voiding need not name it on its line
            event->entry = row.number(6);
            found.push_back(std::move(*event));
        } else if (!unread) {
            unread =
                placed(entry ? Error{.code = ErrorCode::Conflict, .field = "type"} : entry.error(),
                       row, 6, 2, 3);
        }
        return {};
    });
    if (!fine) {
        return tl::unexpected(fine.error());
    }
    const BatchChain* touched = m_growth->touched(batch);
    if (touched) {
        kept = *touched;
    }
    if (entries.empty() ? hasLost(batch) : kept && *kept != chain) {
        return refuse(whatChanged(batch, entries));
    }
    return unread ? Result<std::vector<Event>>(refuse(std::move(*unread))) : std::move(found);
}

// A batch of which there is a row that counts entries, and none of them.
bool SqlStore::hasLost(const std::string& batch)
{
    std::int64_t count = 0;
    const auto read =
        eachRow(m_statements->batchEntries.run(batch, batch), [&](const Rows& row) -> Result<void> {
            count = row.number(0);
            return {};
        });
    return read && count > 0;
}

// The entry that does not fit; or the batch, if those that are there are sound.
Error SqlStore::whatChanged(const std::string& batch, const std::vector<std::int64_t>& entries)
{
    for (const std::int64_t entry : entries) {
        const auto state = stateOf(*m_connection, entry);
        if (state && (*state == LineState::Changed || *state == LineState::Foreign)) {
            const char* wrong = damageOf(*state);
            Error error = notAsEntered(wrong, entry, {}, {});
            (void)eachRow(m_statements->hashOf.run(entry), [&](const Rows& row) -> Result<void> {
                error = notAsEntered(wrong, entry, row.blob(0), row.blob(1));
                return {};
            });
            return error;
        }
    }
    Error error = notAsEntered(damage::kBatch);
    error.subject = batch;
    return error;
}

Result<std::vector<std::string>> SqlStore::filledWith(const std::string& batch)
{
    std::vector<std::string> found;
    return eachRow(m_statements->filledWith.run(batch, batch),
                   [&](const Rows& row) -> Result<void> {
                       found.push_back(row.text(0));
                       return {};
                   })
        .map([&] { return std::move(found); });
}

Result<std::vector<Event>> SqlStore::eventsOfAction(std::int64_t action)
{
    return eventsFrom(m_statements->eventsOfAction.run(action));
}

Result<std::vector<Event>> SqlStore::eventsWith(const std::string& event)
{
    return eventsFrom(
        m_statements->eventsWith.run(event, static_cast<int>(ledger::ActionMode::Apart)));
}

Result<std::optional<FilmRecord>> SqlStore::film(const std::string& id)
{
    return firstOf(entriesFrom<FilmRecord>(m_statements->proof, m_statements->film.run(id)));
}

Result<std::vector<FilmMark>> SqlStore::marksOf(const std::string& film)
{
    return entriesFrom<FilmMark>(m_statements->proof, m_statements->marksOf.run(film));
}

Result<std::vector<FilmMark>> SqlStore::marksOfAction(std::int64_t action)
{
    return entriesFrom<FilmMark>(m_statements->proof, m_statements->marksOfAction.run(action));
}

Result<std::vector<BatchState>> SqlStore::statesFrom(Result<Rows> rows)
{
    std::vector<BatchState> found;
    return eachRow(std::move(rows),
                   [&](const Rows& row) -> Result<void> {
                       BatchState state{row.text(0), row.text(1), row.text(2),
                                        instant(row.number(3)), std::nullopt};
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

Result<bool> SqlStore::hasUnpaired() { return any(m_statements->unpaired.run()); }

Result<bool> SqlStore::has(std::string_view type, const std::string& id)
{
    return any(m_statements->has.run(std::string(type), id));
}

Result<bool> SqlStore::hasRun(const std::string& run) { return any(m_statements->hasRun.run(run)); }

Result<std::vector<Action>> SqlStore::actions(int count)
{
    std::vector<Action> found;
    return eachRow(m_statements->actions.run(count),
                   [&](const Rows& row) -> Result<void> {
                       found.push_back({row.number(0), static_cast<ActionMode>(row.number(1)),
                                        row.text(2), row.text(3), row.number(4), row.text(5)});
                       return {};
                   })
        .map([&] {
            std::reverse(found.begin(), found.end());
            return std::move(found);
        });
}

} // namespace ullage::store
