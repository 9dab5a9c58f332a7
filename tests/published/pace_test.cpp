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

} // namespace
} // namespace ullage::chemistry
