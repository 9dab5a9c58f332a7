// The events that a deed makes, in the order in which they are entered: for the Book, which enters
// them, and for whoever wants to know first what would follow from them.
#pragma once

#include "core/ledger/book.h"

namespace ullage::ledger
{

/// The mixing of a batch that is called `id`, and that it is clear if that is said.
std::vector<Event> eventsOf(const NewBatch& batch, const std::string& id, When when,
                            const IdMaker& newId);

/// Every bath of the run, which is called `id`, then what tops them up. What the Book refuses of a
/// run is not looked at.
std::vector<Event> eventsOf(const FilmRun& run, const std::string& id, chemistry::Instant at,
                            const IdMaker& newId);

/// Of a bottle topped up, from another one unless `from` is empty: that one is drawn from first.
std::vector<Event> topUpEvents(const std::string& batch, chemistry::Millilitres volume, When when,
                               const std::string& from, const IdMaker& newId);

} // namespace ullage::ledger
