#include "core/store/lock_table.h"

#include <QCoreApplication>
#include <QFile>
#include <QList>

#include <algorithm>
#include <limits>

#ifdef Q_OS_LINUX
#include <sys/sysmacros.h>
#endif

namespace ullage::store
{

namespace
{

// Where SQLite puts its locks: the writer's byte in the log's index (-shm), and in the file itself
// the bytes of whoever prepares to write and of whoever writes.
constexpr qint64 kLogWriter = 120;
constexpr qint64 kPending = 0x40000000;
constexpr qint64 kReserved = kPending + 1;

QByteArray contentOf(const QString& systemFile)
{
    QFile file(systemFile);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

bool covers(const HeldLock& lock, qint64 byte) { return lock.first <= byte && byte <= lock.last; }

std::optional<HeldLock> lockOf(const QByteArray& line)
{
    // "1: POSIX  ADVISORY  WRITE 4711 fe:01:131 120 120"; "1: -> POSIX …" only waits.
    constexpr int kWords = 8;
    const QList<QByteArray> words = line.simplified().split(' ');
    if (words.size() < kWords || words[1] != "POSIX") {
        return std::nullopt;
    }
    const QList<QByteArray> file = words[5].split(':');
    if (file.size() != 3) {
        return std::nullopt;
    }
    HeldLock lock;
    lock.process = words[4].toLongLong();
    lock.exclusive = words[3] == "WRITE";
    constexpr int kHex = 16;
    const auto major = file[0].toUInt(nullptr, kHex);
    const auto minor = file[1].toUInt(nullptr, kHex);
#ifdef Q_OS_LINUX
    lock.file.device = makedev(major, minor);
#else
    lock.file.device = (quint64{major} << 8) | minor;
#endif
    lock.file.inode = file[2].toULongLong();
    lock.first = words[6].toLongLong();
    lock.last = words[7] == "EOF" ? std::numeric_limits<qint64>::max() : words[7].toLongLong();
    return lock;
}

// The table names the device of the file system, which on some is not the one that the file itself
// is said to be on. This process's own locks on the file tell.
FileIdentity asInTable(FileIdentity file, const std::vector<HeldLock>& locks)
{
    for (const HeldLock& lock : locks) {
        if (lock.process == QCoreApplication::applicationPid() && lock.file.inode == file.inode) {
            return lock.file;
        }
    }
    return file;
}

} // namespace

QByteArray systemLockTable()
{
#ifdef Q_OS_LINUX
    return contentOf(QStringLiteral("/proc/locks"));
#else
    return {};
#endif
}

std::vector<HeldLock> heldLocks(const QByteArray& table)
{
    std::vector<HeldLock> locks;
    for (const QByteArray& line : table.split('\n')) {
        if (const auto lock = lockOf(line)) {
            locks.push_back(*lock);
        }
    }
    return locks;
}

std::optional<std::set<qint64>> othersHolding(const QString& path, const LockTableReader& read)
{
    const auto book = identityOf(path);
    const QByteArray table = read();
    if (!book || table.isEmpty()) {
        return std::nullopt;
    }
    const auto locks = heldLocks(table);
    const FileIdentity file = asInTable(*book, locks);
    std::set<qint64> others;
    for (const HeldLock& lock : locks) {
        if (lock.file == file && lock.process != QCoreApplication::applicationPid()) {
            others.insert(lock.process);
        }
    }
    return others;
}

QString writerOf(const QString& path, const LockTableReader& read)
{
    const auto book = identityOf(path);
    const auto index = identityOf(path + QLatin1String("-shm"));
    const auto locks = heldLocks(read());
    for (const HeldLock& lock : locks) {
        const bool writing =
            (index && lock.file == asInTable(*index, locks) && covers(lock, kLogWriter)) ||
            (book && lock.file == asInTable(*book, locks) &&
             (covers(lock, kReserved) || covers(lock, kPending)));
        if (!lock.exclusive || !writing || lock.process == QCoreApplication::applicationPid()) {
            continue;
        }
        const QByteArray name =
            contentOf(QStringLiteral("/proc/%1/comm").arg(lock.process)).trimmed();
        return QStringLiteral("%1 (%2)")
            .arg(name.isEmpty() ? QStringLiteral("?") : QString::fromUtf8(name))
            .arg(lock.process);
    }
    return {};
}

} // namespace ullage::store
