// SQLite's own handle of a connection, for what SQL cannot ask of it.
#pragma once

#include "core/store/connection.h"

#include <QSqlDriver>
#include <QVariant>

#include <sqlite3.h>

namespace ullage::store
{

/// Null if the connection is closed. Qt's driver and this program use one and the same library, so
/// that the locks are one account.
inline sqlite3* handleOf(const Connection& connection)
{
    const QVariant handle = connection.database().driver()->handle();
    return handle.isValid() ? *static_cast<sqlite3* const*>(handle.constData()) : nullptr;
}

} // namespace ullage::store
