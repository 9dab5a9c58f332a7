#include "core/store/entry_table.h"

#include "core/store/damage.h"
#include "core/store/each_row.h"
#include "core/store/event_columns.h"
#include "core/store/journal_codec.h"
#include "core/store/stored_moment.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

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

} // namespace

EntryTable::EntryTable(Connection& connection, ChainGrowth& growth)
    : m_connection(&connection), m_growth(&growth), m_proof(connection),
      m_newest(connection, QStringLiteral("SELECT seq, hash FROM entry ORDER BY seq DESC LIMIT 1")),
      m_putEntry(
          connection,
          QStringLiteral("INSERT INTO entry (type, id, action, batch, kind, at_ms, volume_ml, "
                         "films, run, voids, person, film, from_batch, to_batch, item, "
                         "container, body, hash) "
                         "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")),
      m_bodyOf(connection, QStringLiteral("SELECT body FROM entry WHERE type = ? AND id = ?")),
      m_definitions(
          connection,
          LineProof::select("e.type IN ('solution', 'vessel', 'development-time') ORDER BY e.seq")),
      m_hashOf(connection,
               QStringLiteral(
                   "SELECT CAST(type AS BLOB), CAST(id AS BLOB), hash FROM entry WHERE seq = ?")),
      m_event(connection, LineProof::select("e.type = 'event' AND e.id = ?")),
      // With what the batch keeps of its entries, read in the same moment.
      m_eventsOf(
          connection,
          QStringLiteral("SELECT CAST(entry.body AS BLOB), entry.batch, CAST(entry.type AS BLOB), "
                         "CAST(entry.id AS BLOB), batch.entries, batch.hash, entry.seq FROM entry "
                         "LEFT JOIN batch ON batch.id = entry.batch WHERE entry.batch = ? ORDER BY "
                         "entry.seq")),
      m_batchEntries(connection,
                     QStringLiteral("SELECT entries FROM batch WHERE id = ? AND NOT EXISTS "
                                    "(SELECT 1 FROM entry WHERE entry.batch = ?)")),
      // A can's line names a batch too, and has none.
      m_filledWith(connection,
                   QStringLiteral(
                       "SELECT batch FROM entry WHERE from_batch = ?1 AND batch IS NOT NULL UNION "
                       "SELECT batch FROM entry WHERE to_batch = ?2 AND batch IS NOT NULL")),
      m_unpaired(
          connection,
          QStringLiteral(
              "SELECT 1 FROM entry AS heir WHERE from_batch IS NOT NULL AND batch IS NOT NULL "
              "AND NOT EXISTS (SELECT 1 FROM entry AS donor WHERE donor.to_batch = heir.batch "
              "AND donor.batch = heir.from_batch AND donor.at_ms = heir.at_ms "
              "AND donor.volume_ml = heir.volume_ml) LIMIT 1")),
      m_eventsOfAction(connection,
                       LineProof::select("e.action = ? AND e.type = 'event' ORDER BY e.seq")),
      m_eventsWith(
          connection,
          LineProof::select("e.type = 'event' AND e.action = (SELECT one.action FROM entry AS one "
                            "JOIN action ON action.id = one.action WHERE one.type = 'event' "
                            "AND one.id = ? AND action.mode <> ? AND action.what <> ?) ORDER BY "
                            "e.seq")),
      m_film(connection, LineProof::select("e.type = 'film' AND e.id = ?")),
      // The plus: by its run, not by an index of all films.
      m_filmLines(connection, LineProof::select("e.run = ? AND +e.type = 'film' ORDER BY e.seq")),
      m_filmsOfAction(connection,
                      LineProof::select("e.action = ? AND e.type = 'film' ORDER BY e.seq")),
      m_marksOf(connection,
                LineProof::select("e.film = ? AND e.kind = 'film-mark' ORDER BY e.seq")),
      m_marksOfAction(connection,
                      LineProof::select("e.action = ? AND e.type = 'film-mark' ORDER BY e.seq")),
      m_vesselsOfAction(connection,
                        LineProof::select("e.action = ? AND e.type = 'vessel' ORDER BY e.seq")),
      m_mixings(connection,
                LineProof::select("e.kind = 'mixed' AND e.type = 'event' "
                                  "AND e.at_ms BETWEEN ? AND ? ORDER BY e.at_ms, e.seq")),
      m_has(connection, QStringLiteral("SELECT 1 FROM entry WHERE type = ? AND id = ?")),
      m_hasRun(connection,
               QStringLiteral("SELECT 1 FROM entry WHERE run = ? AND type = 'event' LIMIT 1"))
{
}

Result<void> EntryTable::put(const Entry& entry, std::int64_t action)
{
    const EventColumns columns = eventColumns(entry);
    const std::string type(entry.type());
    const QByteArray body = encode(entry);
    const auto hash = m_growth->next(type, entry.id(), body, columns.batch);
    if (!hash) {
        return tl::unexpected(hash.error());
    }
    return m_putEntry
        .run(type, entry.id(), action, columns.batch, columns.kind, columns.atMs, columns.volume,
             columns.films, columns.run, columns.voids, columns.person, columns.film,
             columns.fromBatch, columns.toBatch, columns.item, columns.container, body, *hash)
        .map([&](const Rows&) { m_growth->entered(m_putEntry.lastId()); });
}

