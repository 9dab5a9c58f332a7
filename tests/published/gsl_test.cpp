// The numerics against general libraries: the closed form of oxygen uptake against an integrated
// differential equation, quantiles and straight lines against GSL.
#include "core/chemistry/fixing.h"
#include "core/chemistry/keeping.h"
#include "core/chemistry/own_figures.h"
#include "core/chemistry/pace.h"

#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <gsl/gsl_blas.h>
#include <gsl/gsl_cdf.h>
#include <gsl/gsl_fit.h>
#include <gsl/gsl_integration.h>
#include <gsl/gsl_linalg.h>
#include <gsl/gsl_multifit.h>
#include <gsl/gsl_randist.h>
#include <gtest/gtest.h>
#include <random>
#include <vector>

namespace ullage::chemistry
{
namespace
{

constexpr MillimolesPerLitre kSaturation{0.139236};

// In the air dn/dt = q_head·(1 − n/n_full) − n/τ: gas comes in by the difference of pressures, and
// the solution takes k·S times the concentration at its surface, H·n/V_air. It also takes q_wet.
struct Flow {
    double head;
    double wet;
    double perDay;  // 1/τ
    double fullAir; // n_full, mmol
    void operator()(const std::array<double, 2>& state, std::array<double, 2>& slope, double) const
    {
        slope[0] = head * (1 - state[0] / fullAir) - perDay * state[0];
        slope[1] = wet + perDay * state[0];
    }
};

TEST(ClosedForm, matchesTheIntegratedEquation)
{
    namespace odeint = boost::numeric::odeint;
    for (const double permeability : {0.0, 1.8, 73.0, 197.0}) {
        for (const double volume : {100.0, 500.0, 1000.0}) {
            for (const double days : {0.2, 7.0, 120.0}) {
                const auto bottle = enclosure(Millilitres(1030), permeability, Millimetres(0.8),
                                              CubicCentimetresPerDay(0.05));
                const double air = 1030 - volume;
                const double wetted = volume / 1030;
                const double wall =
                    bottle.wallFlow * std::exp(-3765 * (1 / 293.15 - 1 / 298.15)); // at 20 °C
                const double solubility = kSaturation.value() / 1000 / kAirOxygen.value;
                const Flow flow{(1 - wetted) * wall + bottle.capFlow, wetted * wall,
                                kBottleExchange.value * 24 * bottle.surface.value() * solubility /
                                    air,
                                kAirOxygen.value * air};
                std::array<double, 2> state{kAirOxygen.value * air, 0};
                odeint::integrate_adaptive(
                    odeint::make_controlled<odeint::runge_kutta_cash_karp54<std::array<double, 2>>>(
                        1e-12, 1e-12),
                    flow, state, 0.0, days, 1e-4);

                Standing start;
                start.air = freshAir(Millilitres(air));
                const auto stood =
                    stand(start, Days(days), {bottle, Millilitres(volume), kSaturation});
                EXPECT_NEAR(stood.taken.total().value() * volume / 1000, state[1],
                            1e-8 * std::max(1.0, state[1]));
                EXPECT_NEAR(stood.air.total().value(), state[0], 1e-8);
            }
        }
    }
}

// The two limits of an MQ-borax stock found anew: the reference bottle integrated step by step, the
// half-full one opened once more half way, and the two balances solved for 1/N_c and 1/L0.
TEST(Calibration, matchesTheIntegratedBottles)
{
    namespace odeint = boost::numeric::odeint;
    const auto saturation = kSaturation.value();
    const auto takenUp = [&](double volume, double days, int openings) {
        const double air = 1030 - volume;
        const double size = std::pow(1.03, 2.0 / 3);
        const double solubility = saturation / 1000 / kAirOxygen.value;
        const Flow flow{0.05 / 22.414, 0, 2.0 * 24 * 64 * size * solubility / air,
                        kAirOxygen.value * air};
        std::array<double, 2> state{0, 0};
        for (int i = 0; i < openings; ++i) {
            state[0] = kAirOxygen.value * air;
            odeint::integrate_adaptive(
                odeint::make_controlled<odeint::runge_kutta_cash_karp54<std::array<double, 2>>>(
                    1e-13, 1e-13),
                flow, state, 0.0, days / openings, 1e-4);
        }
        return saturation + state[1] / (volume / 1000);
    };
    const double full = takenUp(1000, 182.625, 1);
    const double half = takenUp(515, 60.875, 2);
    double rows[]{full, 182.625, half, 60.875};
    double ones[]{1, 1};
    auto matrix = gsl_matrix_view_array(rows, 2, 2);
    const auto right = gsl_vector_view_array(ones, 2);
    auto* found = gsl_vector_alloc(2);
    auto* order = gsl_permutation_alloc(2);
    int sign = 0;
    gsl_linalg_LU_decomp(&matrix.matrix, order, &sign);
    gsl_linalg_LU_solve(&matrix.matrix, order, &right.vector, found);
    const auto limits = calibrate({Days(182.625), Days(60.875)}, kSaturation);
    ASSERT_TRUE(limits);
    EXPECT_NEAR(limits->oxygen.value() * gsl_vector_get(found, 0), 1, 1e-8);
    EXPECT_NEAR(limits->age.value() * gsl_vector_get(found, 1), 1, 1e-8);
    gsl_permutation_free(order);
    gsl_vector_free(found);
}

TEST(Quantiles, waitsMatchGslsBeta)
{
    for (const int loads : {1, 2, 5, 17, 60}) {
        for (const int seen : {0, 1, 9, 40}) {
            const Pace pace{seen, Days(70)};
            for (const double p : {0.1, 0.5, 0.9}) {
                const double y = gsl_cdf_beta_Pinv(p, loads, 1 + seen);
                EXPECT_NEAR(waitFor(loads, pace, p).value() / (100 * y / (1 - y)), 1, 1e-8);
            }
            EXPECT_NEAR(chanceWithin(loads, pace, Days(33)),
                        gsl_cdf_beta_P(33.0 / 133, loads, 1 + seen), 1e-12);
        }
    }
}

// The beta formula itself: Poisson loads at a rate that is Gamma(1 + k, 30 + T) distributed.
TEST(Quantiles, chanceIsThePoissonMixedOverTheGamma)
{
    struct Mix {
        int loads;
        double shape;
        double time;
        double days;
    };
    auto* work = gsl_integration_workspace_alloc(1000);
    for (const Mix mix : {Mix{3, 5, 90, 40}, Mix{1, 1, 30, 10}, Mix{12, 8, 120, 100}}) {
        gsl_function integrand;
        integrand.params = const_cast<Mix*>(&mix);
        integrand.function = [](double rate, void* params) {
            const Mix& m = *static_cast<Mix*>(params);
            const double density =
                std::exp(m.shape * std::log(m.time) + (m.shape - 1) * std::log(rate) -
                         m.time * rate - std::lgamma(m.shape));
            return density * gsl_cdf_gamma_P(rate * m.days, m.loads, 1); // P(at least m loads)
        };
        double sum = 0;
        double error = 0;
        gsl_integration_qagiu(&integrand, 1e-12, 1e-12, 1e-10, 1000, work, &sum, &error);
        const Pace pace{static_cast<int>(mix.shape) - 1, Days(mix.time) - kPacePriorTime};
        EXPECT_NEAR(chanceWithin(mix.loads, pace, Days(mix.days)), sum, 1e-8);
    }
    gsl_integration_workspace_free(work);
}

TEST(StraightLine, matchesGslOnRandomTests)
{
    std::mt19937 random(20260601);
    std::uniform_real_distribution<double> wear(0, 20);
    std::normal_distribution<double> noise(0, 4);
    for (int round = 0; round < 50; ++round) {
        const int count = 3 + round % 9;
        std::vector<double> x;
        std::vector<double> y;
        std::vector<ClearingTest> tests;
        for (int i = 0; i < count; ++i) {
            x.push_back(wear(random));
            y.push_back(60 + 3 * x.back() + noise(random));
            tests.push_back({FilmsPerLitre(x.back()), Seconds(y.back())});
        }
        double intercept = 0, slope = 0, cov00 = 0, cov01 = 0, cov11 = 0, squares = 0;
        gsl_fit_linear(x.data(), 1, y.data(), 1, x.size(), &intercept, &slope, &cov00, &cov01,
                       &cov11, &squares);
        const auto fit = fitClearing(tests);
        ASSERT_TRUE(fit);
        EXPECT_NEAR(fit->intercept, intercept, 1e-9);
        EXPECT_NEAR(fit->slope, slope, 1e-10);
        EXPECT_NEAR(fit->residualSd, std::sqrt(squares / (count - 2)), 1e-9);

        // A prediction's variance: the line's own, from the covariance matrix, and one reading's.
        const double at = 13;
        const double variance = cov00 + 2 * cov01 * at + cov11 * at * at + squares / (count - 2);
        EXPECT_NEAR(fit->band(FilmsPerLitre(at)).value(),
                    gsl_cdf_tdist_Pinv(0.95, count - 2) * std::sqrt(variance), 1e-7);
    }
}

// A darkroom's own figures by weighted least squares: the prior is one more reading, and tests that
// share a fresh test's error are made independent by the Cholesky factor of their covariance.
TEST(OwnFigures, fixerCapacityMatchesGslsWeightedFit)
{
    const double published = 20;
    std::mt19937 random(20260602);
    std::normal_distribution<double> noise(0, 0.1);
    std::vector<std::vector<WornClearing>> bottles;
    std::vector<double> x{1};
    std::vector<double> y{1 / published};
    std::vector<double> weights{std::pow(0.5 / published, -2)};
    for (const int tests : {1, 3, 5}) {
        std::vector<WornClearing> bottle;
        auto* covariance = gsl_matrix_alloc(std::size_t(tests), std::size_t(tests));
        auto* wears = gsl_vector_alloc(std::size_t(tests));
        auto* rises = gsl_vector_alloc(std::size_t(tests));
        for (std::size_t i = 0; i < std::size_t(tests); ++i) {
            const double wear = 3.0 + 4.0 * double(i);
            const double rise = wear / 16 + noise(random);
            bottle.push_back({FilmsPerLitre(wear), Seconds(40 * (1 + rise)), Seconds(40)});
            gsl_vector_set(wears, i, wear);
            gsl_vector_set(rises, i, rise);
            for (std::size_t j = 0; j < std::size_t(tests); ++j) {
                const double other = 3.0 + 4.0 * double(j);
                gsl_matrix_set(
                    covariance, i, j,
                    0.01 * ((i == j ? 1 : 0) + (1 + wear / published) * (1 + other / published)));
            }
        }
        gsl_linalg_cholesky_decomp1(covariance);
        gsl_blas_dtrsv(CblasLower, CblasNoTrans, CblasNonUnit, covariance, wears);
        gsl_blas_dtrsv(CblasLower, CblasNoTrans, CblasNonUnit, covariance, rises);
        for (std::size_t i = 0; i < std::size_t(tests); ++i) {
            x.push_back(gsl_vector_get(wears, i));
            y.push_back(gsl_vector_get(rises, i));
            weights.push_back(1);
        }
        gsl_vector_free(rises);
        gsl_vector_free(wears);
        gsl_matrix_free(covariance);
        bottles.push_back(bottle);
    }
    const auto table = gsl_matrix_view_array(x.data(), x.size(), 1);
    const auto weight = gsl_vector_view_array(weights.data(), weights.size());
    const auto right = gsl_vector_view_array(y.data(), y.size());
    auto* slope = gsl_vector_alloc(1);
    auto* spread = gsl_matrix_alloc(1, 1);
    double squares = 0;
    auto* work = gsl_multifit_linear_alloc(x.size(), 1);
    gsl_multifit_wlinear(&table.matrix, &weight.vector, &right.vector, slope, spread, &squares,
                         work);
    const double middle = gsl_vector_get(slope, 0);
    const double reach =
        gsl_cdf_ugaussian_Pinv(0.9) * std::sqrt(gsl_matrix_get(spread, 0, 0)); // 80 % either way

    const auto own = ownFixerCapacity(bottles, FilmsPerLitre(published));
    ASSERT_TRUE(own);
    EXPECT_NEAR(own->value * middle, 1, 1e-9);
    EXPECT_NEAR(own->low * (middle + reach), 1, 1e-5); // 1.2816 has five digits
    EXPECT_NEAR(own->high * (middle - reach), 1, 1e-5);
    gsl_multifit_linear_free(work);
    gsl_matrix_free(spread);
    gsl_vector_free(slope);
}

// The keeping posterior, a trapezoid sum of 401 points, against GSL's adaptive integration.
TEST(OwnFigures, oxygenLimitMatchesGslsIntegration)
{
    const double calibrated = 24;
    const std::vector<std::vector<KeepingTrial>> bottles{
        {{MillimolesPerLitre(15), 0.1, true}, {MillimolesPerLitre(24), 0.2, false}},
        {{MillimolesPerLitre(18), 0.15, true}, {MillimolesPerLitre(22), 0.15, false}},
        {{MillimolesPerLitre(17), 0.05, true}}};
    struct Belief {
        const std::vector<std::vector<KeepingTrial>>* bottles;
        double middle;
        int power;
    };
    const auto density = [](double x, void* params) {
        const Belief& belief = *static_cast<Belief*>(params);
        const double sd = std::log(2.0) / 1.645;
        double value = gsl_ran_gaussian_pdf(x - belief.middle, sd);
        for (const auto& bottle : *belief.bottles) {
            for (const KeepingTrial& trial : bottle) {
                const double s = trial.oxygen.value() / std::exp(x) + trial.agePart;
                const double pass = 0.02 + 0.96 * gsl_cdf_ugaussian_P(-std::log(s) / 0.15);
                value *= trial.passed ? pass : 1 - pass;
            }
        }
        return value * (belief.power == 1 ? x : 1);
    };
    auto* work = gsl_integration_workspace_alloc(1000);
    const double reach = 4 * std::log(2.0) / 1.645;
    const auto sum = [&](int power, double to) {
        Belief belief{&bottles, std::log(calibrated), power};
        gsl_function integrand;
        integrand.function = density;
        integrand.params = &belief;
        double value = 0;
        double error = 0;
        gsl_integration_qag(&integrand, belief.middle - reach, to, 0, 1e-10, 1000, 6, work, &value,
                            &error);
        return value;
    };
    const double end = std::log(calibrated) + reach;
    const double whole = sum(0, end);
    const auto own = ownOxygenLimit(bottles, MillimolesPerLitre(calibrated));
    ASSERT_TRUE(own);
    EXPECT_NEAR(std::log(own->value), sum(1, end) / whole, 1e-6);
    EXPECT_NEAR(sum(0, std::log(own->low)) / whole, 0.1, 1e-3);
    EXPECT_NEAR(sum(0, std::log(own->high)) / whole, 0.9, 1e-3);
    gsl_integration_workspace_free(work);
}

} // namespace
} // namespace ullage::chemistry
