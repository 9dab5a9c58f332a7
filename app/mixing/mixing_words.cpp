#include "app/mixing/mixing_words.h"

#include "app/mixing/mixing_page.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/chemistry/process_constants.h"

namespace ullage::app
{

std::vector<MixingStep> mixingSteps(const MixingPlan& plan, bool clear, const Wording& wording)
{
    const bool liquid = plan.liquid.has_value();
    const QString solution = plan.solution ? shownName(plan.solution->name) : QString();
    const QString vessel = plan.vessel ? shownName(plan.vessel->name) : QString();
    const auto role = plan.solution ? plan.solution->role : formulary::Role::Developer;
    const UsualWater usual = usualWater(role, liquid);
    const MixingStep pour =
        liquid ? MixingStep{MixingPage::tr("Measure and pour"),
                            MixingPage::tr("slowly, stirring; acid into water")}
               : MixingStep{MixingPage::tr("Pour and dissolve"),
                            MixingPage::tr("low and slowly; shake every %1 min")
                                .arg(static_cast<int>(chemistry::kDissolvingCheck.value))};
    return {
        {liquid ? MixingPage::tr("Liquid and bottle") : MixingPage::tr("Packet and bottle"),
         MixingPage::tr("%1 · %2").arg(solution, vessel)},
        {MixingPage::tr("Safety"), liquid ? MixingPage::tr("gloves, eyes, moving air")
                                          : MixingPage::tr("mask, gloves, eyes, moving air")},
        {MixingPage::tr("Water"),
         MixingPage::tr("%1 – %2").arg(shortTemperatureText(usual.low, wording),
                                       shortTemperatureText(usual.high, wording))},
        pour,
        {MixingPage::tr("Fill up"), MixingPage::tr("to %1").arg(volumeText(plan.makes, wording))},
        {MixingPage::tr("Close and label"), MixingPage::tr("no air left in; date it")},
        {MixingPage::tr("Done"),
         clear || liquid ? MixingPage::tr("logged as %1").arg(plan.name)
                         : MixingPage::tr("logged as %1, rests until clear").arg(plan.name)}};
}

QString fillUpText(const MixingPlan& plan, bool clear)
{
    if (plan.liquid)
        return MixingPage::tr("Fill up with water to the mark, close and turn the bottle a few "
                              "times.");
    return clear ? MixingPage::tr("Fill up with cold water to the mark, close and "
                                  "turn the bottle a few "
                                  "times.")
                 : MixingPage::tr("It is not clear yet. If the packet says so, fill "
                                  "up now and let it "
                                  "rest; else go back and shake on.");
}

QString pouringText(const MixingPlan& plan, const Wording& wording)
{
    const auto pour = plan.liquid ? plan.pours() : std::optional<chemistry::VolumesToPour>();
    const auto start = pour ? plan.start() : Result<chemistry::StartVolume>();
    if (!pour || !start)
        return {};
    return MixingPage::tr("%1 of the liquid into %2 of water")
        .arg(volumeText(pour->concentrate, wording), volumeText(start->advised, wording));
}

} // namespace ullage::app
