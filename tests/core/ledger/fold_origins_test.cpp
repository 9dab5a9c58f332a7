// What a bottle is that was found, came from paper or is used in a way of its own.
#include "tests/core/ledger/bottles_kit.h"

#include "core/ledger/verdict.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

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

} // namespace
} // namespace ullage::ledger
