// The book as a file: folding its log, looking at its pages, reading it where nothing can be
// written, and taking away what was made in vain.
#include "core/store/backup.h"
#include "core/store/book_file.h"
#include "core/store/interruptibly.h"
#include "core/store/sql_statements.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

namespace ullage::store
{

namespace
{

Result<void> copied(const QString& from, const QString& to)
{
    QFile file(from);
    return file.copy(to) ? Result<void>{}
                         : refuse({.code = ErrorCode::FileFailed,
                                   .text = file.errorString().toStdString(),
                                   .file = from.toStdString()});
}

// SQLite cannot read a log where it may not make its index. File by file, then: on a medium that
// nobody writes to, of a book that this process has not open (closing the file would drop its
// locks).
Result<void> copyWithLog(const QString& path, const QString& target)
{
    if (isOpenHere(path)) {
        return refuse({.code = ErrorCode::Busy, .file = path.toStdString()});
    }
    return copied(path, target).and_then([&] {
        return copied(path + QLatin1String("-wal"), target + QLatin1String("-wal"));
    });
}

// A connection that waits for nobody for a while.
class Impatience
{
public:
    Impatience(Connection& connection, int usualMs) : m_connection(connection), m_usualMs(usualMs)
    {
        wait(0);
    }
    ~Impatience() { wait(m_usualMs); }
    Impatience(const Impatience&) = delete;
    Impatience& operator=(const Impatience&) = delete;

private:
    // Touches no file and cannot fail.
    void wait(int ms)
    {
        (void)m_connection.run(QStringLiteral("PRAGMA busy_timeout = %1").arg(ms));
    }

    Connection& m_connection;
    int m_usualMs;
};

} // namespace

Result<std::unique_ptr<SqlStore>> SqlStore::openAside(const QString& path, bool outOfDate,
                                                      const StoreOptions& options)
{
    if (!outOfDate) {
        // With the index there, or room for it, SQLite reads the log where it is.
        auto connection = Connection::open(path, FileMode::Untouched, options.busyTimeoutMs);
        if (connection && (*connection)->number(QStringLiteral("SELECT count(*) FROM entry"))) {
            return look(std::unique_ptr<SqlStore>(new SqlStore(std::move(*connection), path)),
                        options);
        }
    }
    auto aside = std::make_unique<QTemporaryDir>();
    if (!aside->isValid()) {
        return refuse({.code = ErrorCode::FileFailed, .text = aside->errorString().toStdString()});
    }
    const QString copy = aside->filePath(QFileInfo(path).fileName());
    if (hasLog(path)) {
        if (auto fine = copyWithLog(path, copy); !fine) {
            return tl::unexpected(fine.error());
        }
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        QFile::setPermissions(copy + QLatin1String("-wal"), QFile::ReadOwner | QFile::WriteOwner);
    } else {
        const auto from = Connection::open(path, FileMode::Frozen, options.busyTimeoutMs);
        if (!from) {
            return tl::unexpected(from.error());
        }
        if (auto fine = copyVerified(**from, copy); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    StoreOptions onCopy = options;
    onCopy.access = Access::Write;
    onCopy.lastSeen.clear(); // it is gone with the store
    auto store = open(copy, onCopy);
    if (!store) {
        return store;
    }
    if (auto fine = (*store)->m_connection->run(QStringLiteral("PRAGMA query_only = ON")); !fine) {
        return tl::unexpected(fine.error());
    }
    (*store)->m_aside = std::move(aside);
    return store;
}

Result<bool> SqlStore::foldLog()
{
    if (!m_log) {
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

Result<void> SqlStore::beginAtOnce()
{
    const Impatience impatience(*m_connection, m_patienceMs);
    return begin();
}

Result<void> SqlStore::quickCheck(const Watch& watch)
{
    Result<QString> found;
    const auto asked = interruptibly(*m_connection, watch, [&]() -> Result<void> {
        found = m_connection->text(QStringLiteral("PRAGMA quick_check(1)"));
        return {};
    });
    if (!asked) {
        return asked;
    }
    if (!found && !saysDamaged(found.error())) {
        return tl::unexpected(found.error());
    }
    if (found && *found == QLatin1String("ok")) {
        return {};
    }
    return refuse({.code = ErrorCode::BookDamaged,
                   .text = found ? found->toStdString() : found.error().text,
                   .file = m_path.toStdString()});
}

bool SqlStore::takeAway(std::unique_ptr<SqlStore> store)
{
    if (store->m_outcome != SchemaOutcome::Created) {
        return false;
    }
    Connection& connection = *store->m_connection;
    store->m_statements.reset();
    // Leaving the log behind works only for whoever is alone with the book; after that nobody can
    // enter anything while the lock is held, and whoever waits for it finds the file gone
    // (inPlace).
    const auto alone = connection.text(QStringLiteral("PRAGMA journal_mode = DELETE"));
    if (!alone || *alone != QLatin1String("delete") ||
        !connection.run(QStringLiteral("BEGIN EXCLUSIVE"))) {
        return false;
    }
    const auto entries = connection.number(QStringLiteral("SELECT count(*) FROM entry"));
    const bool ours = entries && *entries == 0 && identityOf(store->m_path) == connection.file();
    return ours && QFile::remove(store->m_path);
}

} // namespace ullage::store
