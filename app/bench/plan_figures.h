// "Where from?" of the run sheet: the times of its steps and what its bottles still take.
#pragma once

#include "app/words/explanation.h"
#include "core/ledger/next_load.h"
#include "core/ledger/wash_plan.h"

#include <vector>

namespace ullage::app
{

/// `wash` is what was put into the sheet of `wishes`; `timeSource` says where the maker's time was
/// taken from and may be empty. Nothing while there is no sheet.
std::vector<Explanation> sheetFigures(const ledger::LoadWishes& wishes,
                                      const ledger::NextLoad& reckoning,
                                      const ledger::WashPlan& wash, const QString& timeSource,
                                      const Wording& wording);

} // namespace ullage::app
