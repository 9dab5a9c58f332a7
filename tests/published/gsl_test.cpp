// The numerics against general libraries: the closed form of oxygen uptake against an integrated
// differential equation, quantiles and straight lines against GSL.
#include "core/chemistry/fixing.h"
#include "core/chemistry/keeping.h"
#include "core/chemistry/pace.h"

#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <gsl/gsl_cdf.h>
#include <gsl/gsl_fit.h>
#include <gsl/gsl_integration.h>
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
                const double solubility = kSaturation.value() / 1000 / kAirOxygen.value;
                const Flow flow{
                    (1 - wetted) * bottle.wallFlow + bottle.capFlow, wetted * bottle.wallFlow,
                    kBottleExchange.value * 24 * bottle.surface.value() * solubility / air,
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

} // namespace
} // namespace ullage::chemistry
