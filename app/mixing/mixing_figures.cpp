#include "app/mixing/mixing_figures.h"

#include "app/words/explanations.h"
#include "app/words/number_text.h"
#include "core/chemistry/process_constants.h"
#include "core/chemistry/time_units.h"

#include <QCoreApplication>

namespace ullage::app
{

using chemistry::Celsius;
using chemistry::Grade;
using formulary::Figure;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(MixingFigures)
};

Explanation weights(const MixingPlan& plan, const Wording& wording)
{
    Explanation why;
    why.title = Words::tr("To weigh out");
    why.value = Words::tr("%1 g").arg(numberText(plan.powder(), 1, wording.locale));
    why.equation = Words::tr("The formula for a litre × the litres to be made. Another form of a "
                             "salt, with more or less water in its crystals, by the molar masses "
                             "of the two.");
    why.inputs = {{Words::tr("It makes"), volumeText(plan.makes, wording)}};
    why.constants = {{Words::tr("Molar masses"),
                      {},
                      {},
                      Words::tr("from the atomic weights of IUPAC"),
                      Grade::Computed}};
    why.notes << Words::tr("Where the formula itself is from stands with the solution in the "
                           "Formulary.");
    gradeByConstants(why);
    return why;
}

Explanation toMeasure(const MixingPlan& plan, const chemistry::VolumesToPour& pour,
                      const Wording& wording)
{
    Explanation why;
    why.title = Words::tr("To measure");
    why.value = volumeText(pour.concentrate, wording);
    why.inputs = {{Words::tr("It makes"), volumeText(plan.makes, wording)}};
    if (plan.liquid->strengths) {
        const auto& [from, to] = *plan.liquid->strengths;
        why.equation = Words::tr("By weight: the wanted strength's share of the whole is liquid, "
                                 "the rest water. Each weight is then a volume by its density. "
                                 "The two volumes need not add up: fill up to the mark.");
        const auto strength = [&](const chemistry::Strength& one) {
            return Words::tr("%1 %, %2 g/ml", "strength by weight, density")
                .arg(numberText(one.percent, 1, wording.locale),
                     numberText(one.density, 3, wording.locale));
        };
        why.inputs.push_back({Words::tr("The liquid"), strength(from)});
        why.inputs.push_back({Words::tr("To become"), strength(to)});
    } else {
        why.equation = Words::tr("What it makes ÷ (parts of water + 1).");
        why.inputs.push_back({Words::tr("Parts of water for one of the liquid"),
                              numberText(plan.liquid->parts, 0, wording.locale)});
    }
    return why;
}

Explanation startForLiquid(const MixingPlan& plan, const chemistry::StartVolume& start,
                           const Wording& wording)
{
    Explanation why;
    why.title = Words::tr("Water to begin with");
    why.value = volumeText(start.advised, wording);
    why.equation = Words::tr("Most of the water: what it makes less the liquid, and a little kept "
                             "back to fill up with.");
    why.inputs = {{Words::tr("It makes"), volumeText(plan.makes, wording)},
                  {Words::tr("The liquid"), volumeText(plan.pours()->concentrate, wording)}};
    why.constants = {
        explained(Words::tr("Share of the water"), chemistry::kLiquidStart, wording.locale)};
    gradeByConstants(why);
    return why;
}

Explanation startWater(const MixingPlan& plan, const chemistry::StartVolume& start,
                       const Wording& wording)
{
    const QLocale& locale = wording.locale;
    Explanation why;
    why.title = Words::tr("Water to begin with");
    why.value = volumeText(start.advised, wording);
    why.equation = Words::tr("Half to three quarters of what it makes, and never more than the "
                             "bottle holds less what the powder adds and some room to stir. A "
                             "batch that all but fills its bottle is mixed in it, half full, so "
                             "that it can be shaken.");
    why.inputs = {{Words::tr("It makes"), volumeText(plan.makes, wording)},
                  {Words::tr("The bottle holds"), volumeText(plan.vessel->capacity, wording)},
                  {Words::tr("The powder adds"), volumeText(plan.displaced(), wording)},
                  {Words::tr("From"), volumeText(start.least, wording)},
                  {Words::tr("To"), volumeText(start.most, wording)}};
    why.constants = {explained(Words::tr("Share of the whole"), chemistry::kStartShare, locale),
                     explained(Words::tr("Room to stir"), chemistry::kMixingRoom, locale)};
    if (start.halfBottle)
        why.constants.push_back(
            explained(Words::tr("To be shaken"), chemistry::kHalfBottle, locale));
    if (plan.powder() > plan.thiosulfate())
        why.constants.push_back(
            explained(Words::tr("A gram of powder adds"), chemistry::kSulfiteDisplacement, locale));
    if (plan.thiosulfate() > 0)
        why.constants.push_back(explained(Words::tr("A gram of powder adds"),
                                          chemistry::kThiosulfateDisplacement, locale));
    gradeByConstants(why);
    return why;
}

Explanation usualWarmth(const MixingPlan& plan, const Wording& wording)
{
    Explanation why;
    const bool liquid = plan.liquid.has_value();
    const UsualWater usual = usualWater(plan.solution->role, liquid);
    why.title = Words::tr("How warm");
    why.value = Words::tr("%1 – %2").arg(shortTemperatureText(usual.low, wording),
                                         shortTemperatureText(usual.high, wording));
    why.equation = liquid
                       ? Words::tr("What is usual for a liquid. What its bottle says goes before "
                                   "it.")
                       : Words::tr("What is usual for a powder of this kind. What its packet "
                                   "says goes before it.");
    const auto role = plan.solution->role;
    if (role == formulary::Role::Developer && !liquid)
        why.constants = {
            explained(Words::tr("Developers"), chemistry::kDeveloperWater, wording.locale),
            explained(Words::tr("What their packets ask for"), chemistry::kPackagedDeveloperWater,
                      wording.locale)};
    else if (role == formulary::Role::Fixer && !liquid)
        why.constants = {explained(Words::tr("Fixers"), chemistry::kFixerWater, wording.locale)};
    else
        why.constants = {
            explained(Words::tr("Other baths"), chemistry::kOtherWater, wording.locale)};
    gradeByConstants(why);
    return why;
}

