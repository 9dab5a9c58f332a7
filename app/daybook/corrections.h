// Which entries of the Day book can be corrected, by which dialog, and how the others are put
// right.
#pragma once

#include "app/daybook/correcting_dialog.h"
#include "core/store/day_book.h"

namespace ullage::app
{

/// Whether its values can be entered anew: mixings, runs, and all that has a form of its own. Not
/// what is the other half of a filling: that is corrected in the bottle that was filled.
bool canCorrect(const ledger::Event& event);

/// Why an entry cannot be corrected, and what to do instead; empty for one that can.
QString whyNotCorrected(const store::DayEntry& entry);

/// The dialog for what stands for such an event; `entered` as CorrectingDialog has it.
CorrectingDialog* newCorrection(Door& door, const QString& what, std::vector<ledger::Event> entered,
                                QWidget* parent = nullptr);

} // namespace ullage::app
