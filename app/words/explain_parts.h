// What the files of explanations need of one another.
#pragma once

#include "app/words/explanations.h"

namespace ullage::app
{

/// Standing used, its parts and the two dates.
Explanation explainStanding(BottleFigure figure, const ledger::Batch& batch,
                            const ledger::Assessment& so, const Wording& wording);
Explanation explainFilmsLeft(const ledger::Batch& batch, const ledger::Assessment& so,
                             const Wording& wording);
/// Silver or bromide.
Explanation explainCarried(BottleFigure figure, const ledger::Batch& batch, const Wording& wording);

/// "3.5 films per litre": what the bottle has felt so far, thinned by what was added.
QString wearNow(const ledger::Batch& batch, const QLocale& locale);
/// "at least 3.5 films" of a bottle whose history is not known, and of one that got something of
/// such a bottle; else the text itself.
QString leastText(const QString& text, const ledger::Batch& batch);
/// Of such a bottle a note that says why it is the least.
void addDoubt(const ledger::Batch& batch, Explanation& why);

} // namespace ullage::app
