#include "core/store/sql_store.h"

#include "core/store/chain.h"
#include "core/store/impatience.h"
#include "core/store/lock_table.h"
#include "core/store/page_check.h"
#include "core/store/sql_store_tables.h"

#include <QFile>
#include <QTemporaryDir>

namespace ullage::store
{

using namespace ledger;

SqlStore::SqlStore(std::unique_ptr<Connection> connection, QString path,
                   const StoreOptions& options)
    : m_connection(std::move(connection)), m_place(*m_connection, std::move(path)),
      m_patienceMs(options.busyTimeoutMs),
      m_tables(std::make_unique<Tables>(*m_connection, options.lastSeen, m_place.path()))
{
}

SqlStore::~SqlStore() = default;

Error SqlStore::waitedFor(Error error) const
{
    if (error.code == ErrorCode::Busy) {
        constexpr double kSecond = 1000;
        error.subject = writerOf(path()).toStdString();
        error.high = m_patienceMs / kSecond;
    }
    return error;
}

Result<void> SqlStore::begin()
{
    if (const auto wrong = faults(); !wrong.empty()) {
        return refuse(wrong.front());
    }
    if (auto begun = m_connection->run(QStringLiteral("BEGIN IMMEDIATE")); !begun) {
        return refuse(waitedFor(begun.error()));
    }
    if (auto fine = stayPut(); !fine) {
        return fine;
    }
    auto fine = m_tables->growth.begin();
    if (!fine) {
        rollback();
    }
    return fine;
}

Result<void> SqlStore::beginAtOnce()
{
    const Impatience impatience(*m_connection, m_patienceMs);
    return begin();
}

// After the file went away its log still stands under the old name: whatever is put there would be
// read with it, and the file, wherever it is now, would lack what was confirmed last.
Result<void> SqlStore::stayPut()
{
    auto fine = inPlace();
    if (!fine) {
        rollback();
        if (!m_place.fileInPlace()) {
            (void)foldLog(); // into the file that was opened; what cannot be folded stays
        }
    }
    return fine;
}

Result<void> SqlStore::commit()
{
    if (auto fine = stayPut(); !fine) {
        return fine;
    }
    auto done = m_tables->growth.close().and_then(
        [this] { return m_connection->run(QStringLiteral("COMMIT")); });
    if (!done) {
        rollback();
        return refuse(waitedFor(done.error()));
    }
    m_tables->seen.note(m_tables->growth.head());
    m_tables->growth.end();
    return done;
}

void SqlStore::rollback()
{
    m_tables->growth.end();
    // SQLite may have rolled back by itself (a full disk does that): then there is nothing to do.
    (void)m_connection->run(QStringLiteral("ROLLBACK"));
}

Result<bool> SqlStore::foldLog()
{
    if (!usesLog()) {
        return true;
    }
    if (auto fine = inPlace(); !fine && fine.error().text == "log") {
        return tl::unexpected(fine.error()); // others may have a log of their own by now
    }
    const Impatience impatience(*m_connection, m_patienceMs);
    // The first column tells whether something of it had to stay.
    auto done = m_connection->number(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"))
                    .map([](std::int64_t busy) { return busy == 0; });
    return !done && done.error().code == ErrorCode::Busy ? Result<bool>(false) : done;
}

Result<void> SqlStore::quickCheck(const Watch& watch)
{
    return checkPages(*m_connection, path(), watch);
}

bool SqlStore::takeAway(std::unique_ptr<SqlStore> store)
{
    if (store->m_outcome != SchemaOutcome::Created) {
        return false;
    }
    Connection& connection = *store->m_connection;
    store->m_tables.reset();
    // Leaving the log behind works only for whoever is alone with the book; after that nobody can
    // enter anything while the lock is held, and whoever waits for it finds the file gone
    // (inPlace).
    const auto alone = connection.text(QStringLiteral("PRAGMA journal_mode = DELETE"));
    if (!alone || *alone != QLatin1String("delete") ||
        !connection.run(QStringLiteral("BEGIN EXCLUSIVE"))) {
        return false;
    }
    const auto entries = connection.number(QStringLiteral("SELECT count(*) FROM entry"));
    const bool ours = entries && *entries == 0 && store->m_place.fileInPlace();
    return ours && QFile::remove(store->path());
}

std::vector<Error> SqlStore::faults() const
{
    std::vector<Error> all = m_tables->seen.found();
    const std::vector<Error>& unread = m_tables->entries.unread();
    all.insert(all.end(), unread.begin(), unread.end());
    return all;
}

Result<void> SqlStore::acceptAsSeen() { return m_tables->seen.accept(); }

Result<void> SqlStore::forEachLine(const TakeSoundLine& take, std::vector<Error>* faults)
{
    return forEachSoundLine(*m_connection, take, faults);
}

Result<Newest> SqlStore::newest() { return m_tables->entries.newest(); }

Result<std::int64_t> SqlStore::put(const Action& action) { return m_tables->actions.put(action); }

Result<void> SqlStore::put(const Entry& entry, std::int64_t action)
{
    return m_tables->entries.put(entry, action);
}

Result<void> SqlStore::put(const BatchState& state) { return m_tables->batches.put(state); }

Result<void> SqlStore::dropBatch(const std::string& id) { return m_tables->batches.drop(id); }

Result<std::optional<bool>> SqlStore::sameContent(const Entry& entry)
{
    return m_tables->entries.sameContent(entry);
}

Result<std::vector<Entry>> SqlStore::definitions() { return m_tables->entries.definitions(); }

Result<std::optional<Event>> SqlStore::event(const std::string& id)
{
    return m_tables->entries.event(id);
}

Result<std::vector<Event>> SqlStore::eventsOf(const std::string& batch)
{
    return m_tables->entries.eventsOf(batch);
}

Result<std::vector<std::string>> SqlStore::filledWith(const std::string& batch)
{
    return m_tables->entries.filledWith(batch);
}

Result<std::vector<Entry>> SqlStore::cupboard() { return m_tables->cupboard.lines(); }

Result<std::vector<Event>> SqlStore::eventsOnItem(const std::string& item)
{
    return m_tables->cupboard.eventsOnItem(item);
}

Result<std::vector<Event>> SqlStore::eventsOnItems() { return m_tables->cupboard.eventsOnItems(); }

Result<std::vector<std::string>> SqlStore::itemsTakenFor(const std::string& batch)
{
    return m_tables->cupboard.itemsTakenFor(batch);
}

Result<std::vector<Event>> SqlStore::eventsOnContainer(const std::string& container)
{
    return m_tables->cupboard.eventsOnContainer(container);
}

Result<std::vector<std::string>> SqlStore::itemsEnded(chemistry::Instant at)
{
    return m_tables->cupboard.itemsEnded(at);
}

Result<std::vector<Event>> SqlStore::eventsOfAction(std::int64_t action)
{
    return m_tables->entries.eventsOfAction(action);
}

Result<std::vector<Entry>> SqlStore::cupboardOfAction(std::int64_t action)
{
    return m_tables->cupboard.linesOfAction(action);
}

Result<std::vector<formulary::Vessel>> SqlStore::vesselsOfAction(std::int64_t action)
{
    return m_tables->entries.vesselsOfAction(action);
}

Result<std::vector<Event>> SqlStore::eventsWith(const std::string& event)
{
    return m_tables->entries.eventsWith(event);
}

Result<std::optional<FilmRecord>> SqlStore::film(const std::string& id)
{
    return m_tables->entries.film(id);
}

Result<std::vector<FilmRecord>> SqlStore::filmLines(const std::string& run)
{
    return m_tables->entries.filmLines(run);
}

Result<std::vector<FilmRecord>> SqlStore::filmsOfAction(std::int64_t action)
{
    return m_tables->entries.filmsOfAction(action);
}

Result<std::vector<FilmMark>> SqlStore::marksOf(const std::string& film)
{
    return m_tables->entries.marksOf(film);
}

Result<std::vector<FilmMark>> SqlStore::marksOfAction(std::int64_t action)
{
    return m_tables->entries.marksOfAction(action);
}

Result<std::optional<BatchState>> SqlStore::batch(const std::string& id)
{
    return m_tables->batches.batch(id);
}

Result<std::vector<BatchState>> SqlStore::batches(chemistry::Instant at, bool ended)
{
    return m_tables->batches.batches(at, ended);
}

Result<std::vector<Event>> SqlStore::mixings(chemistry::Instant from, chemistry::Instant to)
{
    return m_tables->entries.mixings(from, to);
}

Result<bool> SqlStore::has(std::string_view type, const std::string& id)
{
    return m_tables->entries.has(type, id);
}

Result<bool> SqlStore::hasRun(const std::string& run) { return m_tables->entries.hasRun(run); }

Result<std::vector<Action>> SqlStore::actions(int count) { return m_tables->actions.last(count); }

Result<bool> SqlStore::hasUnpaired() { return m_tables->entries.hasUnpaired(); }

Result<std::optional<QByteArray>> SqlStore::note(const std::string& key)
{
    return m_tables->notes.note(key);
}

Result<void> SqlStore::putNote(const std::string& key, const QByteArray& value)
{
    return m_tables->notes.put(key, value);
}

Result<void> SqlStore::dropNote(const std::string& key) { return m_tables->notes.drop(key); }

Result<std::map<std::string, QByteArray>> SqlStore::notes(const std::string& prefix)
{
    return m_tables->notes.notes(prefix);
}

} // namespace ullage::store
