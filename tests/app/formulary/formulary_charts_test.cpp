#include "app/formulary/formulary_charts.h"
#include "tests/app/words/sample_batches.h"

#include <algorithm>

namespace ullage::app
{

using namespace sample;
using chemistry::Celsius;
using chemistry::Seconds;

namespace
{

const ChartSeries* named(const ChartSpec& spec, const QString& name)
{
    const auto found = std::find_if(spec.series.begin(), spec.series.end(),
                                    [&](const auto& one) { return one.name == name; });
    return found == spec.series.end() ? nullptr : &*found;
}

formulary::Solution developer() { return *formularyOfTwo().solution("mq"); }

double valueOf(const ChartSeries& series, double x)
{
    const auto found =
        std::find_if(series.points.begin(), series.points.end(),
                     [x](const QPointF& point) { return std::abs(point.x() - x) < 1e-9; });
    EXPECT_NE(found, series.points.end()) << x;
    return found->y();
}

} // namespace

TEST(FormularyCharts, glassRunsThroughTheEnteredPointsAndPlasticBelow)
{
    const auto spec = keepingChart(developer(), english());
    const auto* glass = named(spec, "glass");
    const auto* plastic = named(spec, "polyethylene");
    const auto* entered = named(spec, "entered");
    ASSERT_TRUE(glass && plastic && entered);
    ASSERT_EQ(entered->points.size(), 2u);
    for (const QPointF& point : entered->points)
        EXPECT_NEAR(valueOf(*glass, point.x()), point.y(), 1e-6);
    EXPECT_NEAR(entered->points[0].y(), 6, 1e-9);
    EXPECT_NEAR(entered->points[1].y(), 2, 1e-9);
    EXPECT_LT(plastic->points.front().y(), 5);
    EXPECT_EQ(spec.xText(0.5).simplified(), QString::fromUtf8("50 % full"));
    EXPECT_EQ(spec.xLabels.size(), 3u);
}

TEST(FormularyCharts, withoutAKeepingTimeThereIsNoCurveAndTheCautionSaysSo)
{
    auto solution = developer();
    EXPECT_TRUE(keepingCaution(solution).contains("two points"));
    solution.keeping.half.reset();
    EXPECT_TRUE(keepingCaution(solution).contains("one point"));
    EXPECT_EQ(named(keepingChart(solution, english()), "entered")->points.size(), 1u);
    solution.keeping.full.reset();
    EXPECT_TRUE(keepingChart(solution, english()).series.empty());
    EXPECT_FALSE(keepingCaution(solution).contains("Calibrated"));
}

TEST(FormularyCharts, figuresThatDoNotPassTheirCheckDrawNothing)
{
    auto solution = developer();
    solution.keeping.half = chemistry::Days(400);
    EXPECT_TRUE(keepingChart(solution, english()).series.empty());
    EXPECT_TRUE(keepingChart(solution, english()).summary.contains("go together"))
        << "a keeping time is entered";
    EXPECT_EQ(keepingCaution(solution), QString()) << "no curve is calibrated on anything";
    solution.wear.percent = 500;
    EXPECT_TRUE(wearChart(solution, english()).series.empty());
    EXPECT_TRUE(wearChart(solution, english()).summary.contains("go together"))
        << "it is not the same for every film";
}

TEST(FormularyCharts, wearIsOneFactorAFilm)
{
    const auto spec = wearChart(developer(), english());
    const auto* factors = named(spec, "factor");
    ASSERT_TRUE(factors);
    EXPECT_EQ(factors->points.size(), 10u);
    EXPECT_DOUBLE_EQ(valueOf(*factors, 1), 1);
    EXPECT_NEAR(valueOf(*factors, 10), 1.9, 1e-12);
}

TEST(FormularyCharts, aFixersWearIsItsSilverAndItsClearingTime)
{
    formulary::Solution fixer = *formularyOfTwo().solution("fix");
    fixer.silverLimit = chemistry::GramsPerLitre(1.5);
    const auto spec = wearChart(fixer, english());
    const auto* silver = named(spec, "silver");
    ASSERT_TRUE(silver);
    EXPECT_NEAR(valueOf(*silver, 20), 3, 1e-12) << "20 films of 0.15 g in a litre";
    EXPECT_TRUE(named(spec, "your limit"));
    EXPECT_TRUE(spec.summary.contains("clears in 1:00")) << spec.summary.toStdString();
    EXPECT_TRUE(spec.summary.contains("at 2:00 it is spent")) << spec.summary.toStdString();
    fixer.freshClearing.reset();
    fixer.capacity.reset();
    EXPECT_TRUE(wearChart(fixer, english()).series.empty());
    EXPECT_TRUE(wearChart(fixer, english()).summary.contains("doubled from fresh"));
}

TEST(FormularyCharts, developmentIsInterpolatedBetweenAndByQ10Outside)
{
    const std::vector<chemistry::TimeAtTemperature> times{{Celsius(24), Seconds(420)},
                                                          {Celsius(20), Seconds(600)}};
    const auto spec = developmentChart(times, 1.9, english());
    const auto* between = named(spec, "between the times entered");
    ASSERT_TRUE(between);
    EXPECT_DOUBLE_EQ(between->points.front().x(), 20);
    EXPECT_DOUBLE_EQ(between->points.back().x(), 24);
    EXPECT_NEAR(valueOf(*between, 22), std::sqrt(7.0 * 10.0), 1e-9);
    const auto* outside = named(spec, "by Q10");
    EXPECT_DOUBLE_EQ(outside->points.front().x(), 13);
    EXPECT_NEAR(outside->points.front().y(), 10 * std::pow(1.9, 0.7), 1e-9);
    EXPECT_DOUBLE_EQ(spec.xMax, 30);
    EXPECT_EQ(named(spec, "entered")->points.front(), QPointF(20, 10));

    Wording american = english();
    american.units.temperature = TemperatureUnit::Fahrenheit;
    EXPECT_DOUBLE_EQ(developmentChart(times, 1.9, american).xMin, toFahrenheit(13));
    EXPECT_TRUE(developmentChart({}, 1.9, english()).series.empty());
}

TEST(FormularyCharts, pairsBeyondTheUsualLimitsWidenTheChart)
{
    const std::vector<chemistry::TimeAtTemperature> times{{Celsius(38), Seconds(200)},
                                                          {Celsius(20), Seconds(600)}};
    const auto spec = developmentChart(times, 1.9, english());
    EXPECT_DOUBLE_EQ(spec.xMax, 38);
    EXPECT_DOUBLE_EQ(named(spec, "between the times entered")->points.back().x(), 38);
}

} // namespace ullage::app
