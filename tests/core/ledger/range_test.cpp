#include "core/ledger/range.h"

#include "core/ledger/verdict.h"
#include "tests/core/ledger/ledger_kit.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

DateRange rangeOf(const History& history, double days, RangeSettings settings = {})
{
    const auto range = discardRange(history.entered, history.at(days), history.formulary, settings);
    EXPECT_TRUE(range && *range);
    return **range;
}

TEST(LatinHypercube, meetsEverySliceOfEveryDimensionOnce)
{
    constexpr int kCount = 50;
    const auto samples = latinHypercube(kCount, 7);
    for (const auto dimension :
         {&ConstantShares::bottleExchange, &ConstantShares::trayExchange, &ConstantShares::ageing,
          &ConstantShares::permeability, &ConstantShares::capLeak}) {
        std::vector<int> met(kCount, 0);
        for (const ConstantShares& shares : samples) {
            ASSERT_GE(shares.*dimension, -1);
            ASSERT_LT(shares.*dimension, 1);
            ++met[std::size_t((shares.*dimension + 1) / 2 * kCount)];
        }
        EXPECT_EQ(std::count(met.begin(), met.end(), 1), kCount);
    }
    EXPECT_EQ(latinHypercube(kCount, 7)[3].capLeak, samples[3].capLeak);
    EXPECT_NE(latinHypercube(kCount, 8)[3].capLeak, samples[3].capLeak);
}

TEST(AirConstants, sharesReachTheEndsOfTheRanges)
{
    const auto low = airConstantsAt({-1, -1, -1, -1, -1});
    EXPECT_EQ(low.bottleExchange, 1);
    EXPECT_EQ(low.trayExchange, 3);
    EXPECT_EQ(low.ageing, 9'620);
    EXPECT_EQ(low.permeabilityShare, -1);
    const auto high = airConstantsAt({1, 1, 1, 1, 1});
    EXPECT_EQ(high.bottleExchange, 3);
    EXPECT_EQ(high.trayExchange, 15);
    EXPECT_EQ(high.ageing, 11'500);
    EXPECT_EQ(high.capLeakShare, 1);
    EXPECT_EQ(airConstantsAt({}).bottleExchange, 2);
}

TEST(DiscardRange, isTheVerdictsDateWithALookAround)
{
    History history;
    history.mix("dev", 600, "hdpe");
    const auto range = rangeOf(history, 5);
    EXPECT_EQ(range.value, *assess(history.batch(5)).discardBy);
    EXPECT_LE(range.early, range.value);
    EXPECT_GE(range.late, range.value);
    EXPECT_GT(daysBetween(range.early, range.late).value(), 1);
    EXPECT_EQ(range.used, 200);
    EXPECT_TRUE(range.allLow && range.allHigh);
}

TEST(DiscardRange, sameSeedSameSpan)
{
    History history;
    history.mix("dev", 600, "hdpe");
    const auto once = rangeOf(history, 5);
    const auto again = rangeOf(history, 5);
    EXPECT_EQ(once.early, again.early);
    EXPECT_EQ(once.late, again.late);
    const auto other = rangeOf(history, 5, {.samples = 200, .seed = 99});
    EXPECT_NE(once.early, other.early);
    // The span is the ranges', not the seed's.
    EXPECT_NEAR(daysBetween(once.early, other.early).value(), 0,
                0.2 * daysBetween(once.early, once.late).value());
}

// Published times are read on glass: refolding with limits solved anew pins a glass bottle at the
// reference filling, where constants cancel, and leaves a plastic one open.
TEST(DiscardRange, recalibratesUnderEverySample)
{
    History reference;
    reference.mix("dev", 1000); // the reference bottle itself
    const auto pinned = rangeOf(reference, 0);
    EXPECT_LT(daysBetween(pinned.early, pinned.late).value(), 0.01);
    History plastic;
    plastic.mix("dev", 1000, "hdpe");
    const auto open = rangeOf(plastic, 0);
    EXPECT_GT(daysBetween(open.early, open.late).value(), 10);
}

TEST(DiscardRange, refoldsWhatHappened)
{
    // An hour in a tray is uncertain by the tray's exchange alone.
    History still;
    still.mix("dev", 1000);
    History poured = still;
    poured.add(1, StoodOpen{Hours(12), SquareCentimetres(516)});
    EXPECT_GT(daysBetween(rangeOf(poured, 2).early, rangeOf(poured, 2).late).value(), 5);
    EXPECT_LT(rangeOf(poured, 2).value, rangeOf(still, 2).value);
}

TEST(DiscardRange, nothingWithoutADate)
{
    History history;
    history.mix("fixer", 1000);
    EXPECT_FALSE(*discardRange(history.entered, history.at(1), history.formulary));
    EXPECT_FALSE(*discardRange(history.entered, history.at(-1), history.formulary));
    history.add(1, Drawn{Millilitres(5000), ""});
    EXPECT_FALSE(discardRange(history.entered, history.at(2), history.formulary));
}

} // namespace
} // namespace ullage::ledger
