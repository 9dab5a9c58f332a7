// Bottles filled from bottles, folded together.
#include "core/ledger/fold_together.h"

#include "core/ledger/fillings.h"
#include "tests/core/ledger/bottles_kit.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

TEST(FoldTogether, aDecantedBottleGoesOnWhereItsDonorWas)
{
    Bottles all;
    all.fresh("a", 0, 900, "fixer");
    all.happen("a", 0.5, ClearingTested{Seconds(50), Celsius(20)});
    all.films("a", 1, 4);
    all.happen("a", 2, StripTested{{}, 1.05, true});
    all.decant("a", "b", 3, 400, "fixer");
    const Batch donor = all.of("a", 3);
    const Batch heir = all.of("b", 3);
    EXPECT_EQ(heir.volume, Millilitres(400));
    EXPECT_EQ(heir.mixedAt, all.at(3));
    EXPECT_EQ(heir.madeAt, all.at(0));
    EXPECT_EQ(heir.keepsFrom, Days(-3));
    EXPECT_EQ(heir.wear, donor.wear);
    EXPECT_EQ(heir.silver, donor.silver);
    EXPECT_EQ(heir.tests.size(), 1U);
    EXPECT_EQ(heir.passes.size(), 1U);
    EXPECT_EQ(heir.stripFactor, 1.05);
    // What pouring adds, and what stays behind.
    EXPECT_NEAR((heir.standing.taken.total() - donor.standing.taken.total()).value(),
                saturation(*heir.solution).value(), 1e-12);
    EXPECT_TRUE(heir.loads.empty());
    EXPECT_EQ(heir.filmsDone, Films(0));
    EXPECT_EQ(heir.openings, 1);
    // The fresh test came along, and counts.
    EXPECT_EQ(assess(heir).clearing->fresh, Seconds(50));
}

TEST(FoldTogether, theDonorIsReadAsItWasThen)
{
    Bottles all;
    all.fresh("a", 0, 1000);
    all.fresh("b", 0, 500);
    all.pour("a", "b", 5, 250);
    all.films("a", 6, 3);
    EXPECT_EQ(all.of("b", 9).wear.value(), 0);
    all.films("a", 4, 2); // entered late, happened before
    EXPECT_NEAR(all.of("b", 9).wear.value(), 2.0 * 250 / 750, 1e-12);
    // At one instant the order of entry decides.
    Bottles same;
    same.fresh("a", 0, 1000);
    same.fresh("b", 0, 500);
    same.films("a", 5, 3);
    same.pour("a", "b", 5, 250);
    same.films("a", 5, 4);
    EXPECT_NEAR(same.of("b", 5).wear.value(), 1, 1e-12);
}

// A donor is read where its own fold stands, not folded again for each filling: or this would not
// end (tests/bench/fold_bench.cpp has how long it takes).
TEST(FoldTogether, aThousandPouringsToAndFroFold)
{
    constexpr int kPourings = 1000;
    Bottles all;
    all.fresh("a", 0, 600);
    all.fresh("b", 0, 600);
    all.films("a", 0.5, 4);
    const auto before = all.held({"a", "b"}, 1);
    for (int i = 0; i < kPourings; ++i) {
        const bool forth = i % 2 == 0;
        all.pour(forth ? "a" : "b", forth ? "b" : "a", 1 + 0.01 * i, 300);
    }
    const Batch a = all.of("a", 12);
    const Batch b = all.of("b", 12);
    EXPECT_EQ(a.fillings.size(), static_cast<std::size_t>(kPourings));
    EXPECT_NEAR(a.volume.value(), 600, 1e-9);
    EXPECT_NEAR(a.wear.value(), b.wear.value(), 1e-9) << "mixed through and through";
    const auto after = all.held({"a", "b"}, 12);
    for (std::size_t i = 0; i < before.size(); ++i) {
        EXPECT_NEAR(after[i], before[i], 1e-9 * std::max(1.0, before[i]));
    }
}

TEST(FoldTogether, theDonorMayBeEmptiedByThatFilling)
{
    Bottles all;
    all.fresh("a", 0, 500);
    all.films("a", 1, 2);
    all.decant("a", "b", 2, 500);
    EXPECT_EQ(all.of("a", 3).end, BatchEnd::UsedUp);
    EXPECT_EQ(all.of("b", 3).wear.value(), 4);
}

