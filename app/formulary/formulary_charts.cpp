#include "app/formulary/formulary_charts.h"

#include "app/words/figure_words.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "core/chemistry/constants.h"
#include "core/chemistry/time_units.h"
#include "core/formulary/implied.h"
#include "core/formulary/time_curve.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

using chemistry::Celsius;
using chemistry::Days;
using chemistry::Millilitres;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FormularyCharts)
};

// The unit of a keeping axis, by the longest time on it.
struct TimeUnit {
    double days;
    QString name;
};

TimeUnit unitFor(Days longest)
{
    if (longest.value() > 60)
        return {chemistry::kMonth.value, Words::tr("mo", "months, short")};
    if (longest.value() > 3)
        return {1, Words::tr("d", "days, short")};
    return {chemistry::inDays(chemistry::Hours(1)).value(), Words::tr("h", "hours, short")};
}

Days toTheHour(Days time)
{
    return chemistry::inDays(chemistry::Hours(std::round(chemistry::inHours(time).value())));
}

// Of figures that are being typed, or that do not go together.
QString notYet() { return Words::tr("Shown once the figures are complete and go together."); }

double emptyShare(Millilitres volume) { return 1 - volume / formulary::kReferenceCapacity; }

} // namespace

ChartSpec keepingChart(const formulary::Solution& solution, const Wording& wording)
{
    ChartSpec spec;
    spec.title = Words::tr("How long it keeps, by how full the bottle is");
    spec.x = ChartX::Numbers;
    spec.xName = Words::tr("how full");
    spec.y = ChartY::Number;
    if (!solution.keeping.full) {
        spec.summary = Words::tr("No keeping time is entered.");
        return spec;
    }
    if (!check(solution)) {
        spec.summary = notYet();
        return spec;
    }
    const TimeUnit unit = unitFor(*solution.keeping.full);
    spec.yUnit = unit.name;
    constexpr double kHeadroom = 1.04; // so that the topmost point is drawn whole
    spec.yMax = *solution.keeping.full / Days(unit.days) * kHeadroom;
    spec.yText = [locale = wording.locale, unit](double time) {
        return keepingText(toTheHour(Days(time * unit.days)), locale);
    };
    spec.xText = [locale = wording.locale](double empty) {
        return Words::tr("%1 full").arg(percentText(1 - empty, locale));
    };
    const double full = emptyShare(formulary::kFullFilling);
    const double half = emptyShare(formulary::kHalfFilling);
    constexpr double kDregs = 0.9;
    spec.xMin = full;
    spec.xMax = 0.95;
    spec.xLabels = {{full, Words::tr("full", "bottle")},
                    {half, Words::tr("half", "bottle")},
                    {kDregs, Words::tr("dregs")}};
    // Of two kinds: on the red screen and on paper two colours are one.
    const auto line = [&](const QString& name, formulary::Material material, SeriesKind kind,
                          ChartInk ink) {
        ChartSeries series{.name = name, .kind = kind, .ink = ink};
        for (const auto& point : formulary::keepingCurve(solution, material, 40))
            series.points.emplace_back(emptyShare(point.volume), point.time.value() / unit.days);
        spec.series.push_back(series);
    };
    line(Words::tr("glass"), formulary::Material::Glass, SeriesKind::Line, ChartInk::Films);
    line(Words::tr("polyethylene"), formulary::Material::Hdpe, SeriesKind::Dashed,
         ChartInk::Standing);
    ChartSeries entered{
        .name = Words::tr("entered"), .kind = SeriesKind::Points, .ink = ChartInk::Films};
    entered.points.emplace_back(full, *solution.keeping.full / Days(unit.days));
    if (solution.keeping.half)
        entered.points.emplace_back(half, *solution.keeping.half / Days(unit.days));
    spec.series.push_back(entered);
    formulary::Vessel bottle;
    bottle.capacity = formulary::kReferenceCapacity;
    const auto halfGlass = *formulary::keepsFor(solution, bottle, formulary::kHalfFilling);
    bottle.material = formulary::Material::Hdpe;
    const auto fullPlastic = *formulary::keepsFor(solution, bottle, formulary::kFullFilling);
    const auto text = [&](Days time) { return keepingText(toTheHour(time), wording.locale); };
    spec.summary = Words::tr("In glass %1 full and %2 half full; in polyethylene %3 full.")
                       .arg(text(*solution.keeping.full), text(halfGlass), text(fullPlastic));
    return spec;
}

