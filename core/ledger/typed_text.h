// What a person may type: text that a line of the journal can carry and a bottle or a page can
// show.
//
// These limits are for what is entered in this program. A journal may hold longer text, as older
// books do; only its lines have a limit (core/store/line_reader.h), and an entry that passes here
// always fits on one.
#pragma once

#include "core/formulary/field.h"
#include "core/ledger/entry.h"

#include <cstddef>
#include <string_view>

namespace ullage::ledger
{

using formulary::kLongestName;
using formulary::kLongestSource;
using formulary::kLongestText;

/// Whether a text of UTF-8 comes out of a book as it went in: it holds neither U+0000 nor the
/// noncharacters U+FFFE and U+FFFF, and does not begin with U+FEFF, a mark of byte order.
bool canBeKept(std::string_view text);
/// What is asked for where it cannot, as Error::allowed.
inline constexpr const char* kTextToKeep =
    "a text without the characters U+0000, U+FFFE, U+FFFF, and without U+FEFF at its start";

/// Refuses a text of the entry that is no UTF-8 (BadEncoding), cannot be kept (Malformed) or is too
/// long (TooLong: `number` characters, at most `high`), as its line's description has it; fields
/// as the journal spells them, inner ones with their way ("sources.capacity").
Result<void> checkTyped(const Entry& entry);

/// The same for one text.
Result<void> checkTyped(const std::string& field, const std::string& text, std::size_t most);

} // namespace ullage::ledger
