// Whole copies of a book, made by SQLite itself, checked before they count, and rotated.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"
#include "core/store/connection.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace ullage::store
{

/// Copies the open book to `target` (which must not exist): under another name first, then checked
/// for integrity and for having as many entries, then renamed. After a failure nothing is left.
Result<void> copyVerified(Connection& from, const QString& target);

/// Copies the book at `path` into `folder` (made if need be), named by the moment, and removes the
/// copies that rotation no longer keeps. The name of the copy.
Result<QString> backUp(const QString& path, const QString& folder, chemistry::Instant now);

/// Puts a copy of the book at `backup` in the place of `path`. An old book there is refused
/// (IdTaken) unless `replace`, and then kept beside it under another name, which is returned; empty
/// if there was none. Refuses what is not a book, a newer one, and a copy that is not whole.
Result<QString> restore(const QString& backup, const QString& path, bool replace);

/// Of moments at which copies were made, those to keep: the newest of each of the last 7 days, 8
/// weeks (from Monday) and 12 months that have any, in UTC.
std::vector<chemistry::Instant> keptBackups(std::vector<chemistry::Instant> made);

/// `wanted`, or the first of `wanted`-2, -3 … that no file has.
QString freeName(const QString& wanted);

} // namespace ullage::store
