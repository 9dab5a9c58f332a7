#include "tests/app/gallery/samples.h"

#include "app/words/verdict_words.h"

#include <QDate>

#include <algorithm>

namespace ullage::app::samples
{

namespace
{

QString text(const char* utf8) { return QString::fromUtf8(utf8); }

std::vector<BottleView> six()
{
    using enum formulary::Role;
    using enum formulary::Material;
    using enum ledger::Verdict;
    const auto make = [](const char* id, const char* mixed, const char* solutionName,
                         SolutionLook solution, BottleMaterial material, double capacity,
                         double volume, double films, double standing, VerdictLook verdict,
                         const char* headline, const char* subline, double urgency) {
        BottleView bottle;
        bottle.id = bottle.name = text(id);
        bottle.mixedText = text(mixed);
        bottle.solutionName = text(solutionName);
        bottle.vesselName = text("Amber 1");
        bottle.solution = solution;
        bottle.material = material;
        bottle.capacityMl = capacity;
        bottle.volumeMl = volume;
        bottle.filmsDone = films;
        bottle.standing = standing;
        bottle.wear = films / 20;
        bottle.verdict = verdict;
        bottle.headline = text(headline);
        bottle.subline = text(subline);
        bottle.urgency = urgency;
        return bottle;
    };
    return {
        make("Dev 14", "mixed 2 Nov", "MQ borax developer, stock", Developer, Glass, 1030, 985, 7,
             0.17, Good, "5 films left", "until 1 May", 1),
        make("Fix 9", "mixed 2 Nov", "Rapid fixer, 1+4", Fixer, Hdpe, 1030, 960, 7, 0.1, TestFirst,
             "clearing test due", "11 films since", 3),
        make("Dev 13", "mixed 24 Sep", "Metol sulfite developer", Developer, Glass, 1030, 430, 11,
             0.84, NearItsEnd, "1 film left", "standing 84 % used", 2),
        make("Stop 3", "mixed 2 Nov", "Citric stop bath", Stop, Pet, 1000, 960, 0, 0.05, Good,
             "20 films left", "until 2 May", 0.6),
        make("Wash aid 2", "mixed 11 Oct", "Wash aid", WashAid, Ldpe, 1000, 640, 14, 0.3, Good,
             "31 films left", "until 11 Jan", 0.8),
        make("Fix 8", "mixed 3 Jun", "Acid fixer", Fixer, Pp, 1030, 600, 24, 0.9, Discard,
             "clears in twice the fresh time", "", 4),
    };
}

} // namespace

std::vector<BottleView> bottles(int count)
{
    const auto pattern = six();
    std::vector<BottleView> result;
    for (int i = 0; i < count; ++i) {
        BottleView bottle = pattern[static_cast<std::size_t>(i % 6)];
        if (i >= 6) {
            static const double kSizes[]{250, 500, 1000, 2000, 5000};
            static const double kFills[]{0.1, 0.95, 0.5, 0.75, 0.3};
            bottle.id = bottle.name = QStringLiteral("%1 %2").arg(bottle.name.section(u' ', 0, -2),
                                                                  QString::number(20 + i));
            bottle.capacityMl = kSizes[i % 5];
            bottle.volumeMl = bottle.capacityMl * kFills[(i / 5) % 5];
            bottle.material = static_cast<BottleMaterial>((i / 2) % 5);
            bottle.squeezed = i % 7 == 0;
            bottle.airMl = 10;
            bottle.filmsDone = i % 4 == 3 ? i + 0.0 : (i % 13) + (i % 3) / 3.0;
            if (i % 11 == 0) {
                bottle.solution = SolutionLook::WettingAgent;
                bottle.name = QStringLiteral("Wetting agent %1").arg(i);
            }
            bottle.urgency += 0.001 * i;
        }
        result.push_back(bottle);
    }
    return result;
}

SelectedBottle selected(const BottleView& bottle)
{
    SelectedBottle shown;
    shown.id = bottle.id;
    shown.name = bottle.name;
    shown.verdict = bottle.verdict;
    shown.why = text("Why: ") + verdictWord(bottle.verdict);
    shown.left = whatIsLeft();
    if (bottle.solution == SolutionLook::Developer) {
        shown.nextTitle = bottle.name + text(" · next film");
        shown.nextTime = text("12:35");
        shown.nextDetail = text("at 20 °C, 1 film of 135-36, 8th in 1 L");
        shown.factors = {{text("Leaflet time, 20 °C"), text("9:30")},
                         {text("Temperature, 20.0 °C"), text("× 1.00")},
                         {text("Wear, 7 films in 1.0 L"), text("× 1.32")},
                         {text("Control strip, 14 Nov"), text("× 1.00")}};
        shown.perFilm = timeForEachFilm();
    } else {
        shown.nextTitle = bottle.name;
        shown.noTime =
            text("Three films through this fixer have no clearing test; time one and the "
                 "fixing time stands here.");
        if (bottle.solution == SolutionLook::Fixer)
            shown.perFilm = clearing();
        shown.perFilmTitle = text("Time for each film");
        shown.noPerFilm = text("A stop bath has one time for every film.");
    }
    shown.reasons = {
        text("Films: 7 of 12 used; last film about 16 Jan, 8 times in 10 between 22 Dec and "
             "20 Feb."),
        text("Age and air: 17 % used (age 12 %, air 5 %).")};
    shown.closing = text("Films run out first.");
    return shown;
}

ChartSpec whatIsLeft()
{
    const double mixed = chartDay(QDate(2026, 11, 2));
    const double today = mixed + 22.5;
    const double end = mixed + 182;
    ChartSpec spec;
    spec.title = text("What is left, over time");
    spec.summary = text("Films run out first, about 16 Jan; standing on 9 Apr.");
    spec.xName = text("date");
    spec.xMin = mixed;
    spec.xMax = end;
    spec.yMax = 1;
    spec.marker = today;
    spec.markerText = text("today");
    const auto age = [&](double day) { return 1 - (day - mixed) / 195; };
    const auto standing = [&](double day) {
        const double t = day - mixed;
        return std::max(0.0, age(day) - 0.0014 * t - 0.000008 * t * t);
    };
    ChartSeries air{
        .name = text("air's share"), .kind = SeriesKind::HatchedArea, .ink = ChartInk::Air};
    ChartSeries alone{.name = text("age alone"), .kind = SeriesKind::Line, .ink = ChartInk::Age};
    ChartSeries stood{
        .name = text("standing"), .kind = SeriesKind::Line, .ink = ChartInk::Standing};
    ChartSeries stands = stood;
    stands.kind = SeriesKind::Dashed;
    stands.inLegend = false;
    stands.name = text("standing, to come");
    for (double day = mixed; day <= end; day += 3.25) {
        air.points.emplace_back(day, age(day));
        air.lower.emplace_back(day, standing(day));
        alone.points.emplace_back(day, age(day));
        (day <= today ? stood : stands).points.emplace_back(day, standing(day));
    }
    stands.points.insert(stands.points.begin(), stood.points.back());
    spec.series = {{.name = text("80 % span"),
                    .kind = SeriesKind::Area,
                    .ink = ChartInk::Fan,
                    .points = {{today, 0.42}, {mixed + 110, 0}},
                    .lower = {{today, 0.42}, {mixed + 50, 0}, {mixed + 110, 0}},
                    .inLegend = false,
                    .inFigures = false},
                   {.name = text("films"),
                    .kind = SeriesKind::Step,
                    .ink = ChartInk::Films,
                    .points = {{mixed, 1},
                               {mixed + 2, 0.83},
                               {mixed + 9, 0.67},
                               {mixed + 14, 0.5},
                               {mixed + 21, 0.42}}},
                   {.name = text("films, at your pace"),
                    .kind = SeriesKind::Dashed,
                    .ink = ChartInk::Films,
                    .points = {{today, 0.42}, {mixed + 75, 0}},
                    .inLegend = false},
                   stood,
                   stands,
                   alone,
                   air};
    return spec;
}

ChartSpec timeForEachFilm()
{
    ChartSpec spec;
    spec.title = text("Time for each film, 20 °C");
    spec.summary = text("The eighth film takes 12:35.");
    spec.x = ChartX::Categories;
    spec.xName = text("film");
    spec.xTitle = text("film in this batch");
    spec.y = ChartY::Minutes;
    spec.series = {{.name = text("done"), .kind = SeriesKind::Bars, .ink = ChartInk::Films},
                   {.name = text("next"), .kind = SeriesKind::Bars, .ink = ChartInk::Next},
                   {.name = text("to come"), .kind = SeriesKind::Bars, .ink = ChartInk::ToCome}};
    for (int film = 0; film < 12; ++film) {
        spec.categories << QString::number(film + 1);
        spec.series[film < 7    ? 0
                    : film == 7 ? 1
                                : 2]
            .points.emplace_back(film, 9.5 * (1 + 0.045 * film));
    }
    return spec;
}

ChartSpec clearing()
{
    ChartSpec spec;
    spec.title = text("Clearing time");
    spec.summary = text("Doubles at about 31 films per litre.");
    spec.x = ChartX::Numbers;
    spec.xName = text("films per litre");
    spec.xTitle = text("films per litre");
    spec.xMin = 0;
    spec.xMax = 40;
    spec.y = ChartY::Number;
    spec.yUnit = text("s");
    spec.marker = 11;
    spec.markerText = text("today");
    spec.series = {{.name = text("90 % band"),
                    .kind = SeriesKind::Area,
                    .ink = ChartInk::Fan,
                    .points = {{0, 75}, {15, 95}, {40, 165}},
                    .lower = {{0, 50}, {15, 78}, {40, 120}},
                    .figures = AreaFigures::Edges},
                   {.name = text("fitted line"),
                    .kind = SeriesKind::Line,
                    .ink = ChartInk::Standing,
                    .points = {{0, 62}, {40, 142}}},
                   {.name = text("twice fresh"),
                    .kind = SeriesKind::Dashed,
                    .ink = ChartInk::Limit,
                    .points = {{0, 124}, {40, 124}}},
                   {.name = text("tests"),
                    .kind = SeriesKind::Points,
                    .ink = ChartInk::Films,
                    .points = {{0, 62}, {4, 72}, {8, 76}, {11, 86}}}};
    return spec;
}

} // namespace ullage::app::samples
