// What a line says, read by its description. Refusals are left in `fields`.
#pragma once

#include "core/ledger/line_description.h"
#include "core/store/fields.h"

namespace ullage::store
{

/// `type` is a place in ledger::kTypeCodes.
ledger::EntryWhat decodeWhat(Fields& fields, std::size_t type);

/// Like decodeWhat(), of an event.
ledger::Event decodeEvent(Fields& fields);

} // namespace ullage::store