TEST(FoldTogether, whatIsPouredInBringsItsTroublesAlong)
{
    Bottles all;
    all.fresh("clean", 0, 400);
    all.happen("clean", 1, Looked{true, "", LookedAt::Leader});
    Mixed found{"dev", "glass", Millilitres(900)};
    found.historyUnknown = true;
    all.happen("found", 0, found);
    all.happen("found", 1, Looked{false, "", LookedAt::Precipitate});
    all.happen("found", 1, Contaminated{});
    all.pour("found", "clean", 2, 100);
    const Batch clean = all.of("clean", 2);
    EXPECT_TRUE(clean.contaminated);
    EXPECT_TRUE(clean.testFailed());
    EXPECT_TRUE(clean.inDoubt());
    EXPECT_FALSE(clean.historyUnknown);
    EXPECT_TRUE(clean.passes.empty()) << "a pass made before vouches for something else";
    EXPECT_TRUE(assess(clean).filmsLeft) << "its own films are known";
    all.happen("clean", 3, Filtered{});
    EXPECT_FALSE(all.of("clean", 3).testFailed());
}

TEST(FoldTogether, theCalendarCountsFromTheOlderAndGoesOnWithReplenisher)
{
    Bottles all;
    formulary::Solution kept = History::developer();
    kept.id = "kept";
    kept.replenisher = "dev";
    kept.replenishPerFilm = Millilitres(50);
    all.formulary.add(kept);
    all.fresh("old", 0, 400);
    all.fresh("new", 10, 400);
    all.pour("old", "new", 20, 100);
    EXPECT_EQ(all.of("new", 20).keepsFrom, Days(-10));
    EXPECT_EQ(all.of("new", 20).madeAt, all.at(10));
    all.pour("new", "old", 21, 100);
    EXPECT_EQ(all.of("old", 21).keepsFrom, Days(0));

    all.fresh("r", 0, 900, "kept");
    all.films("r", 10, 3);
    all.happen("r", 10, ToppedUp{Millilitres(100), {}, "dev"});
    const Batch r = all.of("r", 10);
    EXPECT_NEAR(r.keepsFrom.value(), 10 * 100 / 1000.0, 1e-12);
    EXPECT_NEAR(r.wear.value(), 3 - 100 / 50.0, 1e-12);
    EXPECT_EQ(r.replenished, Millilitres(100));
    all.happen("r", 11, Drawn{Millilitres(100), ""});
    all.happen("r", 11, ToppedUp{Millilitres(100), {}, "dev"});
    EXPECT_EQ(all.of("r", 11).wear.value(), 0) << "credit never goes below nothing";
    all.happen("r", 12, Drawn{Millilitres(100), ""});
    all.happen("r", 12, ToppedUp{Millilitres(100), {}, "fixer"});
    EXPECT_EQ(foldTogether("r", all.entered, all.at(12), all.formulary).error().code,
              ErrorCode::Conflict);
}

TEST(FoldTogether, aFillingIsTakenBackWithEitherHalf)
{
    Bottles all;
    all.fresh("a", 0, 800);
    all.fresh("b", 0, 300);
    all.pour("a", "b", 1, 100);
    const auto drawing = all.entered[all.entered.size() - 2].id;
    const auto filling = all.entered.back().id;
    auto entered = all.entered;
    for (const auto& [half, batch] : {std::pair(drawing, "a"), {filling, "b"}}) {
        all.entered = entered;
        all.happen(batch, 2, Voided{half, ""});
        EXPECT_EQ(all.of("a", 3).volume, Millilitres(800)) << half;
        EXPECT_EQ(all.of("b", 3).volume, Millilitres(300)) << half;
    }
    // The same filling twice, one of it taken back: the other stands.
    all.entered = entered;
    all.pour("a", "b", 1, 100);
    all.happen("b", 2, Voided{filling, ""});
    EXPECT_EQ(all.of("a", 3).volume, Millilitres(700));
    EXPECT_EQ(all.of("b", 3).volume, Millilitres(400));
}

