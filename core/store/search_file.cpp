#include "core/store/search_file.h"

#include "core/store/each_row.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <array>

namespace ullage::store
{

namespace
{

constexpr int kFormat = 1;
constexpr int kApplication = 0x756C6C73; // "ulls"
constexpr int kPatienceMs = 200;
constexpr int kNameLength = 32;
const QString kEnding = QStringLiteral(".words");

// The index is of no use to a program that folds letters in another way.
QString madeWith() { return QStringLiteral("1 %1").arg(QLatin1String(qVersion())); }

const std::array<const char*, 4> kTables{
    "CREATE TABLE standing (key TEXT PRIMARY KEY NOT NULL, value TEXT NOT NULL) STRICT",
    "CREATE VIRTUAL TABLE words USING fts5(text, content='', columnsize=0, detail=none, "
    "tokenize='trigram case_sensitive 1')",
    "CREATE TABLE doc (id INTEGER PRIMARY KEY, at_ms INTEGER NOT NULL, seq INTEGER NOT NULL) "
    "STRICT",
    "CREATE TABLE block (id INTEGER PRIMARY KEY, oldest_ms INTEGER NOT NULL, "
    "newest_ms INTEGER NOT NULL) STRICT"};

QString numbered(const QString& name, int number)
{
    return QStringLiteral("%1.%2%3").arg(name).arg(number).arg(kEnding);
}

int numberOf(const QString& fileName)
{
    const auto parts = fileName.chopped(kEnding.size()).split(u'.');
    return parts.size() == 2 ? parts[1].toInt() : 0;
}

SearchFileState stateOf(const Error& error)
{
    return saysSearchFileIsBad(error)    ? SearchFileState::Bad
           : saysSearchFileIsBusy(error) ? SearchFileState::Busy
                                         : SearchFileState::Out;
}

Result<void> makeTables(Connection& connection)
{
    // Somebody else may have been quicker.
    const auto known = connection.number(QStringLiteral("PRAGMA application_id"));
    if (!known || *known == kApplication) {
        return known.map([](std::int64_t) {});
    }
    for (const char* table : kTables) {
        if (auto fine = connection.run(QLatin1String(table)); !fine) {
            return fine;
        }
    }
    const QStringList rest{
        QStringLiteral("INSERT INTO standing VALUES ('made with', %1), ('last', '0'), ('mark', '')")
            .arg(sqlQuoted(madeWith())),
        QStringLiteral("PRAGMA user_version = %1").arg(kFormat),
        QStringLiteral("PRAGMA application_id = %1").arg(kApplication)};
    for (const QString& one : rest) {
        if (auto fine = connection.run(one); !fine) {
            return fine;
        }
    }
    return {};
}

Result<void> make(Connection& connection)
{
    for (const char* setting : {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = NORMAL"}) {
        if (auto fine = connection.run(QLatin1String(setting)); !fine) {
            return fine;
        }
    }
    const auto known = connection.number(QStringLiteral("PRAGMA application_id"));
    const auto pages = connection.number(QStringLiteral("SELECT count(*) FROM sqlite_schema"));
    if (!known || !pages || *known != 0 || *pages != 0) {
        return !known ? tl::unexpected(known.error())
                      : pages.map([](std::int64_t) {}); // what it is comes out afterwards
    }
    auto fine = connection.run(QStringLiteral("BEGIN IMMEDIATE"));
    if (fine) {
        fine = makeTables(connection);
        const auto end =
            connection.run(fine ? QStringLiteral("COMMIT") : QStringLiteral("ROLLBACK"));
        fine = fine ? end : fine;
    }
    return fine;
}

SearchFileState lookAt(Connection& connection)
{
    const auto application = connection.number(QStringLiteral("PRAGMA application_id"));
    const auto format = connection.number(QStringLiteral("PRAGMA user_version"));
    if (!application || !format) {
        return stateOf(application ? format.error() : application.error());
    }
    if (*application == kApplication && *format > kFormat) {
        return SearchFileState::Newer;
    }
    if (*application != kApplication || *format != kFormat) {
        return SearchFileState::Bad;
    }
    const auto with =
        connection.text(QStringLiteral("SELECT value FROM standing WHERE key = 'made with'"));
    if (!with) {
        return stateOf(with.error()) == SearchFileState::Busy ? SearchFileState::Busy
                                                              : SearchFileState::Bad;
    }
    return *with == madeWith() ? SearchFileState::Fine : SearchFileState::Bad;
}

} // namespace

QString searchName(SqlStore& book)
{
    const auto id = book.note("book-id");
    const QString place = QFileInfo(book.path()).canonicalFilePath();
    const QByteArray whole =
        (id ? id->value_or(QByteArray()) : QByteArray()) + '\n' + place.toUtf8();
    return QString::fromLatin1(
        QCryptographicHash::hash(whole, QCryptographicHash::Sha256).toHex().left(kNameLength));
}

QString searchFile(const QString& folder, const QString& name)
{
    int highest = 1;
    const QDir dir(folder);
    for (const QString& file :
         dir.entryList({name + QStringLiteral(".*") + kEnding}, QDir::Files)) {
        highest = std::max(highest, numberOf(file));
    }
    return dir.filePath(numbered(name, highest));
}

QString nextSearchFile(const QString& file)
{
    const QFileInfo info(file);
    const QString name = info.fileName().section(u'.', 0, 0);
    return info.dir().filePath(numbered(name, numberOf(info.fileName()) + 1));
}

SearchFileState openSearchFile(const QString& file, bool makeIt, std::unique_ptr<Connection>& into)
{
    if (makeIt) {
        QDir().mkpath(QFileInfo(file).path());
    } else if (!QFileInfo::exists(file)) {
        return SearchFileState::Out;
    }
    auto opened = Connection::open(file, makeIt ? FileMode::Create : FileMode::Read, kPatienceMs);
    if (!opened) {
        return stateOf(opened.error());
    }
    if (makeIt) {
        if (const auto fine = make(**opened); !fine) {
            return stateOf(fine.error());
        }
    }
    const SearchFileState state = lookAt(**opened);
    if (state == SearchFileState::Fine) {
        into = std::move(*opened);
    }
    return state;
}

bool saysSearchFileIsBad(const Error& error) { return saysDamaged(error); }

bool saysSearchFileIsBusy(const Error& error) { return error.code == ErrorCode::Busy; }

Result<QString> searchMark(SqlStore& book, std::int64_t seq)
{
    Statement statement(book.connection(),
                        QStringLiteral("SELECT coalesce(lower(hex(hash)), type || ' ' || id) "
                                       "FROM entry WHERE seq = ?"));
    QString mark;
    return eachRow(statement.run(seq),
                   [&](const Rows& row) -> Result<void> {
                       mark = QString::fromStdString(row.text(0));
                       return {};
                   })
        .map([&] { return mark; });
}

} // namespace ullage::store