QString keepingCaution(const formulary::Solution& solution)
{
    if (!solution.keeping.full)
        return Words::tr("Without a keeping time no bottle of it gets a discard-by date.");
    if (!check(solution))
        return {}; // what the curve rests on is not known yet
    if (!solution.keeping.half && solution.role != formulary::Role::Developer)
        return Words::tr("It goes by the calendar, however full its bottle is.");
    if (!solution.keeping.half)
        return Words::tr(
            "Calibrated on one point; good to a factor of two elsewhere at best. Below "
            "half full it is an extrapolation.");
    return Words::tr(
        "Calibrated on the two points, the half-full bottle opened once more half way; "
        "good to a factor of two elsewhere. Below half full it is an extrapolation.");
}

namespace
{

// A fixer's wear is silver and slower clearing; its time is told by tests, not by a rule.
ChartSpec fixerWearChart(const formulary::Solution& solution, const Wording& wording)
{
    ChartSpec spec;
    spec.title = Words::tr("Silver, by films in a litre");
    spec.xName = Words::tr("films per litre");
    spec.xTitle = spec.xName;
    spec.x = ChartX::Numbers;
    spec.y = ChartY::Number;
    spec.yUnit = Words::tr("g/L", "grams per litre");
    QStringList said;
    if (solution.freshClearing)
        said << Words::tr("Fresh it clears in %1 at %2; at %3 it is spent.",
                          "time, temperature, twice the time")
                    .arg(timeText(*solution.freshClearing),
                         shortTemperatureText(Celsius(20), wording),
                         timeText(*solution.freshClearing * chemistry::kDiscardDoubling.value));
    else
        said << Words::tr("It is spent when its clearing time has doubled from fresh: test it when "
                          "it is new.");
    if (!solution.capacity || solution.silverPerFilm <= 0 || !check(solution)) {
        spec.summary = said.join(u' ');
        return spec;
    }
    const double most = solution.capacity->value();
    const double silver = solution.silverPerFilm * most;
    said.prepend(Words::tr("At its capacity of %1 it holds about %2 g of silver per litre.")
                     .arg(figureText(formulary::Figure::Capacity, most, wording),
                          plainNumber(silver, wording.locale)));
    spec.summary = said.join(u' ');
    spec.xMax = most;
    spec.yMax = silver;
    ChartSeries line{.name = Words::tr("silver"), .kind = SeriesKind::Line, .inLegend = false};
    for (int film = 0; film < most; ++film)
        line.points.emplace_back(film, solution.silverPerFilm * film);
    line.points.emplace_back(most, silver);
    spec.series.push_back(line);
    if (solution.silverLimit) {
        const double limit = solution.silverLimit->value();
        spec.yMax = std::max(silver, limit * 1.1);
        spec.series.push_back({.name = Words::tr("your limit"),
                               .kind = SeriesKind::Dashed,
                               .ink = ChartInk::Limit,
                               .points = {{0, limit}, {most, limit}}});
    }
    return spec;
}

} // namespace

