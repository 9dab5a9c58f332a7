// Ends of ranges and values that no computation of the tests reaches: held to what is published or
// was decided, so that no figure can change unnoticed.
#include "core/chemistry/constants.h"
#include "core/chemistry/keeping.h"
#include "core/chemistry/mixing.h"
#include "core/chemistry/process_constants.h"

#include <cmath>
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
    expectRange(kOxygenLimit, 13, 24, 40);
    expectRange(kHalfOpenings, 1, 2, 4);
    expectRange(kQ10, 1.5, 1.9, 3.0);
    expectRange(kQ10Ascorbate, 2.3, 2.5, 3.0);
    expectRange(kAgeing, 9'620, 10'560, 11'500);
    expectRange(kCapLeak, 0.01, 0.05, 0.25);
    expectRange(kSilverPerFilm, 0.11, 0.15, 0.21);
    expectRange(kBromidePerFilm, 40, 50, 60);
    expectRange(kColdWash, 2, 3, 3);
    expectRange(kStartShare, 0.5, 0.75, 0.75);
    expectRange(kFixerWater, 20, 27, 27);
    expectRange(kStirredBath, 5, 7, 12);
    expectRange(kStripResponse, 0.5, 1, 1);
    expectRange(kRunOnOneSide, 8, 8, 8);
}

TEST(Constants, placesRunFromLowToHighInTheLogarithm)
{
    EXPECT_DOUBLE_EQ(at(kTrayExchange, 0), 3);
    EXPECT_DOUBLE_EQ(at(kTrayExchange, 1), 15);
    EXPECT_DOUBLE_EQ(at(kTrayExchange, 0.5), std::sqrt(3.0 * 15));
    EXPECT_EQ(at(kTrayExchange, {}), 7);
    EXPECT_EQ(at(kWalls[0].permeability, 0.5), 0) << "glass lets nothing through anywhere";
    EXPECT_EQ(at(kFilmArea, 0.5), kFilmArea.value);
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
