#include "core/chemistry/strips.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

TEST(ControlChart, needsTwoReadings)
{
    EXPECT_FALSE(controlChart({}));
    EXPECT_FALSE(controlChart(std::vector{1.2}));
    const auto chart = controlChart(std::vector{1.20, 1.24});
    EXPECT_NEAR(chart->centre, 1.22, 1e-12);
    EXPECT_NEAR(chart->upper, 1.22 + 3 * 0.04 / 1.128, 1e-12);
    EXPECT_NEAR(chart->lower, 1.22 - 3 * 0.04 / 1.128, 1e-12);
}

TEST(ControlMarks, showWhatIsOutOfControl)
{
    const ControlChart chart{1.2, 0.02, 1.15, 1.25};
    using enum ControlMark;
    EXPECT_EQ(controlMarks(chart, std::vector{1.15, 1.25, 1.149, 1.251}),
              (std::vector{Within, Within, Beyond, Beyond}));
    std::vector<double> drift(9, 1.21);
    std::vector<ControlMark> expected(7, Within);
    expected.push_back(OneSide);
    expected.push_back(OneSide);
    EXPECT_EQ(controlMarks(chart, drift), expected);
    drift[4] = 1.19; // on the other side the count begins anew
    EXPECT_EQ(controlMarks(chart, drift), std::vector<ControlMark>(9, Within));
    drift.assign(8, 1.19);
    EXPECT_EQ(controlMarks(chart, drift).back(), OneSide);
    drift[3] = 1.2; // and at the centre
    EXPECT_EQ(controlMarks(chart, drift).back(), Within);
}

TEST(StripFactor, bringsDensityToTheReferenceByTheAssumedLaw)
{
    EXPECT_EQ(*stripFactor(1.2, 1.2, 1), 1);
    EXPECT_NEAR(*stripFactor(1.0, 1.2, 1), 1.2, 1e-12);
    EXPECT_NEAR(*stripFactor(1.1, 1.2, 0.5), std::pow(1.2 / 1.1, 2), 1e-12);
    // Beyond 30 % a cause is wanted, not time.
    EXPECT_EQ(stripFactor(0.9, 1.2, 1).error().code, ErrorCode::NotSuitable);
    EXPECT_NEAR(*stripFactor(0.9, 1.2, 1).error().low, 1.2 / 1.3, 1e-12);
    EXPECT_FALSE(stripFactor(1.6, 1.2, 1));
    EXPECT_EQ(stripFactor(0.05, 1.2, 1).error().field, "density");
    EXPECT_EQ(stripFactor(1.2, 5, 1).error().field, "reference");
    EXPECT_EQ(stripFactor(1.2, 1.2, 0.1).error().field, "response");
}

TEST(StripFactor, isNotProposedForNoise)
{
    const ControlChart chart{1.2, 0.02, 1.15, 1.25};
    EXPECT_EQ(*proposedFactor(chart, 1.15, 1.2), std::nullopt);
    EXPECT_NEAR(**proposedFactor(chart, 1.1, 1.2), 1.2 / 1.1, 1e-12); // response 1
    EXPECT_FALSE(proposedFactor(chart, 0.8, 1.2));
}

} // namespace
} // namespace ullage::chemistry
