#include "core/ledger/coded_notes.h"
#include "run_kit.h"

#include "core/ledger/run_clock.h"

#include <cmath>

namespace ullage::ledger
{
namespace
{

using chemistry::Celsius;
using chemistry::Millilitres;
using chemistry::Seconds;
using std::chrono::milliseconds;

// A run of two films, with a steady and a wall clock that go together unless told otherwise.
struct Tankful : RunShelf {
    std::string dev = mix("mq", "b1", "Dev 1");
    std::string fix = mix("fix", "b2", "Fix 1");
    milliseconds steady{5'000};

    void pass(double seconds)
    {
        const milliseconds time(std::llround(seconds * 1000));
        steady += time;
        now += time;
    }

    RunState ready()
    {
        const auto all = judged();
        RunState state;
        state.sheet = *makeSheet({usualTemplates()[0],
                                  Celsius(20),
                                  {{Celsius(20), Seconds(600)}},
                                  {{&all[0], false}, {&all[1], false}},
                                  false});
        state.temperature = Celsius(20);
        state.savedAt = now;
        state.tank = {"tank", Millilitres(600), {}};
        state.films = {{"135-36", 1, "Harbour", 400.0, "dawn"}, {"120", 1, "Ferry", {}, {}}};
        state.baths = {{formulary::Role::Developer, dev, "Dev 1", Millilitres(600), false, 0},
                       {formulary::Role::Fixer, fix, "Fix 1", Millilitres(600), false, 0}};
        for (const RunStep& step : state.sheet.steps) {
            state.times.push_back({step.planned, step.planned, {}, {}, false, {}, {}});
        }
        return state;
    }

    RunClock clock(const RunState& state)
    {
        return {state, [this] { return steady; }, [this] { return now; }};
    }
};

TEST(RunClock, CountsDownAndOver)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    run.pass(100);
    EXPECT_EQ(clock.left(), Seconds(180)) << "not started yet";
    clock.start();
    run.pass(60.5);
    EXPECT_NEAR(clock.left().value(), 119.5, 1e-9);
    run.pass(130);
    EXPECT_NEAR(clock.left().value(), -10.5, 1e-9);
    clock.next();
    EXPECT_EQ(clock.current(), 1u);
    EXPECT_EQ(clock.left(), Seconds(600));
    const RunState state = clock.state();
    EXPECT_NEAR(state.times[0].real.value(), 190.5, 1e-9);
    EXPECT_TRUE(state.times[0].ended);
}

TEST(RunClock, FillsShareTheTimeOfTheirStep)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    ASSERT_EQ(clock.step().changes, 3);
    clock.start();
    run.pass(2);
    EXPECT_FALSE(clock.water().change) << "the first is poured in";
    EXPECT_NEAR(clock.water().next->value(), 58, 1e-9);
    run.pass(58);
    EXPECT_TRUE(clock.water().change);
    EXPECT_NEAR(clock.water().next->value(), 60, 1e-9);
    run.pass(10);
    EXPECT_FALSE(clock.water().change) << "that was long enough to be seen";
    run.pass(50);
    EXPECT_TRUE(clock.water().change);
    EXPECT_FALSE(clock.water().next) << "the last";
    run.pass(60);
    EXPECT_FALSE(clock.water().change) << "time is up";
    clock.next();
    EXPECT_FALSE(clock.water().next) << "one bath, no change";
}

TEST(RunClock, UnderHalfOfAStepIsFarTooEarlyButForPouringBack)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    EXPECT_FALSE(clock.farTooEarly()) << "not begun";
    clock.start();
    run.pass(89.9);
    EXPECT_TRUE(clock.farTooEarly());
    clock.hold();
    EXPECT_TRUE(clock.farTooEarly());
    clock.goOn();
    run.pass(0.2);
    EXPECT_FALSE(clock.farTooEarly());
    clock.next();
    clock.next();
    ASSERT_EQ(clock.step().kind, StepKind::PourBack);
    EXPECT_FALSE(clock.farTooEarly());
}

TEST(RunClock, TheFactorsFollowTheThermometerUntilTheDeveloperIsOut)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    EXPECT_NEAR(developingNow(clock.state())->temperature, 1, 1e-12);
    clock.start();
    ASSERT_TRUE(clock.accept(Celsius(22)));
    const auto warm = developingNow(clock.state());
    EXPECT_NEAR(warm->temperature, std::pow(1.9, -0.2), 1e-9);
    EXPECT_NEAR(warm->time.value(), 600 * std::pow(1.9, -0.2), 1e-6);
    clock.next();
    clock.next();
    ASSERT_TRUE(clock.accept(Celsius(18))); // in the water that came after
    EXPECT_NEAR(developingNow(clock.state())->temperature, std::pow(1.9, -0.2), 1e-9);
}

