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

double at(const std::vector<QPointF>& points, double x)
{
    const auto found = std::find_if(points.rbegin(), points.rend(), [x](const QPointF& point) {
        return std::abs(point.x() - x) < 1e-6;
    });
    EXPECT_NE(found, points.rend());
    return found->y();
}

} // namespace

TEST(AirChart, theStackIsAllThatWasTakenUp)
{
    auto bottle = Bottle().films(1, 3);
    bottle.happen(day(20),
                  ledger::StoodOpen{chemistry::Hours(2), chemistry::SquareCentimetres(500)});
    const auto batch = bottle.at(day(40));
    const auto so = ledger::assess(batch);
    const auto spec = airChart(batch, so, {}, english());
    const auto& taken = batch.standing.taken;
    double below = 0;
    for (const auto& [name, amount] :
         {std::pair{"poured in", taken.pouring}, std::pair{"air in the bottle", taken.bottleAir},
          std::pair{"past the cap", taken.cap}, std::pair{"standing open", taken.openVessel}}) {
        const auto* series = named(spec, name);
        ASSERT_TRUE(series) << name;
        EXPECT_NEAR(at(series->lower, *spec.marker), below, 1e-9) << name;
        below += amount.value();
        EXPECT_NEAR(at(series->points, *spec.marker), below, 1e-9) << name;
        EXPECT_TRUE(std::is_sorted(series->points.begin(), series->points.end(),
                                   [](QPointF a, QPointF b) { return a.x() < b.x(); }));
    }
    EXPECT_NEAR(below, taken.total().value(), 1e-9);
    EXPECT_FALSE(named(spec, "through the wall")) << "it stands in glass";
}

TEST(AirChart, isSpentWhereTheStackMeetsWhatAgeLeaves)
{
    const auto batch = Bottle().films(1, 3).at(day(10));
    const auto so = ledger::assess(batch);
    const auto spec = airChart(batch, so, {}, english());
    EXPECT_NEAR(named(spec, "what it can take")->points.front().y(), batch.limits->oxygen.value(),
                1e-12);
    const auto* aged = named(spec, "less what age has used");
    const auto* top = named(spec, "past the cap");
    const double spent =
        chartDay(QDateTime::fromMSecsSinceEpoch(so.spentAt->time_since_epoch().count()));
    ASSERT_EQ(aged->points.size(), top->points.size());
    for (std::size_t i = 0; i < aged->points.size(); ++i) {
        const double room = aged->points[i].y() - top->points[i].y();
        if (aged->points[i].x() < spent - 1) {
            EXPECT_GT(room, 0);
        } else if (aged->points[i].x() > spent + 1) {
            EXPECT_LT(room, 0);
        }
    }
    EXPECT_GT(spec.xMax, spent);
}

TEST(AirChart, withoutKeepingFiguresThereIsNoLimit)
{
    const auto batch = Bottle("fix").films(1, 3).at(day(10));
    const auto spec = airChart(batch, ledger::assess(batch), {}, english());
    EXPECT_FALSE(named(spec, "what it can take"));
    EXPECT_TRUE(named(spec, "poured in"));
    EXPECT_FALSE(spec.summary.isEmpty());
}

TEST(ClearingChart, foretellsTheFilmsStillToComeOnTheLine)
{
    auto bottle = Bottle("fix");
    using chemistry::Celsius;
    using chemistry::Seconds;
    bottle.happen(day(1), ledger::ClearingTested{Seconds(40), Celsius(20)});
    bottle.films(2, 5);
    bottle.happen(day(8), ledger::ClearingTested{Seconds(50), Celsius(20)});
    EXPECT_FALSE(
        named(clearingChart(bottle.at(day(9)), ledger::assess(bottle.at(day(9))), english()),
              "films to come"))
        << "two tests make no line";
    bottle.films(9, 5);
    bottle.happen(day(15), ledger::ClearingTested{Seconds(60), Celsius(20)});
    const auto batch = bottle.at(day(16));
    const auto spec = clearingChart(batch, ledger::assess(batch), english());
    const auto* toCome = named(spec, "films to come");
    ASSERT_TRUE(toCome);
    ASSERT_EQ(toCome->points.size(), 10u); // capacity 20 a litre, 10 done
    EXPECT_NEAR(toCome->points.front().x(), 11, 1e-9);
    EXPECT_NEAR(toCome->points.back().y(), 80, 1e-9);
}

} // namespace ullage::app
