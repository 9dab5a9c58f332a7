// Bottles filled from bottles, folded together.
#include "core/ledger/fold_together.h"

#include "core/ledger/fillings.h"
#include "tests/core/ledger/ledger_kit.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

/// Several bottles; a filling enters both of its halves.
struct Bottles : History {
    std::string happen(const std::string& batch, double days, Happening what)
    {
        const std::string id = "e" + std::to_string(entered.size());
        entered.push_back({id, batch, at(days), std::move(what), {}});
        entered.back().entry = static_cast<std::int64_t>(entered.size());
        return id;
    }
    void fresh(const std::string& batch, double days, double volume,
               const std::string& solution = "dev", const std::string& vessel = "glass")
    {
        happen(batch, days, Mixed{solution, vessel, Millilitres(volume)});
    }
    void films(const std::string& batch, double days, double count)
    {
        happen(batch, days, Processed{Load{{{"120", count}}, {}}, {}, {}, false, {}});
    }
    void pour(const std::string& from, const std::string& to, double days, double volume)
    {
        happen(from, days, Drawn{Millilitres(volume), "", to});
        happen(to, days, ToppedUp{Millilitres(volume), from});
    }
    void decant(const std::string& from, const std::string& to, double days, double volume,
                const std::string& solution = "dev", const std::string& vessel = "small")
    {
        happen(from, days, Drawn{Millilitres(volume), "", to});
        Mixed mixed{solution, vessel, Millilitres(volume)};
        mixed.from = from;
        happen(to, days, mixed);
    }
    [[nodiscard]] Batch of(const std::string& batch, double days) const
    {
        const auto folded = foldTogether(batch, entered, at(days), formulary);
        EXPECT_TRUE(folded) << folded.error().field;
        EXPECT_TRUE(folded && *folded) << batch;
        return **folded;
    }
    /// What both together hold: films, grams of silver, mg of bromide.
    [[nodiscard]] std::array<double, 3> held(const std::vector<std::string>& batches,
                                             double days) const
    {
        std::array<double, 3> sum{};
        for (const std::string& one : batches) {
            const Batch batch = of(one, days);
            const double volume = litres(batch.volume).value();
            sum[0] += batch.wear.value() * volume;
            sum[1] += batch.silver.value() * volume;
            sum[2] += batch.bromide.value() * volume;
        }
        return sum;
    }
};

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

TEST(Fold, whatIsKnownOfABottleFoundIsCounted)
{
    Bottles all;
    Mixed found{"dev", "glass", Millilitres(800)};
    found.historyUnknown = true;
    all.happen("nothing", 50, found);
    found.assumed = FilmsPerLitre(3);
    found.mixedOn = all.at(20);
    all.happen("something", 50, found);
    const auto nothing = assess(all.of("nothing", 60));
    EXPECT_FALSE(nothing.filmsLeft);
    EXPECT_FALSE(nothing.lastFilm);
    EXPECT_FALSE(nothing.discardBy);
    EXPECT_TRUE(nothing.atLeast);
    EXPECT_EQ(nothing.verdict, Verdict::TestFirst);
    const Batch dated = all.of("something", 60);
    const auto something = assess(dated);
    EXPECT_NEAR(something.filmsLeft->value(), 7 * 0.8, 1e-12);
    EXPECT_TRUE(something.lastFilm);
    EXPECT_EQ(something.age, Days(40));
    EXPECT_NEAR(dated.standing.aged.value(), 40, 1e-9);
    EXPECT_EQ(something.keepsUntil, addKeepingTime(all.at(20), Days(182.625)));
    EXPECT_NEAR(something.wearFactor, 1.3, 1e-12);
}

TEST(Fold, filmsDoneBeforeTheBookCountWithoutALoad)
{
    Bottles all;
    Mixed known{"dev", "glass", Millilitres(800)};
    known.filmsBefore = Films(4);
    all.happen("b", 0, known);
    const Batch batch = all.of("b", 0);
    EXPECT_EQ(batch.wear.value(), 5);
    EXPECT_EQ(batch.bromide.value(), 250);
    EXPECT_EQ(batch.filmsDone, Films(4));
    EXPECT_TRUE(batch.loads.empty());
}

