// The events that a deed makes, in the order in which they are entered: for the Book, which enters
// them, and for whoever wants to know first what would follow from them.
//
// Of a filling from another bottle the heir's half comes first: what is drawn goes into a bottle
// that has to be there.
#pragma once

#include "core/ledger/book.h"

namespace ullage::ledger
{

/// The mixing of a batch that is called `id`, what is drawn for it if it is decanted, that it is
/// clear if that is said, and what was taken for it from the cupboard.
std::vector<Event> eventsOf(const NewBatch& batch, const std::string& id, When when,
                            const IdMaker& newId);

/// Every bath of the run, which is called `id`, then what tops them up. What the Book refuses of a
/// run is not looked at.
std::vector<Event> eventsOf(const FilmRun& run, const std::string& id, chemistry::Instant at,
                            const IdMaker& newId);

/// Of a bottle topped up, and what is drawn for it if it comes from another one.
std::vector<Event> topUpEvents(const std::string& batch, const ToppedUp& what, When when,
                               const IdMaker& newId);

/// Of two fixing baths of which the second takes the place of the first.
std::vector<Event> exchangeEvents(const std::string& first, const Discarded& going,
                                  const std::string& second, const std::string& note, When when,
                                  const IdMaker& newId);

} // namespace ullage::ledger
