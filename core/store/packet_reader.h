// The packets of the cupboard.
#pragma once

#include "core/ledger/entry.h"
#include "core/store/sql_store.h"

#include <map>
#include <vector>

namespace ullage::store
{

/// All that were ever entered, by id, but for those that only take one out of the book.
Result<std::map<std::string, ledger::Packet>> readPackets(SqlStore& store);

/// Those that may be mixed from (suitsMixing()), as they were given last; those whose day
/// comes first in front, those without one last, else in order of id. A mixing
/// taken back has used none.
Result<std::vector<ledger::Packet>> packetsAtHand(SqlStore& store);

} // namespace ullage::store