ExplainedConstant density(Celsius temperature, const Wording& wording)
{
    return {Words::tr("Water at %1 weighs").arg(shortTemperatureText(temperature, wording)),
            Words::tr("%1 g/L").arg(
                numberText(chemistry::waterDensity(temperature), 1, wording.locale)),
            {},
            Words::tr("IAPWS-IF97; from 70 °C up from memory"),
            temperature.value() > 60 ? Grade::FromMemory : Grade::Published};
}

Explanation blended(const WaterChosen& water, const chemistry::Blend& blend, const Wording& wording)
{
    Explanation why;
    why.title = Words::tr("Hot and cold water");
    why.value = Words::tr("%1 + %2", "hot, cold")
                    .arg(volumeText(blend.hot, wording), volumeText(blend.cold, wording));
    why.equation = Words::tr("By weight: hot = whole × (wanted − cold) ÷ (hot − cold), the rest is "
                             "cold. Each weight is then a volume at its own temperature.");
    why.inputs = {{Words::tr("Whole"), volumeText(water.start, wording)},
                  {Words::tr("Wanted"), temperatureText(*water.wanted, wording)},
                  {Words::tr("Hot"), temperatureText(*water.hot, wording)},
                  {Words::tr("Cold"), temperatureText(*water.cold, wording)}};
    why.constants = {density(*water.hot, wording), density(*water.cold, wording)};
    why.notes << Words::tr("What warms the vessel is left out, so the blend comes out a little "
                           "nearer to the temperature of the room.");
    gradeByConstants(why);
    return why;
}

} // namespace

std::vector<Explanation> becomesFigures(const MixingPlan& plan, const Wording& wording)
{
    std::vector<Explanation> all;
    if (!plan.solution)
        return all;
    if (plan.formula)
        all.push_back(weights(plan, wording));
    if (const auto pour = plan.pours())
        all.push_back(toMeasure(plan, *pour, wording));
    const formulary::Solution& solution = *plan.solution;
    if (solution.capacity)
        all.push_back(explain(Figure::Capacity, solution, wording));
    if (solution.wear.rule != chemistry::WearRule::None)
        all.push_back(explainWear(solution, wording));
    if (solution.keeping.full)
        all.push_back(explain(Figure::KeepsFull, solution, wording));
    return all;
}

std::vector<Explanation> waterFigures(const MixingPlan& plan, const WaterChosen& water,
                                      const Wording& wording)
{
    std::vector<Explanation> all;
    if (!plan.isComplete())
        return all;
    if (const auto start = plan.start())
        all.push_back(plan.liquid ? startForLiquid(plan, *start, wording)
                                  : startWater(plan, *start, wording));
    all.push_back(usualWarmth(plan, wording));
    if (!water.hot || !water.cold || !water.wanted)
        return all;
    if (const auto blend = chemistry::blend(water.start, *water.wanted, *water.hot, *water.cold))
        all.push_back(blended(water, *blend, wording));
    return all;
}

Explanation dissolvingFigure(const QLocale& locale)
{
    Explanation why;
    why.title = Words::tr("Shake and look every");
    const ExplainedConstant every =
        explained(Words::tr("Between two looks"), chemistry::kDissolvingCheck, locale);
    why.value = every.value;
    why.equation = Words::tr("Counted from when the powder went in. No rule says when it has "
                             "dissolved: your eye does.");
    why.constants = {every};
    gradeByConstants(why);
    return why;
}

Explanation clockFigure(const BathClock& clock, chemistry::Millilitres volume, bool readings,
                        const Wording& wording)
{
    const QLocale& locale = wording.locale;
    const bool bath = clock.surroundings == chemistry::Surroundings::StirredBath;
    Explanation why;
    why.title = bath ? Words::tr("The bottle in its bath") : Words::tr("The bottle in the room");
    why.value = bathText(clock, wording);
    why.equation = Words::tr("The difference from what is around it shrinks by the same share in "
                             "equal times: to 37 % of it in one time constant.");
    why.inputs = {
        {Words::tr("Bottle now"), temperatureText(clock.bottle, wording)},
        {bath ? Words::tr("Bath") : Words::tr("Room air"), temperatureText(clock.bath, wording)},
        {Words::tr("Wanted"), temperatureText(clock.wanted, wording)},
        {Words::tr("Time constant"),
         Words::tr("%1 min").arg(numberText(chemistry::inMinutes(clock.constant), 1, locale))}};
    if (readings) {
        why.notes << Words::tr("The time constant is from two readings of your own thermometer.");
    } else {
        why.inputs.push_back({Words::tr("It holds"), volumeText(volume, wording)});
        why.constants = {explained(Words::tr("Usual time constant"),
                                   bath ? chemistry::kStirredBath : chemistry::kRoomAir, locale)};
        why.notes << Words::tr("The usual time constant grows with the cube root of the volume. "
                               "Two readings of your own thermometer replace it.");
    }
    gradeByConstants(why);
    return why;
}

} // namespace ullage::app
