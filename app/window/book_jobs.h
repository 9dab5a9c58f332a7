// What takes a while and is done on a thread, each with a connection of its own to the book.
#pragma once

#include "core/chemistry/result.h"
#include "core/store/integrity.h"
#include "core/store/progress.h"
#include "core/store/restore.h"
#include "core/store/salvage.h"

#include <QString>

#include <functional>
#include <memory>

namespace ullage::app
{

/// Does its work on the thread it is called on. A count of what was done, or why it was not. Where
/// a shared pointer is handed over, it is filled before the job returns.
using BookJob = std::function<Result<int>()>;

/// Writes the book as a journal, or its events as CSV by the file's ending; whole or not at all.
/// The number of lines. FileFailed where it cannot be written.
BookJob exportJob(const QString& path, const QString& journal);
/// A whole, verified copy; `fault` gets what is wrong in the book. 1.
BookJob copyJob(const QString& path, const QString& target, chemistry::Instant now,
                std::shared_ptr<std::optional<Error>> fault);
/// Makes the book at `path` what it is in `copy`; `done` gets what became of it. `lastSeen`: the
/// folder that remembers how far books had come, here and below. The number of entries.
BookJob restoreJob(const QString& copy, const QString& path, chemistry::Instant now,
                   std::shared_ptr<store::Restored> done, const QString& lastSeen);
/// What can be read of the book at `damaged`, and of its copies in `folders`, into a new one at
/// `fresh`. The number of entries.
BookJob salvageJob(const QString& damaged, const QString& fresh, const QStringList& folders,
                   chemistry::Instant now, std::shared_ptr<store::Salvaged> done);
/// Reads everything and folds every batch; `done` gets what was found. The number of batches.
BookJob checkJob(const QString& path, const QString& lastSeen,
                 std::shared_ptr<store::BookCheck> done);
/// The first thing found wrong, for a session (SessionOptions::wholeCheck), which may stop it.
Result<void> checkWhole(const QString& path, const QString& lastSeen, const store::Watch& watch);

} // namespace ullage::app
