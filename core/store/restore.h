// Putting a copy in the place of a book.
#pragma once

#include "core/store/backup.h"

namespace ullage::store
{

struct Restored {
    QString kept; ///< where the book that was there is kept now; empty if there was none
    std::int64_t entries = 0;
};

/// Makes the book at `path` what it is in `copy`. A book there is refused (IdTaken) unless
/// `replace`, and then first kept beside it. The copy is loaded by SQLite in one transaction: who
/// has the book open elsewhere goes on with what was restored, and whatever ends the program, there
/// is a whole book at `path`. Only what SQLite cannot read as a book any more is moved aside as it
/// is, with its logs. Refuses what is not a book, a newer one, a damaged copy and one in which
/// something is wrong as of `now`; then nothing has changed. What the folder `lastSeen`
/// (last_seen.h) remembers of the book is from then on what was restored.
Result<Restored> restore(const QString& copy, const QString& path, bool replace,
                         chemistry::Instant now, const StepWatch& watch = {},
                         const QString& lastSeen = {});

} // namespace ullage::store
