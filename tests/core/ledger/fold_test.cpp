// Each event's effect, with numbers worked out by hand from the rules of the model:
// C_sat = 9.092426/31.998 × 0.49 = 0.1392365 mmol/L, air 8.508e-3 mmol/mL.
#include "tests/core/ledger/ledger_kit.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

constexpr double kSaturation = 0.13923647606143907;

// Squeezed bottles take up little but through the cap: effects of events show plainly. At one
// instant nothing stands, so the figures are exact.
double oxygen(const Batch& batch) { return batch.standing.taken.total().value(); }

TEST(Fold, mixingStartsFreshAndSaturated)
{
    History history;
    history.mix("dev", 900);
    const auto batch = history.batch(0);
    EXPECT_EQ(batch.volume, Millilitres(900));
    EXPECT_EQ(batch.mixedVolume, Millilitres(900));
    EXPECT_EQ(batch.wear, FilmsPerLitre(0));
    EXPECT_NEAR(oxygen(batch), kSaturation, 1e-12);
    EXPECT_EQ(batch.openings, 1);
    EXPECT_NEAR(batch.standing.air.volume.value(), 130, 1e-12);
    EXPECT_NEAR(batch.standing.air.total().value(), 130 * 8.508e-3, 1e-12);
    EXPECT_EQ(batch.standing.aged, Days(0));
    EXPECT_EQ(batch.temperature, Celsius(20));
    EXPECT_EQ(batch.name, "b");
    EXPECT_TRUE(batch.inUse());
    EXPECT_FALSE(*history.fold(-0.001));
}

TEST(Fold, filmWearsWhatIsThereAndPouringBackSaturates)
{
    History history;
    history.mix("dev", 1000);
    history.run(0, 2, 600, 20);
    auto batch = history.batch(0);
    EXPECT_DOUBLE_EQ(batch.wear.value(), 2);
    EXPECT_NEAR(oxygen(batch), kSaturation * 1.6, 1e-12);
    EXPECT_DOUBLE_EQ(batch.bromide.value(), 100); // 2 films × 50 mg in a litre, before the loss
    EXPECT_EQ(batch.volume, Millilitres(980));
    EXPECT_EQ(batch.openings, 2);
    EXPECT_DOUBLE_EQ(batch.standing.air.volume.value(), 50);

    history.run(0, 1); // all of it
    batch = history.batch(0);
    EXPECT_DOUBLE_EQ(batch.wear.value(), 2 + 1 / 0.98);
    EXPECT_NEAR(oxygen(batch), kSaturation * 2.6, 1e-12);
    EXPECT_DOUBLE_EQ(batch.bromide.value(), 100 + 50 / 0.98);
    EXPECT_DOUBLE_EQ(batch.filmsDone.value(), 3);
    ASSERT_EQ(batch.loads.size(), 2U);
    EXPECT_DOUBLE_EQ(batch.loads[1].wearBefore.value(), 2);
}

TEST(Fold, fixerCollectsSilver)
{
    History history;
    history.mix("fixer", 500);
    history.run(0, 4);
    EXPECT_DOUBLE_EQ(history.batch(0).silver.value(), 4 * 0.15 / 0.5);
    EXPECT_DOUBLE_EQ(history.batch(0).wear.value(), 8);
}

TEST(Fold, oneShotTakesVolumeAndNothingElse)
{
    History history;
    history.mix("dev", 1000);
    history.add(0, Processed{Load{{{"120", 1}}, {}}, Millilitres(300), Millilitres(0), true, {}});
    const auto batch = history.batch(0);
    EXPECT_EQ(batch.volume, Millilitres(700));
    EXPECT_EQ(batch.wear, FilmsPerLitre(0));
    EXPECT_EQ(batch.bromide.value(), 0);
    EXPECT_NEAR(oxygen(batch), kSaturation, 1e-12);
    EXPECT_EQ(batch.openings, 2);
    EXPECT_DOUBLE_EQ(batch.filmsDone.value(), 1);
}

TEST(Fold, toppingUpDilutes)
{
    History history;
    history.mix("dev", 800);
    history.run(0, 4, 400);
    history.add(0, ToppedUp{Millilitres(200), {}});
    const auto batch = history.batch(0);
    EXPECT_EQ(batch.volume, Millilitres(1000));
    EXPECT_DOUBLE_EQ(batch.wear.value(), 4); // 5 films/L × 0.8
    EXPECT_DOUBLE_EQ(batch.bromide.value(), 200);
    EXPECT_NEAR(oxygen(batch), kSaturation * (1.5 * 0.8 + 0.2), 1e-12);
    EXPECT_DOUBLE_EQ(batch.standing.air.volume.value(), 30);
}

