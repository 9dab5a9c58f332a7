#include "app/charts/chart.h"
#include "app/charts/chart_figures.h"
#include "app/charts/chart_table_dialog.h"
#include "app/charts/chart_table_model.h"
#include "app/charts/chart_view.h"
#include "app/widgets/theme.h"
#include "tests/app/gallery/samples.h"

#include <QAbstractItemModelTester>
#include <QTest>

#include <gtest/gtest.h>

#include <cmath>

using namespace ullage::app;

namespace
{

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);

std::vector<std::string> texts(const std::vector<ChartTick>& ticks)
{
    std::vector<std::string> result;
    for (const ChartTick& tick : ticks)
        result.push_back(tick.text.toStdString());
    return result;
}

} // namespace

TEST(ChartFigures, DateTicksFallOnRoundDates)
{
    const double from = chartDay(QDate(2026, 11, 2));
    const auto months = dateTicks(
        from, chartDay(QDate(2027, 5, 3)), 350, [](auto&) { return 28.0; }, kBritish);
    EXPECT_EQ(texts(months), (std::vector<std::string>{"Dec", "Jan", "Feb", "Mar", "Apr", "May"}));
    for (const ChartTick& tick : months)
        EXPECT_EQ(chartDate(tick.at).day(), 1);
    const auto fixed = [](const QString&) { return 40.0; };
    const auto days = dateTicks(from, from + 6, 500, fixed, kBritish);
    EXPECT_EQ(days.size(), 7u);
    EXPECT_EQ(days[0].text, "2 Nov");
    for (const ChartTick& tick : dateTicks(from, from + 40, 400, fixed, kBritish))
        EXPECT_EQ(chartDate(tick.at).dayOfWeek(), 1) << "weeks begin on Monday there";
}

TEST(ChartFigures, DateLabelsAlwaysHaveRoom)
{
    for (const double days : {1.0, 3.0, 10.0, 30.0, 100.0, 200.0, 400.0, 1000.0, 5000.0}) {
        for (const double width : {120.0, 250.0, 600.0, 1500.0}) {
            const auto ticks = dateTicks(
                20000.3, 20000.3 + days, width, [](auto&) { return 34.0; }, kBritish);
            for (std::size_t i = 1; i < ticks.size(); ++i)
                EXPECT_GE((ticks[i].at - ticks[i - 1].at) / days * width, 34)
                    << days << " days in " << width;
        }
    }
}

TEST(ChartFigures, ThinningKeepsHighsAndLows)
{
    std::vector<QPointF> points;
    for (int i = 0; i < 100'000; ++i)
        points.emplace_back(i, std::sin(i * 0.001));
    points[54321].setY(99);
    points[777].setY(-99);
    const auto kept = thinned(points);
    EXPECT_LE(kept.size(), 2000u);
    EXPECT_EQ(kept.front(), points.front());
    EXPECT_EQ(kept.back(), points.back());
    EXPECT_NE(std::find(kept.begin(), kept.end(), points[54321]), kept.end());
    EXPECT_NE(std::find(kept.begin(), kept.end(), points[777]), kept.end());
    EXPECT_TRUE(std::is_sorted(kept.begin(), kept.end(),
                               [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); }));
}

TEST(ChartFigures, StepsHoldTheirValue)
{
    const ChartSeries films{
        .name = "films", .kind = SeriesKind::Step, .points = {{0, 1}, {4, 0.5}}};
    EXPECT_EQ(valueAt(films, 3.9, 10), 1);
    EXPECT_EQ(valueAt(films, 4, 10), 0.5);
    EXPECT_EQ(valueAt(films, 10, 10), 0.5);
    EXPECT_FALSE(valueAt(films, -1, 10));
    EXPECT_FALSE(valueAt(films, 11, 10));
    const auto corners = stepCorners(films.points, 10);
    EXPECT_EQ(corners, (std::vector<QPointF>{{0, 1}, {4, 1}, {4, 0.5}, {10, 0.5}}));
}

