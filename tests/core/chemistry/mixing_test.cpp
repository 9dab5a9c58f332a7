#include "core/chemistry/mixing.h"

#include "core/chemistry/formula.h"
#include "core/chemistry/warming.h"
#include "core/chemistry/water.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

TEST(StartVolume, packetForItsOwnBottleStartsHalfFull)
{
    for (const double bottle : {1000.0, 1030.0, 1100.0}) {
        const auto start =
            startVolume(Millilitres(1000), Millilitres(bottle), displacement(110, 0));
        ASSERT_TRUE(start);
        EXPECT_TRUE(start->halfBottle);
        EXPECT_EQ(start->advised, Millilitres(bottle / 2));
    }
}

TEST(StartVolume, inALargerVesselThreeQuarters)
{
    const auto start = startVolume(Millilitres(1000), Millilitres(2000), displacement(110, 0));
    EXPECT_FALSE(start->halfBottle);
    EXPECT_EQ(start->advised, Millilitres(750));
    EXPECT_EQ(start->least, Millilitres(500));
    EXPECT_EQ(start->most, Millilitres(750));
}

TEST(Displacement, ofAnhydrousThiosulfateIsThatOfItsCrystalsLessTheirWater)
{
    // 158.10 g make 248.17 g of crystals, 90.07 g of them water.
    EXPECT_NEAR(anhydrousThiosulfate(158.10).value(), 248.17 * 0.5 - 90.07 / 0.99821, 0.01);
    EXPECT_EQ(anhydrousThiosulfate(0), Millilitres(0));
}

TEST(StartVolume, neverSoMuchThatThePowderWillNotFit)
{
    // 500 g of crystals displace 250 mL: of 1200 mL are left 1200 − 60 − 250.
    EXPECT_EQ(displacement(0, 500), Millilitres(250));
    auto start = startVolume(Millilitres(1000), Millilitres(1200), Millilitres(500));
    EXPECT_EQ(start->most, Millilitres(640));
    EXPECT_EQ(start->advised, Millilitres(640));
    EXPECT_FALSE(start->tight);
    start = startVolume(Millilitres(1000), Millilitres(1000), Millilitres(500));
    EXPECT_TRUE(start->tight);
    EXPECT_EQ(start->advised, Millilitres(450));
}

TEST(StartVolume, aLiquidGoesIntoMostOfItsWater)
{
    const auto start = startForLiquid(Millilitres(1000), Millilitres(1030), Millilitres(100));
    ASSERT_TRUE(start);
    EXPECT_NEAR(start->advised.value(), 810, 1e-9);
    EXPECT_LT(start->least, start->advised);
    EXPECT_LT(start->advised + Millilitres(100), Millilitres(1000))
        << "something is left to fill up";
    EXPECT_EQ(startForLiquid(Millilitres(1000), Millilitres(900), Millilitres(100)).error().code,
              ErrorCode::TooMuch);
    EXPECT_EQ(startForLiquid(Millilitres(500), Millilitres(900), Millilitres(500)).error().code,
              ErrorCode::TooMuch);
    EXPECT_EQ(startForLiquid(Millilitres(500), Millilitres(900), Millilitres(0)).error().code,
              ErrorCode::TooMuch);
}

TEST(StartVolume, refusesVesselsThatCannotHoldIt)
{
    EXPECT_EQ(startVolume(Millilitres(1001), Millilitres(1000), Millilitres(0)).error().code,
              ErrorCode::TooMuch);
    EXPECT_EQ(startVolume(Millilitres(0), Millilitres(1000), Millilitres(0)).error().code,
              ErrorCode::TooMuch);
    EXPECT_EQ(startVolume(Millilitres(1000), Millilitres(1000), Millilitres(960)).error().code,
              ErrorCode::NotEnough);
}

TEST(Dissolving, isLookedAtEveryTenMinutes)
{
    using namespace std::chrono;
    using std::chrono::minutes; // not what a neighbour calls so
    const Instant mixed = sys_days(year(2026) / 6 / 1) + hours(10);
    EXPECT_EQ(nextDissolvingCheck(mixed, mixed - minutes(1)), mixed + minutes(10));
    EXPECT_EQ(nextDissolvingCheck(mixed, mixed), mixed + minutes(10));
    EXPECT_EQ(nextDissolvingCheck(mixed, mixed + minutes(9)), mixed + minutes(10));
    EXPECT_EQ(nextDissolvingCheck(mixed, mixed + minutes(10)), mixed + minutes(20));
    EXPECT_EQ(nextDissolvingCheck(mixed, mixed + minutes(34)), mixed + minutes(40));
}

TEST(Blend, conservesMassAndHeat)
{
    const auto water = blend(Millilitres(750), Celsius(40), Celsius(60), Celsius(15));
    ASSERT_TRUE(water);
    const double hot = water->hot.value() * waterDensity(Celsius(60));
    const double cold = water->cold.value() * waterDensity(Celsius(15));
    EXPECT_NEAR(hot + cold, 750 * waterDensity(Celsius(40)), 1e-6);
    EXPECT_NEAR((hot * 60 + cold * 15) / (hot + cold), 40, 1e-9);
    EXPECT_NEAR(hot / (hot + cold), 25.0 / 45, 1e-12);
    EXPECT_NEAR(blend(Millilitres(750), Celsius(60), Celsius(60), Celsius(15))->cold.value(), 0,
                1e-12);
}

