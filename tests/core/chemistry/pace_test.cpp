#include "core/chemistry/pace.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

TEST(Pace, loadsLeftRoundUp)
{
    EXPECT_EQ(loadsLeft(Films(4), Films(2)), 2);
    EXPECT_EQ(loadsLeft(Films(4.1), Films(2)), 3);
    EXPECT_EQ(loadsLeft(Films(0.1), Films(2)), 1);
    EXPECT_EQ(loadsLeft(Films(0), Films(2)), 0);
    EXPECT_EQ(loadsLeft(Films(-1), Films(2)), 0);
    // Sums of thirds that miss a whole number by a rounding.
    EXPECT_EQ(loadsLeft(Films(2 + 1e-12), Films(2.0 / 3)), 3);
    // A load of next to nothing.
    EXPECT_EQ(loadsLeft(Films(4), Films(1e-300)), 1'000'000'000);
}

TEST(Pace, oneLoadToComeHasAClosedForm)
{
    // m = 1: I_x(1, b) = 1 − (1 − x)^b, so the wait is (30 + T)·((1 − p)^(−1/b) − 1).
    const Pace pace{4, Days(50)};
    for (const double p : {0.1, 0.5, 0.9}) {
        EXPECT_NEAR(waitFor(1, pace, p).value(), 80 * (std::pow(1 - p, -1.0 / 5) - 1), 1e-9) << p;
    }
    EXPECT_NEAR(chanceWithin(1, pace, Days(20)), 1 - std::pow(0.8, 5), 1e-12);
}

TEST(Pace, withoutALoadThePriorSpeaks)
{
    // Gamma(1, 30 days): the median wait for one load is 30 days.
    EXPECT_NEAR(waitFor(1, {}, 0.5).value(), 30, 1e-9);
    EXPECT_NEAR(chanceWithin(1, {}, Days(30)), 0.5, 1e-12);
}

// By symmetry: with as many loads to come as were seen, and one, the middle is the time itself.
TEST(Pace, asManyToComeAsWereSeenTakeAsLong)
{
    for (int loads = 1; loads <= 60; ++loads) {
        const Pace pace{loads - 1, Days(40)};
        EXPECT_NEAR(waitFor(loads, pace, 0.5).value(), 70, 70 * 1e-12) << loads;
    }
}

TEST(Pace, everyNumberOfLoadsHasItsWait)
{
    for (const int seen : {0, 1, 4, 30, 180, 1000}) {
        const Pace pace{seen, Days(180)};
        for (const int loads : {1, 2, 5, 31, 181, 4000, 1'000'000}) {
            for (const double p : {0.1, 0.5, 0.9}) {
                EXPECT_NEAR(chanceWithin(loads, pace, waitFor(loads, pace, p)), p, 1e-8)
                    << seen << ' ' << loads << ' ' << p;
            }
        }
    }
}

TEST(Pace, chanceUndoesTheWait)
{
    const Pace pace{7, Days(90)};
    for (const int loads : {1, 3, 12}) {
        for (const double p : {0.1, 0.5, 0.9}) {
            EXPECT_NEAR(chanceWithin(loads, pace, waitFor(loads, pace, p)), p, 1e-10);
        }
    }
    EXPECT_EQ(chanceWithin(3, pace, Days(0)), 0);
    EXPECT_EQ(chanceWithin(3, pace, Days(-5)), 0);
}

} // namespace
} // namespace ullage::chemistry
