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

namespace ullage::ledger
{

using formulary::kLongestName;
using formulary::kLongestSource;
using formulary::kLongestText;

/// Refuses a text of the entry that is no UTF-8 (BadEncoding), holds U+0000 (Malformed) or is too
/// long (TooLong: `number` characters, at most `high`), as its line's description has it; fields
/// as the journal spells them, inner ones with their way ("sources.capacity").
Result<void> checkTyped(const Entry& entry);

/// The same for one text.
Result<void> checkTyped(const std::string& field, const std::string& text, std::size_t most);

} // namespace ullage::ledger
