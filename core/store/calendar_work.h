// Known work from the events of a calendar.
#pragma once

#include "core/ledger/cupboard_state.h"
#include "core/store/calendar_text.h"

#include <vector>

namespace ullage::store
{

/// What of the events is work that the book does not have yet, or has otherwise: then a line that
/// gives it anew. Of a calendar that this program wrote the dates that are not work are passed
/// over. An event's UID is the work's first id. How many films it is only our own field says; of
/// others it is not known.
std::vector<ledger::Work> workOf(const std::vector<CalendarEvent>& events,
                                 const ledger::CupboardState& cupboard);

} // namespace ullage::store
