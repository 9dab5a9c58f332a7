// "Time for each film" of a developer, and a fixer's clearing tests.
#include "app/shelf/shelf_charts.h"

#include "app/words/number_text.h"
#include "core/chemistry/constants.h"
#include "core/chemistry/time_units.h"
#include "core/ledger/next_load.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ShelfCharts)
};

constexpr int kMostBars = 40;

} // namespace

ChartSpec filmTimesChart(const ledger::Batch& batch, const ledger::Assessment& so,
                         std::span<const chemistry::TimeAtTemperature> pairs,
                         chemistry::Celsius temperature, const Wording& wording)
{
    ChartSpec spec;
    const auto& solution = *batch.solution;
    if (solution.role != formulary::Role::Developer)
        return spec;
    const auto time = ledger::developingTime(batch, so, pairs, temperature);
    const double scale = time ? chemistry::inMinutes(time->base.time) : 1;
    spec.title =
        time ? Words::tr("Time for each film, %1").arg(shortTemperatureText(temperature, wording))
             : Words::tr("Time for each film, as a factor");
    spec.x = ChartX::Categories;
    spec.xName = Words::tr("film");
    spec.xTitle = Words::tr("film in this batch");
    spec.y = time ? ChartY::Minutes : ChartY::Number;
    if (!time)
        spec.yText = [locale = wording.locale](double factor) {
            return factorText(factor, locale);
        };

    ChartSeries done{.name = Words::tr("done"), .kind = SeriesKind::Bars, .ink = ChartInk::Films};
    ChartSeries next{.name = Words::tr("next"), .kind = SeriesKind::Bars, .ink = ChartInk::Next};
    ChartSeries more{
        .name = Words::tr("to come"), .kind = SeriesKind::Bars, .ink = ChartInk::ToCome};
    int bar = 0;
    for (const ledger::FilmFactor& film : ledger::filmFactors(batch, so, kMostBars)) {
        ChartSeries& series = film.when == ledger::FilmFactor::When::Done   ? done
                              : film.when == ledger::FilmFactor::When::Next ? next
                                                                            : more;
        series.points.emplace_back(bar++, scale * film.factor);
        spec.categories << wording.locale.toString(film.film);
    }
    spec.summary =
        time ? Words::tr("The next film takes %1.").arg(timeText(time->time, TimeStep::FiveSeconds))
             : Words::tr("The next film takes the leaflet time %1.")
                   .arg(factorText(ledger::bottleFactor(batch, so), wording.locale));
    for (const ChartSeries& series : {done, next, more}) {
        if (!series.points.empty())
            spec.series.push_back(series);
    }
    return spec;
}

ChartSpec clearingChart(const ledger::Batch& batch, const ledger::Assessment& so,
                        const Wording& wording)
{
    ChartSpec spec;
    spec.title = Words::tr("Clearing time at 20 °C");
    spec.x = ChartX::Numbers;
    spec.xName = Words::tr("films per litre");
    spec.xTitle = spec.xName;
    spec.y = ChartY::Number;
    spec.yUnit = Words::tr("s", "seconds");
    const double most = so.capacity ? so.capacity->value() : 20;
    spec.xMax = std::max(most, batch.wear.value() + 1);
    spec.marker = batch.wear.value();
    spec.markerText = Words::tr("today");
    if (!so.clearing) {
        spec.summary = Words::tr("No clearing test yet.");
        return spec;
    }
    const auto& clearing = *so.clearing;
    spec.summary =
        Words::tr("Clears in %1 s now.").arg(clearingNumber(clearing.now, wording.locale));
    if (clearing.fit) {
        ChartSeries band{.name = Words::tr("90 % band"),
                         .kind = SeriesKind::Area,
                         .ink = ChartInk::Fan,
                         .figures = AreaFigures::Edges};
        ChartSeries line{
            .name = Words::tr("fitted line"), .kind = SeriesKind::Line, .ink = ChartInk::Standing};
        constexpr int kSteps = 20;
        for (int i = 0; i <= kSteps; ++i) {
            const chemistry::FilmsPerLitre wear(spec.xMax * i / kSteps);
            const double at = clearing.fit->at(wear).value();
            const double half = clearing.fit->band(wear).value();
            band.points.emplace_back(wear.value(), at + half);
            band.lower.emplace_back(wear.value(), std::max(0.0, at - half));
            line.points.emplace_back(wear.value(), at);
        }
        spec.series.insert(spec.series.end(), {band, line});
        ChartSeries toCome{
            .name = Words::tr("films to come"), .kind = SeriesKind::Points, .ink = ChartInk::Next};
        auto ends = ledger::wearOfFilmsToCome(batch, so, kMostBars);
        if (!ends.empty())
            ends.erase(ends.begin()); // that is today
        for (const chemistry::FilmsPerLitre wear : ends) {
            if (wear.value() <= spec.xMax)
                toCome.points.emplace_back(wear.value(), clearing.fit->at(wear).value());
        }
        if (!toCome.points.empty())
            spec.series.push_back(toCome);
    }
    if (clearing.fresh) {
        const double twice = chemistry::kDiscardDoubling.value * clearing.fresh->value();
        spec.series.push_back({.name = Words::tr("twice fresh: discard"),
                               .kind = SeriesKind::Dashed,
                               .ink = ChartInk::Limit,
                               .points = {{0, twice}, {spec.xMax, twice}}});
    }
    ChartSeries tests{
        .name = Words::tr("tests"), .kind = SeriesKind::Points, .ink = ChartInk::Films};
    for (const auto& test : batch.tests)
        tests.points.emplace_back(test.wear.value(), test.at20.value());
    std::sort(tests.points.begin(), tests.points.end(),
              [](QPointF a, QPointF b) { return a.x() < b.x(); });
    spec.series.push_back(tests);
    return spec;
}

} // namespace ullage::app
