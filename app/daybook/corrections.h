// Which entries of the Day book can be corrected, by which dialog, and how the others are put
// right.
#pragma once

#include "app/daybook/correcting_dialog.h"
#include "core/store/day_book.h"

namespace ullage::app
{

/// Whether its values can be entered anew by a dialog: everything but what takes back, and the
/// donor's half of a filling, which follows the other bottle's.
bool canCorrect(const ledger::Event& event);

/// Why an entry that enteredAs() says is `entered` cannot be corrected, and what to do instead;
/// empty for one that can.
QString whyNotCorrected(const store::DayEntry& entry, const std::vector<ledger::Event>& entered);

/// Why the run of a film is none to correct.
QString whyNoRun();

/// The dialog for what stands for such an event; `entered` as CorrectingDialog has it.
CorrectingDialog* newCorrection(Door& door, const QString& what, std::vector<ledger::Event> entered,
                                QWidget* parent = nullptr);

} // namespace ullage::app
