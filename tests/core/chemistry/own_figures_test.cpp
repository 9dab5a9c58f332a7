#include "core/chemistry/own_figures.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace ullage::chemistry
{
namespace
{

using Clearings = std::vector<std::vector<WornClearing>>;
using Strips = std::vector<std::vector<StripMeasure>>;
using Trials = std::vector<std::vector<KeepingTrial>>;

WornClearing cleared(double wear, double at20, double fresh = 60)
{
    return {FilmsPerLitre(wear), Seconds(at20), Seconds(fresh)};
}

// One test a bottle: its variance is 0.01·(1 + c²), and the posterior a weighted mean by hand.
TEST(OwnFixerCapacity, weighsSingleTestsAndThePacket)
{
    const Clearings bottles{
        {cleared(5, 75)}, {cleared(10, 96)}, {cleared(15, 100)}, {cleared(8, 80)}};
    const double capacity = 20;
    double precision = 1 / std::pow(0.5 / capacity, 2);
    double pull = precision / capacity;
    for (const auto& bottle : bottles) {
        const double w = bottle[0].wear.value();
        const double c = 1 + w / capacity;
        const double variance = 0.01 * (1 + c * c);
        precision += w * w / variance;
        pull += w * (bottle[0].at20.value() / 60 - 1) / variance;
    }
    const auto own = ownFixerCapacity(bottles, FilmsPerLitre(capacity));
    ASSERT_TRUE(own);
    EXPECT_NEAR(own->value, precision / pull, 1e-9);
    const double sd = 1 / std::sqrt(precision);
    EXPECT_NEAR(1 / own->low, pull / precision + 1.2816 * sd, 1e-9);
    EXPECT_NEAR(1 / own->high, pull / precision - 1.2816 * sd, 1e-9);
    EXPECT_EQ(own->tests, 4);
    EXPECT_EQ(own->bottles, 4);
}

// Two tests of a bottle: the inverse of the 2 × 2 covariance, written out.
TEST(OwnFixerCapacity, testsOfOneBottleShareTheErrorOfItsFreshTest)
{
    const Clearings bottles{{cleared(6, 80), cleared(14, 98)}, {cleared(7, 81), cleared(12, 99)}};
    const double capacity = 25;
    double precision = 1 / std::pow(0.5 / capacity, 2);
    double pull = precision / capacity;
    for (const auto& bottle : bottles) {
        const double w1 = bottle[0].wear.value();
        const double w2 = bottle[1].wear.value();
        const double c1 = 1 + w1 / capacity;
        const double c2 = 1 + w2 / capacity;
        const double a = 0.01 * (1 + c1 * c1);
        const double b = 0.01 * c1 * c2;
        const double d = 0.01 * (1 + c2 * c2);
        const double det = a * d - b * b;
        const double y1 = bottle[0].at20.value() / 60 - 1;
        const double y2 = bottle[1].at20.value() / 60 - 1;
        precision += (w1 * w1 * d - 2 * w1 * w2 * b + w2 * w2 * a) / det;
        pull += (w1 * y1 * d - (w1 * y2 + w2 * y1) * b + w2 * y2 * a) / det;
    }
    const auto own = ownFixerCapacity(bottles, FilmsPerLitre(capacity));
    ASSERT_TRUE(own);
    EXPECT_NEAR(own->value, precision / pull, 1e-9);
}

// Two films in one bottle have a fresh test each, so their errors are their own: the same as in two
// bottles, but for what is counted.
TEST(OwnFixerCapacity, testsOfTwoFilmsInABottleShareNothing)
{
    auto other = cleared(12, 99);
    other.film = "other";
    const Clearings together{{cleared(6, 80), other}, {cleared(7, 81), cleared(14, 98)}};
    const Clearings apart{{cleared(6, 80)}, {other}, {cleared(7, 81), cleared(14, 98)}};
    const auto one = ownFixerCapacity(together, FilmsPerLitre(25));
    const auto two = ownFixerCapacity(apart, FilmsPerLitre(25));
    ASSERT_TRUE(one && two);
    EXPECT_NEAR(one->value, two->value, 1e-9);
    EXPECT_NEAR(one->low, two->low, 1e-9);
    EXPECT_NEAR(one->high, two->high, 1e-9);
    EXPECT_EQ(one->bottles, 2);
    EXPECT_EQ(two->bottles, 3);
}

// Neither the order of bottles nor that of their tests matters, nor the unit of time.
TEST(OwnFixerCapacity, goesByWhatWasMeasuredAlone)
{
    Clearings bottles{{cleared(6, 80), cleared(14, 98)}, {cleared(7, 81)}, {cleared(9, 90)}};
    const auto own = ownFixerCapacity(bottles, FilmsPerLitre(20));
    std::swap(bottles[0][0], bottles[0][1]);
    std::swap(bottles[0], bottles[2]);
    for (auto& bottle : bottles) {
        for (WornClearing& test : bottle) {
            test.at20 *= 3;
            test.fresh *= 3;
        }
    }
    const auto again = ownFixerCapacity(bottles, FilmsPerLitre(20));
    ASSERT_TRUE(own && again);
    EXPECT_NEAR(own->value, again->value, 1e-9);
    EXPECT_NEAR(own->high, again->high, 1e-9);
}

TEST(OwnFixerCapacity, manyTestsFindTheTruth)
{
    std::mt19937 random(7);
    std::normal_distribution<double> error(0, 0.1);
    Clearings bottles;
    for (int bottle = 0; bottle < 200; ++bottle) {
        const double fresh = 60 * (1 + error(random)); // the error that the bottle's tests share
        bottles.emplace_back();
        for (const double w : {5.0, 10.0, 15.0, 20.0}) {
            const double t = 60 * (1 + w / 30 + error(random));
            bottles.back().push_back(cleared(w, t, fresh));
        }
    }
    const auto own = ownFixerCapacity(bottles, FilmsPerLitre(20));
    ASSERT_TRUE(own);
    EXPECT_NEAR(own->value, 30, 2.5);
    EXPECT_LT(own->high - own->low, 3);
}

TEST(OwnFixerCapacity, waitsForFourTestsInTwoBottlesAndARise)
{
    const auto figure = [](const Clearings& bottles) {
        return ownFixerCapacity(bottles, FilmsPerLitre(20));
    };
    EXPECT_FALSE(figure({{cleared(5, 75), cleared(10, 90), cleared(15, 110), cleared(18, 118)}}));
    EXPECT_FALSE(figure({{cleared(5, 75), cleared(10, 90)}, {cleared(15, 110)}}));
    EXPECT_TRUE(figure({{cleared(5, 75), cleared(10, 90)}, {cleared(15, 110), cleared(18, 110)}}));
    EXPECT_FALSE(figure({{cleared(10, 50), cleared(20, 45)}, {cleared(10, 48), cleared(20, 44)}}));
}

TEST(OwnDeveloperWear, isTheWeightedSlope)
{
    const StripMeasure strip{FilmsPerLitre(5), 1.5, 1.2, 1.3};
    EXPECT_NEAR(strip.wanted(), 1.5 * 1.3 / 1.2, 1e-12);
    const Strips bottles{
        {strip, {FilmsPerLitre(2), 1.2, 1.25, 1.25}, {FilmsPerLitre(8), 1.8, 1, 1}},
        {{FilmsPerLitre(4), 1.4, 1.3, 1.2}, {FilmsPerLitre(9), 1.9, 1.1, 1.1}}};
    double precision = 1 / 0.01; // 10 % ± 10 %
    double pull = precision * 0.1;
    for (const auto& bottle : bottles) {
        for (const auto& s : bottle) {
            precision += s.wear.value() * s.wear.value() / 0.0025;
            pull += s.wear.value() * (s.wanted() - 1) / 0.0025;
        }
    }
    const auto own = ownDeveloperWear(bottles, 10);
    ASSERT_TRUE(own);
    EXPECT_NEAR(own->value, 100 * pull / precision, 1e-9);
    EXPECT_NEAR(own->high - own->low, 200 * 1.2816 / std::sqrt(precision), 1e-9);
    EXPECT_FALSE(ownDeveloperWear(std::span(bottles).first(1), 10));
    const Strips four{{bottles[0][0], bottles[0][1]}, bottles[1]};
    EXPECT_FALSE(ownDeveloperWear(four, 10));
}

// A developer that wears by 14 % a film where its packet says 10: its strips are developed by the
// packet's factor and come out thin.
TEST(OwnDeveloperWear, manyStripsFindTheTruth)
{
    std::mt19937 random(11);
    std::normal_distribution<double> error(0, 0.05);
    Strips bottles;
    for (int bottle = 0; bottle < 30; ++bottle) {
        bottles.emplace_back();
        for (const double w : {2.0, 5.0, 8.0}) {
            const double given = 1 + 0.10 * w;
            const double needed = 1 + 0.14 * w + error(random);
            bottles.back().push_back({FilmsPerLitre(w), given, 1.2 * given / needed, 1.2});
        }
    }
    const auto own = ownDeveloperWear(bottles, 10);
    ASSERT_TRUE(own);
    EXPECT_NEAR(own->value, 14, 0.3);
    EXPECT_LT(own->low, 14);
    EXPECT_GT(own->high, 14);
    EXPECT_EQ(own->tests, 90);
    EXPECT_EQ(own->bottles, 30);
}

KeepingTrial looked(double oxygen, double age, bool passed)
{
    return {MillimolesPerLitre(oxygen), age, passed};
}

// The posterior integrated by a library, with Φ from another.
TEST(OwnOxygenLimit, isThePosteriorMeanOfTheLogarithm)
{
    const Trials bottles{{looked(10, 0.1, true), looked(22, 0.3, false)},
                         {looked(14, 0.2, true), looked(30, 0.2, false)},
                         {looked(0, 0, true)}};
    const double middle = std::log(24);
    const double sd = std::log(2) / 1.645;
    const boost::math::normal standard;
    const auto density = [&](double ln) {
        double p = boost::math::pdf(standard, (ln - middle) / sd);
        for (const auto& bottle : bottles) {
            for (const auto& trial : bottle) {
                const double s = trial.oxygen.value() / std::exp(ln) + trial.agePart;
                const double pass =
                    s > 0 ? 0.02 + 0.96 * boost::math::cdf(standard, -std::log(s) / 0.15) : 0.98;
                p *= trial.passed ? pass : 1 - pass;
            }
        }
        return p;
    };
    using Rule = boost::math::quadrature::gauss_kronrod<double, 61>;
    const double from = middle - 4 * sd;
    const double to = middle + 4 * sd;
    const double whole = Rule::integrate(density, from, to, 10, 1e-12);
    const double mean =
        Rule::integrate([&](double ln) { return ln * density(ln); }, from, to, 10, 1e-12) / whole;
    const auto own = ownOxygenLimit(bottles, MillimolesPerLitre(24));
    ASSERT_TRUE(own);
    EXPECT_NEAR(own->value, std::exp(mean), 1e-3);
    const auto share = [&](double limit) {
        return Rule::integrate(density, from, std::log(limit), 10, 1e-12) / whole;
    };
    EXPECT_NEAR(share(own->low), 0.1, 1e-3);
    EXPECT_NEAR(share(own->high), 0.9, 1e-3);
}

TEST(OwnOxygenLimit, waitsForFiveTrialsInThreeBottlesWithAFailure)
{
    const auto figure = [](const Trials& bottles) {
        return ownOxygenLimit(bottles, MillimolesPerLitre(24));
    };
    const Trials passed{{looked(10, 0.1, true), looked(11, 0.1, true)},
                        {looked(14, 0.2, true), looked(15, 0.2, true)},
                        {looked(5, 0, true)}};
    EXPECT_FALSE(figure(passed));
    Trials failed = passed;
    failed[2][0].passed = false;
    EXPECT_TRUE(figure(failed));
    failed.pop_back();
    failed[1][1].passed = false;
    EXPECT_FALSE(figure(failed));
}

// A failure sooner than the calibration would have it pulls the limit down; later passes push up.
TEST(OwnOxygenLimit, goesWhereTheTrialsPoint)
{
    const Trials soon{{looked(5, 0, true), looked(10, 0.1, false)},
                      {looked(6, 0, true), looked(9, 0.1, false)},
                      {looked(4, 0, true)}};
    const Trials late{{looked(30, 0, true), looked(60, 0.1, false)},
                      {looked(35, 0, true), looked(55, 0.1, false)},
                      {looked(33, 0, true)}};
    EXPECT_LT(ownOxygenLimit(soon, MillimolesPerLitre(24))->high, 24);
    EXPECT_GT(ownOxygenLimit(late, MillimolesPerLitre(24))->low, 24);
}

// Bottles of a developer that ends at 16 mmol a litre where the packet's times say 24: each is
// looked at once a week, the last pass and the first failure count.
TEST(OwnOxygenLimit, manyTrialsFindTheTruth)
{
    std::mt19937 random(13);
    std::uniform_real_distribution<double> rate(0.6, 2.5); // mmol a litre and week
    std::normal_distribution<double> spread(0, 0.15);
    Trials bottles;
    for (int bottle = 0; bottle < 60; ++bottle) {
        const double weekly = rate(random);
        const double ends = std::exp(spread(random)); // of this bottle, in s
        std::vector<KeepingTrial> trials;
        for (int week = 1; trials.empty() || trials.back().passed; ++week) {
            const double oxygen = weekly * week;
            const double age = 0.01 * week;
            const bool passed = oxygen / 16 + age < ends;
            if (passed && !trials.empty()) {
                trials.pop_back();
            }
            trials.push_back(looked(oxygen, age, passed));
        }
        bottles.push_back(trials);
    }
    const auto own = ownOxygenLimit(bottles, MillimolesPerLitre(24));
    ASSERT_TRUE(own);
    EXPECT_NEAR(own->value, 16, 1);
    EXPECT_LT(own->high - own->low, 2);
    EXPECT_EQ(own->bottles, 60);
}

} // namespace
} // namespace ullage::chemistry
