#include "core/store/sql_store.h"

#include "core/store/book_file.h"
#include "core/store/each_row.h"
#include "core/store/journal_mode.h"
#include "core/store/lock_table.h"
#include "core/store/sql_statements.h"

#include <QFileInfo>
#include <QTemporaryDir>

namespace ullage::store
{

namespace
{

// A folder that cannot be written has no room for the files SQLite keeps beside a book; without a
// log there the file alone is the whole book.
FileMode readMode(const QString& path)
{
    return hasRoomBeside(path) || hasLog(path) ? FileMode::Read : FileMode::Frozen;
}

FileMode fileMode(const QString& path, Access access)
{
    switch (access) {
    case Access::Read:
        return readMode(path);
    case Access::Write:
        return FileMode::Write;
    case Access::Create:
        break;
    }
    return FileMode::Create;
}

} // namespace

SqlStore::SqlStore(std::unique_ptr<Connection> connection, QString path)
    : m_connection(std::move(connection)), m_path(std::move(path)),
      m_statements(std::make_unique<Statements>(*m_connection))
{
}

SqlStore::~SqlStore() = default;

Result<std::unique_ptr<SqlStore>> SqlStore::open(const QString& name, const StoreOptions& options)
{
    const auto resolved = bookPath(name);
    if (!resolved) {
        return tl::unexpected(resolved.error());
    }
    const QString& path = *resolved;
    const auto file = inspect(path);
    if (!file) {
        return tl::unexpected(file.error());
    }
    if (file->alone) {
        // Opened, it would be taken for what is left of another file, and removed.
        return refuse(
            {.code = ErrorCode::NotABook, .text = "log alone", .file = name.toStdString()});
    }
    if (file->kind != FileKind::Book && options.access != Access::Create) {
        return refuse({.code = ErrorCode::NotABook,
                       .text = file->kind == FileKind::Missing ? "missing" : "empty",
                       .file = name.toStdString()});
    }
    if (auto fine = checkVersion(file->version, options.steps, path); !fine) {
        return tl::unexpected(fine.error());
    }
    const bool outOfDate = file->version < options.steps.back().version;
    const bool mayWrite = QFileInfo(path).isWritable() && hasRoomBeside(path);
    Access access = options.access;
    if (access == Access::Read && !mayWrite && (outOfDate || hasLog(path))) {
        if (auto store = openAside(path, outOfDate, options); store || outOfDate) {
            return store;
        }
    }
    const Volume place = options.volume(path);
    if (access == Access::Read && mayWrite && (outOfDate || place == Volume::Network)) {
        access = Access::Write; // neither an older schema nor a log on a network is for reading
    }
    std::unique_ptr<SqlStore> store;
    {
        auto connection = Connection::open(path, fileMode(path, access), options.busyTimeoutMs);
        if (!connection) {
            return tl::unexpected(connection.error());
        }
        store.reset(new SqlStore(std::move(*connection), path));
    }
    store->m_patienceMs = options.busyTimeoutMs;
    if (access == Access::Read) {
        return store;
    }
    if (auto fine = store->makeReady(options, place); !fine) {
        return tl::unexpected(store->waitedFor(fine.error()));
    }
    if (options.access == Access::Read) {
        if (auto fine = store->m_connection->run(QStringLiteral("PRAGMA query_only = ON")); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return store;
}

Result<void> SqlStore::makeReady(const StoreOptions& options, Volume place)
{
    const auto mode = useJournal(*m_connection, place, options.busyTimeoutMs);
    if (!mode) {
        return tl::unexpected(mode.error());
    }
    const auto done = bringUpToDate(*m_connection, m_path, options.steps);
    if (!done) {
        return tl::unexpected(done.error());
    }
    m_outcome = *done;
    if (auto fine = keepJournal(*m_connection, *mode); !fine) {
        return fine;
    }
    if (*mode == JournalMode::Log) {
        m_log = identityOf(m_path + QLatin1String("-wal"));
        m_index = identityOf(m_path + QLatin1String("-shm"));
    }
    if (m_outcome == SchemaOutcome::Created) {
        // Taking it away again must not need room that what was refused has filled.
        (void)foldLog();
    }
    return {};
}

Error SqlStore::waitedFor(Error error) const
{
    if (error.code == ErrorCode::Busy) {
        constexpr double kSecond = 1000;
        error.subject = writerOf(m_path).toStdString();
        error.high = m_patienceMs / kSecond;
    }
    return error;
}

Result<void> SqlStore::inPlace() const
{
    const auto moved = [this](const char* how) {
        return refuse({.code = ErrorCode::BookMoved, .text = how, .file = m_path.toStdString()});
    };
    const auto now = identityOf(m_path);
    if (now != m_connection->file()) {
        return moved(now ? "replaced" : "missing");
    }
    // Without them others write to a log and take locks that we know nothing of.
    if ((m_log && identityOf(m_path + QLatin1String("-wal")) != m_log) ||
        (m_index && identityOf(m_path + QLatin1String("-shm")) != m_index)) {
        return moved("log");
    }
    return {};
}

Result<void> SqlStore::begin()
{
    if (auto begun = m_connection->run(QStringLiteral("BEGIN IMMEDIATE")); !begun) {
        return refuse(waitedFor(begun.error()));
    }
    return stayPut();
}

// After the file went away its log still stands under the old name: whatever is put there would be
// read with it, and the file, wherever it is now, would lack what was confirmed last.
Result<void> SqlStore::stayPut()
{
    auto fine = inPlace();
    if (!fine) {
        rollback();
        if (identityOf(m_path) != m_connection->file()) {
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
    auto done = m_connection->run(QStringLiteral("COMMIT"));
    if (!done) {
        rollback();
        return refuse(waitedFor(done.error()));
    }
    return done;
}

void SqlStore::rollback()
{
    // SQLite may have rolled back by itself (a full disk does that): then there is nothing to do.
    (void)m_connection->run(QStringLiteral("ROLLBACK"));
}

Result<void> SqlStore::forEachLine(const std::function<Result<void>(const QByteArray&)>& take)
{
    return eachRow(m_statements->lines.run(), [&](const Rows& row) { return take(row.bytes(0)); });
}

Result<std::optional<QByteArray>> SqlStore::note(const std::string& key)
{
    auto rows = m_statements->note.run(key);
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    const auto more = rows->next();
    if (!more) {
        return tl::unexpected(more.error());
    }
    return *more ? std::optional(rows->bytes(0)) : std::nullopt;
}

Result<void> SqlStore::putNote(const std::string& key, const QByteArray& value)
{
    return m_statements->putNote.run(key, value).map([](const Rows&) {});
}

Result<void> SqlStore::dropNote(const std::string& key)
{
    return m_statements->dropNote.run(key).map([](const Rows&) {});
}

Result<std::map<std::string, QByteArray>> SqlStore::notes(const std::string& prefix)
{
    std::map<std::string, QByteArray> found;
    const auto take = [&](const Rows& row) -> Result<void> {
        found[row.text(0)] = row.bytes(1);
        return {};
    };
    return eachRow(m_statements->notes.run(prefix), take).map([&] { return std::move(found); });
}

} // namespace ullage::store
