// Where standing and its dates are from.
#include "app/words/explain_parts.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

using formulary::Figure;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Explanations)
};

QString titleOf(BottleFigure figure)
{
    switch (figure) {
    case BottleFigure::AgePart:
        return Words::tr("Standing, age");
    case BottleFigure::AirPart:
        return Words::tr("Standing, air");
    case BottleFigure::KeepsUntil:
        return Words::tr("Keeps until");
    case BottleFigure::DiscardBy:
        return Words::tr("Discard by");
    default:
        return Words::tr("Standing used");
    }
}

void addRoutes(const ledger::Batch& batch, const QLocale& locale, Explanation& why)
{
    const chemistry::Routes& taken = batch.standing.taken;
    const std::pair<QString, chemistry::MillimolesPerLitre> routes[] = {
        {Words::tr("Poured in"), taken.pouring},
        {Words::tr("Air in the bottle"), taken.bottleAir},
        {Words::tr("Through the wall"), taken.wall},
        {Words::tr("Past the cap"), taken.cap},
        {Words::tr("Standing open"), taken.openVessel},
    };
    for (const auto& [name, amount] : routes) {
        if (amount.value() >= 0.005)
            why.inputs.push_back(
                {name, Words::tr("%1 mmol per litre").arg(numberText(amount.value(), 2, locale))});
    }
}

void addAir(const ledger::Batch& batch, const Wording& wording, Explanation& why)
{
    const QLocale& locale = wording.locale;
    if (!batch.limits->airCounts())
        return;
    addRoutes(batch, locale, why);
    why.inputs.push_back(
        {Words::tr("Oxygen it can take"), oxygenText(batch.limits->oxygen, locale)});
    why.inputs.push_back(
        {Words::tr("Air over it"), volumeText(batch.standing.air.volume, wording)});
    why.constants.push_back(
        explained(Words::tr("Oxygen in a millilitre of air"), chemistry::kAirOxygen, locale));
    why.constants.push_back(
        explained(Words::tr("Air to solution"), chemistry::kBottleExchange, locale));
    why.constants.push_back(
        explained(Words::tr("Surface of a litre bottle"), chemistry::kSurface, locale));
    if (!batch.vessel->capLeak)
        why.constants.push_back(explained(Words::tr("Leak of a cap"), chemistry::kCapLeak, locale));
    const auto& wall = chemistry::kWalls[static_cast<std::size_t>(batch.vessel->material)];
    if (batch.vessel->material != formulary::Material::Glass) {
        why.constants.push_back(
            explained(Words::tr("Wall of a litre bottle"), chemistry::kWallArea, locale));
        if (!batch.vessel->permeability)
            why.constants.push_back(
                explained(Words::tr("Wall lets through"), wall.permeability, locale));
        if (!batch.vessel->wall)
            why.constants.push_back(explained(Words::tr("Wall"), wall.thickness, locale));
        why.constants.push_back(
            explained(Words::tr("Wall by temperature"), chemistry::kWallWarmth, locale));
    }
    if (batch.standing.taken.openVessel.value() > 0)
        why.constants.push_back(batch.solution->keeping.tray
                                    ? explained(*batch.solution, Figure::KeepsTray, wording)
                                    : explained(Words::tr("Air to solution, open tray"),
                                                chemistry::kTrayExchange, locale));
    why.constants.push_back(explained(*batch.solution, Figure::OxygenFactor, wording));
}

void addAge(const ledger::Batch& batch, const Wording& wording, Explanation& why)
{
    const QLocale& locale = wording.locale;
    why.inputs.push_back(
        {Words::tr("Stored at"), shortTemperatureText(batch.temperature, wording)});
    why.inputs.push_back(
        {Words::tr("Aged, as at 20 °C"),
         Words::tr("%1 days").arg(numberText(batch.standing.aged.value(), 0, locale))});
    why.inputs.push_back(
        {Words::tr("Life by age alone"),
         Words::tr("%1 days").arg(numberText(batch.limits->age.value(), 0, locale))});
    // At 20 °C the factor is 1 whatever its constant, and what is no developer has none.
    if (batch.closed().agesByWarmth &&
        batch.temperature.value() != chemistry::kReferenceTemperature.value)
        why.constants.push_back(
            explained(Words::tr("Ageing by warmth"), chemistry::kAgeing, locale));
}

QString valueOf(BottleFigure figure, const ledger::Batch& batch, const ledger::Assessment& so,
                const Wording& wording)
{
    const QLocale& locale = wording.locale;
    switch (figure) {
    case BottleFigure::AgePart:
        return leastText(percentText(*so.agePart, locale), batch);
    case BottleFigure::AirPart:
        return leastText(percentText(*so.airPart, locale), batch);
    case BottleFigure::KeepsUntil:
        return so.keepsUntil ? dayText(*so.keepsUntil, batch.asOf, locale) : Words::tr("not known");
    case BottleFigure::DiscardBy:
        if (!so.discardBy)
            return Words::tr("not known");
        return so.discardBy == so.keepsUntil ? dayText(*so.discardBy, batch.asOf, locale)
                                             : aboutDayText(*so.discardBy, batch.asOf, locale);
    default:
        return leastText(percentText(*so.standingUsed, locale), batch);
    }
}

