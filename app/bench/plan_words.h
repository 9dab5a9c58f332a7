// The plan's codes and numbers in sentences.
#pragma once

#include "app/words/units.h"
#include "core/ledger/next_load.h"

#include <QString>
#include <QStringList>

namespace ullage::app
{

/// "Oldest that can still do this load." Why the taken bottle was taken.
QString choiceText(const ledger::BathChoice& choice);
/// "Next best: Dev 15, mixed 3 days later." Empty when there is none.
QString nextBestText(const ledger::BathChoice& choice, const ledger::NextLoad& so,
                     const Wording& wording);
/// "Dev 12: discard", "Dev 13: 1 film left": those that cannot, with why; for the alternatives.
QString candidateText(const ledger::Candidate& candidate, const ledger::NextLoad& so,
                      const Wording& wording);
QString problemText(const ledger::PlanProblem& problem, const ledger::NextLoad& so,
                    const Wording& wording);
/// "First 2 × 135-36 in Dev 14 and Fix 9".
QStringList splitTexts(const ledger::NextLoad& so, const Wording& wording);
/// "MQ borax developer, stock · 980 ml, 7 films left".
QString bottleFacts(const ledger::Judged& judged, const Wording& wording);

} // namespace ullage::app
