// Whole copies of a book, made by SQLite itself, checked before they count, and rotated.
#pragma once

#include "core/store/copies.h"
#include "core/store/progress.h"

#include <functional>

namespace ullage::store
{

/// Told before every step that leaves something on the disk; for tests that end the program there.
using StepWatch = std::function<void(const char* step)>;

/// Copies the open book to `target` (which must not exist: IdTaken): under a name of its own first,
/// then checked for integrity and for having as many entries, then renamed. After a failure nothing
/// is left.
Result<void> copyVerified(Connection& from, const QString& target, const StepWatch& watch = {});

/// What is wrong with the book in a file that nobody has open: an entry that is not as it was
/// entered, or that cannot be read, a bottle in use that cannot be reckoned. Nothing for a sound
/// one, and for one of an older schema, which is not looked into.
std::optional<Error> faultIn(const QString& path, chemistry::Instant now);

/// A copy that was made.
struct MadeCopy {
    Copy copy;
    /// What is wrong in the book, and so in the copy of it. Such a copy is marked and never takes
    /// the place of a sound one.
    std::optional<Error> fault;
};

/// Copies the book at `path` to `target`, which must not exist (IdTaken). The book need not be one
/// that can be made sense of; what is wrong with it is told.
Result<MadeCopy> copyTo(const QString& path, const QString& target, chemistry::Instant now);

/// Copies the book at `path` into `folder` (which must be there), named by the book's own id and
/// the moment, and removes the copies of this book that rotation no longer keeps. Where `goingOn`
/// says to stop before the copy has its name, it is Cancelled and nothing is left.
Result<MadeCopy> backUp(const QString& path, const QString& folder, chemistry::Instant now,
                        const StepWatch& watch = {}, const Watch& goingOn = {});

} // namespace ullage::store
