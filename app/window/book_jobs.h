// What takes a while and is done on a thread, each with a connection of its own to the book.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <QString>

#include <functional>
#include <memory>

namespace ullage::app
{

/// Does its work on the thread it is called on. A count of what was done, or why it was not.
using BookJob = std::function<Result<int>()>;

/// Writes the book as a journal, or its events as CSV by the file's ending; whole or not at all.
/// The number of lines.
BookJob exportJob(const QString& path, const QString& journal);
/// A whole, verified copy. 1.
BookJob copyJob(const QString& path, const QString& target);
/// Puts the copy at `backup` in the place of the book at `path`, which is open nowhere; `kept` gets
/// the name under which the book that was there is kept. 1.
BookJob restoreJob(const QString& backup, const QString& path, chemistry::Instant now,
                   std::shared_ptr<QString> kept);
/// Reads everything and folds every batch. The number of batches, or the first thing found wrong.
BookJob checkJob(const QString& path);

} // namespace ullage::app
