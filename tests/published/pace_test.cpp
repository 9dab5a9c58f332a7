#include "core/chemistry/pace.h"

#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

// Arithmetic: with posterior Gamma(7, 8 days) the next 8 days bring at most 6 loads with chance ½,
// because I_½(7, 7) = ½. The prior is Gamma(1, 30 days), so 6 loads in −22 days give it.
TEST(Forecast, symmetricPosteriorGivesOneHalf)
{
    const Pace pace{6, Days(8) - kPacePriorTime};
    EXPECT_NEAR(1 - chanceWithin(7, pace, Days(8)), 0.5, 1e-14);
    EXPECT_NEAR(waitFor(7, pace, 0.5).value(), 8, 1e-12);
}

// NIST/SEMATECH e-Handbook 8.4.6: with 50 % confidence in 600 h between failures and 95 % in 250 h
// the gamma prior has shape 2.863 and scale 1522.46 h. Loads stand for failures.
TEST(Forecast, gammaPriorOfTheHandbook)
{
    const RateBelief prior{2.863, Days(1522.46)};
    EXPECT_NEAR(chanceSlowerThan(prior, Days(600)), 0.5, 0.0005);
    EXPECT_NEAR(chanceSlowerThan(prior, Days(250)), 0.95, 0.0005);
}

} // namespace
} // namespace ullage::chemistry
