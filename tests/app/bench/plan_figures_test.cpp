// "Where from?" on the run sheet: every time on it says what it is made of.
#include "bench_kit.h"

#include "app/bench/wash_edit.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/where_from_button.h"

#include <QPushButton>

namespace ullage::app
{
namespace
{

using chemistry::Grade;
using ledger::WashKind;

WhereFromButton* asking(const BenchPage& page)
{
    for (auto* button : page.findChildren<WhereFromButton*>())
        if (button->isVisible())
            return button;
    return nullptr;
}

Explanation figure(const BenchPage& page, const char* title)
{
    const auto* button = asking(page);
    if (!button)
        return {};
    for (const Explanation& why : button->figures())
        if (why.title.startsWith(QString::fromUtf8(title)))
            return why;
    return {};
}

QString text(const Explanation& why) { return why.lines().join(u'\n'); }

TEST(PlanFigures, aSheetWithoutTimesHasNothingToAsk)
{
    Bench bench(false);
    EXPECT_EQ(asking(bench.open()), nullptr);
}

TEST(PlanFigures, theDevelopingTimeOnTheSheetIsTheOneExplained)
{
    Bench bench;
    bench.shelf.work(bench.dev, 2);
    BenchPage& page = bench.open();
    const Explanation why = figure(page, "Development time");
    page.findChild<QPushButton*>("start")->click();
    const auto& steps = page.run()->state().sheet.steps;
    const auto step = std::find_if(steps.begin(), steps.end(), [](const auto& one) {
        return one.kind == ledger::StepKind::Develop;
    });
    // 600 s × (1 + 10 % × 2 films/L)
    EXPECT_EQ(step->planned, chemistry::Seconds(720));
    EXPECT_EQ(why.value, QStringLiteral("12:00"));
    EXPECT_TRUE(text(why).contains(QStringLiteral("10:00"))) << text(why).toStdString();
    EXPECT_EQ(why.grade, std::nullopt) << "typed in, so without a source";
}

TEST(PlanFigures, aFixerWithoutATestStandsOnTheTemplateAndSaysSo)
{
    Bench bench;
    BenchPage& page = bench.open();
    Explanation why = figure(page, "Fixing time");
    EXPECT_TRUE(text(why).contains(QStringLiteral("No clearing time is known")));
    EXPECT_EQ(why.grade, Grade::CommonPractice);
    bench.host.record(bench.fix,
                      ledger::ClearingTested{chemistry::Seconds(90), chemistry::Celsius(20)},
                      {bench.host.now(), {}});
    QApplication::processEvents();
    why = figure(page, "Fixing time");
    EXPECT_EQ(why.value, QStringLiteral("3:00"));
    EXPECT_TRUE(text(why).contains(QStringLiteral("90\u00a0s"))) << text(why).toStdString();
    EXPECT_TRUE(text(why).contains(QStringLiteral("NAVEDTRA 14209")));
}

TEST(PlanFigures, thePublishedWashNamesItsSourceAndTheColdItsFactor)
{
    Bench bench;
    BenchPage& page = bench.open();
    EXPECT_EQ(figure(page, "Washing").grade, Grade::CommonPractice) << "as the template has it";
    page.findChild<WashEdit*>()->setKind(WashKind::Running);
    Explanation why = figure(page, "Washing");
    EXPECT_EQ(why.value, QStringLiteral("30:00"));
    EXPECT_TRUE(text(why).contains(QStringLiteral("SS0509")));
    EXPECT_FALSE(text(why).contains(QStringLiteral("T.O. 33B-1-1")));
    auto* tap = page.findChild<QuantityEdit*>("tap");
    tap->setFocus();
    QTest::keyClicks(tap, "11");
    QApplication::processEvents();
    why = figure(page, "Washing");
    EXPECT_EQ(why.value, QStringLiteral("1:30:00"));
    EXPECT_TRUE(text(why).contains(QStringLiteral("T.O. 33B-1-1"))) << text(why).toStdString();
}

TEST(PlanFigures, whatTheBottlesStillTakeIsAmongThem)
{
    Bench bench;
    BenchPage& page = bench.open();
    EXPECT_TRUE(figure(page, "Films left in Dev 14").equation.contains(QStringLiteral("capacity")));
    EXPECT_FALSE(figure(page, "Films left in Fix 9").title.isEmpty());
    EXPECT_FALSE(figure(page, "Other steps").constants.empty());
}

} // namespace
} // namespace ullage::app
