// How SQLite keeps what is under way: in a write-ahead log beside the book, which needs memory that
// everyone who has the book open shares; or, where that cannot be (a folder on a network), in a
// rollback journal. Once a book has been in such a place it keeps the rollback journal: others may
// reach it over the network while we see a local folder.
#pragma once

#include "core/store/connection.h"
#include "core/store/volume.h"

namespace ullage::store
{

enum class JournalMode { Log, Rollback };

/// The note in which a book keeps the choice.
inline const QString kJournalNote = QStringLiteral("journal-mode");

/// Puts the book on `connection` (which may write, and may be empty still) into the way of working
/// that its place and its note ask for, and returns it. Tries again while others are at it, for as
/// long as the connection waits for locks; then Busy.
Result<JournalMode> useJournal(Connection& connection, Volume place, int busyTimeoutMs);

/// Keeps the choice in the book, if it is the rollback journal and not kept yet. For a book whose
/// schema is there.
Result<void> keepJournal(Connection& connection, JournalMode mode);

} // namespace ullage::store