TEST(RunClock, HoldStopsTheTimeAndIsRecorded)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    clock.start();
    run.pass(30);
    clock.hold();
    run.pass(45);
    EXPECT_EQ(clock.elapsed(), Seconds(30));
    clock.goOn();
    run.pass(10);
    EXPECT_EQ(clock.elapsed(), Seconds(40));
    EXPECT_EQ(clock.state().times[0].held, Seconds(45));
    clock.hold();
    clock.next();
    EXPECT_EQ(clock.phase(), RunPhase::Running) << "the next step is not on hold";
}

TEST(RunClock, SteadyTimeRulesWhileItRuns)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    clock.start();
    run.steady += std::chrono::seconds(20);
    run.now -= std::chrono::hours(1); // the wall clock is put right
    EXPECT_EQ(clock.elapsed(), Seconds(20));
}

TEST(RunClock, ResumesAtTheRightSecondAfterACrash)
{
    Tankful run;
    RunState saved;
    {
        RunClock clock = run.clock(run.ready());
        clock.start();
        run.pass(180);
        clock.next();
        run.pass(100);
        saved = clock.state();
    }
    run.now += std::chrono::milliseconds(37'250);
    run.steady = milliseconds(1); // another boot, another steady clock
    RunClock again = run.clock(saved);
    EXPECT_EQ(again.current(), 1u);
    EXPECT_NEAR(again.elapsed().value(), 137.25, 1e-9);
    run.pass(10);
    EXPECT_NEAR(again.left().value(), 600 - 147.25, 1e-9);
}

TEST(RunClock, AHeldRunStaysHeldAndAClockSetBackAddsNothing)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    clock.start();
    run.pass(100);
    const RunState running = clock.state();
    clock.hold();
    const RunState held = clock.state();
    run.now += std::chrono::minutes(10);
    RunClock again = run.clock(held);
    EXPECT_EQ(again.phase(), RunPhase::Held);
    EXPECT_EQ(again.elapsed(), Seconds(100));
    EXPECT_EQ(again.state().times[0].held, Seconds(600));
    run.now -= std::chrono::hours(2);
    EXPECT_EQ(run.clock(running).elapsed(), Seconds(100));
}

TEST(RunClock, SkipAndBack)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    clock.back();
    EXPECT_EQ(clock.phase(), RunPhase::Ready);
    clock.start();
    run.pass(5);
    clock.skip();
    EXPECT_TRUE(clock.state().times[0].skipped);
    run.pass(7);
    clock.back();
    EXPECT_EQ(clock.current(), 0u);
    EXPECT_EQ(clock.elapsed(), Seconds(12)) << "as if the step had never been left";
    EXPECT_FALSE(clock.state().times[0].skipped);
    EXPECT_FALSE(clock.state().times[1].began);
}

TEST(RunClock, BackFromTheEnd)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    clock.start();
    while (clock.phase() == RunPhase::Running) {
        run.pass(3);
        clock.next();
    }
    EXPECT_EQ(clock.phase(), RunPhase::Done);
    EXPECT_EQ(clock.leftOfRun(), Seconds(0));
    run.pass(4);
    clock.back();
    EXPECT_EQ(clock.phase(), RunPhase::Running);
    EXPECT_EQ(clock.elapsed(), Seconds(7));
}

TEST(RunClock, ReadingScalesTheRestOfDevelopingAndFixingToCome)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    clock.start();
    run.pass(180);
    clock.next();
    run.pass(300);
    const auto preview = clock.preview(Celsius(19));
    ASSERT_TRUE(preview);
    ASSERT_EQ(preview->size(), 2u);
    EXPECT_EQ((*preview)[0].before, Seconds(300));
    EXPECT_NEAR((*preview)[0].after.value(), 300 * std::pow(1.9, 0.1), 1e-9);
    EXPECT_EQ((*preview)[1].step, 4u);
    EXPECT_NEAR((*preview)[1].after.value(), 390 * std::pow(2, 0.1), 1e-9);
    EXPECT_EQ(clock.left(), Seconds(300)) << "nothing has changed yet";
    ASSERT_TRUE(clock.accept(Celsius(19)));
    EXPECT_NEAR(clock.left().value(), 300 * std::pow(1.9, 0.1), 0.5);
    const RunState state = clock.state();
    EXPECT_EQ(state.times[1].planned, Seconds(600)) << "the plan stays on record";
    ASSERT_EQ(state.readings.size(), 1u);
    EXPECT_EQ(state.readings[0].step, 1u);
    // Back to 20 °C at once: what is left is what was left.
    ASSERT_TRUE(clock.accept(Celsius(20)));
    EXPECT_NEAR(clock.left().value(), 300, 1);
}

