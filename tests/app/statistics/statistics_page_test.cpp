// The statistics page on a book whose figures were reckoned by hand.
#include "tests/app/daybook/day_driver.h"
#include "tests/app/scripted_prompts.h"

#include "app/charts/chart.h"
#include "app/charts/chart_view.h"
#include "app/statistics/bar_rows.h"
#include "app/statistics/figures_view.h"
#include "app/statistics/statistics_page.h"
#include "app/statistics/statistics_words.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/shown_table.h"
#include "app/widgets/where_from_button.h"
#include "app/words/moment_text.h"
#include "core/store/journal_reader.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QFile>
#include <QLabel>
#include <QProgressBar>
#include <QRegularExpression>

namespace ullage::app
{

namespace
{

using ledger::EndCause;

/// The page on a desk's book, shown.
struct StatisticsOn {
    explicit StatisticsOn(Desk& desk) : page(desk.door())
    {
        page.resize(1100, 760);
        page.show();
    }
    StatisticsPage page;
};

class StatisticsPageTest : public testing::Test
{
protected:
    // Now is 25 November 2026. Bottles at 600, 300 and 120 days ago.
    StatisticsPageTest()
    {
        desk.pass(-600);
        mixAndRun("Dev 1", {2, 2}, 30); // April 2025, too long ago for twelve months
        desk.pass(300);
        mixAndRun("Dev 2", {3, 3, 4}, 50); // February to April 2026: spent by film
        desk.pass(180);
        mixAndRun("Dev 3", {1}, 20); // ended early
        desk.pass(120);
    }

    // Runs on the day of mixing; discards after `days`; moves the clock back to the mixing.
    void mixAndRun(const std::string& name, const std::vector<double>& loads, int days)
    {
        const auto id = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, name);
        for (const double films : loads) {
            desk.passMinutes(1);
            desk.run(id, films);
        }
        desk.passMinutes(-static_cast<int>(loads.size()));
        desk.pass(days);
        desk.record(id, ledger::Discarded{"gone"});
        desk.pass(-days);
    }
    static const ledger::Statistics& wait(StatisticsPage& page)
    {
        waitFor([&] { return page.statistics().has_value(); });
        return *page.statistics();
    }

    Desk desk;
};

} // namespace

TEST_F(StatisticsPageTest, TheLastTwelveMonths)
{
    StatisticsOn on(desk);
    const auto& so = wait(on.page);
    EXPECT_DOUBLE_EQ(so.developed.value(), 11);
    // January (29 days before February) to August 2026, when the last bottle ended
    ASSERT_EQ(so.months.size(), 8u);
    EXPECT_EQ(so.months.front().month, std::chrono::year(2026) / 1);
    EXPECT_DOUBLE_EQ(so.months.front().films.value(), 10);
    EXPECT_DOUBLE_EQ(so.months[6].films.value(), 1);
    EXPECT_EQ(so.months.back().ended, 1);
    ASSERT_EQ(so.solutions.size(), 1u);
    EXPECT_EQ(so.solutions[0].ended, 2);
    EXPECT_NEAR(so.solutions[0].meanLife.value(), 35, 0.01); // 50 and 20
    EXPECT_EQ(so.ends[static_cast<std::size_t>(EndCause::Films)], 1);
    EXPECT_EQ(so.ends[static_cast<std::size_t>(EndCause::Early)], 1);
    EXPECT_TRUE(so.costs.empty());
}

TEST_F(StatisticsPageTest, AnotherPeriodIsAnotherSum)
{
    StatisticsOn on(desk);
    auto* page = &on.page;
    wait(*page);
    page->setSpan(StatisticsPage::Span::All);
    waitFor([&] { return page->statistics()->developed.value() == 15; });
    EXPECT_EQ(page->statistics()->solutions[0].ended, 3);
    page->setSpan(StatisticsPage::Span::Year);
    waitFor([&] { return page->statistics()->developed.value() == 11; });
    page->periodBar()->step(-1);
    waitFor([&] { return page->statistics()->developed.value() == 4; });
    EXPECT_EQ(page->periodBar()->words(), "2025");
}

