#include "core/store/book_file.h"

#include <QFileInfo>

namespace ullage::store
{

namespace
{

constexpr qint64 kSmallestPage = 512;
constexpr int kPatience = 5000; // ms

Error notABook(const QString& path, const char* reason)
{
    return {.code = ErrorCode::NotABook, .text = reason, .file = path.toStdString()};
}

struct Marks {
    std::int64_t application = 0;
    std::int64_t version = 0;
    std::int64_t tables = 0;
};

// From one moment's view, which the log beside the file belongs to.
Result<Marks> marks(const QString& path, FileMode mode)
{
    const auto connection = Connection::open(path, mode, kPatience);
    if (!connection) {
        return tl::unexpected(connection.error());
    }
    Marks found;
    const auto read = [&](const char* sql, std::int64_t& into) {
        return (*connection)->number(QString::fromLatin1(sql)).map([&](std::int64_t n) {
            into = n;
        });
    };
    return (*connection)
        ->run(QStringLiteral("BEGIN"))
        .and_then([&] { return read("SELECT count(*) FROM sqlite_schema", found.tables); })
        .and_then([&] { return read("PRAGMA application_id", found.application); })
        .and_then([&] { return read("PRAGMA user_version", found.version); })
        .and_then([&] { return (*connection)->run(QStringLiteral("COMMIT")); })
        .map([&] { return found; });
}

Result<Marks> marks(const QString& path)
{
    if (!hasRoomBeside(path) && !hasLog(path)) {
        return marks(path, FileMode::Frozen);
    }
    auto found = marks(path, lookingMode(path));
    // What a killed program left must be brought in order before anyone can read.
    if (!found && saysReadOnly(found.error())) {
        found = marks(path, FileMode::Read);
    }
    if (!found && !hasRoomBeside(path)) {
        found = marks(path, FileMode::Frozen); // read-only media: as far as the file alone tells
    }
    return found;
}

} // namespace

bool hasLog(const QString& path) { return QFileInfo(path + QLatin1String("-wal")).size() > 0; }

FileMode lookingMode(const QString& path)
{
    // Whoever may only read leaves the log and the index there that SQLite made to read by.
    return hasLog(path) ? FileMode::Untouched : FileMode::Read;
}

bool hasRoomBeside(const QString& path)
{
    return QFileInfo(QFileInfo(path).absolutePath()).isWritable();
}

Result<QString> bookPath(const QString& name)
{
    if (name.isEmpty()) {
        return refuse(notABook(name, "no name"));
    }
    const QFileInfo info(name);
    if (info.isSymLink() && !info.exists()) {
        return refuse(notABook(name, "dangling link"));
    }
    if (info.isDir()) {
        return refuse(notABook(name, "folder"));
    }
    if (!info.exists()) {
        const QString folder = QFileInfo(info.absolutePath()).canonicalFilePath();
        return folder.isEmpty() ? info.absoluteFilePath() : folder + '/' + info.fileName();
    }
    if (!info.isFile()) {
        return refuse(notABook(name, "not a file")); // a pipe would keep whoever opens it waiting
    }
    return info.canonicalFilePath();
}

Result<BookFile> inspect(const QString& name)
{
    const auto path = bookPath(name);
    if (!path) {
        return tl::unexpected(path.error());
    }
    const QFileInfo info(*path);
    if (!info.exists()) {
        return BookFile{.kind = FileKind::Missing, .alone = hasLog(*path)};
    }
    if (info.size() == 0) {
        return BookFile{.kind = FileKind::Empty, .alone = hasLog(*path)};
    }
    if (!info.isReadable()) {
        return refuse(notABook(name, "unreadable"));
    }
    if (info.size() < kSmallestPage) {
        return refuse(notABook(name, "not SQLite"));
    }
    const auto found = marks(*path);
    if (!found) {
        return saysNoDatabase(found.error()) ? refuse(notABook(name, "not SQLite"))
                                             : tl::unexpected(found.error());
    }
    if (found->application == kApplicationId) {
        return BookFile{.kind = FileKind::Book, .version = static_cast<int>(found->version)};
    }
    if (found->application == 0 && found->version == 0 && found->tables == 0) {
        return BookFile{FileKind::Empty};
    }
    return refuse(notABook(name, "another program's"));
}

} // namespace ullage::store
