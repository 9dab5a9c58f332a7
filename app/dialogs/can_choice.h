// Which can a bottle is poured into, and what speaks against it.
#pragma once

#include "app/session/door.h"

#include <vector>

namespace ullage::app
{

/// By what is in the can as far as its bottles can be read.
std::vector<ledger::PouringDoubt> doubtsAbout(const formulary::Solution& solution,
                                              const ledger::CanHere& can, Door& door);

/// The can that is offered for a solution of this role, by its place: the one that the last of this
/// kind went into by the user's choice, else the first that is for it; -1 for none.
int canOffered(formulary::Role role, const std::vector<ledger::CanHere>& cans, const Door& door);
/// Remembers whether a can was taken for this role.
void rememberCan(formulary::Role role, bool taken, Door& door);

} // namespace ullage::app
