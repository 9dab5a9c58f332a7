// The locks that this process holds on a book, as the system tells them.
#pragma once

#include "core/store/lock_table.h"

#include <QCoreApplication>

#include <set>

namespace ullage::store::testing
{

/// On the book's file and on the index of its log. Empty where the system has no table of locks.
inline std::set<HeldLock> ownLocks(const QString& book)
{
    std::set<quint64> inodes;
    for (const char* beside : {"", "-shm"}) {
        if (const auto file = identityOf(book + QLatin1String(beside))) {
            inodes.insert(file->inode);
        }
    }
    std::set<HeldLock> own;
    for (const HeldLock& lock : heldLocks(systemLockTable())) {
        if (lock.process == QCoreApplication::applicationPid() &&
            inodes.contains(lock.file.inode)) {
            own.insert(lock);
        }
    }
    return own;
}

} // namespace ullage::store::testing