// From which day the keeping time counts, and why it is another than that of mixing.
void addStart(const ledger::Batch& batch, const Wording& wording, Explanation& why)
{
    const bool known = !batch.historyUnknown || batch.dateKnown;
    why.inputs.push_back({known ? Words::tr("Mixed") : Words::tr("Found"),
                          fullDateText(localDate(batch.madeAt), wording.locale)});
    if (!known) {
        why.notes << Words::tr("When it was mixed is not known.");
        return;
    }
    const auto counted = chemistry::addDays(batch.mixedAt, batch.keepsFrom);
    constexpr double kSameDay = 0.5;
    const double later = chemistry::daysBetween(batch.madeAt, counted).value();
    if (std::abs(later) < kSameDay)
        return;
    why.equation = Words::tr("The day from which it counts + the keeping time of a full bottle, in "
                             "calendar months. No bottle is kept longer.");
    why.inputs.push_back(
        {Words::tr("Counts from"), fullDateText(localDate(counted), wording.locale)});
    why.notes << (later > 0
                      ? Words::tr(
                            "Each top-up with replenisher moves on the day from which it counts.")
                      : Words::tr("Something older was poured in: it counts from that."));
}

QString equationOf(BottleFigure figure)
{
    switch (figure) {
    case BottleFigure::AgePart:
        return Words::tr(
            "Age = days since mixing, each of a developer's counted more when warm and less when "
            "cold, ÷ life by age alone. A top-up is younger and dilutes it.");
    case BottleFigure::AirPart:
        return Words::tr("Air = oxygen taken up per litre ÷ oxygen it can take. Each opening "
                         "renews the air in the bottle; a top-up dilutes what it has taken up.");
    case BottleFigure::KeepsUntil:
        return Words::tr("Day of mixing + the keeping time of a full bottle, in calendar months. "
                         "No bottle is kept longer.");
    case BottleFigure::DiscardBy:
        return Words::tr("The earlier of two days: when age and air together have spent it, if the "
                         "bottle stands on as it is now, or the end of the keeping time of a full "
                         "bottle. Where they are less than two days apart, that end counts.");
    default:
        return Words::tr("Standing used = air + age. Spent at 100 %.");
    }
}

} // namespace

Explanation explainStanding(BottleFigure figure, const ledger::Batch& batch,
                            const ledger::Assessment& so, const Wording& wording)
{
    Explanation why;
    why.title = titleOf(figure);
    if (!batch.limits || !so.standingUsed) {
        why.value = Words::tr("not known");
        why.equation = Words::tr("It is worked out from the keeping time of a full bottle, and "
                                 "none is known for this solution.");
        why.hasGrade = false;
        return why;
    }
    why.value = valueOf(figure, batch, so, wording);
    why.equation = equationOf(figure);
    if (figure == BottleFigure::KeepsUntil) {
        addStart(batch, wording, why);
        why.constants = {explained(*batch.solution, Figure::KeepsFull, wording)};
        gradeByConstants(why);
        return why;
    }
    if (figure != BottleFigure::AgePart)
        addAir(batch, wording, why);
    if (figure != BottleFigure::AirPart)
        addAge(batch, wording, why);
    why.constants.push_back(explained(*batch.solution, Figure::KeepsFull, wording));
    if (batch.solution->keeping.half)
        why.constants.push_back(explained(*batch.solution, Figure::KeepsHalf, wording));
    if (figure == BottleFigure::DiscardBy && so.spentAt && so.keepsUntil) {
        why.inputs.push_back({Words::tr("Spent by the model"),
                              aboutDayText(*so.spentAt, batch.asOf, wording.locale)});
        why.inputs.push_back(
            {Words::tr("Keeping time ends"), dayText(*so.keepsUntil, batch.asOf, wording.locale)});
    }
    if (!batch.limits->airCounts())
        why.notes << Words::tr("It is no developer and has no half-full time of its own: air does "
                               "not count, it keeps as long as a full bottle does.");
    else if (batch.solution->keeping.half)
        why.notes << Words::tr("Calibrated on two keeping times, not checked: a date is good to a "
                               "factor of two. Which route the air takes is known much better.");
    else
        why.notes << Words::tr("Calibrated on one keeping time and on an oxygen limit without a "
                               "source, not checked: a date is good to a factor of two at best. "
                               "Which route the air takes is known much better.");
    if (batch.extrapolates())
        why.notes << Words::tr("The bottle is less than half full, where no keeping times are "
                               "published: this is an extrapolation.");
    if (!so.keepsUntil && figure == BottleFigure::DiscardBy)
        addStart(batch, wording, why);
    addDoubt(batch, why);
    if (figure == BottleFigure::DiscardBy && so.discardBy)
        why.notes << Words::tr("What would help is calculated the same way: on from today, once "
                               "with the change and once without it.");
    gradeByConstants(why);
    return why;
}

} // namespace ullage::app
