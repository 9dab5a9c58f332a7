#include "core/store/sql_store.h"

#include "core/store/book_file.h"
#include "core/store/chain_growth.h"
#include "core/store/each_row.h"
#include "core/store/journal_codec.h"
#include "core/store/journal_mode.h"
#include "core/store/last_seen.h"
#include "core/store/lock_table.h"
#include "core/store/read_view.h"
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
      m_statements(std::make_unique<Statements>(*m_connection)),
      m_growth(std::make_unique<ChainGrowth>(*m_connection)),
      m_lastSeen(std::make_unique<LastSeen>(QString(), m_path))
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
        return look(std::move(store), options);
    }
    if (auto fine = store->makeReady(options, place); !fine) {
        return tl::unexpected(store->waitedFor(fine.error()));
    }
    if (options.access == Access::Read) {
        if (auto fine = store->m_connection->run(QStringLiteral("PRAGMA query_only = ON")); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return look(std::move(store), options);
}

Result<std::unique_ptr<SqlStore>> SqlStore::look(std::unique_ptr<SqlStore> store,
                                                 const StoreOptions& options)
{
    // A book that is kept at an older step, by tests, has no chain yet.
    const bool chained = options.steps.back().version >= kChainStep;
    auto looked = chained ? store->look(options.lastSeen) : Result<void>{};
    return looked.map([&] { return std::move(store); });
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
    if (const auto wrong = faults(); !wrong.empty()) {
        return refuse(wrong.front());
    }
    if (auto begun = m_connection->run(QStringLiteral("BEGIN IMMEDIATE")); !begun) {
        return refuse(waitedFor(begun.error()));
    }
    if (auto fine = stayPut(); !fine) {
        return fine;
    }
    auto fine = m_growth->begin();
    if (!fine) {
        rollback();
    }
    return fine;
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
    auto done =
        m_growth->close().and_then([this] { return m_connection->run(QStringLiteral("COMMIT")); });
    if (!done) {
        rollback();
        return refuse(waitedFor(done.error()));
    }
    m_lastSeen->note(m_bookId, m_growth->head());
    m_growth->end();
    return done;
}

void SqlStore::rollback()
{
    m_growth->end();
    // SQLite may have rolled back by itself (a full disk does that): then there is nothing to do.
    (void)m_connection->run(QStringLiteral("ROLLBACK"));
}

// The cheap part of a check. What is wrong is kept; only a store that cannot be read fails.
Result<void> SqlStore::look(const QString& lastSeen)
{
    m_lastSeen = std::make_unique<LastSeen>(lastSeen, m_path);
    const auto keep = [&](const Error& error) {
        m_found.push_back(error);
        return error.code == ErrorCode::NotAsEntered ? Result<void>{} : tl::unexpected(error);
    };
    const auto id = note(kBookIdNote);
    if (!id) {
        return keep(id.error());
    }
    m_bookId = id->value_or(QByteArray());
    // What was seen first, and only then the book, in one view: others may write meanwhile, and
    // then the book has more than was seen, never less.
    const auto seen = m_lastSeen->of(m_bookId);
    const auto view = ReadView::open(*m_connection);
    if (!view) {
        return tl::unexpected(view.error());
    }
    const auto head = LastEntries(*m_connection).read();
    if (!head) {
        return keep(head.error());
    }
    return againstLastSeen(seen, *head).map([&](std::optional<Error> fault) {
        if (fault) {
            m_found.push_back(std::move(*fault));
        } else if (seen != *head) {
            m_lastSeen->note(m_bookId, *head);
        }
    });
}

Result<std::optional<Error>> SqlStore::againstLastSeen(const std::optional<ChainHead>& seen,
                                                       const ChainHead& head)
{
    if (!seen || *seen == head) {
        return std::nullopt;
    }
    if (seen->entry > head.entry) {
        Error fault = notAsEntered(damage::kLost);
        fault.number = static_cast<double>(head.entry);
        fault.high = static_cast<double>(seen->entry);
        return fault;
    }
    std::optional<Error> fault;
    return eachRow(m_statements->hashOf.run(seen->entry),
                   [&](const Rows& row) -> Result<void> {
                       if (digestFromBytes(row.blob(2)) != seen->hash) {
                           fault =
                               notAsEntered(damage::kForked, seen->entry, row.blob(0), row.blob(1));
                       }
                       return {};
                   })
        .map([&] { return fault; });
}

std::vector<Error> SqlStore::faults() const
{
    std::vector<Error> all = m_found;
    all.insert(all.end(), m_unread.begin(), m_unread.end());
    return all;
}

Result<void> SqlStore::acceptAsSeen()
{
    const auto view = ReadView::open(*m_connection);
    if (!view) {
        return tl::unexpected(view.error());
    }
    return LastEntries(*m_connection).read().map([&](const ChainHead& head) {
        m_lastSeen->note(m_bookId, head);
        m_found.clear();
    });
}

Result<void> SqlStore::forEachLine(const std::function<Result<void>(const QByteArray&)>& take,
                                   std::vector<Error>* faults)
{
    std::optional<Error> first;
    const auto fault = [&](Error error) {
        if (!faults && error.text == damage::kBefore) {
            return; // as it was entered, if it can be read at all
        }
        if (!faults) {
            first = first ? first : std::optional(std::move(error));
        } else if (faults->size() < kMostFaults) {
            faults->push_back(std::move(error));
        }
    };
    const auto line = [&](const StoredLine& stored) -> Result<void> {
        if (first) {
            return refuse(*first);
        }
        // One that was faulty from the first goes out as it was entered, if it is a line at all.
        const bool legible =
            stored.state == LineState::FaultyBefore && decodeStored(stored.body).has_value();
        if (stored.sound() || legible) {
            return take(stored.body);
        }
        return faults ? Result<void>{}
                      : refuse(notAsEntered(damageOf(stored.state), stored.entry, stored.type,
                                            stored.id));
    };
    auto walked = walkChain(*m_connection, {.line = line, .fault = fault, .watch = {}});
    if (!walked) {
        return tl::unexpected(walked.error());
    }
    return first ? refuse(*first) : Result<void>{};
}

Result<std::optional<QByteArray>> SqlStore::note(const std::string& key)
{
    std::optional<QByteArray> value;
    return eachRow(m_statements->note.run(key),
                   [&](const Rows& row) -> Result<void> {
                       value = row.blob(0);
                       const QByteArray name = QByteArray::fromStdString(key);
                       if (!row.isNull(1) && digestFromBytes(row.blob(1)) !=
                                                 noteSum(m_growth->hasher(), name, *value)) {
                           Error fault = notAsEntered(damage::kNote);
                           fault.subject = key;
                           return refuse(std::move(fault));
                       }
                       return {};
                   })
        .map([&] { return value; });
}

Result<void> SqlStore::putNote(const std::string& key, const QByteArray& value)
{
    return m_growth->putNote(QByteArray::fromStdString(key), value);
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
