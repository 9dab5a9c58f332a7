#include "core/chemistry/constants.h"
#include "core/chemistry/fixing.h"
#include "core/chemistry/keeping.h"

#include <cmath>
#include <gsl/gsl_fit.h>
#include <gsl/gsl_multifit_nlinear.h>
#include <gtest/gtest.h>
#include <vector>

namespace ullage::chemistry
{
namespace
{

// R.E. Chapman 1997, Quality Engineering 10(1), 137–140, as the data set "shelflife" of the R
// package glmtoolbox: maximum density of a developer kept without air, by hours at a temperature.
struct Reading {
    double hours;
    double density;
};
struct Oven {
    double celsius;
    std::vector<Reading> readings;
    double slope; // per hour, from the same source's data, seven decimals
};
const std::vector<Oven> kOvens{
    {72,
     {{72, 3.55}, {144, 3.27}, {216, 2.89}, {288, 2.55}, {360, 2.34}, {432, 2.14}, {504, 1.77}},
     -0.0040427},
    {82,
     {{48, 3.52}, {96, 3.35}, {144, 2.50}, {192, 2.10}, {240, 1.90}, {288, 1.47}, {336, 1.19}},
     -0.0084449},
    {92,
     {{24, 3.46}, {48, 2.91}, {72, 2.27}, {96, 1.49}, {120, 1.20}, {144, 1.04}, {168, 0.65}},
     -0.0197024},
};

TEST(AgeingWithoutAir, threeStraightLines)
{
    for (const Oven& oven : kOvens) {
        std::vector<ClearingTest> points;
        for (const Reading& reading : oven.readings) {
            points.push_back({FilmsPerLitre(reading.hours), Seconds(reading.density)});
        }
        EXPECT_NEAR(fitClearing(points)->slope, oven.slope, 5e-8) << oven.celsius << " °C";
    }
}

// D = a − exp(l − E(1/T − 1/355.15))·t over all three ovens at once; E comes in thousands of kelvin
// so that the three unknowns are of one size.
int residuals(const gsl_vector* at, void*, gsl_vector* out)
{
    std::size_t row = 0;
    for (const Oven& oven : kOvens) {
        const double inverse = 1 / Celsius(oven.celsius).kelvin() - 1 / 355.15;
        const double rate =
            std::exp(gsl_vector_get(at, 1) - 1000 * gsl_vector_get(at, 2) * inverse);
        for (const Reading& reading : oven.readings) {
            gsl_vector_set(out, row++,
                           gsl_vector_get(at, 0) - rate * reading.hours - reading.density);
        }
    }
    return GSL_SUCCESS;
}

TEST(AgeingWithoutAir, oneFitOverThreeOvensGivesTheConstant)
{
    auto parameters = gsl_multifit_nlinear_default_parameters();
    auto* work = gsl_multifit_nlinear_alloc(gsl_multifit_nlinear_trust, &parameters, 21, 3);
    gsl_multifit_nlinear_fdf problem{};
    problem.f = residuals;
    problem.n = 21;
    problem.p = 3;
    double start[]{3, -5, 8};
    const auto first = gsl_vector_view_array(start, 3);
    gsl_multifit_nlinear_init(&first.vector, &problem, work);
    int info = 0;
    ASSERT_EQ(gsl_multifit_nlinear_driver(200, 1e-10, 1e-10, 0, nullptr, nullptr, &info, work),
              GSL_SUCCESS);
    const gsl_vector* found = gsl_multifit_nlinear_position(work);
    EXPECT_NEAR(gsl_vector_get(found, 0), 3.776, 0.0005);
    EXPECT_NEAR(gsl_vector_get(found, 1), -4.762, 0.0005);
    const double energy = 1000 * gsl_vector_get(found, 2);
    EXPECT_NEAR(energy, 10'560, 5);
    EXPECT_NEAR(kAgeing.value, energy, 5);

    // Standard error of E: the source's 481 K, and the range shipped is two of them.
    auto* covariance = gsl_matrix_alloc(3, 3);
    gsl_multifit_nlinear_covar(gsl_multifit_nlinear_jac(work), 0, covariance);
    double squares = 0;
    const gsl_vector* left = gsl_multifit_nlinear_residual(work);
    for (std::size_t i = 0; i < left->size; ++i) {
        squares += gsl_vector_get(left, i) * gsl_vector_get(left, i);
    }
    const double error = 1000 * std::sqrt(gsl_matrix_get(covariance, 2, 2) * squares / (21 - 3));
    EXPECT_NEAR(error, 481, 0.5);
    EXPECT_NEAR(kAgeing.value - kAgeing.low, 2 * error, 25);
    EXPECT_NEAR(kAgeing.high - kAgeing.value, 2 * error, 25);
    gsl_matrix_free(covariance);
    gsl_multifit_nlinear_free(work);
}

// The same fit carried down to 20 °C: 3.3 times faster at 30 °C, and 2 % of maximum density lost in
// six months at 20 °C.
TEST(AgeingWithoutAir, carriedDownToTheShelf)
{
    EXPECT_NEAR(ageingFactor(Celsius(30)), 3.3, 0.05);
    const double rate82 = std::exp(-4.762);
    const double rate20 = rate82 * ageingFactor(Celsius(20)) / ageingFactor(Celsius(82));
    EXPECT_NEAR(rate20 * 24 * 182.625 / 3.776, 0.02, 0.005);
    EXPECT_NEAR(kAgeing.value * 8.314462618e-3, 88, 0.5); // kJ/mol
}

} // namespace
} // namespace ullage::chemistry
