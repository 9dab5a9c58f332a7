// A run on the bench that is cut off: killed, crashed, its file unreadable, or given up.
#include "app/bench/big_clock.h"
#include "app/bench/cue_panel.h"
#include "app/bench/run_view.h"
#include "app/widgets/quantity_edit.h"
#include "bench_kit.h"

#include <QCheckBox>

namespace ullage::app
{

namespace
{

using chemistry::Seconds;
using ledger::RunPhase;
using Stage = BenchPage::Stage;

TEST(BenchPage, KilledInTheMiddleOfDevelopingAndTakenUpAtTheRightSecond)
{
    Bench bench;
    bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.pass(180);
    bench.key(Qt::Key_Return);
    bench.pass(203.5); // the last save is a moment ago, not now
    bench.kill();
    bench.shelf.now += std::chrono::milliseconds(41'500);
    bench.steady = std::chrono::milliseconds(7); // the machine was started anew

    BenchPage& page = bench.open();
    EXPECT_EQ(page.stage(), Stage::Plan);
    EXPECT_FALSE(bench.find("start")->isEnabled()) << "another run would overwrite this one";
    ASSERT_TRUE(bench.find("bannerGoOn")->isVisible());
    bench.click("bannerGoOn");
    ASSERT_EQ(page.stage(), Stage::Run);
    EXPECT_EQ(page.run()->current(), 1u);
    EXPECT_NEAR(page.run()->elapsed().value(), 245, 0.11);
    EXPECT_EQ(visible<BigClock>(page)->text(), QStringLiteral("5:55"));
    while (page.stage() == Stage::Run) {
        bench.pass(std::max(1.0, page.run()->left().value()));
        bench.key(Qt::Key_Return);
    }
    bench.click("log");
    EXPECT_NEAR(bench.batch(bench.dev).filmsDone.value(), 1, 1e-9);
    const auto times = bench.shelf.store.times();
    EXPECT_NEAR(times->steps[1].real.value(), 600, 1);
}

TEST(BenchPage, AfterACrashItCanBeLoggedAsFarAsItGot)
{
    Bench bench;
    bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.nextAllTheSame();
    bench.pass(60);
    bench.kill();
    bench.shelf.days(1);
    BenchPage& page = bench.open();
    bench.click("bannerLog");
    ASSERT_EQ(page.stage(), Stage::Finish);
    const auto ticks = page.findChildren<QCheckBox*>(QStringLiteral("used"));
    ASSERT_EQ(ticks.size(), 2);
    EXPECT_TRUE(ticks[0]->isChecked());
    EXPECT_FALSE(ticks[1]->isChecked()) << "the fixer was never reached";
    bench.click("log");
    EXPECT_NEAR(bench.batch(bench.dev).filmsDone.value(), 1, 1e-9);
    EXPECT_NEAR(bench.batch(bench.fix).filmsDone.value(), 0, 1e-9);
}

TEST(BenchPage, ARunLoggedJustBeforeTheEndIsNotLoggedTwice)
{
    Bench bench;
    bench.open();
    bench.click("start");
    while (bench.page->stage() == Stage::Run) {
        bench.pass(2);
        bench.key(Qt::Key_Return);
    }
    bench.key(Qt::Key_Escape);
    // The file as it lies there between the marking and the removal.
    ledger::RunState state = bench.page->run()->state();
    state.loggedAt = ledger::lastBathAt(state);
    bench.click("log");
    ASSERT_NEAR(bench.batch(bench.dev).filmsDone.value(), 1, 1e-9);
    bench.page.reset();
    ASSERT_TRUE(RunFile(bench.host.runFile()).save(state));
    BenchPage& page = bench.open();
    EXPECT_FALSE(page.isRunInHand());
    EXPECT_FALSE(QFile::exists(bench.host.runFile()));
    EXPECT_FALSE(bench.find("bannerGoOn")->isVisible());
}

TEST(BenchPage, AFileThatCannotBeReadIsPutAsideAndSaidSo)
{
    Bench bench;
    bench.putRunFile("{\"type\":\"ullage-run\",\"version\":1,\"phase\":\"run");
    BenchPage& page = bench.open();
    EXPECT_FALSE(page.isRunInHand());
    EXPECT_FALSE(QFile::exists(bench.host.runFile()));
    EXPECT_TRUE(QFile::exists(bench.host.runFile() + QStringLiteral(".unreadable-1")));
    EXPECT_TRUE(bench.find("bannerDrop")->isVisible());
    EXPECT_TRUE(bench.find("start")->isEnabled()) << "a new run can be made all the same";
}

TEST(BenchPage, AbandonAsksWhichBottlesWereUsed)
{
    Bench bench;
    BenchPage& page = bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.pass(20);
    bench.click("abandon");
    ASSERT_EQ(page.stage(), Stage::Finish);
    EXPECT_FALSE(bench.find("log")->isEnabled()) << "no film went into a bottle yet";
    bench.click("drop");
    EXPECT_EQ(page.stage(), Stage::Plan);
    EXPECT_TRUE(bench.shelf.store.films().empty());
    EXPECT_FALSE(QFile::exists(bench.host.runFile()));
}

} // namespace

} // namespace ullage::app
