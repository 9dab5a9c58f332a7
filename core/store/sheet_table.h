// The bytes of a spreadsheet saved as text (CSV), as a table of texts: which encoding, which
// delimiter, and quotes as RFC 4180 has them, generously.
//
// What cannot be certain is said: whoever imports can be asked, and gives the answer in SheetAsked.
#pragma once

#include "core/chemistry/result.h"

#include <QByteArray>
#include <QStringList>

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::store
{

enum class SheetDelimiter { Semicolon, Comma, Tab, Bar };
inline constexpr std::array<char16_t, 4> kSheetDelimiters{u';', u',', u'\t', u'|'};

/// The encodings that can be asked for, by their IANA names; what is detected may be another.
inline constexpr std::array<std::string_view, 7> kSheetEncodings{
    "UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "windows-1250", "IBM850", "macintosh"};

/// What was decided by a person; empty: to be found out.
struct SheetAsked {
    std::optional<std::string> encoding;
    std::optional<SheetDelimiter> delimiter;
    friend bool operator==(const SheetAsked&, const SheetAsked&) = default;
};

struct SheetTable {
    std::string encoding;      ///< IANA name
    bool encodingOpen = false; ///< nothing in the file tells it apart from another
    SheetDelimiter delimiter = SheetDelimiter::Comma;
    bool delimiterOpen = false;
    /// As many cells as each has, without a first line that only names the delimiter ("sep=;");
    /// those at the end may be missing. Row n of the spreadsheet is rows[n - 1]. Cells are without
    /// spaces at their ends, and as they were typed where an apostrophe keeps them from being run
    /// (csv_cell.h).
    std::vector<QStringList> rows;
};

inline constexpr qsizetype kMostSheetBytes = 32 * 1024 * 1024;
inline constexpr std::size_t kMostSheetRows = 100'000;

/// Refuses more than kMostSheetBytes or kMostSheetRows (TooLong), bytes that the encoding asked for
/// cannot read and text with a NUL (BadEncoding), a name that is no encoding's (UnknownKind), and
/// a sheet without a row (Missing); fields are `encoding` and `sheet`.
Result<SheetTable> readTable(const QByteArray& bytes, const SheetAsked& asked = {});

} // namespace ullage::store
