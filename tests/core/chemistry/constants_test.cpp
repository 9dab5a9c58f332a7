// Ends of ranges and values that no computation of the tests reaches: held to what is published or
// was decided, so that no figure can change unnoticed.
#include "core/chemistry/constants.h"
#include "core/chemistry/keeping.h"
#include "core/chemistry/mixing.h"
#include "core/chemistry/process_constants.h"

#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

void expectRange(const Constant& constant, double low, double value, double high)
{
    EXPECT_EQ(constant.low, low) << constant.name;
    EXPECT_EQ(constant.value, value) << constant.name;
    EXPECT_EQ(constant.high, high) << constant.name;
    EXPECT_FALSE(constant.source.empty()) << constant.name;
}

TEST(Constants, keepTheirRanges)
{
    expectRange(kOxygenFactor, 0.49, 0.49, 1.0);
    expectRange(kOxygenLimit, 8, 13, 20);
    expectRange(kSilverPerFilm, 0.11, 0.15, 0.21);
    expectRange(kBromidePerFilm, 40, 50, 60);
    expectRange(kColdWash, 2, 3, 3);
    expectRange(kStartShare, 0.5, 0.75, 0.75);
    expectRange(kFixerWater, 20, 27, 27);
    expectRange(kStirredBath, 5, 7, 12);
    expectRange(kStripResponse, 0.5, 1, 1);
    expectRange(kRunOnOneSide, 8, 8, 8);
}

TEST(Constants, sharesRunFromLowToHigh)
{
    EXPECT_EQ(atShare(kTrayExchange, -1), 3);
    EXPECT_EQ(atShare(kTrayExchange, 0), 7);
    EXPECT_EQ(atShare(kTrayExchange, 1), 15);
    EXPECT_EQ(atShare(kTrayExchange, -0.5), 5);
    EXPECT_EQ(atShare(kTrayExchange, 0.5), 11);
}

TEST(Displacement, addsUpByConstituent)
{
    EXPECT_DOUBLE_EQ(displacement(100, 0).value(), 11);
    EXPECT_DOUBLE_EQ(displacement(100, 200).value(), 111);
}

TEST(DaysUntilSpent, looksTwoHundredYearsAheadAtMost)
{
    // In the cold, in a bottle that lets next to nothing in, by a figure of a century.
    const auto bottle = enclosure(Millilitres(1000), 0, Millimetres(1), CubicCentimetresPerDay(0));
    const Closed cold{bottle, Millilitres(1000), MillimolesPerLitre(0.14), Celsius(0)};
    const KeepingLimits limits{MillimolesPerLitre(13), Days(36'525)};
    EXPECT_DOUBLE_EQ(daysUntilSpent({}, cold, limits).value(), 200 * 365.25);
}

} // namespace
} // namespace ullage::chemistry
