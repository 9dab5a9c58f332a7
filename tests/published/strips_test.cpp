#include "core/chemistry/strips.h"

#include "core/chemistry/process_constants.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace ullage::chemistry
{
namespace
{

// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, individuals control charts.
TEST(IndividualsChart, handbookExample)
{
    const std::vector readings{49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
    const auto chart = controlChart(readings);
    ASSERT_TRUE(chart);
    EXPECT_NEAR(chart->centre, 50.81, 0.005);
    EXPECT_NEAR(chart->meanMovingRange, 1.8778, 0.00005);
    EXPECT_NEAR(chart->upper, 55.8041, 0.00005);
    EXPECT_NEAR(chart->lower, 45.8159, 0.00005);
    for (const ControlMark mark : controlMarks(*chart, readings)) {
        EXPECT_EQ(mark, ControlMark::Within); // "the process is in control"
    }
}

// The mean range of two normal readings is 2/√π standard deviations.
TEST(IndividualsChart, divisorIsTheMeanRangeOfTwo)
{
    EXPECT_NEAR(kMovingRange.value, 2 / std::sqrt(M_PI), 0.0005);
}

} // namespace
} // namespace ullage::chemistry