TEST(ChartFigures, MinutesAxisIsRound)
{
    ChartSpec spec = samples::timeForEachFilm();
    EXPECT_EQ(yTop(spec), 16);
    EXPECT_EQ(texts(yTicks(spec, 5, kBritish)),
              (std::vector<std::string>{"0 min", "4 min", "8 min", "12 min", "16 min"}));
}

TEST(ChartFigures, OneValueAloneHasOneTick)
{
    const QLocale locale(QLocale::English, QLocale::UnitedKingdom);
    EXPECT_EQ(numberTicks(3, 3, 5, locale).size(), 1u);
    ChartSpec spec;
    spec.y = ChartY::Number;
    spec.yMin = 2;
    spec.yMax = 2;
    EXPECT_EQ(yTicks(spec, 5, locale).size(), 1u);
}

TEST(ChartTable, HoldsTheSameFigures)
{
    ChartTableModel model(samples::timeForEachFilm());
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.rowCount(), 12);
    EXPECT_EQ(model.columnCount(), 4);
    EXPECT_EQ(model.index(0, 1).data(Qt::DisplayRole).toString(), "9:30");
    EXPECT_EQ(model.index(0, 3).data(Qt::DisplayRole).toString(), "–");
    ChartTableDialog dialog(samples::timeForEachFilm());
    EXPECT_TRUE(dialog.asText().startsWith("film\tdone\tnext\tto come\n1\t9:30\t–\t–\n"))
        << dialog.asText().toStdString();
}

TEST(ChartView, KeyboardReadsItAndOpensTheTable)
{
    std::unique_ptr<ChartView> view(makeChartView());
    view->setChart(samples::whatIsLeft());
    view->resize(400, 320);
    view->show();
    view->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(view.get()));
    QWidget* plot = view->focusProxy();
    plot->setFocus();
    EXPECT_EQ(plot->accessibleName(), "What is left, over time");
    EXPECT_FALSE(plot->accessibleDescription().isEmpty());
    EXPECT_TRUE(view->readOut().isEmpty());
    QTest::keyClick(plot, Qt::Key_Right);
    EXPECT_TRUE(view->readOut().contains("films 42")) << view->readOut().toStdString();
    const QString today = view->readOut();
    QTest::keyClick(plot, Qt::Key_Right);
    EXPECT_NE(view->readOut(), today);
    QTest::keyClick(plot, Qt::Key_Escape);
    EXPECT_TRUE(view->readOut().isEmpty());
    QTest::keyClick(plot, Qt::Key_T);
    auto* table = view->findChild<ChartTableDialog*>();
    ASSERT_NE(table, nullptr);
    EXPECT_TRUE(table->isVisible());
    table->close();
}

TEST(ChartView, FollowsTheTheme)
{
    std::unique_ptr<ChartView> view(makeChartView());
    view->setChart(samples::timeForEachFilm());
    view->resize(330, 300);
    view->show();
    const auto has = [&](const QColor& colour) {
        const QImage image = view->grab().toImage();
        int found = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x)
                found += image.pixelColor(x, y) == colour;
        }
        return found > 500;
    };
    EXPECT_TRUE(has(lightColours().brown));
    Theme::instance().setMode(ThemeMode::Dark);
    EXPECT_TRUE(has(darkColours().brown));
    EXPECT_FALSE(has(lightColours().brown));
    Theme::instance().setMode(ThemeMode::Light);
}

TEST(ChartView, EmptyAndBrokenDataDoNotHarm)
{
    std::unique_ptr<ChartView> view(makeChartView());
    view->resize(330, 300);
    view->show();
    view->setChart({});
    view->grab();
    ChartSpec spec;
    spec.series.push_back({.name = "gap", .points = {{0, std::nan("")}, {1, 0.5}}});
    spec.series.push_back({.name = "area", .kind = SeriesKind::HatchedArea});
    view->setChart(spec);
    view->grab();
    spec.x = ChartX::Categories;
    spec.series = {{.name = "none", .kind = SeriesKind::Bars}};
    view->setChart(spec);
    view->grab();
    QTest::keyClick(view->focusProxy(), Qt::Key_Right);
    EXPECT_TRUE(view->readOut().isEmpty());
}
