#include "core/chemistry/fixing.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace ullage::chemistry
{
namespace
{

std::vector<ClearingTest> tests(std::initializer_list<std::pair<double, double>> wearAndSeconds)
{
    std::vector<ClearingTest> result;
    for (const auto& [wear, seconds] : wearAndSeconds) {
        result.push_back({FilmsPerLitre(wear), Seconds(seconds)});
    }
    return result;
}

TEST(ColdFactor, doublesForTenDegreesAndNeverHelpsAbove)
{
    EXPECT_EQ(coldFactor(Celsius(20)), 1);
    EXPECT_EQ(coldFactor(Celsius(10)), 2);
    EXPECT_EQ(coldFactor(Celsius(0)), 4);
    EXPECT_NEAR(coldFactor(Celsius(15)), std::sqrt(2), 1e-15);
    EXPECT_EQ(coldFactor(Celsius(24)), 1);
}

// Worked by hand: means 6 and 81, Σ(w−6)² = 80, Σ(w−6)(t−81) = 288, residuals 0.6, 1.2, −4.2, 2.4
// s.
const auto kFour = tests({{0, 60}, {4, 75}, {8, 84}, {12, 105}});

TEST(ClearingFit, isTheOrdinaryLine)
{
    const auto fit = fitClearing(kFour);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->intercept, 59.4, 1e-12);
    EXPECT_NEAR(fit->slope, 3.6, 1e-13);
    EXPECT_NEAR(fit->residualSd, std::sqrt(25.2 / 2), 1e-12);
    EXPECT_NEAR(fit->at(FilmsPerLitre(10)).value(), 95.4, 1e-12);
}

TEST(ClearingFit, bandIsStudentsNinetyPercent)
{
    // t(0.95, 2) = 2.919986 (tables); s·√(1 + 1/4 + (10 − 6)²/80).
    const double expected = 2.919985580355516 * std::sqrt(12.6) * std::sqrt(1.25 + 0.2);
    EXPECT_NEAR(fitClearing(kFour)->band(FilmsPerLitre(10)).value(), expected, 1e-9);
}

TEST(ClearingFit, needsThreeTestsAtTwoWears)
{
    EXPECT_FALSE(fitClearing(tests({{0, 60}, {4, 75}})));
    EXPECT_FALSE(fitClearing(tests({{3, 60}, {3, 61}, {3, 62}})));
    EXPECT_TRUE(fitClearing(tests({{3, 60}, {3, 61}, {4, 62}})));
}

TEST(WhenReaching, edgesOfTheBandReachTheLevelBeforeAndAfterTheLine)
{
    const auto fit = fitClearing(kFour);
    const auto crossing = whenReaching(*fit, Seconds(120));
    ASSERT_TRUE(crossing.at && crossing.low && crossing.high);
    EXPECT_NEAR(crossing.at->value(), (120 - 59.4) / 3.6, 1e-12);
    // The band's own formula must give the level back.
    EXPECT_LT(*crossing.low, *crossing.at);
    EXPECT_GT(*crossing.high, *crossing.at);
    EXPECT_NEAR((fit->at(*crossing.low) + fit->band(*crossing.low)).value(), 120, 1e-9);
    EXPECT_NEAR((fit->at(*crossing.high) - fit->band(*crossing.high)).value(), 120, 1e-9);
}

TEST(WhenReaching, exactLineHasNoBand)
{
    const auto crossing =
        whenReaching(*fitClearing(tests({{0, 60}, {5, 70}, {10, 80}})), Seconds(120));
    EXPECT_NEAR(crossing.at->value(), 30, 1e-9);
    EXPECT_NEAR(crossing.low->value(), 30, 1e-6);
    EXPECT_NEAR(crossing.high->value(), 30, 1e-6);
}

TEST(WhenReaching, nothingWhereTheLineFalls)
{
    const auto crossing =
        whenReaching(*fitClearing(tests({{0, 60}, {5, 55}, {10, 50}})), Seconds(120));
    EXPECT_FALSE(crossing.at);
    EXPECT_FALSE(crossing.low);
    EXPECT_FALSE(crossing.high);
}

TEST(WhenReaching, scatteredTestsLeaveTheLateEdgeOpen)
{
    // The slope is not known to be above nought: the lower edge never gets there.
    const auto fit = fitClearing(tests({{0, 60}, {4, 90}, {8, 62}}));
    const auto crossing = whenReaching(*fit, Seconds(400));
    EXPECT_TRUE(crossing.at);
    ASSERT_TRUE(crossing.low);
    EXPECT_NEAR((fit->at(*crossing.low) + fit->band(*crossing.low)).value(), 400, 1e-9);
    EXPECT_FALSE(crossing.high);
}

TEST(Clearing, freshIsTheFirstTestInANearlyFreshBath)
{
    EXPECT_FALSE(clearing({}, FilmsPerLitre(0), Seconds(60)));
    EXPECT_EQ(clearing(tests({{1, 50}}), FilmsPerLitre(2), Seconds(60))->fresh, Seconds(50));
    EXPECT_EQ(clearing(tests({{1.01, 50}}), FilmsPerLitre(2), Seconds(60))->fresh, Seconds(60));
    EXPECT_FALSE(clearing(tests({{1.01, 50}}), FilmsPerLitre(2), {})->fresh);
    EXPECT_EQ(clearing(tests({{5, 80}, {0.5, 45}, {0.2, 40}}), FilmsPerLitre(5), {})->fresh,
              Seconds(45));
}

TEST(Clearing, unknownFreshNeverDoubles)
{
    const auto state = clearing(tests({{5, 500}}), FilmsPerLitre(5), {});
    EXPECT_FALSE(state->doubled);
    EXPECT_FALSE(state->doubles.at);
}

TEST(Clearing, doubledIsJudgedOnTheLastTestNotOnTheFit)
{
    // The line stands at 121 s, the last test read 119.
    const auto high =
        clearing(tests({{0, 60}, {5, 95}, {10, 128}, {10, 119}}), FilmsPerLitre(10), {});
    EXPECT_GT(high->now.value(), 120);
    EXPECT_FALSE(high->doubled);
    const auto low =
        clearing(tests({{0, 60}, {5, 85}, {10, 105}, {10, 120}}), FilmsPerLitre(10), {});
    EXPECT_LT(low->now.value(), 120);
    EXPECT_TRUE(low->doubled);
}

TEST(Clearing, fixingTimeIsTwiceClearingTimeToday)
{
    EXPECT_EQ(clearing(tests({{0, 60}}), FilmsPerLitre(4), {})->fixingTime(), Seconds(120));
    const auto fitted = clearing(kFour, FilmsPerLitre(10), {});
    EXPECT_NEAR(fitted->now.value(), 95.4, 1e-12);
    EXPECT_NEAR(fitted->fixingTime().value(), 190.8, 1e-12);
    EXPECT_EQ(fitted->last, Seconds(105));
}

} // namespace
} // namespace ullage::chemistry
