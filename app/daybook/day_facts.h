// What is told of the chosen entry, from its row and its bottles as they were then.
#pragma once

#include "app/daybook/day_detail.h"
#include "app/daybook/take_back_dialog.h"

#include "core/store/day_book.h"

#include <vector>

namespace ullage::app
{

/// Reads the bottles of the entry from the open book, on the window's thread. What cannot be
/// read is left out.
DayFacts dayFacts(const store::DayEntry& entry, Door& door, const Wording& wording);

/// What taking the entry back would void: of a run all its baths and the note of its times, and
/// what was entered in the same action after it about the same bottle; of an entry that is taken
/// back the voidings, so that it is brought back. Not for marks on films.
std::vector<TakingBack> takingBack(const store::DayEntry& entry, Door& door);

/// What of that is not the entry itself, a line each.
QStringList alongWith(const store::DayEntry& entry, const std::vector<TakingBack>& events,
                      Door& door, const Wording& wording);

/// What stands for the entry in the book: its event, or those of all its baths, and what was
/// entered with them.
std::vector<ledger::Event> enteredAs(const store::DayEntry& entry, Door& door);

} // namespace ullage::app
