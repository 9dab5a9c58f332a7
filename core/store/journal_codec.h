// A line of the journal to an entry of the book and back.
//
// The text an entry was read from is kept with it: fields in a fixed order, its moment in UTC,
// everything else as written, so that fields this program has no use for, the writing of numbers
// and optional fields given explicitly come back out unchanged.
#pragma once

#include "core/ledger/entry.h"
#include "core/store/json_line.h"

#include <QByteArray>

#include <variant>

namespace ullage::store
{

/// The line a journal begins with.
struct Header {
    std::string body; ///< as read, in canonical order
    /// Whether what is filled from another bottle has to stand on both sides: from version 2 on,
    /// but for the export of a book that began with version 1.
    bool pairs = true;
};

using Line = std::variant<Header, ledger::Entry>;

/// Reads one line (without its line break); what version 1 said otherwise is taken for what says it
/// now, while the line stays as it was written. Refuses what readJsonLine() refuses; an unknown
/// type, kind or code (UnknownKind with the list); a missing field; a wrong type; a version of the
/// journal that this program does not know (NewerBook). Ranges and references are the Book's
/// business. The entry's body is filled in.
Result<Line> decodeLine(const QByteArray& text);

/// Reads a line that decodeLine() accepted once and a book has kept; without the strict scan, and
/// so several times faster.
Result<ledger::Entry> decodeStored(const QByteArray& text);

/// The entry's line in canonical form, without a line break: its body if it has one. Numbers are
/// unrounded, in the shortest form that reads back the same.
QByteArray encode(const ledger::Entry& entry);

/// The line a journal begins with, if none was kept.
QByteArray defaultHeader();

/// A kept first line as it is written now: with the version of today, the rest as it was. With
/// `unpaired` it says that the journal holds fillings of version 1, which stand on one side only.
QByteArray currentHeader(const QByteArray& kept, bool unpaired = false);

/// Whether two lines say the same: fields in any order, numbers by value, what version 1 said
/// otherwise as it is said now.
bool sameContent(const QByteArray& one, const QByteArray& other);

inline constexpr std::string_view kJournalFormat = "ullage-journal";
/// What is written. Version 1 is read too.
inline constexpr double kJournalVersion = 2;

} // namespace ullage::store
