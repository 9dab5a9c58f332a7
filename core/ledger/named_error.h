// Refusals name a bottle by its label and a packet by its solution: an id tells nobody what it is.
#pragma once

#include "core/chemistry/result.h"
#include "core/formulary/formulary.h"
#include "core/ledger/cupboard.h"
#include "core/ledger/event.h"

#include <vector>

namespace ullage::ledger
{

/// The same refusal, its subject the name on the label where it is the id of a batch that one of
/// the events mixes. What tells of a damaged entry keeps its id: it is looked up by that.
Error withName(Error error, const std::vector<Event>& entered);
/// Likewise where it is the id of a packet: the name of the solution that it makes.
Error withName(Error error, const Cupboard& cupboard, const formulary::Formulary& formulary);

} // namespace ullage::ledger