TEST(Fold, aSecondBathFeelsAFifth)
{
    Bottles all;
    all.fresh("b", 0, 1000, "fixer");
    Processed load{Load{{{"120", 5}}, {}}, {}, {}, false, {}};
    load.second = true;
    all.happen("b", 1, load);
    const Batch batch = all.of("b", 1);
    EXPECT_DOUBLE_EQ(batch.wear.value(), 1);
    EXPECT_DOUBLE_EQ(batch.silver.value(), 0.15);
    EXPECT_EQ(batch.filmsDone, Films(5));
    EXPECT_DOUBLE_EQ(assess(batch).meanLoad.value(), 1);
}

TEST(Fold, silverMeasuredTakesThePlaceOfTheCount)
{
    Bottles all;
    all.fresh("b", 0, 1000, "fixer");
    all.films("b", 1, 10);
    all.happen("b", 2, Measured{GramsPerLitre(0.9), "test paper"});
    all.films("b", 3, 1);
    EXPECT_DOUBLE_EQ(all.of("b", 2).silver.value(), 0.9);
    EXPECT_DOUBLE_EQ(all.of("b", 3).silver.value(), 1.05);
    EXPECT_EQ(all.of("b", 3).openings, 4);
}

TEST(Fold, whatIsPouredAwayAfterUseIsCountedByVolume)
{
    Bottles all;
    formulary::Solution once = History::developer();
    once.id = "once";
    once.oneShotPerFilm = Millilitres(250);
    all.formulary.add(once);
    all.fresh("b", 0, 1000, "once");
    EXPECT_NEAR(assess(all.of("b", 0)).filmsLeft->value(), 10, 1e-12) << "it has a capacity";
    all.happen("b", 1, Processed{Load{{{"120", 1}}, {}}, Millilitres(250), {}, true, {}});
    EXPECT_EQ(assess(all.of("b", 1)).filmsLeft, Films(3));
    once.id = "only once";
    once.capacity.reset();
    all.formulary.add(once);
    all.fresh("c", 0, 1000, "only once");
    EXPECT_EQ(assess(all.of("c", 0)).filmsLeft, Films(4));
}

// A mixing that was corrected comes after what was entered for the same moment before.
TEST(Fold, whatHappensAtTheInstantOfMixingComesAfterIt)
{
    Bottles all;
    all.fresh("b", 0, 1000);
    const auto wrong = all.entered.back().id;
    all.happen("b", 0, Dissolved{});
    all.happen("b", 1, Voided{wrong, ""});
    all.fresh("b", 0, 900);
    EXPECT_TRUE(all.of("b", 0).dissolved);
    EXPECT_EQ(all.of("b", 0).volume, Millilitres(900));
}

TEST(Fillings, everyHalfFindsItsOwnOtherHalf)
{
    Bottles shelf;
    shelf.fresh("a", 0, 500);
    shelf.fresh("b", 0, 100);
    shelf.pour("a", "b", 1, 50);
    shelf.pour("a", "b", 1, 50); // entered twice
    shelf.happen("a", 2, Drawn{Millilitres(10), "spilled", {}});
    const auto& all = shelf.entered;
    ASSERT_EQ(all.size(), 7u);
    EXPECT_EQ(otherHalf(all, all[2], {}), &all[3]);
    EXPECT_EQ(otherHalf(all, all[3], {}), &all[2]);
    EXPECT_EQ(otherHalf(all, all[5], {}), &all[4]);
    EXPECT_EQ(otherHalf(all, all[6], {}), nullptr) << "poured away, not into a bottle";
    EXPECT_EQ(otherHalf(all, all[2], {all[3].id, all[5].id}), nullptr) << "taken back already";
    EXPECT_EQ(otherHalf(all, all[4], {all[2].id, all[3].id}), &all[5]);
}

} // namespace
} // namespace ullage::ledger