ChartSpec wearChart(const formulary::Solution& solution, const Wording& wording)
{
    if (solution.role == formulary::Role::Fixer)
        return fixerWearChart(solution, wording);
    ChartSpec spec;
    spec.title = Words::tr("Time for each film, as a factor");
    spec.xName = Words::tr("film in a litre");
    spec.xTitle = spec.xName;
    spec.x = ChartX::Numbers;
    spec.y = ChartY::Number;
    spec.yText = [locale = wording.locale](double factor) { return factorText(factor, locale); };
    if (solution.wear.rule == chemistry::WearRule::None) {
        spec.summary = Words::tr("Its time is the same for every film.");
        return spec;
    }
    if (!chemistry::check(solution.wear)) {
        spec.summary = notYet();
        return spec;
    }
    ChartSeries factors{.name = Words::tr("factor"),
                        .kind = SeriesKind::Line,
                        .ink = ChartInk::Films,
                        .inLegend = false};
    ChartSeries dots = factors;
    dots.kind = SeriesKind::Points;
    dots.inFigures = false;
    for (const auto& point : formulary::wearCurve(solution))
        factors.points.emplace_back(point.wear.value() + 1, point.factor);
    dots.points = factors.points;
    spec.xMin = 0.7; // room for the first and the last dot
    spec.xMax = std::max(2.0, factors.points.back().x()) + 0.3;
    const double last = factors.points.back().y();
    spec.yMax = std::max(2.0, std::ceil(last * 2) / 2);
    spec.summary = Words::tr("The last film takes %1 the first one's time.")
                       .arg(factorText(last, wording.locale));
    spec.series = {factors, dots};
    return spec;
}

ChartSpec developmentChart(const std::vector<chemistry::TimeAtTemperature>& times, double q10,
                           const Wording& wording)
{
    ChartSpec spec;
    const bool fahrenheit = wording.units.temperature == TemperatureUnit::Fahrenheit;
    const auto shown = [&](Celsius temperature) {
        return fahrenheit ? toFahrenheit(temperature.value()) : temperature.value();
    };
    spec.title = Words::tr("Time against temperature");
    spec.xName = fahrenheit ? QStringLiteral("°F") : QStringLiteral("°C");
    spec.xTitle = spec.xName;
    spec.x = ChartX::Numbers;
    spec.y = ChartY::Minutes;
    const auto curve = formulary::timeCurve(times, q10);
    if (!curve) {
        spec.summary = Words::tr("No time is entered.");
        return spec;
    }
    spec.xMin = shown(curve->low);
    spec.xMax = shown(curve->high);
    const auto draw = [&](ChartSeries series,
                          const std::vector<chemistry::TimeAtTemperature>& points) {
        for (const auto& point : points)
            series.points.emplace_back(shown(point.temperature), chemistry::inMinutes(point.time));
        if (!series.points.empty())
            spec.series.push_back(std::move(series));
    };
    draw({.name = Words::tr("between the times entered"), .kind = SeriesKind::Line},
         curve->between);
    const ChartSeries outside{.name = Words::tr("by Q10"), .kind = SeriesKind::Dashed};
    ChartSeries below = outside;
    below.inLegend = curve->above.empty(); // one of the two is named
    draw(below, curve->below);
    draw(outside, curve->above);
    ChartSeries entered{.name = Words::tr("entered"), .kind = SeriesKind::Points};
    for (const auto& pair : times)
        entered.points.emplace_back(shown(pair.temperature), chemistry::inMinutes(pair.time));
    std::sort(entered.points.begin(), entered.points.end(),
              [](QPointF a, QPointF b) { return a.x() < b.x(); });
    double top = 0;
    for (const ChartSeries& series : spec.series) {
        for (const QPointF& point : series.points)
            top = std::max(top, point.y());
    }
    spec.series.push_back(entered);
    bool named = false;
    for (const Celsius limit : {chemistry::kCoolestUsual, chemistry::kWarmestUsual}) {
        const double at = shown(limit);
        spec.series.push_back({.name = Words::tr("usual range"),
                               .kind = SeriesKind::Dashed,
                               .ink = ChartInk::Age,
                               .points = {{at, 0}, {at, top}},
                               .inLegend = !named,
                               .inFigures = false});
        named = true;
    }
    const auto at20 = formulary::timeAt20(times, q10);
    spec.summary = at20 ? Words::tr("%1 at %2.", "time, temperature")
                              .arg(timeText(*at20, TimeStep::FiveSeconds),
                                   shortTemperatureText(Celsius(20), wording))
                        : Words::tr("No time can be given at 20 °C.");
    return spec;
}

} // namespace ullage::app
