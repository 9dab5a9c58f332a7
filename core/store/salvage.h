// A new book from what can still be read of a damaged one and of its copies.
#pragma once

#include "core/store/backup.h"
#include "core/store/fault_names.h"

#include <vector>

namespace ullage::store
{

/// What is missing in the new book: entries that stood one after another.
struct Missing {
    std::int64_t first = 0; ///< number in the damaged book, from 1
    std::int64_t last = 0;
    /// What an index of the damaged book still says of one; then first and last are the same.
    std::string type;
    std::string id;
    Between between; ///< of all that are gone in that place
};

/// All that is gone in one place.
struct Gap {
    std::int64_t first = 0;
    std::int64_t last = 0;
    Between between;
    std::vector<Missing> parts;
};
/// `missing` in order; what stands side by side is one.
std::vector<Gap> gapsOf(const std::vector<Missing>& missing);

struct Salvaged {
    std::int64_t entries = 0;  ///< in the new book
    std::int64_t fromCopy = 0; ///< of them filled in from copies
    QStringList copies;        ///< that something came from
    std::vector<Missing> missing;
    /// Not even the first page could be read: all there is comes from the newest copy, and how much
    /// came after it nobody knows.
    std::optional<Error> unreadable;
    /// What is wrong in the new book because of what is missing, each with its subject, as
    /// checkBook() finds it. Entries that rest on missing ones are in the book all the same.
    std::vector<Error> faults;
    FaultNames names; ///< what they are about
};

/// Reads the book at `damaged`, which is never written, entry by entry around whatever cannot be
/// read; fills in from `copies` (newest first) what is lost; and writes all of it into a new book
/// at `fresh`, which must not exist (IdTaken). The order of entry, ids and texts are as they were.
/// Refuses what was never a book, a newer one, and where neither the book nor a copy has anything;
/// then there is no new book.
Result<Salvaged> salvage(const QString& damaged, const QString& fresh,
                         const std::vector<Copy>& copies, chemistry::Instant now,
                         const StepWatch& watch = {});

} // namespace ullage::store
