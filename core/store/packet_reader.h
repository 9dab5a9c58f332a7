// The packets of the cupboard.
#pragma once

#include "core/ledger/entry.h"
#include "core/store/sql_store.h"

#include <vector>

namespace ullage::store
{

/// Packets that may be mixed from (suitsMixing()), as they were given last; those whose day
/// comes first in front, those without one last, else in order of id. A mixing
/// taken back has used none.
Result<std::vector<ledger::Packet>> packetsAtHand(SqlStore& store);

} // namespace ullage::store
