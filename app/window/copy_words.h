// How copies of the book are worded.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QString>
#include <QStringList>

#include "app/session/copy_keeper.h"
#include "app/words/units.h"
#include "core/store/salvage.h"

namespace ullage::app
{

/// The line in the rail; empty as long as nothing is known.
struct StandingText {
    QString line;
    QString whatToDo;     ///< in a sentence or two; empty where all is well
    bool trouble = false; ///< something is to be done
};
/// Whether it is said already, beside this line, that something is wrong in the book.
enum class FaultSaid { NotYet, Already };
/// A failure comes before a fault in the book, and what became of the second folder after both.
StandingText standingText(const CopyStanding& standing, chemistry::Instant now,
                          const Wording& wording, FaultSaid said = FaultSaid::NotYet);

/// "checked", "with the book's faults", "cannot be read".
QString stateText(store::CopyState state);

/// "24 Nov, 15:30, 412 entries", for questions.
QString copyText(const store::Copy& copy, chemistry::Instant now, const Wording& wording);

/// What was salvaged, in a sentence or two.
QString salvagedText(const store::Salvaged& done);
/// What is missing, a line for each gap, and what that spoils.
QStringList missingLines(const store::Salvaged& done, chemistry::Instant now,
                         const Wording& wording);
/// What is still known of each entry that is missing.
QStringList missingDetails(const store::Salvaged& done, const Wording& wording);

} // namespace ullage::app
