// The packets of the cupboard.
#pragma once

#include "core/ledger/entry.h"
#include "core/store/sql_store.h"

#include <vector>

namespace ullage::store
{

/// Packets that may be mixed from (suitsMixing()), as they were given last; those that end first in
/// front, by their day or their time once opened, those without an end behind them, and at the very
/// end what is past it at `now`: that is offered, but not first. Else in order of id. A mixing
/// taken back has used none.
Result<std::vector<ledger::Packet>> packetsAtHand(SqlStore& store, chemistry::Instant now = {});

} // namespace ullage::store
