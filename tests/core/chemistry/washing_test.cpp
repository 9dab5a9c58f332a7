#include "core/chemistry/washing.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

TEST(ColdWash, takesThreeTimesBelowFifteen)
{
    EXPECT_EQ(*coldWashFactor(Celsius(10)), 3);
    EXPECT_EQ(*coldWashFactor(Celsius(15)), 3);
    EXPECT_NEAR(*coldWashFactor(Celsius(16.5)), std::sqrt(3), 1e-12);
    EXPECT_EQ(*coldWashFactor(Celsius(18)), 1);
    EXPECT_EQ(*coldWashFactor(Celsius(30)), 1);
    EXPECT_EQ(coldWashFactor(Celsius(9.9)).error().low, 10);
    EXPECT_EQ(coldWashFactor(Celsius(30.1)).error().high, 30);
    EXPECT_EQ(washSteps(WashWay::Running, Celsius(5)).error().field, "temperature");
}

TEST(WashSteps, onlyTheWashesLengthen)
{
    for (const WashWay way : kWashWays) {
        const auto usual = *washSteps(way, Celsius(20));
        const auto cold = *washSteps(way, Celsius(12));
        ASSERT_EQ(usual.size(), cold.size());
        for (std::size_t i = 0; i < usual.size(); ++i) {
            const double times = usual[i].bath == WashBath::Wash ? 3 : 1;
            EXPECT_DOUBLE_EQ(cold[i].time.value(), usual[i].time.value() * times);
            EXPECT_EQ(cold[i].changeEvery, usual[i].changeEvery);
            EXPECT_FALSE(usual[i].source.empty());
        }
    }
}

TEST(Reticulation, threatensAboveEightDegreesEitherWay)
{
    EXPECT_FALSE(mayReticulate(Celsius(20), Celsius(12)));
    EXPECT_TRUE(mayReticulate(Celsius(20), Celsius(11.9)));
    EXPECT_FALSE(mayReticulate(Celsius(20), Celsius(28)));
    EXPECT_TRUE(mayReticulate(Celsius(20), Celsius(28.1)));
}

TEST(FillAndDump, eachFillingTakesItsShare)
{
    // 25 mL kept back of 500: a twenty-first stays each time.
    EXPECT_EQ(leftAfterDumps(Millilitres(25), Millilitres(500), 0), 1);
    EXPECT_NEAR(leftAfterDumps(Millilitres(25), Millilitres(500), 1), 1.0 / 21, 1e-15);
    EXPECT_NEAR(leftAfterDumps(Millilitres(25), Millilitres(500), 3), 1.0 / 9261, 1e-15);
}

TEST(FillAndDump, neededFillingsAreTheFewestThatDo)
{
    const Millilitres carried(25);
    const Millilitres filling(500);
    EXPECT_EQ(dumpsNeeded(carried, filling, 1), 0);
    EXPECT_EQ(dumpsNeeded(carried, filling, 1.0 / 21), 1);
    EXPECT_EQ(dumpsNeeded(carried, filling, 1.0 / 9261), 3);
    EXPECT_EQ(dumpsNeeded(carried, filling, 1.0 / 9262), 4);
    for (const double share : {0.5, 0.01, 1e-4, 1e-7}) {
        const int times = dumpsNeeded(carried, filling, share);
        EXPECT_LE(leftAfterDumps(carried, filling, times), share);
        EXPECT_GT(leftAfterDumps(carried, filling, times - 1), share);
    }
}

TEST(FillAndDump, storageShareIsByAreaAndStrength)
{
    // 0.014 g/m² on 516.13 cm² is 0.7226 mg; 20 mL of 150 g/L of the salt carry 3 g, 2.1275 g of it
    // the ion.
    const auto share = [](double strength, double carried, double area) {
        return shareForStorage(GramsPerLitre(strength), Millilitres(carried),
                               SquareCentimetres(area));
    };
    EXPECT_NEAR(share(150, 20, 516.13), 0.014 * 0.051613 / (3 * 112.12 / 158.10), 1e-12);
    EXPECT_NEAR(share(75, 20, 516.13), 2 * share(150, 20, 516.13), 1e-12);
    EXPECT_NEAR(share(150, 20, 258.065), share(150, 20, 516.13) / 2, 1e-12);
}

} // namespace
} // namespace ullage::chemistry