TEST_F(StatisticsPageTest, GoesFromOneMonthOrQuarterToTheNext)
{
    StatisticsOn on(desk);
    PeriodBar* bar = on.page.periodBar();
    wait(on.page);
    on.page.setSpan(StatisticsPage::Span::Month);
    EXPECT_EQ(bar->words(), "November 2026");
    bar->step(-4);
    EXPECT_EQ(bar->words(), "July 2026");
    waitFor([&] { return on.page.statistics()->developed.value() == 1; });
    on.page.setSpan(StatisticsPage::Span::Quarter);
    bar->step(-3);
    EXPECT_EQ(bar->words(), "January to March 2026");
    waitFor([&] { return on.page.statistics()->developed.value() == 10; });
    EXPECT_EQ(on.page.statistics()->ended, 1);
    bar->step(2);
    waitFor([&] { return on.page.statistics()->developed.value() == 1; });
    const auto lives =
        lifeRows(*on.page.statistics(), *desk.door().formulary(), desk.door().wording());
    ASSERT_EQ(lives.size(), 1u);
    EXPECT_TRUE(lives[0].text.endsWith("1 film each")) << lives[0].text.toStdString();
}

TEST(StatisticsBars, ValuesStandBelowNamesThatHaveNoRoomBesideThem)
{
    BarRows rows;
    rows.setRows({{"A developer with a rather long name", 1, "24 days · 14 bottles"}});
    rows.resize(600, 60);
    rows.show();
    const int beside = rows.sizeHint().height();
    rows.resize(250, 60);
    EXPECT_GT(rows.sizeHint().height(), beside);
    rows.resize(600, 60);
    EXPECT_EQ(rows.sizeHint().height(), beside);
}

TEST_F(StatisticsPageTest, SaysWhatToDoWhereThereIsNothing)
{
    StatisticsOn on(desk);
    wait(on.page);
    on.page.setSpan(StatisticsPage::Span::Month);
    auto* empty = on.page.findChild<EmptyState*>("nothingToCount");
    ASSERT_TRUE(empty);
    waitFor([&] { return empty->isVisible(); });
    QStringList words;
    for (const auto* label : empty->findChildren<QLabel*>())
        words << label->text();
    EXPECT_TRUE(words.join(' ').contains("Nothing in November 2026"))
        << words.join(' ').toStdString();
    on.page.setSpan(StatisticsPage::Span::All);
    waitFor([&] { return !empty->isVisible(); });
}

TEST_F(StatisticsPageTest, GrowsWithTheBook)
{
    StatisticsOn on(desk);
    EXPECT_DOUBLE_EQ(wait(on.page).developed.value(), 11);
    const auto id = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 4");
    desk.passMinutes(1);
    desk.run(id, 2);
    waitFor([&] { return on.page.statistics()->developed.value() == 13; });
}

TEST_F(StatisticsPageTest, ReadsOnlyWhileItIsSeen)
{
    StatisticsOn on(desk);
    wait(on.page);
    on.page.hide();
    const auto id = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 4");
    desk.passMinutes(1);
    desk.run(id, 2);
    QTest::qWait(50);
    EXPECT_DOUBLE_EQ(on.page.statistics()->developed.value(), 11);
    on.page.show();
    waitFor([&] { return on.page.statistics()->developed.value() == 13; });
}

TEST_F(StatisticsPageTest, SaysThatItCountsUntilThereIsSomethingToShow)
{
    StatisticsOn on(desk);
    const auto isSaid = [&](const QString& words) {
        for (const auto* label : on.page.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text() == words)
                return true;
        }
        return false;
    };
    EXPECT_FALSE(on.page.statistics());
    EXPECT_TRUE(isSaid("Counting…"));
    EXPECT_FALSE(on.page.findChild<ChartView*>()->isVisible()) << "no empty chart";
    wait(on.page);
    EXPECT_FALSE(isSaid("Counting…"));
    EXPECT_TRUE(on.page.findChild<ChartView*>()->isVisible());
}