TEST(RunClock, ReadingOutOfReachIsRefusedAndChangesNothing)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    clock.start();
    EXPECT_EQ(clock.preview(Celsius(12)).error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(clock.accept(Celsius(12)));
    EXPECT_TRUE(clock.state().readings.empty());
    EXPECT_FALSE(clock.preview(Celsius(-3)));
}

TEST(RunClock, WashTimesDoNotFollowTheThermometer)
{
    Tankful run;
    RunState state = run.ready();
    state.phase = RunPhase::Running;
    state.current = 8;
    RunClock clock = run.clock(state);
    EXPECT_TRUE(clock.preview(Celsius(12))->empty());
    EXPECT_TRUE(clock.accept(Celsius(12)));
}

TEST(RunClock, WholeRunIsLoggedInEveryBottleOnce)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    clock.start();
    for (int step = 0; step < 10; ++step) {
        run.pass(clock.target().value() + 2);
        clock.next();
    }
    ASSERT_EQ(clock.phase(), RunPhase::Done);
    const RunState state = clock.state();
    EXPECT_EQ(bathsUsed(state), (std::vector{run.dev, run.fix}));
    EXPECT_EQ(lastBathAt(state), *state.times[4].ended);
    const FilmRun film = filmRun(
        state, {{run.dev, Millilitres(20), Millilitres(0)}, {run.fix, Millilitres(15), {}}});
    const auto id = run.book->process(film, lastBathAt(state));
    ASSERT_TRUE(id);
    const Batch dev = *run.book->batch(run.dev, run.now);
    EXPECT_NEAR(dev.filmsDone.value(), 2, 1e-9);
    EXPECT_NEAR(dev.volume.value(), 980, 1e-9);
    EXPECT_LT(dev.standing.air.volume.value(), 0.05) << "no air was left in it";
    EXPECT_NEAR(run.book->batch(run.fix, run.now)->volume.value(), 985, 1e-9);
    const auto films = run.store.films();
    ASSERT_EQ(films.size(), 2u);
    EXPECT_EQ(films[0].name, "Harbour");
    EXPECT_EQ(films[0].run, *id);
    EXPECT_EQ(films[1].format, "120");
    const auto times = run.store.times();
    ASSERT_TRUE(times);
    EXPECT_FALSE(times->id.empty());
    EXPECT_EQ(times->run, *id);
    EXPECT_EQ(times->temperature, state.temperature);
    EXPECT_EQ(times->tank, state.tank.name);
    EXPECT_EQ(times->tankVolume, state.tank.volume);
    ASSERT_EQ(times->steps.size(), 10u);
    EXPECT_EQ(times->steps[1], (StepDone{"develop", Seconds(600), Seconds(602)}));
    ASSERT_TRUE(run.book->undo());
    EXPECT_NEAR(run.book->batch(run.dev, run.now)->filmsDone.value(), 0, 1e-9);
}

TEST(RunClock, AbandonedRunKnowsTheBathsItReached)
{
    Tankful run;
    RunClock clock = run.clock(run.ready());
    EXPECT_TRUE(bathsUsed(clock.state()).empty());
    clock.start();
    EXPECT_TRUE(bathsUsed(clock.state()).empty()) << "pre-wet is water";
    clock.next();
    EXPECT_EQ(bathsUsed(clock.state()), std::vector{run.dev});
    clock.next();
    clock.next();
    clock.next();
    clock.skip();
    EXPECT_EQ(bathsUsed(clock.state()), std::vector{run.dev}) << "fixing was skipped";
}

TEST(RunState, RefusesWhatDoesNotFitTogether)
{
    Tankful run;
    EXPECT_TRUE(check(run.ready()));
    RunState bad = run.ready();
    bad.current = 10;
    EXPECT_EQ(check(bad).error().field, "current");
    bad = run.ready();
    bad.times.pop_back();
    EXPECT_EQ(check(bad).error().field, "times");
    bad = run.ready();
    bad.times[0].real = Seconds(-1);
    EXPECT_FALSE(check(bad));
    bad = run.ready();
    bad.sheet.steps[1].batch = "other";
    EXPECT_EQ(check(bad).error().field, "batch");
    bad = run.ready();
    bad.films.clear();
    EXPECT_FALSE(check(bad));
}

TEST(RunTimes, NotesAreReadBackAndOthersLeftAlone)
{
    const auto times = timesFromNote("run-times fix 390/395 run=a run=b");
    ASSERT_TRUE(times);
    EXPECT_EQ(times->run, "a run=b");
    EXPECT_EQ(times->steps, (std::vector{StepDone{"fix", Seconds(390), Seconds(395)}}));
    EXPECT_FALSE(timesFromNote("smells of vinegar"));
    EXPECT_FALSE(timesFromNote("run-times fix run=x"));
    EXPECT_FALSE(timesFromNote("run-times fix 1/-2 run=x"));
}

} // namespace
} // namespace ullage::ledger
