// Who holds which locks on a file, as the system's table of locks says.
//
// Every connection holds a shared lock on its book for as long as it is open (in the write-ahead
// log's way of working): so the table tells who else has the book open, and who is writing.
#pragma once

#include "core/store/file_identity.h"

#include <QByteArray>

#include <functional>
#include <set>
#include <vector>

namespace ullage::store
{

struct HeldLock {
    qint64 process = 0;
    FileIdentity file;
    qint64 first = 0; ///< of the bytes that are locked
    qint64 last = 0;  ///< the largest number for "to the end"
    bool exclusive = false;
    auto operator<=>(const HeldLock&) const = default;
};

/// The table as text; empty where the system has none. Tests put their own in place.
using LockTableReader = std::function<QByteArray()>;

/// Linux: /proc/locks, which names the processes this one can see.
QByteArray systemLockTable();

/// The POSIX locks that are held (not those waited for). Lines of another form are passed over.
std::vector<HeldLock> heldLocks(const QByteArray& table);

/// Processes other than this one that hold a lock on the book at `path`; nothing where the system
/// does not tell.
std::optional<std::set<qint64>> othersHolding(const QString& path,
                                              const LockTableReader& read = systemLockTable);

/// The process that holds the book's write lock, and its name if it can be found; empty if nobody
/// does, or the system does not tell. "ullage (4711)".
QString writerOf(const QString& path, const LockTableReader& read = systemLockTable);

} // namespace ullage::store