TEST_F(StatisticsPageTest, CountsBetweenTwoDays)
{
    StatisticsOn on(desk);
    wait(on.page);
    const QDate mixed = localDate(desk.now()).addDays(-300); // ten films on that day
    on.page.periodBar()->setDays(mixed.addDays(1), mixed);   // the wrong way round
    waitFor([&] { return on.page.statistics()->developed.value() == 10; });
    EXPECT_EQ(on.page.statistics()->ended, 0);
    on.page.periodBar()->setDays(mixed.addDays(1), mixed.addDays(50));
    waitFor([&] { return on.page.statistics()->ended == 1; });
    EXPECT_DOUBLE_EQ(on.page.statistics()->developed.value(), 0) << "the last day is in it";
    EXPECT_TRUE(on.page.periodBar()->words().contains(" to "));
}

TEST_F(StatisticsPageTest, ShowsTheSameInTables)
{
    StatisticsOn on(desk);
    wait(on.page);
    on.page.setFace(StatisticsPage::Face::Months);
    QAbstractItemModel* model = on.page.table()->model();
    const QAbstractItemModelTester tester(model);
    ASSERT_EQ(model->rowCount(), 9); // eight months and their sum
    EXPECT_EQ(model->index(0, 0).data().toString(), "January 2026");
    EXPECT_EQ(model->index(8, 0).data().toString(), "Together");
    EXPECT_EQ(model->index(8, 1).data().toString(), "11");
    EXPECT_EQ(model->index(8, 4).data().toString(), "not known") << "no packet had a price";
    const ShownTable shown = app::tableOf(*on.page.table());
    ASSERT_EQ(shown.rows.size(), 9u);
    EXPECT_EQ(std::get<QString>(shown.rows[0][0]), "2026-01");
    EXPECT_EQ(std::get<double>(shown.rows[8][1]), 11);
    on.page.resize(420, 700); // no name or figure is cut where it is narrow
    const auto* view = on.page.table();
    for (int column = 0; column < model->columnCount(); ++column)
        EXPECT_GE(view->columnWidth(column),
                  view->sizeHintForIndex(model->index(8, column)).width())
            << column;
    on.page.setFace(StatisticsPage::Face::Solutions);
    EXPECT_EQ(model->index(0, 1).data().toString(), "11");
    on.page.setFace(StatisticsPage::Face::People);
    EXPECT_EQ(model->index(0, 0).data().toString(), "nobody named");
    on.page.setFace(StatisticsPage::Face::Ends);
    EXPECT_EQ(model->rowCount(), 6); // five causes and their sum
    on.page.setFace(StatisticsPage::Face::Charts);
    EXPECT_FALSE(on.page.table()->isVisible());
}

TEST_F(StatisticsPageTest, AsksForPrintingWhatItShows)
{
    StatisticsOn on(desk);
    QStringList asked;
    QObject::connect(&on.page, &StatisticsPage::printRequested, &on.page,
                     [&](const ledger::Statistics& so, const QString& period) {
                         asked << period + QString::number(so.developed.value(), 'g', 3)
                                               .prepend(QStringLiteral(": "));
                     });
    on.page.print();
    EXPECT_TRUE(asked.isEmpty()) << "nothing is shown yet";
    wait(on.page);
    on.page.print();
    // At once, while the figures before are still seen: never those under the new words.
    on.page.setSpan(StatisticsPage::Span::All);
    on.page.print();
    waitFor([&] { return asked.size() == 2; });
    ASSERT_EQ(asked.size(), 2);
    EXPECT_EQ(asked[0], "Last 12 months: 11");
    EXPECT_TRUE(asked[1].endsWith(": 15")) << asked[1].toStdString();
}

