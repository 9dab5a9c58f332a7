// What batches cost: what they got from the cupboard, less what was poured on into others.
#pragma once

#include "core/formulary/formulary.h"
#include "core/ledger/charges.h"

#include <map>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// What each bottle among `entered` cost until then; bottles that were not mixed by then are left
/// out. `entered`: events of bottles connected by filling, in order of entry, as for
/// foldTogether(); `charges` of all of them.
///
/// What is poured from one bottle into another takes its part along, by its volume of what is in
/// the bottle: film that went through it before stays with the first, and so does what was spilled
/// or poured away. So the costs of all add up to what they got.
///
/// A cost is not whole where something was mixed or topped up that nothing in the cupboard stands
/// for, in a bottle found, and in what was filled from such a one. Refuses as FoldTogether does.
Result<std::map<std::string, Cost>> costsOf(const std::vector<Event>& entered,
                                            chemistry::Instant until, const Charges& charges,
                                            const formulary::Formulary& formulary);

/// `cost` by the films that bore it, one part for each of `films` (0 or more), adding up exactly;
/// without any film all of it is in a last part of its own, which is empty otherwise.
std::vector<Cost> costByFilms(const Cost& cost, const std::vector<double>& films);

/// What of a bottle's cost falls to one `film` of the films `done` in it so far, as
/// Money::forEachOf() rounds; no money where either is 0.
Cost costOfFilm(const Cost& cost, chemistry::Films film, chemistry::Films done);

} // namespace ullage::ledger
