// The bench driven as a person drives it: planned, run by keys, logged, killed and taken up again.
#include "app/bench/big_clock.h"
#include "app/bench/cue_panel.h"
#include "app/bench/run_view.h"
#include "app/bench/step_list.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/quantity_edit.h"
#include "bench_kit.h"

#include <QPushButton>

namespace ullage::app
{
namespace
{

using chemistry::Seconds;
using ledger::RunPhase;
using Stage = BenchPage::Stage;

TEST(BenchPage, WholeRunOfTwoFilmsByTheKeyboardAlone)
{
    Bench bench(false);
    BenchPage& page = bench.open();
    bench.tabTo("filmName");
    bench.type("Harbour");
    bench.tabTo("addFilm");
    bench.key(Qt::Key_Space);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("filmName"));
    bench.type("Ferry");
    bench.tabTo("baseTime");
    bench.type("10:00");
    bench.tabTo("start");
    bench.key(Qt::Key_Space);
    ASSERT_EQ(page.stage(), Stage::Run);
    EXPECT_EQ(page.run()->phase(), RunPhase::Ready);

    bench.key(Qt::Key_Space); // starts the clock
    EXPECT_EQ(page.run()->phase(), RunPhase::Running);
    for (int step = 0; step < 10; ++step) {
        const double target = page.run()->target().value();
        bench.pass(target);
        if (step == 1) { // a hold of half a minute in the middle of things
            bench.key(Qt::Key_Space);
            EXPECT_EQ(page.run()->phase(), RunPhase::Held);
            bench.pass(30);
            bench.key(Qt::Key_Space);
            bench.pass(5); // and it runs over by five seconds
        }
        bench.key(Qt::Key_Return);
    }
    ASSERT_EQ(page.stage(), Stage::Finish);
    EXPECT_EQ(bench.batch(bench.dev).filmsDone.value(), 0)
        << "nothing is counted until it is logged";
    bench.tabTo("lost");
    bench.key(Qt::Key_Home);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
    bench.type("20 ml");
    bench.tabTo("air");
    bench.key(Qt::Key_Down); // squeezed out
    bench.tabTo("log");
    bench.key(Qt::Key_Space);

    EXPECT_EQ(page.stage(), Stage::Plan);
    const ledger::Batch dev = bench.batch(bench.dev);
    EXPECT_NEAR(dev.filmsDone.value(), 2, 1e-9);
    EXPECT_NEAR(dev.volume.value(), 980, 1e-9);
    EXPECT_NEAR(dev.standing.air.volume.value(), 0, 1e-9) << "squeezed out";
    const ledger::Batch fix = bench.batch(bench.fix);
    EXPECT_NEAR(fix.filmsDone.value(), 2, 1e-9);
    EXPECT_NEAR(fix.volume.value(), 1000, 1e-9);
    EXPECT_NEAR(fix.standing.air.volume.value(), 30, 1e-9);
    const auto films = bench.shelf.store.films();
    ASSERT_EQ(films.size(), 2u);
    EXPECT_EQ(films[0].name, "Harbour");
    EXPECT_EQ(films[1].name, "Ferry");
    EXPECT_EQ(films[0].run, films[1].run);
    const auto times = bench.shelf.store.times();
    ASSERT_TRUE(times);
    EXPECT_EQ(times->run, films[0].run);
    ASSERT_EQ(times->steps.size(), 10u);
    EXPECT_EQ(times->steps[1], (ledger::StepDone{"develop", Seconds(600), Seconds(635)}));
    EXPECT_EQ(times->steps[0], (ledger::StepDone{"pre-wet", Seconds(180), Seconds(180)}));
    EXPECT_FALSE(QFile::exists(bench.host.runFile()));
}

TEST(BenchPage, AReadingIsShownBeforeItIsAccepted)
{
    Bench bench;
    BenchPage& page = bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.nextAllTheSame();
    bench.pass(300);
    bench.key(Qt::Key_T);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("reading"));
    bench.type("19");
    EXPECT_NEAR(page.run()->left().value(), 300, 1e-6) << "nothing has changed yet";
    bench.key(Qt::Key_Return);
    EXPECT_NEAR(page.run()->left().value(), 300 * std::pow(1.9, 0.1), 0.5);
    EXPECT_EQ(page.run()->current(), 1u) << "Enter in the field is not Next";
    bench.key(Qt::Key_T);
    bench.type("9");
    EXPECT_FALSE(bench.find("takeReading")->isEnabled()) << "hydroquinone does nothing there";
    bench.key(Qt::Key_Escape);
    EXPECT_EQ(page.run()->state().readings.size(), 1u);
}

