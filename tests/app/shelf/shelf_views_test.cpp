#include "app/shelf/shelf_charts.h"
#include "app/shelf/shelf_model.h"
#include "app/shelf/shelf_views.h"
#include "app/widgets/bottle_painter.h"
#include "app/words/air_words.h"
#include "app/words/verdict_words.h"
#include "tests/app/words/sample_batches.h"

#include <algorithm>

namespace ullage::app
{

using namespace sample;

namespace
{

const ChartSeries& series(const ChartSpec& spec, SeriesKind kind, ChartInk ink)
{
    const auto found = std::find_if(spec.series.begin(), spec.series.end(), [&](const auto& one) {
        return one.kind == kind && one.ink == ink;
    });
    EXPECT_NE(found, spec.series.end());
    return *found;
}

std::vector<ledger::Batch> past(const Bottle& bottle, const ledger::Batch& batch)
{
    std::vector<ledger::Batch> states;
    for (const auto moment : pastMoments(batch))
        states.push_back(bottle.at(moment));
    return states;
}

const std::vector<chemistry::TimeAtTemperature> kNineThirty{
    {chemistry::Celsius(20), chemistry::Seconds(570)}};

} // namespace

TEST(ShelfViews, bottleIsTakenOverValueByValue)
{
    const auto batch = Bottle().films(1, 4).at(day(10));
    const auto view = bottleView(batch, ledger::assess(batch), english());
    EXPECT_EQ(view.id, "batch");
    EXPECT_EQ(view.name, "Dev 14");
    EXPECT_EQ(view.mixedText, "mixed 1 Jun");
    EXPECT_EQ(view.vesselName, "Amber 1");
    EXPECT_DOUBLE_EQ(view.volumeMl, 1000);
    EXPECT_DOUBLE_EQ(view.capacityMl, 1030);
    EXPECT_DOUBLE_EQ(view.filmsDone, 4);
    EXPECT_NEAR(view.wear.value_or(-1), 0.4, 1e-12);
    EXPECT_FALSE(view.uncounted);
    EXPECT_TRUE(view.headline.startsWith("6 film"));
    EXPECT_EQ(view.verdict, VerdictLook::Good);
    EXPECT_EQ(view.solution, SolutionLook::Developer);
}

// It came with a history: its tally is the least, and no colour tells how spent it is.
TEST(ShelfViews, aBottleFoundIsDrawnAndReadAsNotKnown)
{
    const auto found = [](int films) {
        Bottle bottle;
        ledger::Mixed mixed{"mq", "b1", chemistry::Millilitres(1000), "Found"};
        mixed.historyUnknown = true;
        bottle.replaceMixing(mixed);
        return bottle.films(1, films).at(day(films + 2));
    };
    const auto none = found(0);
    auto view = bottleView(none, ledger::assess(none), english());
    EXPECT_FALSE(view.wear);
    EXPECT_TRUE(view.uncounted);
    EXPECT_EQ(view.subline, "films not known") << view.headline.toStdString();
    EXPECT_TRUE(filmsSentence(none, ledger::assess(none), english())
                    .startsWith("Films: how many it has done"));
    BottleView spent = view;
    spent.wear = 0;
    EXPECT_NE(liquidColour(view), liquidColour(spent));
    ShelfModel model;
    model.setBottles({view});
    EXPECT_TRUE(model.index(0).data(Qt::AccessibleTextRole).toString().contains("not known"));
    const auto two = found(2);
    view = bottleView(two, ledger::assess(two), english());
    model.setBottles({view});
    EXPECT_TRUE(model.index(0).data(Qt::AccessibleTextRole).toString().contains("at least 2 film"));
}

TEST(ShelfViews, aFilmMoreMovesNoBottleWithinItsVerdict)
{
    const auto view = [](const char* id, int films) {
        const auto batch = Bottle().films(1, films).at(day(films + 2));
        auto made = bottleView(batch, ledger::assess(batch), english());
        made.id = QString::fromLatin1(id);
        return made;
    };
    ShelfModel model;
    model.setBottles({view("first", 1), view("second", 1), view("third", 1)});
    model.setBottles({view("first", 1), view("second", 5), view("third", 2)});
    EXPECT_EQ(model.rowOf("first"), 0);
    EXPECT_EQ(model.rowOf("second"), 1);
    EXPECT_EQ(model.rowOf("third"), 2);
    model.setBottles({view("first", 1), view("second", 10), view("third", 2)});
    EXPECT_EQ(model.rowOf("second"), 0) << "one to discard stands before them";
    EXPECT_EQ(model.rowOf("third"), 2);
}

TEST(ShelfViews, onlyOfOneToDiscardThatOneMoreFilmIsGrey)
{
    const auto refused = [](const ledger::Batch& batch) {
        return selectedBottle(batch, ledger::assess(batch), {}, {}, {}, chemistry::Celsius(20),
                              english())
            .refused;
    };
    const auto good = refused(Bottle().films(1, 2).at(day(3)));
    EXPECT_EQ(good.count(BottleAction::OneMore), 0u);
    EXPECT_EQ(good.at(BottleAction::Measured), "fixers only");
    const auto spent = refused(Bottle().films(1, 10).at(day(12)));
    EXPECT_EQ(spent.at(BottleAction::OneMore), "it is to be discarded");
    EXPECT_EQ(spent.count(BottleAction::Discard), 0u);
}

TEST(ShelfViews, graverVerdictsStandFirstAndWithinOneNothingChangesPlaces)
{
    const auto of = [](const ledger::Batch& batch) { return urgency(ledger::assess(batch)); };
    const int fresh = of(Bottle().films(1, 1).at(day(3)));
    const int older = of(Bottle().films(1, 5).at(day(7)));
    const int resting = of(Bottle().at(day(1)));
    const int nearEnd = of(Bottle().films(1, 9).at(day(11)));
    const int test = of(Bottle("fix").films(1, 6).at(day(8)));
    const int discard = of(Bottle().films(1, 10).at(day(12)));
    EXPECT_EQ(fresh, older);
    EXPECT_LT(older, resting);
    EXPECT_LT(resting, nearEnd);
    EXPECT_LT(nearEnd, test);
    EXPECT_LT(test, discard);
}

TEST(ShelfViews, whatIsNotClearYetRestsAndSaysWhenToLook)
{
    const auto batch = Bottle().at(day(0) + std::chrono::minutes(12));
    const auto so = ledger::assess(batch);
    const auto view = bottleView(batch, so, english());
    EXPECT_EQ(view.verdict, VerdictLook::Resting);
    EXPECT_EQ(view.headline, "not clear yet");
    EXPECT_EQ(view.subline, "look again in 8 min");
    const auto selected =
        selectedBottle(batch, so, {}, {}, std::nullopt, chemistry::Celsius(20), english());
    EXPECT_EQ(selected.verdict, VerdictLook::Resting);
    EXPECT_EQ(selected.why, "Why: Resting");
    ASSERT_FALSE(selected.reasons.isEmpty());
    EXPECT_TRUE(selected.reasons.front().startsWith("It rests until it is clear"))
        << selected.reasons.front().toStdString();
}

TEST(ShelfViews, theTimeOfABottleToDiscardIsNotWhatComesNext)
{
    const auto spent = Bottle().films(1, 10).at(day(12));
    const auto so = ledger::assess(spent);
    ASSERT_EQ(so.verdict, ledger::Verdict::Discard);
    const KnownTimes times{kNineThirty, {}, {}, true};
    const auto selected =
        selectedBottle(spent, so, {}, times, std::nullopt, chemistry::Celsius(20), english());
    EXPECT_TRUE(selected.nextTime.isEmpty()) << selected.nextTime.toStdString();
    EXPECT_TRUE(selected.noTime.contains("19:00")) << selected.noTime.toStdString();
}

TEST(ShelfViews, theNotebookStandsInForATimeThatNobodyTypedIn)
{
    auto formulary = formularyOfTwo();
    const auto batch = Bottle().at(day(10));
    const formulary::Solution& developer = *batch.solution;
    const auto enter = [&](const char* id, const char* film, const char* dilution) {
        formulary::DevelopmentFigure figure;
        figure.id = id;
        figure.film = film;
        figure.developer = developer.id;
        figure.dilution = dilution;
        figure.times = kNineThirty;
        figure.source = "common practice: a leaflet";
        formulary.add(figure);
    };
    EXPECT_TRUE(notebookTimes(formulary, developer).pairs.empty());
    enter("diluted", "Quay 400", "1+1");
    EXPECT_TRUE(notebookTimes(formulary, developer).pairs.empty()) << "it stands there undiluted";
    enter("first", "Breakwater 100", "Stock");
    enter("second", "Quay 400", "stock");
    const KnownTimes times = notebookTimes(formulary, developer);
    EXPECT_EQ(times.film, "Breakwater 100");
    const auto selected = selectedBottle(batch, ledger::assess(batch), {}, times, {},
                                         chemistry::Celsius(20), english());
    EXPECT_EQ(selected.nextTime, "9:30");
    EXPECT_EQ(selected.nextDetail.simplified(),
              QString::fromUtf8("at 20 °C, for Breakwater 100 as in Times"));
    ASSERT_FALSE(selected.figures.empty());
    EXPECT_TRUE(selected.figures.front().lines().join(u'\n').contains(QStringLiteral("a leaflet")))
        << "its source stands under Where from?";
    formulary::Solution diluted = developer;
    diluted.name = "MQ borax developer, 1 + 1";
    EXPECT_EQ(notebookTimes(formulary, diluted).film, "Quay 400");
}

TEST(ShelfViews, aDateIsToldWithItsSpan)
{
    const auto batch = Bottle().films(1, 2).at(day(20));
    const auto assessment = ledger::assess(batch);
    ASSERT_TRUE(assessment.discardBy);
    const auto at = *assessment.discardBy;
    const auto said = [&](const std::optional<ledger::DateRange>& range) {
        return selectedBottle(batch, assessment, {}, {}, range, chemistry::Celsius(20), english())
            .reasons.join(u' ');
    };
    ledger::DateRange range{at, at, at, 60};
    EXPECT_EQ(said(range), said(std::nullopt)) << "no span to tell";
    range.early = chemistry::addDays(at, chemistry::Days(-60));
    range.late = chemistry::addDays(at, chemistry::Days(60));
    EXPECT_TRUE(
        said(range).contains("Keeps until " + discardSpanText(range, day(20), english().locale)))
        << said(range).toStdString();
}

TEST(ShelfCharts, filmsStepAndStandingMeetNowAndGoOn)
{
    const auto bottle = Bottle().films(1, 4);
    const auto batch = bottle.at(day(10));
    const auto so = ledger::assess(batch);
    const auto spec = whatIsLeftChart(batch, so, past(bottle, batch), english());

    const auto& films = series(spec, SeriesKind::Step, ChartInk::Films);
    EXPECT_NEAR(films.points.front().y(), 1, 1e-12);
    EXPECT_NEAR(films.points.back().y(), 0.6, 1e-12);
    EXPECT_DOUBLE_EQ(films.points.back().x(), *spec.marker);

    const auto& stood = series(spec, SeriesKind::Line, ChartInk::Standing);
    EXPECT_NEAR(stood.points.back().y(), 1 - *so.standingUsed, 1e-9);
    const auto& stands = series(spec, SeriesKind::Dashed, ChartInk::Standing);
    EXPECT_EQ(stands.points.front(), stood.points.back());
    const auto rising = [](const auto& points) {
        return std::is_sorted(points.begin(), points.end(),
                              [](QPointF a, QPointF b) { return a.x() < b.x(); });
    };
    for (const auto& one : spec.series)
        EXPECT_TRUE(rising(one.points)) << one.name.toStdString();

    // Where the dashed line reaches nothing is where the verdict says the bottle is spent.
    const double spent =
        chartDay(QDateTime::fromMSecsSinceEpoch(so.spentAt->time_since_epoch().count()));
    for (const QPointF& point : stands.points) {
        if (point.x() > spent + 1) {
            EXPECT_DOUBLE_EQ(point.y(), 0);
        } else if (point.x() < spent - 1) {
            EXPECT_GT(point.y(), 0);
        }
    }
    const auto& air = series(spec, SeriesKind::HatchedArea, ChartInk::Air);
    ASSERT_EQ(air.points.size(), air.lower.size());
    for (std::size_t i = 0; i < air.points.size(); ++i)
        EXPECT_GE(air.points[i].y(), air.lower[i].y());
}

TEST(ShelfCharts, fanIsTheForecast)
{
    const auto bottle = Bottle().films(1, 4);
    const auto batch = bottle.at(day(10));
    const auto so = ledger::assess(batch);
    const auto spec = whatIsLeftChart(batch, so, {}, english());
    const auto& fan = series(spec, SeriesKind::Area, ChartInk::Fan);
    EXPECT_NEAR(fan.points.back().x() - *spec.marker, so.lastFilm->late.value(), 1e-6);
    EXPECT_NEAR(fan.lower[1].x() - *spec.marker, so.lastFilm->early.value(), 1e-6);

    const auto unused = Bottle().at(day(10));
    const auto bare = whatIsLeftChart(unused, ledger::assess(unused), {}, english());
    EXPECT_TRUE(std::none_of(bare.series.begin(), bare.series.end(),
                             [](const auto& one) { return one.kind == SeriesKind::Area; }));
}

TEST(ShelfCharts, filmTimesAreTheWearRuleOnTheMakersTime)
{
    const auto batch = Bottle().films(1, 4).at(day(10));
    const auto spec = filmTimesChart(batch, ledger::assess(batch), kNineThirty,
                                     chemistry::Celsius(20), english());
    EXPECT_EQ(series(spec, SeriesKind::Bars, ChartInk::Films).points.size(), 4u);
    EXPECT_EQ(series(spec, SeriesKind::Bars, ChartInk::Next).points.size(), 1u);
    EXPECT_EQ(series(spec, SeriesKind::Bars, ChartInk::ToCome).points.size(), 5u);
    EXPECT_EQ(spec.categories.size(), 10);
    EXPECT_NEAR(series(spec, SeriesKind::Bars, ChartInk::Films).points[3].y(), 9.5 * 1.3, 1e-9);
    EXPECT_NEAR(series(spec, SeriesKind::Bars, ChartInk::ToCome).points.back().y(), 9.5 * 1.9,
                1e-9);
    EXPECT_TRUE(
        filmTimesChart(Bottle("fix").at(day(1)), {}, kNineThirty, chemistry::Celsius(20), english())
            .series.empty());
}

TEST(ShelfCharts, clearingShowsTestsAndTheLimit)
{
    auto bottle = Bottle("fix");
    bottle.happen(day(1), ledger::ClearingTested{chemistry::Seconds(60), chemistry::Celsius(20)});
    bottle.films(2, 3);
    bottle.happen(day(6), ledger::ClearingTested{chemistry::Seconds(70), chemistry::Celsius(20)});
    const auto batch = bottle.at(day(7));
    const auto spec = clearingChart(batch, ledger::assess(batch), english());
    EXPECT_EQ(series(spec, SeriesKind::Points, ChartInk::Films).points.size(), 2u);
    EXPECT_DOUBLE_EQ(series(spec, SeriesKind::Dashed, ChartInk::Limit).points[0].y(), 120);
}

} // namespace ullage::app
