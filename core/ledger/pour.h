// How much goes into the tank for a bath, and out of what.
#pragma once

#include "core/ledger/run_plan.h"
#include "core/ledger/run_sheet.h"

#include <optional>

namespace ullage::ledger
{

/// What the bottle gives for this need, and what water fills the tank; none without a tank.
Pour pourOf(const BathNeed& need, const std::optional<Tank>& tank);

} // namespace ullage::ledger