TEST(BenchPage, CuesSoundOnceEachAndCanBeOff)
{
    Bench bench;
    BenchPage& page = bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.sounds.tones.clear(); // before the step begins: the page's own timer may look at any time
    bench.nextAllTheSame();
    bench.pass(75);
    EXPECT_EQ(bench.sounds.tones,
              (std::vector{CueTone::Agitate, CueTone::Rest, CueTone::Agitate, CueTone::Rest}));
    EXPECT_EQ(visible<CuePanel>(page)->text(), QStringLiteral("Agitate in 0:45"));
    bench.sounds.tones.clear();
    bench.pass(527); // to 10:02
    EXPECT_EQ(std::count(bench.sounds.tones.begin(), bench.sounds.tones.end(), CueTone::StepSoon),
              1);
    EXPECT_EQ(bench.sounds.tones.back(), CueTone::StepOver);
    EXPECT_EQ(visible<BigClock>(page)->text(), QStringLiteral("+0:02"));
    EXPECT_EQ(visible<CuePanel>(page)->mood(), CuePanel::Mood::Urgent);
    bench.memory.setCues({false, true});
    page.findChild<RunView*>()->setCues({false, true});
    bench.sounds.tones.clear();
    bench.key(Qt::Key_Return);
    bench.key(Qt::Key_Return);
    bench.pass(70);
    EXPECT_TRUE(bench.sounds.tones.empty());
}

TEST(BenchPage, SaysWhatToDoNowAndWhenTheNextThingComes)
{
    Bench bench;
    BenchPage& page = bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    const auto* cue = visible<CuePanel>(page);
    bench.pass(2);
    EXPECT_EQ(cue->text(), QStringLiteral("Change the water in 0:58")) << "a pre-wet of three";
    bench.pass(59);
    EXPECT_EQ(cue->text(), QStringLiteral("Change the water now"));
    EXPECT_EQ(cue->mood(), CuePanel::Mood::Act);
    bench.pass(119);
    bench.key(Qt::Key_Return);
    EXPECT_TRUE(cue->text().startsWith(QStringLiteral("Agitate now, ")))
        << cue->text().toStdString();
    bench.pass(600);
    bench.key(Qt::Key_Return);
    ASSERT_EQ(page.run()->step().kind, ledger::StepKind::PourBack);
    bench.pass(1);
    EXPECT_EQ(cue->text(), QStringLiteral("Pour back now"));
    EXPECT_TRUE(cue->accessibleDescription().contains(QStringLiteral("then: ")))
        << cue->accessibleDescription().toStdString();
}

TEST(BenchPage, LeavingAStepFarTooEarlyAsksOnce)
{
    Bench bench;
    BenchPage& page = bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.pass(1);
    const auto* next = qobject_cast<QPushButton*>(bench.find("next"));
    const auto look = [next] { return next->property("look"); };
    const QVariant early = look();
    EXPECT_EQ(next->text(), QStringLiteral("Next: develop"));
    bench.key(Qt::Key_Return);
    EXPECT_EQ(page.run()->current(), 0u) << "asked, not done";
    EXPECT_EQ(next->text(), QStringLiteral("Leave it after 0:01"));
    EXPECT_EQ(visible<CuePanel>(page)->text(), QStringLiteral("Only 0:01 of 3:00"));
    bench.key(Qt::Key_Space);
    EXPECT_EQ(page.run()->phase(), RunPhase::Held) << "holding is an answer";
    bench.key(Qt::Key_Space);
    bench.key(Qt::Key_Return);
    EXPECT_EQ(page.run()->current(), 0u) << "and the question is asked anew";
    bench.key(Qt::Key_Return);
    EXPECT_EQ(page.run()->current(), 1u);
    bench.pass(301); // more than half of ten minutes
    EXPECT_NE(look(), early) << "it is no longer the quiet one";
    bench.key(Qt::Key_Return);
    EXPECT_EQ(page.run()->current(), 2u) << "past the half nothing is asked";
    bench.key(Qt::Key_Return);
    EXPECT_EQ(page.run()->current(), 3u) << "pouring back takes as long as it takes";
}

TEST(BenchPage, TheQuestionIsWithdrawnByItself)
{
    Bench bench;
    BenchPage& page = bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.key(Qt::Key_Return);
    for (int i = 0; i < 100; ++i)
        page.tick();
    bench.key(Qt::Key_Return);
    EXPECT_EQ(page.run()->current(), 0u) << "it was forgotten; that is asked again";
}

TEST(BenchPage, ThePanelFollowsTheThermometer)
{
    Bench bench;
    BenchPage& page = bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    const auto says = [&](const QString& text) {
        for (const auto* rows : page.findChildren<FactorRows*>()) {
            const QString spoken = rows->accessibleName().replace(u'\u00a0', u' ');
            if (rows->isVisible() && spoken.contains(text))
                return true;
        }
        return false;
    };
    EXPECT_TRUE(says(QStringLiteral("Temperature: × 1.00")));
    ASSERT_TRUE(page.run()->accept(chemistry::Celsius(22)));
    bench.key(Qt::Key_Space); // shows the step anew, as taking the reading does
    EXPECT_TRUE(says(QStringLiteral("Temperature: × 0.88"))) << "1.9 to the power of −0.2";
}

