#include "app/formulary/vessel_words.h"

#include "app/words/number_text.h"
#include "core/formulary/implied.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FormularyVessels)
};

ExplainedConstant own(const QString& name, double value, const chemistry::Constant& like,
                      const QLocale& locale)
{
    ExplainedConstant mine = explained(name, like, locale);
    mine.value = plainNumber(value, locale) + u'\u00a0' +
                 QString::fromUtf8(like.unit.data(), static_cast<qsizetype>(like.unit.size()));
    mine.range.clear();
    mine.source = Words::tr("entered for this bottle");
    mine.grade = std::nullopt;
    return mine;
}

} // namespace

QString flowText(double millimolesADay, const QLocale& locale)
{
    return Words::tr("%1 mmol a day").arg(plainNumber(millimolesADay, locale));
}

Explanation explainVessel(const formulary::Vessel& vessel, const Wording& wording)
{
    const QLocale& locale = wording.locale;
    const auto flow = formulary::flows(vessel);
    const auto& wall = chemistry::kWalls[static_cast<std::size_t>(vessel.material)];
    Explanation why;
    why.title = Words::tr("Oxygen that comes in");
    why.value = flowText(flow.wall + flow.cap, locale);
    why.equation = Words::tr("Through the wall: what the material lets through × area × 0.2095 ÷ "
                             "thickness ÷ 22.414. Past the cap: its leak ÷ 22.414.");
    why.inputs = {{Words::tr("Through the wall"), flowText(flow.wall, locale)},
                  {Words::tr("Past the cap"), flowText(flow.cap, locale)},
                  {Words::tr("Holds to the brim"), volumeText(vessel.capacity, wording)}};
    const auto add = [&](const QString& name, std::optional<double> mine,
                         const chemistry::Constant& usual) {
        why.constants.push_back(mine ? own(name, *mine, usual, locale)
                                     : explained(name, usual, locale));
    };
    add(Words::tr("Wall lets through"), vessel.permeability, wall.permeability);
    if (vessel.material != formulary::Material::Glass || vessel.permeability)
        add(Words::tr("Wall"), vessel.wall ? std::optional(vessel.wall->value()) : std::nullopt,
            wall.thickness);
    add(Words::tr("Leak of the cap"),
        vessel.capLeak ? std::optional(vessel.capLeak->value()) : std::nullopt,
        chemistry::kCapLeak);
    why.constants.push_back(explained(Words::tr("Area of the wall"), chemistry::kWallArea, locale));
    if (vessel.squeezed)
        why.notes << Words::tr("The air is squeezed out at every closing.");
    else
        why.notes << Words::tr("The air that is shut in with the solution comes on top of this; it "
                               "follows from how full the bottle is.");
    gradeByConstants(why);
    return why;
}

} // namespace ullage::app
