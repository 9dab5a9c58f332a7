#include "core/chemistry/washing.h"

#include "core/chemistry/process_constants.h"

#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

double minutes(const WashStep& step) { return step.time.value() / 60; }

// US Army SS0509, lesson 1: wash 30 minutes in running water.
TEST(Washing, runningWater)
{
    const auto steps = *washSteps(WashWay::Running, Celsius(20));
    ASSERT_EQ(steps.size(), 1U);
    EXPECT_DOUBLE_EQ(minutes(steps[0]), 30);
}

// NAVEDTRA 14209, p. 10-8: at least 20 minutes, with a complete change of water every 3 minutes.
TEST(Washing, fullChanges)
{
    const auto steps = *washSteps(WashWay::Changes, Celsius(20));
    ASSERT_EQ(steps.size(), 1U);
    EXPECT_DOUBLE_EQ(minutes(steps[0]), 20);
    EXPECT_EQ(steps[0].changeEvery, Seconds(180));
}

// US Army SS0509, p. 18: rinse 30 seconds, eliminator 2 minutes, wash 5 minutes; then one minute in
// a wetting agent.
TEST(Washing, withAid)
{
    const auto steps = *washSteps(WashWay::Aid, Celsius(20));
    ASSERT_EQ(steps.size(), 3U);
    EXPECT_EQ(steps[0].bath, WashBath::Rinse);
    EXPECT_DOUBLE_EQ(steps[0].time.value(), 30);
    EXPECT_EQ(steps[1].bath, WashBath::Aid);
    EXPECT_DOUBLE_EQ(minutes(steps[1]), 2);
    EXPECT_DOUBLE_EQ(minutes(steps[2]), 5);
    EXPECT_EQ(kWetting.value, 1);
}

// T.O. 33B-1-1, p. 6-78: washing at 50 to 60 °F takes three times as long as at 70 to 75 °F, below
// 50 °F fixer cannot be washed out; wash and fixer
// more than 15 °F apart may reticulate. TM 11-2323, para 33 d, says twice at 50 °F, of prints: the
// tool takes the longer of the two.
TEST(Washing, coldWater)
{
    for (const double celsius : {10.0, 12.5, 15.0}) {
        EXPECT_DOUBLE_EQ(minutes(washSteps(WashWay::Running, Celsius(celsius))->front()), 90);
    }
    for (const double celsius : {21.0, 24.0}) {
        EXPECT_DOUBLE_EQ(minutes(washSteps(WashWay::Running, Celsius(celsius))->front()), 30);
    }
    const Celsius fiftyFahrenheit(10);
    EXPECT_GE(*coldWashFactor(fiftyFahrenheit), 2);
    EXPECT_EQ(kColdWash.low, 2);
    EXPECT_FALSE(coldWashFactor(Celsius(9.9)));
    EXPECT_NEAR(kReticulation.value, 15 / 1.8, 0.5);
    EXPECT_TRUE(mayReticulate(Celsius(21), Celsius(12.9)));
    EXPECT_FALSE(mayReticulate(Celsius(21), Celsius(13)));
}

// Held out. US Army MD0954 (X-ray film processing), para 3-33: 25 to 30 minutes where the water
// changes eight times an hour. T.O. 33B-1-1, Table 6-17, p. 6-78: 20 minutes at eight changes an
// hour, 35 at four. Both of films coated on two sides; wetting agent for one to two minutes.
TEST(Washing, runningWaterByTwoOtherManuals)
{
    EXPECT_GE(kWashRunning.value, 25);
    EXPECT_LE(kWashRunning.value, 30);
    EXPECT_GT(kWashRunning.value, 20);
    EXPECT_LT(kWashRunning.value, 35);
    EXPECT_GE(kWetting.value, 1);
    EXPECT_LE(kWetting.value, 2);
}

// NAVEDTRA 14209, p. 10-8: in running water the average negative gives up half of its hypo in a
// minute; after two minutes a quarter is left.
TEST(Washing, hypoHalvesEachMinute)
{
    EXPECT_DOUBLE_EQ(leftAfterRunning(Seconds(60)), 0.5);
    EXPECT_DOUBLE_EQ(leftAfterRunning(Seconds(120)), 0.25);
    EXPECT_LT(leftAfterRunning(Seconds(20 * 60)), 1e-6); // their minimum time: negligible
}

// ISO 18917, methylene-blue practice for microfilm: 0.014 g of thiosulfate per square metre.
TEST(Washing, whatMayStay)
{
    EXPECT_EQ(kThiosulfateLeft.value, 0.014);
    // One square metre carrying a litre of 14 g/L: a thousandth may stay.
    EXPECT_NEAR(shareForStorage(GramsPerLitre(14), Millilitres(1000), SquareCentimetres(10'000)),
                1e-3, 1e-15);
}

} // namespace
} // namespace ullage::chemistry
