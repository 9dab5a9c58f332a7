// What the steps of mixing say, for a powder and for a liquid.
#pragma once

#include "app/mixing/mixing_plan.h"
#include "app/mixing/mixing_step_list.h"

#include <vector>

namespace ullage::app
{

/// The seven steps with a line below each; `clear` once nothing is left to dissolve.
std::vector<MixingStep> mixingSteps(const MixingPlan& plan, bool clear, const Wording& wording);
/// "Fill up with water to the mark …"; of what is not clear what may be done about it.
QString fillUpText(const MixingPlan& plan, bool clear);
/// "100 ml of the liquid into 810 ml of water", of a liquid; empty for a powder, and for a liquid
/// that cannot be measured so.
QString pouringText(const MixingPlan& plan, const Wording& wording);

} // namespace ullage::app
