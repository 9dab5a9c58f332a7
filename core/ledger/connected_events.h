// A bottle's events and those of every bottle that it is connected with by filling.
#pragma once

#include "core/ledger/store_port.h"

#include <string>
#include <vector>

namespace ullage::ledger
{

/// In order of entry: what foldTogether() asks for. Fails as the store does.
Result<std::vector<Event>> connectedEvents(StorePort& store, const std::string& batch);

} // namespace ullage::ledger
