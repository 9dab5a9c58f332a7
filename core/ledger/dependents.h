// Which lines of a journal depend on which: what must stay out when a line stays out.
#pragma once

#include "core/ledger/entry.h"
#include "core/ledger/store_port.h"

#include <functional>
#include <set>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// Names of what an entry makes known ("solution mq", "batch dev-1", "run r1") and of what it needs
/// to be known.
std::vector<std::string> namesGiven(const Entry& entry);
std::vector<std::string> namesNeeded(const Entry& entry);

using TakeLine = std::function<Result<void>(const Entry& entry, int line)>;
/// Goes through a journal once and hands on every line that can be read.
using ThroughJournal = std::function<Result<void>(const TakeLine& take)>;

/// `leftOut` and all lines that cannot come in without them: what they name is neither in the book
/// nor given by a line that stays.
Result<std::set<int>> withDependents(std::set<int> leftOut, StorePort& store,
                                     const ThroughJournal& journal);

} // namespace ullage::ledger
