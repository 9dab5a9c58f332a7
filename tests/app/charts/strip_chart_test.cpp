#include "app/charts/strip_chart.h"
#include "app/shelf/shelf_charts.h"
#include "tests/app/words/sample_batches.h"

#include <algorithm>

namespace ullage::app
{

using namespace sample;

namespace
{

const ChartSeries* named(const ChartSpec& spec, const QString& name)
{
    const auto found = std::find_if(spec.series.begin(), spec.series.end(),
                                    [&](const auto& one) { return one.name == name; });
    return found == spec.series.end() ? nullptr : &*found;
}

ledger::StripRecord record(const std::vector<double>& densities)
{
    std::vector<ledger::StripReading> readings;
    for (const double density : densities) {
        const auto at = day(static_cast<int>(readings.size()));
        readings.push_back(
            {"b",
             "Dev 1",
             {{}, at, chemistry::FilmsPerLitre(readings.empty() ? 0 : 3), density, 1}});
    }
    return ledger::stripRecord(std::move(readings));
}

} // namespace

TEST(StripChart, tellsWhatIsOutOfControlByShapeAndInWords)
{
    const auto strips = record({1.20, 1.23, 1.20, 1.22, 1.21, 1.07, 1.22});
    const auto spec = stripChart(strips, day(10), english());
    const auto* out = named(spec, "out of control");
    ASSERT_TRUE(out);
    EXPECT_EQ(out->kind, SeriesKind::Marks);
    EXPECT_EQ(out->points, (std::vector<QPointF>{{5, 1.07}}));
    const auto* within = named(spec, "within");
    ASSERT_TRUE(within);
    EXPECT_EQ(within->kind, SeriesKind::Points);
    EXPECT_EQ(within->points.size(), 6u);
    const auto* centre = named(spec, "centre");
    const auto* upper = named(spec, "limits");
    ASSERT_TRUE(centre && upper);
    EXPECT_NEAR(centre->points[5].y(), 1.212, 1e-12);
    EXPECT_NEAR(upper->points[0].y(), 1.212 + 3 * 0.0225 / 1.128, 1e-12);
    EXPECT_LE(spec.yMin, 1.07);
    EXPECT_GE(*spec.yMax, 1.272);
    EXPECT_EQ(spec.categories.size(), 7);
    const QString said = stripSentences(strips, "b", day(10), english()).join(u' ');
    EXPECT_TRUE(said.contains("1.07")) << said.toStdString();
    EXPECT_TRUE(said.contains("below the limits")) << said.toStdString();
    EXPECT_TRUE(said.contains("Reference, read fresh: 1.20")) << said.toStdString();
    EXPECT_EQ(spec.summary, said);
}

TEST(StripChart, showsPointsBeforeThereAreLimits)
{
    const auto strips = record({1.20, 1.23});
    const auto spec = stripChart(strips, day(10), english());
    EXPECT_TRUE(named(spec, "within"));
    EXPECT_FALSE(named(spec, "limits"));
    EXPECT_TRUE(stripSentences(strips, "b", day(10), english())[0].contains("fifth"));
    EXPECT_TRUE(stripSentences(strips, "other", day(10), english())[1].contains("Reference"))
        << "that of another batch";
    EXPECT_TRUE(stripChart({}, day(10), english()).series.empty());
    EXPECT_FALSE(stripsToCome().isEmpty());
}

// Where topping up leads stands on the chart of what is left.
TEST(LeftChart, showsWhereToppingUpComesToRest)
{
    auto batch = Bottle().films(1, 3).at(day(10));
    const QString rest = "films settle here, topped up";
    EXPECT_FALSE(named(whatIsLeftChart(batch, ledger::assess(batch), {}, english()), rest));
    auto solution = *batch.solution; // of 10 films per litre
    solution.replenishPerFilm = chemistry::Millilitres(125);
    batch.solution = std::make_shared<formulary::Solution>(solution);
    const auto spec = whatIsLeftChart(batch, ledger::assess(batch), {}, english());
    const auto* line = named(spec, rest);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->kind, SeriesKind::Dashed);
    EXPECT_NEAR(line->points.front().y(), 0.2, 1e-12); // 8 of 10
    EXPECT_EQ(line->points.back().x(), spec.xMax);
    solution.replenishPerFilm = chemistry::Millilitres(50); // rests at 20, beyond capacity
    batch.solution = std::make_shared<formulary::Solution>(solution);
    EXPECT_FALSE(named(whatIsLeftChart(batch, ledger::assess(batch), {}, english()), rest));
}

} // namespace ullage::app
