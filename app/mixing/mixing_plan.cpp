#include "app/mixing/mixing_plan.h"

#include "app/words/cautions.h"
#include "app/words/moment_text.h"
#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/chemistry/process_constants.h"
#include "core/chemistry/time_units.h"
#include "core/ledger/charges.h"
#include "core/ledger/load_times.h"
#include "core/ledger/run_plan.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

using chemistry::Celsius;
using chemistry::Millilitres;
using chemistry::Seconds;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Mixing)
};

QString minutesText(Seconds time, const QLocale& locale)
{
    return Words::tr("%1 min").arg(numberText(std::ceil(chemistry::inMinutes(time)), 0, locale));
}

constexpr const char* kAnhydrous = "anhydrous";

// As a powder; one in solution adds to the water as a liquid does.
bool isThiosulfate(const chemistry::Ingredient& part)
{
    return part.name == "sodium-thiosulfate" && part.unit == chemistry::AmountUnit::Gram;
}

UsualWater within(const chemistry::Constant& water)
{
    return {Celsius(water.low), Celsius(water.high), Celsius(water.value)};
}

} // namespace

std::optional<chemistry::VolumesToPour> MixingPlan::pours() const
{
    if (!liquid || makes.value() <= 0)
        return std::nullopt;
    if (liquid->strengths) {
        const auto& [from, to] = *liquid->strengths;
        const auto pour = chemistry::dilutionByVolume(makes, from, to);
        return pour ? std::optional(*pour) : std::nullopt;
    }
    const Millilitres of = ledger::stockNeeded(makes, liquid->parts);
    return chemistry::VolumesToPour{.water = makes - of, .concentrate = of};
}

double MixingPlan::powder() const
{
    if (liquid)
        return 0;
    if (!formula)
        return powderGrams.value_or(0);
    double grams = 0;
    for (const chemistry::Ingredient& part : formula->ingredients)
        grams += part.unit == chemistry::AmountUnit::Gram ? part.amount : 0;
    return grams;
}

double MixingPlan::thiosulfate() const
{
    if (!formula)
        return solution && solution->role == formulary::Role::Fixer ? powder() : 0;
    double grams = 0;
    for (const chemistry::Ingredient& part : formula->ingredients)
        grams += isThiosulfate(part) && part.form != kAnhydrous ? part.amount : 0;
    return grams;
}

Millilitres MixingPlan::displaced() const
{
    double anhydrous = 0;
    for (const chemistry::Ingredient& part :
         formula ? formula->ingredients : std::vector<chemistry::Ingredient>())
        anhydrous += isThiosulfate(part) && part.form == kAnhydrous ? part.amount : 0;
    const auto rest = chemistry::displacement(powder() - thiosulfate() - anhydrous, thiosulfate());
    return rest + chemistry::anhydrousThiosulfate(anhydrous);
}

Result<chemistry::StartVolume> MixingPlan::start() const
{
    if (liquid) {
        const auto pour = pours();
        return chemistry::startForLiquid(makes, vessel->capacity,
                                         pour ? pour->concentrate : Millilitres(0));
    }
    return chemistry::startVolume(makes, vessel->capacity, displaced());
}

QStringList MixingPlan::cautions() const
{
    return solution
               ? mixingCautions(*solution, formula ? MixedFrom::RawChemicals : MixedFrom::Packet)
               : QStringList();
}

UsualWater usualWater(formulary::Role role, bool liquid)
{
    if (liquid)
        return within(chemistry::kOtherWater);
    switch (role) {
    case formulary::Role::Developer:
        return within(chemistry::kPackagedDeveloperWater);
    case formulary::Role::Fixer:
        return within(chemistry::kFixerWater);
    default:
        return within(chemistry::kOtherWater);
    }
}

QString planProblem(const MixingPlan& plan, const Wording& wording)
{
    if (!plan.solution)
        return Words::tr("Choose what to mix.");
    if (!plan.vessel)
        return Words::tr("Choose a bottle.");
    if (plan.makes.value() <= 0)
        return Words::tr("Say how much the packet makes.");
    if (plan.makes > plan.vessel->capacity)
        return Words::tr("%1 holds %2 to the brim: %3 do not go into it.")
            .arg(shownName(plan.vessel->name), volumeText(plan.vessel->capacity, wording),
                 volumeText(plan.makes, wording));
    if (plan.liquid && !plan.pours())
        return Words::tr("A liquid becomes weaker, never stronger: look at the two strengths.");
    if (plan.liquid && !plan.start())
        return Words::tr("This much liquid leaves no room for water: it is to be diluted.");
    if (!plan.start())
        return Words::tr("This much powder leaves no room for water in %1.")
            .arg(shownName(plan.vessel->name));
    return {};
}

QString startNote(const MixingPlan& plan, const chemistry::StartVolume& start,
                  const Wording& wording)
{
    if (plan.liquid) {
        const auto pour = plan.pours();
        return pour ? Words::tr("most of the water; %1 of the liquid go into it, the rest of the "
                                "water afterwards")
                          .arg(volumeText(pour->concentrate, wording))
                    : QString();
    }
    QStringList parts;
    if (start.tight)
        parts << Words::tr("the powder leaves no room for more");
    else if (start.halfBottle)
        parts << Words::tr("half a bottle, so that it can be shaken");
    else
        parts << Words::tr("half to three quarters of the whole");
    if (plan.powder() > 0)
        parts << Words::tr("%1 g of powder will raise it by about %2")
                     .arg(numberText(plan.powder(), 0, wording.locale),
                          volumeText(plan.displaced(), wording));
    return parts.join(QStringLiteral(": "));
}

