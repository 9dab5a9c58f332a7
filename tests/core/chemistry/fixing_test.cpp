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

TEST(ClearingAt20, countsWarmthBothWays)
{
    EXPECT_EQ(clearingAt20(Seconds(60), Celsius(20)), Seconds(60));
    EXPECT_EQ(clearingAt20(Seconds(120), Celsius(10)), Seconds(60));
    EXPECT_EQ(clearingAt20(Seconds(60), Celsius(30)), Seconds(120));
    EXPECT_NEAR(clearingAt20(Seconds(60), Celsius(25)).value(), 60 * std::sqrt(2), 1e-12);
}

FixerKnown fresh(double seconds) { return {.freshFigure = Seconds(seconds)}; }

TEST(Clearing, freshIsTheFirstTestInANearlyFreshBath)
{
    EXPECT_FALSE(clearing({}, FilmsPerLitre(0), fresh(60)));
    EXPECT_EQ(clearing(tests({{1, 50}}), FilmsPerLitre(2), fresh(60))->fresh, Seconds(50));
    EXPECT_EQ(clearing(tests({{1.01, 50}}), FilmsPerLitre(2), fresh(60))->fresh, Seconds(60));
    EXPECT_FALSE(clearing(tests({{1.01, 50}}), FilmsPerLitre(2), {})->fresh);
    EXPECT_EQ(clearing(tests({{5, 80}, {0.5, 45}, {0.2, 40}}), FilmsPerLitre(5), {})->fresh,
              Seconds(45));
}

TEST(Clearing, noTestOfABottleFoundIsFresh)
{
    FixerKnown found{.testedFresh = false};
    EXPECT_FALSE(clearing(tests({{0, 50}}), FilmsPerLitre(0), found)->fresh);
    found.freshFigure = Seconds(40);
    EXPECT_EQ(clearing(tests({{0, 80}}), FilmsPerLitre(0), found)->fresh, Seconds(40));
    EXPECT_TRUE(clearing(tests({{0, 80}}), FilmsPerLitre(0), found)->doubled);
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
    EXPECT_LT(low->fit->at(FilmsPerLitre(10)).value(), 120);
    ASSERT_TRUE(low->doubled);
    EXPECT_EQ(low->doubled->last, Seconds(120));
    EXPECT_EQ(low->doubled->fresh, Seconds(60));
}

TEST(Clearing, filmsAreComparedWithThemselvesOnly)
{
    // The quick film has doubled, though the slow one was tested last and has not.
    std::vector<ClearingTest> made{{FilmsPerLitre(0), Seconds(30), "quick"},
                                   {FilmsPerLitre(0), Seconds(80), "slow"},
                                   {FilmsPerLitre(9), Seconds(60), "quick"},
                                   {FilmsPerLitre(9), Seconds(100), "slow"}};
    const auto both = clearing(made, FilmsPerLitre(9), {});
    EXPECT_EQ(both->fresh, Seconds(80));
    EXPECT_EQ(both->now, Seconds(100));
    ASSERT_TRUE(both->doubled);
    EXPECT_EQ(both->doubled->last, Seconds(60));
    EXPECT_EQ(both->doubled->fresh, Seconds(30));
    // A later test of the quick one that is well takes it back.
    made.push_back({FilmsPerLitre(9), Seconds(50), "quick"});
    EXPECT_FALSE(clearing(made, FilmsPerLitre(9), {})->doubled);
}

TEST(Clearing, theLastTestIsCarriedOnSoThatItDoublesOverTheCapacity)
{
    const FixerKnown known{.freshFigure = Seconds(60), .capacity = FilmsPerLitre(20)};
    const auto one = clearing(tests({{4, 70}}), FilmsPerLitre(9), known);
    EXPECT_EQ(one->last, Seconds(70));
    EXPECT_NEAR(one->now.value(), 70 + 60.0 / 20 * 5, 1e-12);
    // Without a capacity or a fresh time it is the last test alone.
    EXPECT_EQ(clearing(tests({{4, 70}}), FilmsPerLitre(9), fresh(60))->now, Seconds(70));
    // A line that lies below the last test does not hide it.
    const auto line = clearing(tests({{0, 60}, {4, 60}, {8, 90}}), FilmsPerLitre(8), known);
    ASSERT_TRUE(line->fit);
    EXPECT_LT(line->fit->at(FilmsPerLitre(8)).value(), 90);
    EXPECT_EQ(line->now, Seconds(90));
}

TEST(Clearing, nothingDoublesOnALineThatDoesNotRise)
{
    const auto level = clearing(tests({{0, 60}, {4, 62}, {8, 58}}), FilmsPerLitre(8), {});
    ASSERT_TRUE(level->fit);
    EXPECT_FALSE(level->doubles.at || level->doubles.low || level->doubles.high);
}

TEST(Clearing, fixingTimeIsTwiceClearingTimeToday)
{
    EXPECT_EQ(clearing(tests({{0, 60}}), FilmsPerLitre(4), {})->fixingTime(), Seconds(120));
    const auto fitted =
        clearing(tests({{0, 60}, {4, 75}, {8, 84}, {12, 90}}), FilmsPerLitre(14), {});
    // Worked by hand: 62.4 + 2.475·w.
    EXPECT_NEAR(fitted->now.value(), 97.05, 1e-12);
    EXPECT_NEAR(fitted->fixingTime().value(), 194.1, 1e-12);
    EXPECT_EQ(fitted->last, Seconds(90));
}

} // namespace
} // namespace ullage::chemistry