TEST(FoldTogether, pairsByInstantByWhomAndByVolume)
{
    Bottles all;
    all.fresh("a", 0, 800);
    all.fresh("b", 0, 300);
    all.pour("a", "b", 1, 100);
    EXPECT_TRUE(pairHalves(all.entered, {}).lone.empty());
    all.happen("a", 2, Drawn{Millilitres(100), "", "b"});
    all.happen("b", 2, ToppedUp{Millilitres(100.5), "a"});
    all.happen("b", 3, ToppedUp{Millilitres(100), "a"});
    EXPECT_EQ(pairHalves(all.entered, {}).lone, (std::vector<std::size_t>{4, 5, 6}));
}

// Two bottles poured to and fro lead back to each other, and still no fold waits for the other.
TEST(FoldTogether, aThousandPouringsToAndFro)
{
    Bottles all;
    all.fresh("a", 0, 1000);
    all.fresh("b", 0, 30);
    all.films("a", 0, 5);
    for (int i = 0; i < 500; ++i) {
        all.pour("a", "b", 1 + i * 0.01, 200);
        all.pour("b", "a", 1 + i * 0.01, 200);
    }
    const auto held = all.held({"a", "b"}, 10);
    EXPECT_NEAR(held[0], 5, 1e-9);
    EXPECT_NEAR(all.of("a", 10).wear.value(), all.of("b", 10).wear.value(), 1e-9);
}

TEST(FoldTogether, pouringLosesNothing)
{
    for (unsigned seed = 1; seed <= 20; ++seed) {
        SCOPED_TRACE(seed);
        std::mt19937 random(seed);
        const auto between = [&](double low, double high) {
            return std::uniform_real_distribution(low, high)(random);
        };
        Bottles all;
        const std::vector<std::string> names{"a", "b", "c"};
        for (const std::string& name : names) {
            all.fresh(name, 0, 400, "fixer");
            all.films(name, between(0, 1), std::floor(between(1, 6)));
        }
        const auto before = all.held(names, 1);
        double day = 1;
        for (int i = 0; i < 30; ++i) {
            day += between(0, 2);
            const auto from = names[random() % 3];
            const auto to = names[random() % 3];
            const double most = std::min(all.of(from, day).volume.value() * 0.8,
                                         1030 - all.of(to, day).volume.value());
            if (from != to && most > 1) {
                all.pour(from, to, day, between(0.3, 1) * most);
            }
        }
        const auto after = all.held(names, day);
        for (std::size_t i = 0; i < before.size(); ++i) {
            EXPECT_NEAR(after[i], before[i], 1e-9 * std::max(1.0, before[i]));
        }
    }
}

TEST(FoldTogether, decantingAndPouringBackChangesOnlyWhatPouringAdds)
{
    Bottles all;
    all.fresh("a", 0, 900);
    all.films("a", 1, 3);
    const Batch before = all.of("a", 2);
    all.decant("a", "b", 2, 400);
    all.pour("b", "a", 2, 400);
    const Batch after = all.of("a", 2);
    EXPECT_EQ(after.volume, before.volume);
    EXPECT_NEAR(after.wear.value(), before.wear.value(), 1e-12);
    EXPECT_NEAR(after.bromide.value(), before.bromide.value(), 1e-10);
    EXPECT_NEAR(after.standing.aged.value(), before.standing.aged.value(), 1e-12);
    // Once into the other bottle and once back, on four ninths of it.
    EXPECT_NEAR((after.standing.taken.total() - before.standing.taken.total()).value(),
                2 * saturation(*after.solution).value() * 4 / 9, 1e-12);
}

TEST(FoldTogether, theOrderOfTwoDonorsDoesNotMatter)
{
    const auto filled = [](bool firstA) {
        Bottles all;
        all.fresh("a", 0, 500);
        all.fresh("b", 0, 500);
        all.fresh("c", 0, 300);
        all.films("a", 1, 1);
        all.films("b", 1, 4);
        all.pour(firstA ? "a" : "b", "c", 3, 150);
        all.pour(firstA ? "b" : "a", "c", 3, 150);
        return all.of("c", 5);
    };
    const Batch one = filled(true);
    const Batch other = filled(false);
    EXPECT_NEAR(one.wear.value(), other.wear.value(), 1e-12);
    EXPECT_NEAR(one.standing.taken.total().value(), other.standing.taken.total().value(), 1e-12);
    EXPECT_NEAR(one.standing.aged.value(), other.standing.aged.value(), 1e-12);
}

} // namespace
} // namespace ullage::ledger
