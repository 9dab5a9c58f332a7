#include "core/chemistry/constants.h"
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
};
const std::vector<Oven> kOvens{
    {72,
     {{72, 3.55}, {144, 3.27}, {216, 2.89}, {288, 2.55}, {360, 2.34}, {432, 2.14}, {504, 1.77}}},
    {82, {{48, 3.52}, {96, 3.35}, {144, 2.50}, {192, 2.10}, {240, 1.90}, {288, 1.47}, {336, 1.19}}},
    {92, {{24, 3.46}, {48, 2.91}, {72, 2.27}, {96, 1.49}, {120, 1.20}, {144, 1.04}, {168, 0.65}}},
};

// The constant against the data's own steps: how much faster the warmer oven spoils it, by straight
// lines through each oven's readings. One Arrhenius line over three ovens misses the single steps,
// by 13 and 3 %; two standard errors of E are 16 % over 20 K.
TEST(AgeingWithoutAir, stepsFromOvenToOvenAreTheConstants)
{
    std::vector<double> slopes;
    for (const Oven& oven : kOvens) {
        std::vector<double> hours;
        std::vector<double> densities;
        for (const Reading& reading : oven.readings) {
            hours.push_back(reading.hours);
            densities.push_back(reading.density);
        }
        double intercept = 0, slope = 0, cov00 = 0, cov01 = 0, cov11 = 0, squares = 0;
        gsl_fit_linear(hours.data(), 1, densities.data(), 1, hours.size(), &intercept, &slope,
                       &cov00, &cov01, &cov11, &squares);
        slopes.push_back(slope);
    }
    const auto factor = [](double warm, double cool) {
        return ageingFactor(Celsius(warm)) / ageingFactor(Celsius(cool));
    };
    EXPECT_NEAR(factor(82, 72) / (slopes[1] / slopes[0]), 1, 0.15);
    EXPECT_NEAR(factor(92, 82) / (slopes[2] / slopes[1]), 1, 0.15);
    EXPECT_NEAR(factor(92, 72) / (slopes[2] / slopes[0]), 1, 0.15);
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
    const double energy = 1000 * gsl_vector_get(found, 2);
    EXPECT_NEAR(kAgeing.value, energy, 5);

    // The range shipped is 19 in 20 by the fit's standard error, rounded to 10 K.
    auto* covariance = gsl_matrix_alloc(3, 3);
    gsl_multifit_nlinear_covar(gsl_multifit_nlinear_jac(work), 0, covariance);
    double squares = 0;
    const gsl_vector* left = gsl_multifit_nlinear_residual(work);
    for (std::size_t i = 0; i < left->size; ++i) {
        squares += gsl_vector_get(left, i) * gsl_vector_get(left, i);
    }
    const double error = 1000 * std::sqrt(gsl_matrix_get(covariance, 2, 2) * squares / (21 - 3));
    EXPECT_NEAR(kAgeing.low, energy - 1.96 * error, 10);
    EXPECT_NEAR(kAgeing.high, energy + 1.96 * error, 10);
    gsl_matrix_free(covariance);
    gsl_multifit_nlinear_free(work);
}

} // namespace
} // namespace ullage::chemistry