TEST(Fold, toppingUpMakesItYounger)
{
    History history;
    history.mix("dev", 500);
    history.add(40, ToppedUp{Millilitres(500), {}});
    EXPECT_NEAR(history.batch(40).standing.aged.value(), 20, 1e-9);
    EXPECT_NEAR(history.batch(50).standing.aged.value(), 30, 1e-9);
}

TEST(Fold, drawingOffAndMovingKeepConcentrations)
{
    History history;
    history.mix("dev", 1000);
    history.run(0, 3);
    history.add(0, Drawn{Millilitres(600), "spilled"});
    auto batch = history.batch(0);
    EXPECT_EQ(batch.volume, Millilitres(400));
    EXPECT_DOUBLE_EQ(batch.wear.value(), 3);
    EXPECT_NEAR(oxygen(batch), 2 * kSaturation, 1e-12);
    EXPECT_DOUBLE_EQ(batch.standing.air.volume.value(), 630);
    history.add(0, Moved{"small"});
    batch = history.batch(0);
    EXPECT_EQ(batch.vessel->id, "small");
    EXPECT_DOUBLE_EQ(batch.wear.value(), 3);
    EXPECT_DOUBLE_EQ(batch.standing.air.volume.value(), 100);
    EXPECT_EQ(batch.openings, 4);
}

TEST(Fold, standingOpenTakesUpBySurface)
{
    History history;
    history.mix("dev", 1000);
    history.add(0, StoodOpen{Hours(24), SquareCentimetres(516)});
    const auto batch = history.batch(0);
    EXPECT_NEAR(batch.standing.taken.openVessel.value(), 12.07013163681403, 1e-9);
    EXPECT_EQ(batch.openings, 2);
}

TEST(Fold, standsClosedByTheModelBetweenEvents)
{
    History history;
    history.mix("dev", 500);
    // Worked out apart: 8.577298660 mmol/L from 530 mL of air and the cap in 30 days.
    EXPECT_NEAR(oxygen(history.batch(30)), kSaturation + 8.577298660400226, 1e-9);
    EXPECT_NEAR(history.batch(30).standing.aged.value(), 30, 1e-12);
    // s = N/N_c + g with N_c = 24.267335 and L0 = 188.828176.
    EXPECT_NEAR(*history.batch(30).standingUsed(),
                (kSaturation + 8.577298660400226) / 24.26733461818996 + 30 / 188.8281764558086,
                1e-8);
}

TEST(Fold, storedAtChangesTheRateFromThenOn)
{
    History history;
    history.mix("dev", 1000);
    history.add(10, StoredAt{Celsius(30)});
    history.add(20, StoredAt{Celsius(5)});
    EXPECT_EQ(history.batch(20).openings, 1);
    EXPECT_NEAR(history.batch(30).standing.aged.value(),
                10 + 10 * 3.281411273871352 + 10 * 0.1433289904099706, 1e-9);
}

TEST(Fold, openingRenewsTheAirAsFarAsTheUserLeft)
{
    History history;
    history.mix("dev", 500);
    history.add(30, Opened{});
    EXPECT_NEAR(history.batch(29.999).standing.air.total().value(), 0.2656, 0.001);
    EXPECT_NEAR(history.batch(30).standing.air.total().value(), 530 * 8.508e-3, 1e-9);
    history.add(30, Opened{}, 12);
    EXPECT_EQ(history.batch(30).standing.air.volume, Millilitres(12));
    history.add(30, Opened{}, 9000);
    EXPECT_EQ(history.batch(30).standing.air.volume, Millilitres(530));
}

TEST(Fold, squeezedBottlesHaveNoAirUnlessTheUserSaysSo)
{
    History history;
    history.mix("dev", 500, "squeezed");
    EXPECT_EQ(history.batch(0).standing.air.volume, Millilitres(0));
    history.add(0, Opened{}, 40);
    EXPECT_EQ(history.batch(0).standing.air.volume, Millilitres(40));
}

TEST(Fold, looksAndNotesDoNotOpen)
{
    History history;
    history.mix("dev", 500);
    history.add(1, Looked{true, "colour"});
    history.add(1, Noted{"smells"});
    history.add(1, Dissolved{});
    history.add(1, Contaminated{"fixer"});
    const auto batch = history.batch(1);
    EXPECT_EQ(batch.openings, 1);
    EXPECT_TRUE(batch.dissolved);
    EXPECT_TRUE(batch.contaminated);
    EXPECT_EQ(batch.passes.size(), 1U);
    EXPECT_FALSE(history.batch(0.5).dissolved);
}