TEST_F(StatisticsPageTest, ExportsOnlyThePeriodThatWasChosen)
{
    StatisticsOn on(desk);
    wait(on.page);
    on.page.setFace(StatisticsPage::Face::Months);
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    const QString file = desk.file("months.csv");
    asked.answer(file);
    on.page.setSpan(StatisticsPage::Span::All);
    EXPECT_FALSE(on.page.table()->exportEntry()->isEnabled()) << "its menu neither";
    on.page.exportTable();
    waitFor([&] { return asked.asked().size() == 2; });
    QFile written(file);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(written.readAll().contains("2025-04")) << "which only the new period has";
    EXPECT_TRUE(on.page.table()->exportEntry()->isEnabled());
}

TEST_F(StatisticsPageTest, LetsGoOfTheFileWhenTheBookIsClosed)
{
    StatisticsOn on(desk);
    wait(on.page);
    const QString log = desk.session().path() + "-wal";
    ASSERT_TRUE(QFile::exists(log));
    desk.session().close();
    EXPECT_FALSE(QFile::exists(log)) << "the last to close clears it away";
}

TEST_F(StatisticsPageTest, IsReadInWordsToo)
{
    StatisticsOn on(desk);
    wait(on.page);
    QStringList bars;
    for (const auto* rows : on.page.findChildren<BarRows*>())
        bars << rows->accessibleName();
    const QString all = bars.join('|');
    EXPECT_TRUE(all.contains("MQ borax developer, stock: 11 films")) << all.toStdString();
    EXPECT_TRUE(all.contains("35 days · 2 bottles · 5.5 films each")) << all.toStdString();
    EXPECT_TRUE(all.contains(QRegularExpression("Spent by film: 1 bottle · 50.%")))
        << all.toStdString();
    auto* chart = on.page.findChild<ChartView*>();
    EXPECT_TRUE(chart->chart().summary.contains("11 films, 1.6 a month")) // 11 in 7 months
        << chart->chart().summary.toStdString();
    EXPECT_EQ(chart->chart().categories.size(), 7);
}

TEST_F(StatisticsPageTest, SaysHowItCounts)
{
    StatisticsOn on(desk);
    auto* ask = on.page.findChild<WhereFromButton*>();
    EXPECT_TRUE(ask->isHidden());
    wait(on.page);
    EXPECT_FALSE(ask->isHidden());
    const auto figures = ask->figures();
    ASSERT_EQ(figures.size(), 4u);
    EXPECT_EQ(figures[0].value, "11 films");
    EXPECT_EQ(figures[1].value, "2 bottles");
    EXPECT_FALSE(figures[0].hasGrade) << "counted";
}

TEST(StatisticsWords, ManyMonthsAreShownByYear)
{
    ledger::Statistics so;
    for (int i = 0; i < 40; ++i) {
        ledger::MonthSum month;
        month.month = std::chrono::year(2023) / 1 + std::chrono::months(i);
        month.films = chemistry::Films(1);
        so.months.push_back(month);
    }
    so.developed = chemistry::Films(40);
    const ChartSpec spec = filmsChart(so, {});
    EXPECT_EQ(spec.categories, (QStringList{"2023", "2024", "2025", "2026"}));
    ASSERT_EQ(spec.series[0].points.size(), 4u);
    EXPECT_EQ(spec.series[0].points[3].y(), 4);
}

TEST(StatisticsWords, CostsKeepTheirCurrency)
{
    ledger::Statistics so;
    so.costs = {{"mq", "EUR", *ledger::Decimal::from("0.80"), 2},
                {"mq", "", *ledger::Decimal::from("0.5"), 1}};
    const auto rows = costRows(so, {}, {{}, QLocale(QLocale::English, QLocale::UnitedKingdom)});
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].text, "0.80\u00a0EUR · 2 bottles");
    EXPECT_EQ(rows[1].text, "0.50 · 1 bottle");
}

TEST(StatisticsEmpty, SaysWhatToDoFirst)
{
    Desk desk;
    StatisticsOn on(desk);
    waitFor([&] { return on.page.statistics().has_value(); });
    bool said = false;
    for (const auto* label : on.page.findChildren<QLabel*>())
        said = said || (label->isVisible() && label->text() == "Nothing to count yet");
    EXPECT_TRUE(said);
}

} // namespace ullage::app
