// Refusals name a bottle by its label: of an id nobody knows which bottle it is.
#pragma once

#include "core/chemistry/result.h"
#include "core/ledger/event.h"

#include <vector>

namespace ullage::ledger
{

/// The same refusal, its subject the name on the label where it is the id of a batch that one of
/// the events mixes. What tells of a damaged entry keeps its id: it is looked up by that.
Error withName(Error error, const std::vector<Event>& entered);

} // namespace ullage::ledger
