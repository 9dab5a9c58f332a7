// What the verdict means, in sentences with its numbers.
//
// The core lists every reason that applies. A reader needs each fact once, so what a graver reason
// already says is left out here (forReading), and the deed asked for stands in one place only.
#pragma once

#include "app/words/units.h"
#include "core/ledger/verdict.h"

#include <QString>
#include <QStringList>

namespace ullage::app
{

/// "Good", "Near its end", "Test first", "Discard", "Resting".
QString verdictWord(ledger::Verdict verdict);

/// The reasons a person reads, gravest first: reached capacity makes "near capacity", "few films"
/// and "less than a quarter film" redundant; past keeping "discard soon" and "standing near";
/// spent by standing the two as well; and a bottle to discard needs no test any more.
std::vector<ledger::Reason> forReading(const std::vector<ledger::Reason>& reasons);

/// One sentence.
QString reasonSentence(const ledger::Reason& reason, const ledger::Batch& batch,
                       const ledger::Assessment& assessment, const Wording& wording);

/// "Films: 7 of 12 used; last film about 16 Jan, 8 times in 10 between 22 Dec and 20 Feb."
QString filmsSentence(const ledger::Batch& batch, const ledger::Assessment& assessment,
                      const Wording& wording);
/// "Age and air: 17 % used (age 12 %, air 5 %). Keeps until about 3 Apr." Says so where no keeping
/// time is known, and below half full that it is extrapolated. `until` stands in the date's place
/// where it is given, as "about 3 Apr (Feb – Jul)".
QString standingSentence(const ledger::Batch& batch, const ledger::Assessment& assessment,
                         const Wording& wording, const QString& until = {});
/// That no keeping time is published for so little in a bottle; empty where there is. It ends
/// standingSentence().
QString extrapolationSentence(const ledger::Batch& batch);
/// Where topping up after every film leads: "Topped up with 80 ml a film its wear comes to rest at
/// 12.5 films per litre." Empty without a rate.
QString restSentence(const formulary::Solution& solution, const Wording& wording);
/// What replenisher has done for it: "Replenished with 1,200 ml so far, 1.2 times its volume: that
/// makes up for 24 films." and what is due. Empty for a solution without one.
QString replenishedSentence(const ledger::Batch& batch, const Wording& wording);
/// "Films run out first." and how sure that is; empty where it cannot be known.
QString firstSentence(const ledger::Assessment& assessment, const Wording& wording);

/// Of a bottle that is not known to be clear: what to do, with the minutes to the next look while
/// it is watched. Empty of one that is clear or to be discarded.
QString restingSentence(const ledger::Batch& batch, const ledger::Assessment& assessment,
                        const Wording& wording);

/// All sentences about a bottle: its reasons, then where films and standing are. Of an ended one
/// only how it ended. `until` as above.
QStringList bottleSentences(const ledger::Batch& batch, const ledger::Assessment& assessment,
                            const Wording& wording, const QString& until = {});

/// The two short lines under a bottle on the shelf.
struct ShelfLines {
    QString headline; ///< "5 films left", "clearing test due"
    QString subline;  ///< "until 1 May", "11 films since"; may be empty
};
ShelfLines shelfLines(const ledger::Batch& batch, const ledger::Assessment& assessment,
                      const Wording& wording);

} // namespace ullage::app
