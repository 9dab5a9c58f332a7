#include "core/store/aside_copy.h"

#include "core/store/backup.h"
#include "core/store/book_file.h"
#include "core/store/connection.h"
#include "core/store/file_identity.h"

#include <QFile>
#include <QFileInfo>

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

} // namespace

Result<AsideCopy> copyAside(const QString& path, int busyTimeoutMs)
{
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
        const auto from = Connection::open(path, FileMode::Frozen, busyTimeoutMs);
        if (!from) {
            return tl::unexpected(from.error());
        }
        if (auto fine = copyVerified(**from, copy); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return AsideCopy{std::move(aside), copy};
}

} // namespace ullage::store
