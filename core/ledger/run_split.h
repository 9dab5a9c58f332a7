// Cutting a load that is too big into parts that the bottles and the tank can take.
#pragma once

#include "core/ledger/run_plan.h"

#include <optional>
#include <vector>

namespace ullage::ledger
{

/// Films this batch can still do for such a bath: all of it, or the part taken when it is not
/// poured back (all of it where no volume is said). Empty without a capacity; never below 0.
std::optional<chemistry::Films> filmsItCanDo(const Judged& judged, const BathNeed& need);

/// Fills part after part piece by piece, biggest pieces first, each part with the oldest developer
/// and its fixer that can take at least one piece; what no bottle can take becomes parts without
/// bottles. Empty when the load fits into one part, or when it is given as an area.
std::vector<SplitPart> splitLoad(const PlanRequest& request, const std::vector<Judged>& judged);

} // namespace ullage::ledger
