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
    const auto range =
        discardRange("b", history.entered, history.at(days), history.formulary, settings);
    EXPECT_TRUE(range && *range);
    return **range;
}

TEST(LatinHypercube, meetsEverySliceOfEveryDimensionOnce)
{
    constexpr int kCount = 50;
    const auto samples = latinHypercube(kCount, 7);
    for (const auto dimension :
         {&Draw::bottleExchange, &Draw::trayExchange, &Draw::ageing, &Draw::permeability,
          &Draw::capLeak, &Draw::halfOpenings, &Draw::fullRounding, &Draw::halfRounding}) {
        std::vector<int> met(kCount, 0);
        for (const Draw& draw : samples) {
            ASSERT_GE(draw.*dimension, 0);
            ASSERT_LT(draw.*dimension, 1);
            ++met[std::size_t(draw.*dimension * kCount)];
        }
        EXPECT_EQ(std::count(met.begin(), met.end(), 1), kCount);
    }
    EXPECT_EQ(latinHypercube(kCount, 7)[3].capLeak, samples[3].capLeak);
    EXPECT_NE(latinHypercube(kCount, 8)[3].capLeak, samples[3].capLeak);
}

TEST(Draw, reachesTheEndsOfTheRanges)
{
    const auto low = constantsOf({});
    EXPECT_EQ(low.bottleExchange, 1);
    EXPECT_EQ(low.trayExchange, 3);
    EXPECT_EQ(low.ageing, 9'620);
    EXPECT_EQ(low.permeability, 0);
    EXPECT_EQ(low.halfOpenings, 1);
    const auto high = constantsOf({1, 1, 1, 1, 1, 0.999, 1, 1});
    EXPECT_DOUBLE_EQ(high.bottleExchange, 3);
    EXPECT_DOUBLE_EQ(high.trayExchange, 15);
    EXPECT_DOUBLE_EQ(high.ageing, 11'500);
    EXPECT_EQ(high.capLeak, 1);
    EXPECT_EQ(high.halfOpenings, 4);
    EXPECT_EQ(high.fullRounding, 1);
    // Uniform in the logarithm, openings alike: a quarter of the draws each.
    EXPECT_NEAR(constantsOf({0.5}).bottleExchange, std::sqrt(3.0), 1e-12);
    Draw draw;
    for (int openings = 1; openings <= 4; ++openings) {
        draw.halfOpenings = (openings - 1) / 4.0;
        EXPECT_EQ(constantsOf(draw).halfOpenings, openings);
        draw.halfOpenings = openings / 4.0 - 1e-9;
        EXPECT_EQ(constantsOf(draw).halfOpenings, openings);
    }
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
// reference filling to the time it was calibrated on, where the other constants cancel, and leaves
// a plastic one open.
TEST(DiscardRange, recalibratesUnderEverySample)
{
    History reference;
    auto exact = History::developer();
    exact.id = "exact";
    exact.keeping = {Days(181), Days(62), {}}; // no whole months: nothing was rounded
    reference.formulary.add(exact);
    reference.mix("exact", 1000); // the reference bottle itself
    const auto pinned = rangeOf(reference, 0);
    EXPECT_LT(daysBetween(pinned.early, pinned.late).value(), 0.01);
    History plastic = reference;
    plastic.entered.clear();
    plastic.mix("exact", 1000, "hdpe");
    const auto open = rangeOf(plastic, 0);
    EXPECT_GT(daysBetween(open.early, open.late).value(), 10);
}

// Six months may have been five and a half; never more than six by the calendar.
TEST(DiscardRange, takesARoundedTimeAsRounded)
{
    History history;
    history.mix("dev", 1000);
    const auto range = rangeOf(history, 0);
    EXPECT_EQ(range.value, addMonths(history.at(0), 6));
    EXPECT_EQ(range.late, range.value);
    const double early = daysBetween(range.early, range.value).value();
    EXPECT_GT(early, 8);
    EXPECT_LT(early, 15.3);
}

// Days to the early end, the date and the late end, worked out apart by a reading of the documents
// in another language with draws of its own; a hypercube of 200 leaves a few percent open.
TEST(DiscardRange, isTheReadingsSpan)
{
    struct Span {
        const char* vessel;
        double volume;
        double early;
        double value;
        double late;
    };
    for (const Span& span :
         {Span{"glass", 1000, 170.3, 183, 183}, Span{"hdpe", 600, 54.9, 94.74, 125.4},
          Span{"glass", 400, 22.8, 81.17, 117.2}, Span{"hdpe", 1000, 119.5, 140.97, 161.4}}) {
        History history;
        history.mix("dev", span.volume, span.vessel);
        const auto range = rangeOf(history, 0);
        const auto days = [&](Instant date) { return daysBetween(history.at(0), date).value(); };
        EXPECT_NEAR(days(range.value), span.value, 0.01) << span.vessel << ' ' << span.volume;
        EXPECT_NEAR(days(range.early), span.early, 5) << span.vessel << ' ' << span.volume;
        EXPECT_NEAR(days(range.late), span.late, 5) << span.vessel << ' ' << span.volume;
    }
}

// Reopening is the greatest doubt: a bottle a quarter full, left alone.
TEST(DiscardRange, takesTheHalfFullBottlesOpeningsAsUnknown)
{
    History history;
    history.mix("dev", 260);
    const auto range = rangeOf(history, 0);
    EXPECT_LT(daysBetween(history.at(0), range.early).value(),
              0.8 * daysBetween(history.at(0), range.value).value());
    EXPECT_GT(range.late, range.value);
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
    EXPECT_FALSE(*discardRange("b", history.entered, history.at(1), history.formulary));
    EXPECT_FALSE(*discardRange("b", history.entered, history.at(-1), history.formulary));
    history.add(1, Drawn{Millilitres(5000), ""});
    EXPECT_FALSE(discardRange("b", history.entered, history.at(2), history.formulary));
}

} // namespace
} // namespace ullage::ledger
