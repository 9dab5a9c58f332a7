#include "core/store/file_moves.h"

#include "core/store/connection.h"

#include <QFile>
#include <QFileInfo>
#include <QUuid>

#include <cerrno>
#include <optional>

#ifdef Q_OS_UNIX
#include <fcntl.h>
#include <stdio.h> // renameat2 is not among the names of <cstdio>
#include <unistd.h>
#endif

namespace ullage::store
{

namespace
{

const QString kPartEnding = QStringLiteral(".part");

bool isThere(const QString& path)
{
    const QFileInfo info(path);
    return info.exists() || info.isSymLink();
}

Error failure(const QString& path, const QString& message)
{
    return storeFailure(QStringLiteral("%1: %2").arg(path, message));
}

Error taken(const QString& path)
{
    return {.code = ErrorCode::IdTaken, .field = "file", .text = path.toStdString()};
}

Result<void> renamedOver(const QString& from, const QString& to)
{
#ifdef Q_OS_UNIX
    if (::rename(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()) != 0) {
        return refuse(failure(to, qt_error_string()));
    }
#else
    QFile::remove(to);
    if (QFile file(from); !file.rename(to)) {
        return refuse(failure(to, file.errorString()));
    }
#endif
    return {};
}

#if defined(Q_OS_LINUX) && defined(RENAME_EXCHANGE)
// Nothing where the file system does not know such a stroke.
std::optional<Result<void>> renamedAs(const QString& from, const QString& to, unsigned how)
{
    if (::renameat2(AT_FDCWD, QFile::encodeName(from).constData(), AT_FDCWD,
                    QFile::encodeName(to).constData(), how) == 0) {
        return Result<void>{};
    }
    switch (errno) {
    case EINVAL:
    case ENOSYS:
        return std::nullopt;
    case EEXIST:
        return refuse(taken(to));
    default:
        return refuse(failure(to, qt_error_string()));
    }
}
#endif

} // namespace

Error fileFailure(const QString& file, const QString& message)
{
    return {
        .code = ErrorCode::FileFailed, .text = message.toStdString(), .file = file.toStdString()};
}

QString freeName(const QString& wanted)
{
    QString name = wanted;
    for (int count = 2; isThere(name); ++count) {
        name = QStringLiteral("%1-%2").arg(wanted).arg(count);
    }
    return name;
}

Result<QString> newPart(const QString& target)
{
    const QString name =
        target + u'.' + QUuid::createUuid().toString(QUuid::WithoutBraces) + kPartEnding;
    QFile file(name);
    if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly)) {
        return refuse(failure(target, file.errorString()));
    }
    return name;
}

bool isPart(const QString& name)
{
    constexpr qsizetype kUuid = 36;
    return name.endsWith(kPartEnding) && name.size() > kUuid + kPartEnding.size() &&
           !QUuid(name.chopped(kPartEnding.size()).right(kUuid)).isNull();
}

Result<void> flushFile(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadWrite)) {
        return refuse(failure(path, file.errorString()));
    }
#ifdef Q_OS_UNIX
    if (::fsync(file.handle()) != 0) {
        return refuse(failure(path, QStringLiteral("fsync: %1").arg(qt_error_string())));
    }
#endif
    return {};
}

Result<void> flushFolderOf(const QString& path)
{
#ifdef Q_OS_UNIX
    const QString folder = QFileInfo(path).absolutePath();
    const int handle =
        ::open(QFile::encodeName(folder).constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (handle < 0) {
        return refuse(failure(folder, qt_error_string()));
    }
    const bool fine = ::fsync(handle) == 0;
    const int why = errno;
    ::close(handle);
    // Some file systems keep no folders that could be synced.
    if (!fine && why != EINVAL && why != ENOTSUP) {
        return refuse(failure(folder, QStringLiteral("fsync: %1").arg(qt_error_string(why))));
    }
#else
    Q_UNUSED(path)
#endif
    return {};
}

Result<void> moveNew(const QString& from, const QString& to)
{
#if defined(Q_OS_LINUX) && defined(RENAME_NOREPLACE)
    if (const auto done = renamedAs(from, to, RENAME_NOREPLACE)) {
        return *done ? flushFolderOf(to) : *done;
    }
#endif
    if (isThere(to)) {
        return refuse(taken(to));
    }
    if (auto fine = renamedOver(from, to); !fine) {
        return fine;
    }
    return flushFolderOf(to);
}

Result<void> changePlaces(const QString& fresh, const QString& old)
{
#if defined(Q_OS_LINUX) && defined(RENAME_EXCHANGE)
    if (const auto done = renamedAs(fresh, old, RENAME_EXCHANGE)) {
        return *done ? flushFolderOf(old) : *done;
    }
#endif
    // The new file goes over the old one once that has a second name, or is copied.
    const auto part = newPart(fresh);
    if (!part) {
        return tl::unexpected(part.error());
    }
    if (auto fine = renamedOver(fresh, *part); !fine) {
        return fine;
    }
#ifdef Q_OS_UNIX
    const bool named =
        ::link(QFile::encodeName(old).constData(), QFile::encodeName(fresh).constData()) == 0;
#else
    const bool named = false;
#endif
    if (!named) {
        if (QFile file(old); !file.copy(fresh)) {
            return refuse(failure(fresh, file.errorString()));
        }
        if (auto fine = flushFile(fresh); !fine) {
            return fine;
        }
    }
    if (auto fine = renamedOver(*part, old); !fine) {
        return fine;
    }
    return flushFolderOf(old);
}

} // namespace ullage::store
