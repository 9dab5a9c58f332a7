// "Where from?" of the mixing guide: water, warmth, waiting, and what the batch will become.
#pragma once

#include "app/mixing/mixing_plan.h"
#include "app/words/explanation.h"

#include <vector>

namespace ullage::app
{

/// What stands under "It will become", and the weights where it is weighed out. Empty without a
/// solution.
std::vector<Explanation> becomesFigures(const MixingPlan& plan, const Wording& wording);

/// Water to begin with, as it was typed; a temperature that cannot be read is left out.
struct WaterChosen {
    chemistry::Millilitres start; ///< hot and cold together, at `wanted`
    std::optional<chemistry::Celsius> hot;
    std::optional<chemistry::Celsius> cold;
    std::optional<chemistry::Celsius> wanted;
};
/// How much water, how warm, and the blend where there is one. Empty without a complete plan.
std::vector<Explanation> waterFigures(const MixingPlan& plan, const WaterChosen& water,
                                      const Wording& wording);

/// How often to shake and look: kDissolvingCheck.
Explanation dissolvingFigure(const QLocale& locale);

/// When a bottle is ready. `readings`: whether the clock's constant is the user's own; else it is
/// the usual one of `volume`.
Explanation clockFigure(const BathClock& clock, chemistry::Millilitres volume, bool readings,
                        const Wording& wording);

} // namespace ullage::app