// Entries of one type, by their lines.
template <class What>
Result<std::vector<What>> EntryTable::entriesFrom(Result<Rows> rows)
{
    return madeOfRows(std::move(rows), [&](const Rows& row) { return m_proof.of<What>(row); });
}

Result<Newest> EntryTable::newest()
{
    Newest newest;
    return eachRow(m_newest.run(),
                   [&](const Rows& row) -> Result<void> {
                       newest = {row.number(0), row.blob(1).toStdString()};
                       return {};
                   })
        .map([&] { return std::move(newest); });
}

Result<std::optional<bool>> EntryTable::sameContent(const Entry& entry)
{
    std::optional<bool> same;
    return eachRow(m_bodyOf.run(std::string(entry.type()), entry.id()),
                   [&](const Rows& row) -> Result<void> {
                       same = store::sameContent(row.bytes(0), encode(entry));
                       return {};
                   })
        .map([&] { return same; });
}

// One that is not as it was entered is left out and kept among the faults: a single bad byte must
// not hide a whole book.
Result<std::vector<Entry>> EntryTable::definitions()
{
    std::vector<Entry> found;
    std::vector<Error> unread;
    return eachRow(m_definitions.run(),
                   [&](const Rows& row) -> Result<void> {
                       auto entry = m_proof.entry(row);
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

Result<std::optional<Event>> EntryTable::event(const std::string& id)
{
    return firstOf(entriesFrom<Event>(m_event.run(id)));
}

// What a fold is given is what was entered, or it is not given.
Result<std::vector<Event>> EntryTable::eventsOf(const std::string& batch)
{
    std::vector<Event> found;
    std::vector<std::int64_t> entries;
    std::optional<Error> unread;
    std::optional<BatchChain> kept;
    BatchChain chain;
    auto fine = eachRow(m_eventsOf.run(batch), [&](const Rows& row) -> Result<void> {
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
bool EntryTable::hasLost(const std::string& batch)
{
    std::int64_t count = 0;
    const auto read =
        eachRow(m_batchEntries.run(batch, batch), [&](const Rows& row) -> Result<void> {
            count = row.number(0);
            return {};
        });
    return read && count > 0;
}

// The entry that does not fit; or the batch, if those that are there are sound.
Error EntryTable::whatChanged(const std::string& batch, const std::vector<std::int64_t>& entries)
{
    for (const std::int64_t entry : entries) {
        const auto state = stateOf(*m_connection, entry);
        if (state && (*state == LineState::Changed || *state == LineState::Foreign)) {
            const char* wrong = damageOf(*state);
            Error error = notAsEntered(wrong, entry, {}, {});
            if (const auto named = hashOf(entry); named && *named) {
                error = notAsEntered(wrong, entry, (*named)->type, (*named)->id);
            }
            return error;
        }
    }
    Error error = notAsEntered(damage::kBatch);
    error.subject = batch;
    return error;
}

Result<std::vector<std::string>> EntryTable::filledWith(const std::string& batch)
{
    return firstTexts(m_filledWith.run(batch, batch));
}

Result<std::vector<Event>> EntryTable::eventsOfAction(std::int64_t action)
{
    return entriesFrom<Event>(m_eventsOfAction.run(action));
}

Result<std::vector<Event>> EntryTable::eventsWith(const std::string& event)
{
    return entriesFrom<Event>(m_eventsWith.run(event, static_cast<int>(ledger::ActionMode::Apart),
                                               std::string(ledger::kImportAction)));
}

Result<std::optional<FilmRecord>> EntryTable::film(const std::string& id)
{
    return firstOf(entriesFrom<FilmRecord>(m_film.run(id)));
}

Result<std::vector<FilmRecord>> EntryTable::filmLines(const std::string& run)
{
    return entriesFrom<FilmRecord>(m_filmLines.run(run));
}

Result<std::vector<FilmRecord>> EntryTable::filmsOfAction(std::int64_t action)
{
    return entriesFrom<FilmRecord>(m_filmsOfAction.run(action));
}

Result<std::vector<FilmMark>> EntryTable::marksOf(const std::string& film)
{
    return entriesFrom<FilmMark>(m_marksOf.run(film));
}

Result<std::vector<FilmMark>> EntryTable::marksOfAction(std::int64_t action)
{
    return entriesFrom<FilmMark>(m_marksOfAction.run(action));
}

Result<std::vector<formulary::Vessel>> EntryTable::vesselsOfAction(std::int64_t action)
{
    return entriesFrom<formulary::Vessel>(m_vesselsOfAction.run(action));
}

Result<std::vector<Event>> EntryTable::mixings(chemistry::Instant from, chemistry::Instant to)
{
    return entriesFrom<Event>(m_mixings.run(millisecondsOf(from), millisecondsOf(to)));
}

Result<bool> EntryTable::hasUnpaired() { return any(m_unpaired.run()); }

Result<bool> EntryTable::has(std::string_view type, const std::string& id)
{
    return any(m_has.run(std::string(type), id));
}

Result<bool> EntryTable::hasRun(const std::string& run) { return any(m_hasRun.run(run)); }

Result<std::optional<EntryTable::Hashed>> EntryTable::hashOf(std::int64_t entry)
{
    std::optional<Hashed> found;
    return eachRow(m_hashOf.run(entry),
                   [&](const Rows& row) -> Result<void> {
                       found = Hashed{row.blob(0), row.blob(1), digestFromBytes(row.blob(2))};
                       return {};
                   })
        .map([&] { return found; });
}

} // namespace ullage::store