namespace
{

// The tenth film's time; of a batch that does not do ten, its last one's.
void addLateFilm(std::vector<FactorRow>& rows, const MixingPlan& plan, const Wording& wording)
{
    constexpr int kTenth = 10;
    const formulary::Solution& solution = *plan.solution;
    const double films =
        solution.capacity ? (*solution.capacity * chemistry::litres(plan.makes)).value() : kTenth;
    const int film = std::min(kTenth, static_cast<int>(films + 1e-9));
    if (film < 2)
        return;
    rows.push_back({film == kTenth ? Words::tr("Tenth film's time")
                                   : Words::tr("Last film's time, no. %1").arg(film),
                    factorText(ledger::factorOfFilm(solution, film, plan.makes), wording.locale)});
}

} // namespace

std::vector<FactorRow> becomesRows(const MixingPlan& plan, chemistry::Instant now,
                                   const Wording& wording, Becomes much)
{
    std::vector<FactorRow> rows;
    if (!plan.isComplete())
        return rows;
    const formulary::Solution& solution = *plan.solution;
    if (solution.capacity)
        rows.push_back({Words::tr("Films"),
                        filmCountText((*solution.capacity * chemistry::litres(plan.makes)).value(),
                                      wording.locale)});
    const bool whole = much == Becomes::Whole;
    if (whole && solution.wear.rule != chemistry::WearRule::None)
        addLateFilm(rows, plan, wording);
    rows.push_back(
        {Words::tr("Keeps, full and closed"),
         solution.keeping.full
             ? Words::tr("to %1").arg(dayText(
                   chemistry::addKeepingTime(now, *solution.keeping.full), now, wording.locale))
             : Words::tr("not known")});
    if (whole && plan.packet && solution.capacity) {
        const auto cost = ledger::costOfMixing(ledger::purchaseOf(*plan.packet), plan.makes);
        const double films = (*solution.capacity * chemistry::litres(plan.makes)).value();
        if (cost.whole && films > 0)
            rows.push_back({Words::tr("Cost of a film, to the last one"),
                            moneyText(cost.money.forEachOf(films), wording.locale)});
    }
    return rows;
}

QString bathText(const BathClock& clock, const Wording& wording)
{
    const auto ready = clock.ready();
    if (!ready) {
        const QString never = clock.surroundings == chemistry::Surroundings::StirredBath
                                  ? Words::tr("a bath of %1 never brings it to %2")
                                  : Words::tr("a room of %1 never brings it to %2");
        return never.arg(shortTemperatureText(clock.bath, wording),
                         shortTemperatureText(clock.wanted, wording));
    }
    if (ready->value() <= 0)
        return Words::tr("ready now");
    return Words::tr("ready in about %1").arg(minutesText(*ready, wording.locale));
}

ChartSpec bathChart(const BathClock& clock, const Wording& wording)
{
    ChartSpec spec;
    const bool fahrenheit = wording.units.temperature == TemperatureUnit::Fahrenheit;
    const auto shown = [&](Celsius temperature) {
        return fahrenheit ? toFahrenheit(temperature.value()) : temperature.value();
    };
    spec.title = clock.surroundings == chemistry::Surroundings::StirredBath
                     ? Words::tr("The bottle in its bath")
                     : Words::tr("The bottle in the room");
    spec.summary = bathText(clock, wording);
    spec.x = ChartX::Numbers;
    spec.xName = Words::tr("minutes");
    spec.xText = [locale = wording.locale](double minutes) {
        return Words::tr("%1 min").arg(numberText(minutes, 0, locale));
    };
    spec.y = ChartY::Number;
    spec.yUnit = fahrenheit ? QStringLiteral("°F") : QStringLiteral("°C");
    const auto ready = clock.ready();
    const double last = std::max(
        10.0, std::ceil(chemistry::inMinutes(ready ? *ready : 3 * clock.constant) * 1.7 / 10) * 10);
    spec.xMax = last;
    for (int i = 0; i <= 3; ++i) {
        const double at = last * i / 3;
        spec.xLabels.push_back({at, spec.xText(at)});
    }
    ChartSeries line{.name = Words::tr("bottle"), .kind = SeriesKind::Line, .inLegend = false};
    constexpr int kSteps = 60;
    double low = shown(clock.bottle);
    double high = low;
    for (int i = 0; i <= kSteps; ++i) {
        const double minutes = last * i / kSteps;
        const double at = shown(chemistry::temperatureAfter(
            clock.bottle, clock.bath, chemistry::fromMinutes(minutes), clock.constant));
        line.points.emplace_back(minutes, at);
        low = std::min(low, at);
        high = std::max(high, at);
    }
    spec.yMin = std::floor(low / 5) * 5;
    spec.yMax = std::max(spec.yMin + 5, std::ceil(high / 5) * 5);
    spec.series = {line,
                   {.name = Words::tr("wanted"),
                    .kind = SeriesKind::Dashed,
                    .ink = ChartInk::Age,
                    .points = {{0, shown(clock.wanted)}, {last, shown(clock.wanted)}},
                    .inLegend = false}};
    if (ready) {
        spec.marker = chemistry::inMinutes(*ready);
        spec.markerText = spec.summary;
    }
    return spec;
}

} // namespace ullage::app
