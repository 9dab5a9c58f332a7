// What the files of explanations need of one another.
#pragma once

#include "app/words/explanations.h"

namespace ullage::app
{

/// Standing used, its parts and the two dates.
Explanation explainStanding(BottleFigure figure, const ledger::Batch& batch,
                            const ledger::Assessment& so, const Wording& wording);

} // namespace ullage::app
