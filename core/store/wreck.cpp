#include "core/store/wreck.h"

#include "core/store/book_file.h"
#include "core/store/chain.h"
#include "core/store/journal_codec.h"
#include "core/store/page_copy.h"
#include "core/store/schema_steps.h"
#include "core/store/statement.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <set>

namespace ullage::store
{

namespace
{

constexpr int kPatience = 5000; // ms
constexpr int kSeatStep = 6;    // the schema step that brought seats

// Texts as bytes: what is no UTF-8 any more must not pass for text.
constexpr const char* kColumns = "seq, CAST(type AS BLOB), CAST(id AS BLOB), action, "
                                 "CAST(body AS BLOB), CAST(batch AS BLOB)";

std::optional<StoredEntry> readRow(const Rows& row)
{
    auto line = decodeLine(row.blob(4));
    if (!line) {
        return std::nullopt;
    }
    auto* entry = std::get_if<ledger::Entry>(&*line);
    if (!entry || entry->type() != row.blob(1).toStdString() ||
        entry->id() != row.blob(2).toStdString()) {
        return std::nullopt;
    }
    // A voiding need not name its batch; the column does.
    if (auto* event = std::get_if<ledger::Event>(&entry->what); event && event->batch.empty()) {
        event->batch = row.blob(5).toStdString();
    }
    return StoredEntry{row.number(0), row.number(3), std::move(*entry)};
}

Result<void> pagesBySqlite(const QString& path, const QString& scratch)
{
    // With a log beside it the file alone is not the book, but a log needs room beside it.
    Result<void> done;
    for (const FileMode mode : {FileMode::Untouched, FileMode::Frozen}) {
        const auto from = Connection::open(path, mode, kPatience);
        const auto to = Connection::open(scratch, FileMode::Write, kPatience);
        if (!to) {
            return tl::unexpected(to.error());
        }
        done = from ? copyPages(**from, **to) : tl::unexpected(from.error());
        if (done) {
            break;
        }
    }
    return done;
}

// No connection can hold what SQLite does not take for a database. Missing pages are made up as
// empty ones, so that it reads the others.
Result<void> pagesAsTheyAre(const QString& path, const QString& scratch)
{
    constexpr qint64 kHeader = 100;
    constexpr int kSizeAt = 16;
    constexpr int kCountAt = 28;
    if (isOpenHere(path)) {
        return refuse({.code = ErrorCode::Busy, .file = path.toStdString()});
    }
    QFile from(path);
    QFile to(scratch);
    if (!from.open(QIODevice::ReadOnly)) {
        return refuse(storeFailure(QStringLiteral("%1: %2").arg(path, from.errorString())));
    }
    if (!to.open(QIODevice::ReadWrite | QIODevice::Truncate)) {
        return refuse(storeFailure(QStringLiteral("%1: %2").arg(scratch, to.errorString())));
    }
    constexpr qint64 kChunk = 1 << 20;
    while (!from.atEnd()) {
        const QByteArray chunk = from.read(kChunk);
        if (chunk.isEmpty() || to.write(chunk) != chunk.size()) {
            return refuse(storeFailure(
                QStringLiteral("%1: %2, %3").arg(path, from.errorString(), to.errorString())));
        }
    }
    to.seek(0);
    const QByteArray header = to.read(kHeader);
    const auto byte = [&](int at) { return static_cast<quint8>(header.at(at)); };
    if (header.size() == kHeader) {
        const qint64 size = qint64{byte(kSizeAt)} * 256 + byte(kSizeAt + 1);
        const qint64 count =
            ((qint64{byte(kCountAt)} * 256 + byte(kCountAt + 1)) * 256 + byte(kCountAt + 2)) * 256 +
            byte(kCountAt + 3);
        constexpr qint64 kMost = qint64{1} << 40;
        if (size >= 512 && size * count > to.size() && size * count < kMost) {
            to.resize(size * count);
        }
    }
    const QString log = QStringLiteral("-wal");
    if (QFileInfo(path + log).size() > 0) {
        QFile::copy(path + log, scratch + log);
    }
    return {};
}

} // namespace

// What the next row follows: the one before it, and its hash.
struct Wreck::Link {
    std::int64_t number = 0;
    std::optional<Digest> hash = kNothing;
};

Wreck::Wreck(std::unique_ptr<Connection> file) : m_file(std::move(file)) {}

Result<std::unique_ptr<Wreck>> Wreck::open(const QString& path, const QString& scratch)
{
    auto brought = pagesBySqlite(path, scratch);
    if (!brought && saysDamaged(brought.error())) {
        brought = pagesAsTheyAre(path, scratch);
    }
    if (!brought) {
        return tl::unexpected(brought.error());
    }
    const bool log = QFileInfo::exists(scratch + QStringLiteral("-wal"));
    auto file = Connection::open(scratch, log ? FileMode::Write : FileMode::Frozen, kPatience);
    if (!file) {
        return tl::unexpected(file.error());
    }
    const auto application = (*file)->number(QStringLiteral("PRAGMA application_id"));
    const auto version = (*file)->number(QStringLiteral("PRAGMA user_version"));
    const auto table =
        (*file)->number(QStringLiteral("SELECT count(*) FROM sqlite_schema WHERE name = 'entry'"));
    for (const auto& read : {application, version, table}) {
        if (!read) {
            return tl::unexpected(read.error());
        }
    }
    if (*application != kApplicationId || *table == 0) {
        return refuse(
            {.code = ErrorCode::NotABook, .text = "another program's", .file = path.toStdString()});
    }
    if (auto fine = checkVersion(static_cast<int>(*version), schemaSteps(), path); !fine) {
        return tl::unexpected(fine.error());
    }
    std::unique_ptr<Wreck> wreck(new Wreck(std::move(*file)));
    wreck->m_chained = *version >= kChainStep;
    wreck->m_seated = *version >= kSeatStep;
    wreck->findLast();
    return wreck;
}

// The table's own last row, or where that is lost whatever an index knows.
void Wreck::findLast()
{
    const auto atLeast = [this](const QString& sql) {
        m_last = std::max(m_last, m_file->number(sql).value_or(0));
    };
    atLeast(QStringLiteral("SELECT max(seq) FROM entry"));
    QStringList indexes;
    Statement list(*m_file, QStringLiteral("SELECT name, origin FROM pragma_index_list('entry')"));
    if (auto rows = list.run()) {
        while (rows->next().value_or(false)) {
            const QString name = QString::fromStdString(rows->text(0));
            indexes += name;
            m_index = rows->text(1) == "u" ? name : m_index;
        }
    }
    for (const QString& index : indexes) {
        const QString quoted = QStringLiteral("\"%1\"").arg(index);
        // Partial indexes answer only for what they hold; those cannot be asked this way.
        atLeast(QStringLiteral("SELECT max(seq) FROM entry INDEXED BY %1").arg(quoted));
    }
}

QString Wreck::columns() const
{
    return QLatin1String(kColumns) + QLatin1String(m_chained ? ", hash" : "");
}

// Whether the row is what was entered, as far as the one before it can tell.
bool Wreck::fits(const Rows& row, Link& before)
{
    if (!m_chained) {
        return true;
    }
    const std::int64_t number = row.number(0);
    const Link last = std::exchange(before, {number, digestFromBytes(row.blob(6))});
    if (before.hash && (last.number + 1 != number || !last.hash)) {
        return true; // nobody can tell
    }
    const auto follows = [&](const Digest& hash) { return before.hash == hash; };
    return (before.hash &&
            (follows(m_hasher.next(*last.hash, row.blob(1), row.blob(2), row.blob(4))) ||
             follows(m_hasher.nextFaulty(*last.hash, row.blob(1), row.blob(2), row.blob(4))))) ||
           !wasChanged(number);
}

// By its neighbours, which know a changed line from a changed hash.
bool Wreck::wasChanged(std::int64_t number)
{
    const auto state = stateOf(*m_file, number);
    return state && (*state == LineState::Changed || *state == LineState::Foreign);
}

Result<void>
Wreck::forEach(const std::function<Result<void>(std::int64_t number, StoredEntry* found)>& take)
{
    Statement from(
        *m_file, QStringLiteral("SELECT %1 FROM entry WHERE seq >= ? ORDER BY seq").arg(columns()));
    Link before;
    std::int64_t next = 1;
    const auto lostUntil = [&](std::int64_t end) -> Result<void> {
        for (; next < end; ++next) {
            if (auto fine = take(next, nullptr); !fine) {
                return fine;
            }
        }
        return {};
    };
    while (next <= m_last) {
        // A page that cannot be read ends the walk; it begins anew behind what stood there.
        const std::int64_t start = next;
        bool ended = false;
        if (auto rows = from.run(start)) {
            while (true) {
                const auto more = rows->next();
                if (!more) {
                    break;
                }
                if (!*more) {
                    ended = true;
                    break;
                }
                const std::int64_t number = rows->number(0);
                if (number < next || number > m_last) {
                    break; // out of order: the page is not what it was
                }
                auto found = readRow(*rows);
                if (!fits(*rows, before)) {
                    found.reset();
                }
                if (auto fine = lostUntil(number); !fine) {
                    return fine;
                }
                if (auto fine = take(number, found ? &*found : nullptr); !fine) {
                    return fine;
                }
                next = number + 1;
            }
        }
        if (auto fine = lostUntil(ended ? m_last + 1 : next == start ? start + 1 : next); !fine) {
            return fine;
        }
    }
    return {};
}

std::optional<StoredEntry> Wreck::entry(std::int64_t number)
{
    Statement one(
        *m_file, QStringLiteral("SELECT %1 FROM entry WHERE seq = ?").arg(QLatin1String(kColumns)));
    auto rows = one.run(number);
    auto found = rows && rows->next().value_or(false) ? readRow(*rows) : std::nullopt;
    return found && m_chained && wasChanged(number) ? std::nullopt : std::move(found);
}

const std::map<std::int64_t, Wreck::Name>& Wreck::named(const std::vector<std::int64_t>& numbers)
{
    const std::set<std::int64_t> wanted(numbers.begin(), numbers.end());
    if (wanted.empty() || m_index.isEmpty()) {
        return m_named;
    }
    // From both ends, so that a damaged page of the index hides only what it held.
    for (const char* order : {"", " DESC"}) {
        Statement all(*m_file, QStringLiteral("SELECT seq, CAST(type AS BLOB), CAST(id AS BLOB) "
                                              "FROM entry INDEXED BY \"%1\" "
                                              "ORDER BY type%2, id%2")
                                   .arg(m_index, QLatin1String(order)));
        auto rows = all.run();
        bool whole = rows.has_value();
        while (whole) {
            const auto more = rows->next();
            whole = more.has_value();
            if (!whole || !*more) {
                break;
            }
            if (wanted.contains(rows->number(0))) {
                m_named.emplace(rows->number(0), Name{rows->blob(1), rows->blob(2)});
            }
        }
        if (whole) {
            break;
        }
    }
    return m_named;
}

std::optional<Wreck::Name> Wreck::nameOf(std::int64_t number)
{
    Statement one(*m_file, QStringLiteral("SELECT CAST(type AS BLOB), CAST(id AS BLOB) FROM entry "
                                          "WHERE seq = ?"));
    auto rows = one.run(number);
    return rows && rows->next().value_or(false) ? std::optional(Name{rows->blob(0), rows->blob(1)})
                                                : std::nullopt;
}

std::optional<StoredAction> Wreck::action(std::int64_t id)
{
    Statement one(*m_file, QStringLiteral("SELECT mode, CAST(what AS BLOB), CAST(subject AS BLOB), "
                                          "of, %1 FROM action WHERE id = ?")
                               .arg(QLatin1String(m_seated ? "seat" : "NULL")));
    auto rows = one.run(id);
    if (!rows || !rows->next().value_or(false)) {
        return std::nullopt;
    }
    StoredAction action{
        id,           rows->number(0), rows->blob(1).toStdString(), rows->blob(2).toStdString(),
        std::nullopt, std::nullopt};
    if (!rows->isNull(3)) {
        action.of = rows->number(3);
    }
    if (!rows->isNull(4)) {
        action.seat = rows->text(4);
    }
    return action;
}

std::vector<std::pair<QByteArray, QByteArray>> Wreck::notes()
{
    std::vector<std::pair<QByteArray, QByteArray>> found;
    Statement all(*m_file, QStringLiteral("SELECT key, value FROM note"));
    if (auto rows = all.run()) {
        while (rows->next().value_or(false)) {
            found.emplace_back(rows->bytes(0), rows->bytes(1));
        }
    }
    return found;
}

} // namespace ullage::store