TEST(Fold, clearingTestsAreBroughtToTwentyDegrees)
{
    History history;
    history.mix("fixer", 1000);
    history.run(0, 5);
    history.add(0, ClearingTested{Seconds(120), Celsius(10)});
    history.add(0, ClearingTested{Seconds(60), Celsius(30)});
    const auto batch = history.batch(0);
    ASSERT_EQ(batch.tests.size(), 2U);
    EXPECT_EQ(batch.tests[0].at20, Seconds(60));
    EXPECT_EQ(batch.tests[1].at20, Seconds(120)); // a warm test does not hide a spent bath
    EXPECT_DOUBLE_EQ(batch.tests[0].wear.value(), 5);
    EXPECT_EQ(batch.openings, 4);
}

TEST(Fold, stripsKeepTheirLastFactorAndAFailureStays)
{
    History history;
    history.mix("dev", 1000);
    history.add(1, StripTested{1.1, 1.05, true});
    history.add(2, StripTested{1.2, {}, {}});
    EXPECT_EQ(history.batch(2).stripFactor, 1.05);
    EXPECT_EQ(history.batch(2).stripAt, history.at(1));
    history.add(3, StripTested{{}, 1.1, false});
    history.add(4, StripTested{{}, {}, true});
    EXPECT_EQ(history.batch(4).stripFactor, 1.1);
    EXPECT_TRUE(history.batch(4).testFailed());
    EXPECT_FALSE(history.batch(2.5).testFailed());
}

TEST(Fold, discardingAndUsingUpFreeze)
{
    History discarded;
    discarded.mix("dev", 500);
    discarded.add(10, Discarded{"collected"});
    EXPECT_EQ(discarded.batch(50).asOf, discarded.at(10));
    EXPECT_EQ(discarded.batch(50).end, BatchEnd::Discarded);
    EXPECT_EQ(oxygen(discarded.batch(50)), oxygen(discarded.batch(10)));
    discarded.add(11, Opened{});
    EXPECT_EQ(discarded.fold(50).error().code, ErrorCode::AfterEnd);
    EXPECT_TRUE(discarded.fold(10.5)); // what comes later does not spoil the past

    History usedUp;
    usedUp.mix("dev", 500);
    usedUp.add(3, Drawn{Millilitres(500), "used"});
    EXPECT_EQ(usedUp.batch(9).end, BatchEnd::UsedUp);
    EXPECT_EQ(usedUp.batch(9).endedAt, usedUp.at(3));
    EXPECT_EQ(usedUp.batch(9).volume, Millilitres(0));
    usedUp.add(3, ToppedUp{Millilitres(100), {}});
    EXPECT_EQ(usedUp.fold(9).error().code, ErrorCode::AfterEnd);
}

TEST(Fold, refusesMoreThanIsThereOrThanFits)
{
    const auto refused = [](Happening what) {
        History history;
        history.mix("dev", 600);
        history.add(1, std::move(what));
        const auto folded = history.fold(2);
        return folded ? Error{.field = "accepted"} : folded.error();
    };
    const Load roll{{{"120", 1}}, {}};
    const auto used = refused(Processed{roll, Millilitres(600.1), Millilitres(0), false, {}});
    EXPECT_EQ(used.field, "used_ml");
    EXPECT_EQ(used.code, ErrorCode::NotEnough);
    EXPECT_EQ(used.high, 600);
    EXPECT_EQ(refused(Processed{roll, Millilitres(600), Millilitres(0), false, {}}).field,
              "accepted");
    EXPECT_EQ(refused(Processed{roll, {}, Millilitres(601), false, {}}).field, "lost_ml");
    EXPECT_EQ(refused(Processed{roll, Millilitres(601), Millilitres(0), true, {}}).field,
              "used_ml");
    EXPECT_EQ(refused(Drawn{Millilitres(601), {}}).field, "volume_ml");
    EXPECT_EQ(refused(ToppedUp{Millilitres(430), {}}).field, "accepted");
    const auto over = refused(ToppedUp{Millilitres(430.1), {}});
    EXPECT_EQ(over.code, ErrorCode::TooMuch);
    EXPECT_EQ(over.high, 430);
    EXPECT_EQ(refused(Moved{"small"}).field, "vessel");
    EXPECT_EQ(refused(Moved{"nowhere"}).code, ErrorCode::UnknownId);
    EXPECT_EQ(refused(Mixed{"dev", "glass", Millilitres(1), {}, {}, false}).code,
              ErrorCode::AlreadyMixed);
}

