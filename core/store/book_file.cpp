#include "core/store/book_file.h"

#include "core/store/connection.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

namespace ullage::store
{

namespace
{

constexpr qint64 kHeaderSize = 100;
constexpr QByteArrayView kMagic("SQLite format 3\0", 16);
constexpr int kPatience = 5000; // ms

Error notABook(const QString& path, const char* reason)
{
    return {.code = ErrorCode::NotABook, .text = reason, .file = path.toStdString()};
}

} // namespace

Result<BookFile> inspect(const QString& path)
{
    const QFileInfo info(path);
    if (info.isDir()) {
        return refuse(notABook(path, "folder"));
    }
    if (!info.exists()) {
        return BookFile{};
    }
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return refuse(notABook(path, "unreadable"));
    }
    if (file.size() == 0) {
        return BookFile{FileKind::Empty};
    }
    const QByteArray header = file.read(kHeaderSize);
    if (header.size() < kHeaderSize || !header.startsWith(kMagic)) {
        return refuse(notABook(path, "not SQLite"));
    }
    const auto field = [&header](int offset) {
        return qint64{qFromBigEndian<quint32>(header.constData() + offset)};
    };
    constexpr int kVersionAt = 60;
    constexpr int kApplicationAt = 68;
    qint64 version = field(kVersionAt);
    qint64 application = field(kApplicationAt);
    const bool pending = QFileInfo(path + QLatin1String("-wal")).size() > 0;
    if (application == kApplicationId && !pending) {
        return BookFile{FileKind::Book, static_cast<int>(version)};
    }
    // Not settled by the header: what was committed last may still stand in the log beside it.
    const auto connection = Connection::open(path, FileMode::Untouched, kPatience);
    if (!connection) {
        return tl::unexpected(connection.error());
    }
    for (const auto& [sql, number] :
         {std::pair{"PRAGMA application_id", &application}, {"PRAGMA user_version", &version}}) {
        const auto read = (*connection)->number(QString::fromLatin1(sql));
        if (!read) {
            return tl::unexpected(read.error());
        }
        *number = *read;
    }
    if (application == kApplicationId) {
        return BookFile{FileKind::Book, static_cast<int>(version)};
    }
    const auto tables = (*connection)->number(QStringLiteral("SELECT count(*) FROM sqlite_schema"));
    if (!tables) {
        return tl::unexpected(tables.error());
    }
    if (application == 0 && version == 0 && *tables == 0) {
        return BookFile{FileKind::Empty};
    }
    return refuse(notABook(path, "another program's"));
}

} // namespace ullage::store