TEST(BenchPage, FullViewAndDarkRoomByKeys)
{
    Bench bench;
    BenchPage& page = bench.open();
    bench.click("start");
    const int before = visible<BigClock>(page)->digitHeight();
    bench.key(Qt::Key_F);
    EXPECT_TRUE(page.isFullView());
    QApplication::processEvents();
    EXPECT_GT(visible<BigClock>(page)->digitHeight(), before);
    bench.key(Qt::Key_Escape);
    EXPECT_FALSE(page.isFullView());
    EXPECT_EQ(page.stage(), Stage::Run);
    bench.key(Qt::Key_D);
    EXPECT_TRUE(Theme::instance().isDarkRoom());
    bench.key(Qt::Key_D);
    EXPECT_FALSE(Theme::instance().isDarkRoom());
}

TEST(BenchPage, NothingButRedShinesInTheDarkRoom)
{
    Bench bench;
    BenchPage& page = bench.open();
    const auto reddest = [&] {
        QApplication::processEvents();
        const QImage image = page.grab().toImage().convertToFormat(QImage::Format_RGB32);
        int other = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                other = std::max({other, qGreen(image.pixel(x, y)), qBlue(image.pixel(x, y))});
        return other;
    };
    page.setDarkRoom(true);
    EXPECT_LE(reddest(), 8) << "plan";
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.nextAllTheSame();
    bench.pass(62);
    EXPECT_LE(reddest(), 8) << "run";
    bench.key(Qt::Key_T);
    EXPECT_LE(reddest(), 8) << "reading";
    bench.key(Qt::Key_Escape);
    bench.click("abandon");
    EXPECT_LE(reddest(), 8) << "finish";
    page.setDarkRoom(false);
    EXPECT_GT(reddest(), 200);
}

TEST(BenchPage, ASecondThumbOnSkipOrBackDoesWhatItSays)
{
    Bench bench;
    BenchPage& page = bench.open();
    bench.click("start");
    bench.key(Qt::Key_S);
    EXPECT_EQ(page.run()->current(), 0u) << "not begun yet";
    bench.key(Qt::Key_Return);
    EXPECT_EQ(page.run()->phase(), RunPhase::Running);
    bench.pass(5);
    bench.key(Qt::Key_S);
    EXPECT_EQ(page.run()->current(), 1u);
    EXPECT_TRUE(visible<StepList>(page)->rows()[0].skipped);
    bench.key(Qt::Key_B);
    EXPECT_EQ(page.run()->current(), 0u);
    EXPECT_NEAR(page.run()->elapsed().value(), 5, 1e-9);
}

TEST(BenchPage, RealClockAtTenfoldSpeed)
{
    Bench bench;
    ledger::RunTemplate quick{
        "quick",
        {},
        {{ledger::StepKind::PreWet, Seconds(5), 1, {}},
         {ledger::StepKind::Develop,
          {},
          1,
          {ledger::AgitationKind::Intervals, Seconds(5), Seconds(2), Seconds(5)}},
         {ledger::StepKind::PourBack, Seconds(3), 1, {}},
         {ledger::StepKind::Fix, Seconds(8), 1, {}},
         {ledger::StepKind::PourBack, Seconds(3), 1, {}}}};
    bench.memory.remember(quick);
    bench.memory.setLastTemplate(QStringLiteral("quick"));
    bench.host.setBaseTimes("mq", {{chemistry::Celsius(20), Seconds(20)}});
    const auto start = std::chrono::steady_clock::now();
    const auto fast = [start] {
        return std::chrono::duration_cast<std::chrono::milliseconds>(
            (std::chrono::steady_clock::now() - start) * 10);
    };
    const auto wall = bench.shelf.now;
    bench.clocks = {fast, [=] { return wall + fast(); }};
    BenchPage& page = bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    while (page.stage() == Stage::Run) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return page.run()->left() <= Seconds(0); }, 10'000));
        bench.key(Qt::Key_Return);
    }
    const ledger::RunState state = page.run()->state();
    const double planned[]{5, 20, 3, 8, 3};
    for (int i = 0; i < 5; ++i) {
        EXPECT_GE(state.times[std::size_t(i)].real.value(), planned[i]);
        EXPECT_LT(state.times[std::size_t(i)].real.value(), planned[i] + 6) << "the page was late";
    }
    EXPECT_TRUE(
        std::count(bench.sounds.tones.begin(), bench.sounds.tones.end(), CueTone::Agitate) >= 2);
    bench.shelf.now = wall + fast();
    bench.click("log");
    EXPECT_NEAR(bench.batch(bench.dev).filmsDone.value(), 1, 1e-9);
    EXPECT_NEAR(bench.batch(bench.fix).filmsDone.value(), 1, 1e-9);
}

} // namespace
} // namespace ullage::app