TEST(Blend, refusesWhatNoMixtureGives)
{
    EXPECT_EQ(blend(Millilitres(1), Celsius(61), Celsius(60), Celsius(15)).error().high, 60);
    EXPECT_EQ(blend(Millilitres(1), Celsius(14), Celsius(60), Celsius(15)).error().low, 15);
    EXPECT_EQ(blend(Millilitres(1), Celsius(15), Celsius(15), Celsius(15)).error().field, "hot");
    EXPECT_EQ(blend(Millilitres(1), Celsius(40), Celsius(120), Celsius(15)).error().field, "hot");
}

TEST(Warming, followsItsLaw)
{
    const Seconds tau = timeConstant(Millilitres(1000), Surroundings::StirredBath);
    EXPECT_EQ(tau, Seconds(420));
    EXPECT_EQ(timeConstant(Millilitres(1000), Surroundings::RoomAir), Seconds(155 * 60));
    // An eighth of the volume: half the time.
    EXPECT_NEAR(timeConstant(Millilitres(125), Surroundings::StirredBath).value(), 210, 1e-9);
    EXPECT_NEAR(temperatureAfter(Celsius(15), Celsius(25), tau, tau).value(), 25 - 10 / M_E, 1e-12);
    const auto time = timeToReach(Celsius(20), Celsius(15), Celsius(25), tau);
    EXPECT_NEAR(time->value(), 420 * std::log(2), 1e-9);
    EXPECT_NEAR(temperatureAfter(Celsius(15), Celsius(25), *time, tau).value(), 20, 1e-9);
    // Cooling is the same law.
    EXPECT_NEAR(timeToReach(Celsius(25), Celsius(40), Celsius(20), tau)->value(), 420 * std::log(4),
                1e-9);
    EXPECT_EQ(*timeToReach(Celsius(20), Celsius(20), Celsius(20), tau), Seconds(0));
}

TEST(Warming, refusesWhatIsNeverReached)
{
    const Seconds tau(420);
    EXPECT_FALSE(timeToReach(Celsius(25), Celsius(15), Celsius(25), tau)); // only in the limit
    EXPECT_FALSE(timeToReach(Celsius(26), Celsius(15), Celsius(25), tau));
    EXPECT_FALSE(timeToReach(Celsius(14), Celsius(15), Celsius(25), tau));
    EXPECT_EQ(timeToReach(Celsius(26), Celsius(15), Celsius(25), tau).error().high, 25);
}

TEST(Warming, twoReadingsReplaceTheConstant)
{
    const Seconds truth(333);
    const Celsius later = temperatureAfter(Celsius(14), Celsius(26), Seconds(200), truth);
    EXPECT_NEAR(timeConstantFrom(Celsius(14), later, Celsius(26), Seconds(200))->value(), 333,
                1e-9);
    EXPECT_FALSE(timeConstantFrom(Celsius(14), Celsius(14), Celsius(26), Seconds(200)));
    EXPECT_FALSE(timeConstantFrom(Celsius(14), Celsius(13), Celsius(26), Seconds(200)));
    EXPECT_FALSE(timeConstantFrom(Celsius(14), Celsius(27), Celsius(26), Seconds(200)));
    EXPECT_FALSE(timeConstantFrom(Celsius(14), Celsius(26), Celsius(26), Seconds(200)));
    EXPECT_FALSE(timeConstantFrom(Celsius(14), Celsius(20), Celsius(26), Seconds(0)));
}

Formula developer()
{
    return {Millilitres(1000),
            {{"metol", "", 2, AmountUnit::Gram},
             {"sodium-sulfite", "anhydrous", 100, AmountUnit::Gram},
             {"borax", "decahydrate", 2, AmountUnit::Gram},
             {"wetting agent", "", 5, AmountUnit::Millilitre}}};
}

TEST(Formula, scalesEveryAmountInOrder)
{
    const auto half = scaled(developer(), Millilitres(500));
    EXPECT_EQ(half.makes, Millilitres(500));
    ASSERT_EQ(half.ingredients.size(), 4U);
    EXPECT_EQ(half.ingredients[0].name, "metol");
    EXPECT_EQ(half.ingredients[0].amount, 1);
    EXPECT_EQ(half.ingredients[1].amount, 50);
    EXPECT_EQ(half.ingredients[3].amount, 2.5);
}

TEST(Formula, convertsOneSaltToTheFormAtHand)
{
    const auto crystals = withForm(developer(), "sodium-sulfite", "heptahydrate");
    ASSERT_TRUE(crystals);
    EXPECT_NEAR(crystals->ingredients[1].amount, 100 * 252.14 / 126.04, 1e-9);
    EXPECT_EQ(crystals->ingredients[1].form, "heptahydrate");
    EXPECT_EQ(crystals->ingredients[2].amount, 2); // the other salt stays
    const auto back = withForm(*crystals, "sodium-sulfite", "anhydrous");
    EXPECT_NEAR(back->ingredients[1].amount, 100, 1e-9);
    EXPECT_EQ(withForm(developer(), "borax", "heptahydrate").error().code, ErrorCode::UnknownKind);
    EXPECT_FALSE(hydrateFactor("metol", "", "anhydrous"));
    EXPECT_NEAR(*hydrateFactor("borax", "decahydrate", "anhydrous"), 201.22 / 381.37, 1e-12);
}

} // namespace
} // namespace ullage::chemistry
