// Opening a book's file, as it is and as it is asked for.
#include "core/store/sql_store.h"

#include "core/store/aside_copy.h"
#include "core/store/book_file.h"
#include "core/store/chain.h"
#include "core/store/journal_mode.h"
#include "core/store/sql_store_tables.h"

#include <QFileInfo>
#include <QTemporaryDir>

namespace ullage::store
{

using namespace ledger;

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
        store.reset(new SqlStore(std::move(*connection), path, options));
    }
    if (access == Access::Read) {
        return lookedAt(std::move(store), options);
    }
    if (auto fine = store->makeReady(options, place); !fine) {
        return tl::unexpected(store->waitedFor(fine.error()));
    }
    if (options.access == Access::Read) {
        if (auto fine = store->m_connection->run(QStringLiteral("PRAGMA query_only = ON")); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return lookedAt(std::move(store), options);
}

Result<std::unique_ptr<SqlStore>> SqlStore::openAside(const QString& path, bool outOfDate,
                                                      const StoreOptions& options)
{
    if (!outOfDate) {
        // With the index there, or room for it, SQLite reads the log where it is.
        auto connection = Connection::open(path, FileMode::Untouched, options.busyTimeoutMs);
        if (connection && (*connection)->number(QStringLiteral("SELECT count(*) FROM entry"))) {
            return lookedAt(
                std::unique_ptr<SqlStore>(new SqlStore(std::move(*connection), path, options)),
                options);
        }
    }
    auto aside = copyAside(path, options.busyTimeoutMs);
    if (!aside) {
        return tl::unexpected(aside.error());
    }
    StoreOptions onCopy = options;
    onCopy.access = Access::Write;
    onCopy.lastSeen.clear(); // it is gone with the store
    auto store = open(aside->path, onCopy);
    if (!store) {
        return store;
    }
    if (auto fine = (*store)->m_connection->run(QStringLiteral("PRAGMA query_only = ON")); !fine) {
        return tl::unexpected(fine.error());
    }
    (*store)->m_aside = std::move(aside->folder);
    return store;
}

Result<std::unique_ptr<SqlStore>> SqlStore::lookedAt(std::unique_ptr<SqlStore> store,
                                                     const StoreOptions& options)
{
    // A book that is kept at an older step, by tests, has no chain yet.
    const bool chained = options.steps.back().version >= kChainStep;
    auto looked = chained ? store->m_tables->seen.look() : Result<void>{};
    return looked.map([&] { return std::move(store); });
}

Result<void> SqlStore::makeReady(const StoreOptions& options, Volume place)
{
    const auto mode = useJournal(*m_connection, place, options.busyTimeoutMs);
    if (!mode) {
        return tl::unexpected(mode.error());
    }
    const auto done = bringUpToDate(*m_connection, path(), options.steps);
    if (!done) {
        return tl::unexpected(done.error());
    }
    m_outcome = *done;
    if (auto fine = keepJournal(*m_connection, *mode); !fine) {
        return fine;
    }
    if (*mode == JournalMode::Log) {
        m_place.keepLog();
    }
    if (m_outcome == SchemaOutcome::Created) {
        // Taking it away again must not need room that what was refused has filled.
        (void)foldLog();
    }
    return {};
}

} // namespace ullage::store
