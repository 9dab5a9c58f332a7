#include "core/store/sql_store.h"

#include "core/store/book_file.h"
#include "core/store/each_row.h"
#include "core/store/sql_statements.h"

#include <QFileInfo>

namespace ullage::store
{

namespace
{

// A folder that cannot be written has no room for the files SQLite keeps beside a book; without a
// log there the file alone is the whole book.
FileMode readMode(const QString& path)
{
    const QFileInfo info(path);
    const bool roomBeside = QFileInfo(info.absolutePath()).isWritable();
    const bool log = QFileInfo(path + QLatin1String("-wal")).size() > 0;
    return roomBeside || log ? FileMode::Read : FileMode::Frozen;
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

Result<void> useLog(Connection& connection)
{
    const auto mode = connection.text(QStringLiteral("PRAGMA journal_mode = WAL"));
    if (!mode) {
        return tl::unexpected(mode.error());
    }
    return *mode == QLatin1String("wal")
               ? Result<void>{}
               : refuse(storeFailure(QStringLiteral("no write-ahead log: %1").arg(*mode)));
}

} // namespace

SqlStore::SqlStore(std::unique_ptr<Connection> connection, QString path)
    : m_connection(std::move(connection)), m_path(std::move(path)),
      m_statements(std::make_unique<Statements>(*m_connection))
{
}

SqlStore::~SqlStore() = default;

Result<std::unique_ptr<SqlStore>> SqlStore::open(const QString& path, const StoreOptions& options)
{
    const auto file = inspect(path);
    if (!file) {
        return tl::unexpected(file.error());
    }
    if (file->kind != FileKind::Book && options.access != Access::Create) {
        return refuse({.code = ErrorCode::NotABook,
                       .text = file->kind == FileKind::Missing ? "missing" : "empty",
                       .file = path.toStdString()});
    }
    if (auto fine = checkVersion(file->version, options.steps, path); !fine) {
        return tl::unexpected(fine.error());
    }
    const bool outOfDate = file->version < options.steps.back().version;
    Access access = options.access;
    if (outOfDate && access == Access::Read) {
        access = Access::Write; // an older schema cannot be read as it is
    }
    auto connection = Connection::open(path, fileMode(path, access), options.busyTimeoutMs);
    if (!connection) {
        return tl::unexpected(connection.error());
    }
    if (access != Access::Read) {
        if (auto fine = useLog(**connection); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    SchemaOutcome outcome = SchemaOutcome::Current;
    if (outOfDate) {
        const auto done = bringUpToDate(**connection, path, options.steps);
        if (!done) {
            return tl::unexpected(done.error());
        }
        outcome = *done;
    }
    std::unique_ptr<SqlStore> store(new SqlStore(std::move(*connection), path));
    store->m_outcome = outcome;
    return store;
}

Result<void> SqlStore::begin() { return m_connection->run(QStringLiteral("BEGIN IMMEDIATE")); }

Result<void> SqlStore::commit()
{
    auto done = m_connection->run(QStringLiteral("COMMIT"));
    if (!done) {
        rollback();
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

} // namespace ullage::store