TEST(Fold, refusesToMixWhatCannotBe)
{
    const auto refused = [](Mixed mixed) {
        History history;
        history.add(0, std::move(mixed));
        const auto folded = history.fold(1);
        return folded ? Error{.field = "accepted"} : folded.error();
    };
    EXPECT_EQ(refused({"dev", "small", Millilitres(500), {}, {}, false}).field, "accepted");
    EXPECT_EQ(refused({"dev", "small", Millilitres(501), {}, {}, false}).code, ErrorCode::TooMuch);
    EXPECT_EQ(refused({"nothing", "small", Millilitres(1), {}, {}, false}).field, "solution");
    EXPECT_EQ(refused({"dev", "nothing", Millilitres(1), {}, {}, false}).field, "vessel");
    History early;
    early.add(-1, Opened{});
    early.mix("dev", 500);
    EXPECT_EQ(early.fold(1).error().code, ErrorCode::BeforeMixing);
}

TEST(Fold, goesByTimeThenByOrderOfEntry)
{
    History history;
    history.mix("dev", 500);
    history.run(5, 1); // entered first, happened second
    history.add(3, ToppedUp{Millilitres(500), {}});
    EXPECT_DOUBLE_EQ(history.batch(6).wear.value(), 1);

    History filmFirst;
    filmFirst.mix("dev", 500);
    filmFirst.run(5, 1);
    filmFirst.add(5, ToppedUp{Millilitres(500), {}});
    EXPECT_DOUBLE_EQ(filmFirst.batch(5).wear.value(), 1); // 2 films/L, then halved
    History topUpFirst;
    topUpFirst.mix("dev", 500);
    topUpFirst.add(5, ToppedUp{Millilitres(500), {}});
    topUpFirst.run(5, 1);
    EXPECT_DOUBLE_EQ(topUpFirst.batch(5).wear.value(), 1);
    EXPECT_GT(oxygen(topUpFirst.batch(5)), oxygen(filmFirst.batch(5)));
}

TEST(Fold, voidedEventsNeverHappenedWhateverTimeOneLooksAt)
{
    History history;
    history.mix("dev", 1000);
    const auto run = history.run(2, 3);
    history.run(4, 1);
    EXPECT_DOUBLE_EQ(history.batch(5).wear.value(), 4);
    const auto taken = history.add(9, Voided{run, "wrong bottle"});
    EXPECT_DOUBLE_EQ(history.batch(3).wear.value(), 0);
    EXPECT_DOUBLE_EQ(history.batch(5).wear.value(), 1);
    history.add(10, Voided{taken, "right after all"});
    EXPECT_DOUBLE_EQ(history.batch(5).wear.value(), 4);
}

TEST(Fold, remembersWhenItWasLastSpent)
{
    History history;
    history.mix("dev", 500);
    const auto fresh = history.batch(0);
    EXPECT_FALSE(fresh.spentSince());
    const auto later = history.batch(130);
    ASSERT_TRUE(later.spentSince());
    EXPECT_NEAR(*history.batchAt(*later.spentSince()).standingUsed(), 1, 1e-8);
    // Topped up it is younger; then it rises again.
    history.add(130, ToppedUp{Millilitres(500), {}});
    EXPECT_FALSE(history.batch(130).spentSince());
    const auto again = history.batch(330);
    ASSERT_TRUE(again.spentSince());
    EXPECT_GT(*again.spentSince(), history.at(130));
    EXPECT_NEAR(*history.batchAt(*again.spentSince()).standingUsed(), 1, 1e-8);
    // By an event: from that event on.
    History open;
    open.mix("dev", 1000);
    open.add(3, StoodOpen{Hours(60), SquareCentimetres(516)});
    EXPECT_EQ(open.batch(4).spentSince(), open.at(3));
}

TEST(Fold, traceHoldsBothSidesOfEveryEvent)
{
    History history;
    history.mix("dev", 1000);
    history.run(2, 3);
    const auto batch = history.batch(2);
    ASSERT_EQ(batch.trace.size(), 3U);
    EXPECT_EQ(batch.trace[1].at, history.at(2));
    EXPECT_EQ(batch.trace[1].wear, FilmsPerLitre(0));
    EXPECT_DOUBLE_EQ(batch.trace[2].wear.value(), 3);
}

TEST(Fold, refusedEventsLeaveItAsItWas)
{
    History history;
    history.mix("dev", 600);
    Fold fold(history.formulary);
    ASSERT_TRUE(fold.apply(history.entered[0]));
    const Event tooMuch{"x", "b", history.at(9), Drawn{Millilitres(700), {}}, {}};
    ASSERT_FALSE(fold.apply(tooMuch));
    EXPECT_EQ(fold.batch().asOf, history.at(0));
    EXPECT_EQ(fold.batch().volume, Millilitres(600));
    EXPECT_EQ(fold.batch().openings, 1);
    EXPECT_EQ(fold.batch().trace.size(), 1U);
}

} // namespace
} // namespace ullage::ledger
