#include "core/chemistry/fixing.h"

#include "core/chemistry/constants.h"
#include "core/chemistry/films.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <vector>

namespace ullage::chemistry
{

namespace
{

// The points where intercept + slope·w ± band(w) = level, rising ones only. Squaring turns both
// edges into one quadratic; the sign of (line − level) tells which edge a root belongs to.
struct EdgeRoots {
    std::vector<double> upper;
    std::vector<double> lower;
};

double bandFactor(const ClearingFit& fit)
{
    const boost::math::students_t student(fit.tests - 2);
    return boost::math::quantile(student, 0.95) * fit.residualSd;
}

EdgeRoots edgeRoots(const ClearingFit& fit, double level)
{
    const double half = bandFactor(fit);
    const double square = half * half;
    const double away = fit.intercept + fit.slope * fit.meanWear - level; // at the mean wear
    // In d = w − mean: (away + slope·d)² = square·(1 + 1/n + d²/spread)
    const double a = fit.slope * fit.slope - square / fit.spread;
    const double b = 2 * away * fit.slope;
    const double c = away * away - square * (1 + 1.0 / fit.tests);
    std::vector<double> roots;
    if (std::abs(a) < 1e-15 * std::max(1.0, fit.slope * fit.slope)) {
        if (b != 0) {
            roots.push_back(-c / b);
        }
    } else if (const double inside = b * b - 4 * a * c; inside >= 0) {
        // Written so that no difference of near-equal numbers is taken.
        const double q = -0.5 * (b + std::copysign(std::sqrt(inside), b));
        roots.push_back(q / a);
        if (q != 0) {
            roots.push_back(c / q);
        }
    }
    EdgeRoots result;
    for (const double d : roots) {
        const double width = half * std::sqrt(1 + 1.0 / fit.tests + d * d / fit.spread);
        const double bend = width > 0 ? square * d / fit.spread / width : 0;
        const bool onUpper = away + fit.slope * d <= 0;
        if (fit.slope + (onUpper ? bend : -bend) > 0) {
            (onUpper ? result.upper : result.lower).push_back(fit.meanWear + d);
        }
    }
    return result;
}

} // namespace

double coldFactor(Celsius temperature)
{
    const double tens =
        (Celsius(kReferenceTemperature.value) - temperature).value() / kFixDoubling.value;
    return std::max(1.0, std::exp2(tens));
}

Seconds ClearingFit::at(FilmsPerLitre wear) const
{
    return Seconds(intercept + slope * wear.value());
}

Seconds ClearingFit::band(FilmsPerLitre wear) const
{
    const double d = wear.value() - meanWear;
    return Seconds(bandFactor(*this) * std::sqrt(1 + 1.0 / tests + d * d / spread));
}

std::optional<ClearingFit> fitClearing(std::span<const ClearingTest> tests)
{
    if (tests.size() < 3) {
        return std::nullopt;
    }
    ClearingFit fit;
    fit.tests = static_cast<int>(tests.size());
    double meanTime = 0;
    for (const ClearingTest& test : tests) {
        fit.meanWear += test.wear.value() / fit.tests;
        meanTime += test.at20.value() / fit.tests;
    }
    double together = 0;
    for (const ClearingTest& test : tests) {
        const double d = test.wear.value() - fit.meanWear;
        fit.spread += d * d;
        together += d * (test.at20.value() - meanTime);
    }
    const auto [least, most] = std::minmax_element(
        tests.begin(), tests.end(), [](const auto& a, const auto& b) { return a.wear < b.wear; });
    if ((most->wear - least->wear).value() <= kFilmSlack) {
        return std::nullopt; // all at one wear: no line through them
    }
    fit.slope = together / fit.spread;
    fit.intercept = meanTime - fit.slope * fit.meanWear;
    double residual = 0;
    for (const ClearingTest& test : tests) {
        const double off = test.at20.value() - fit.at(test.wear).value();
        residual += off * off;
    }
    fit.residualSd = std::sqrt(residual / (fit.tests - 2));
    return fit;
}

Crossing whenReaching(const ClearingFit& fit, Seconds level)
{
    Crossing crossing;
    if (fit.slope > 0) {
        crossing.at = FilmsPerLitre((level.value() - fit.intercept) / fit.slope);
    }
    if (fit.residualSd == 0) {
        crossing.low = crossing.high = crossing.at;
        return crossing;
    }
    // The upper edge is a valley: it rises for good at its last rising root. The lower is a hill.
    const EdgeRoots roots = edgeRoots(fit, level.value());
    if (!roots.upper.empty()) {
        crossing.low = FilmsPerLitre(*std::max_element(roots.upper.begin(), roots.upper.end()));
    }
    if (!roots.lower.empty()) {
        crossing.high = FilmsPerLitre(*std::min_element(roots.lower.begin(), roots.lower.end()));
    }
    return crossing;
}

Seconds Clearing::fixingTime() const { return now * kFixFactor.value; }

bool silverIsHazardousWaste(GramsPerLitre silver) { return silver.value() >= kSilverWaste.value; }

std::optional<Clearing> clearing(std::span<const ClearingTest> tests, FilmsPerLitre wear,
                                 std::optional<Seconds> freshFigure)
{
    if (tests.empty()) {
        return std::nullopt;
    }
    Clearing result;
    result.last = tests.back().at20;
    const auto first = std::find_if(tests.begin(), tests.end(), [](const auto& test) {
        return test.wear.value() <= 1 + kFilmSlack;
    });
    result.fresh = first != tests.end() ? std::optional(first->at20) : freshFigure;
    result.fit = fitClearing(tests);
    result.now = result.fit ? result.fit->at(wear) : result.last;
    if (result.fresh) {
        const Seconds twice = *result.fresh * kDiscardDoubling.value;
        result.doubled = result.last.value() >= twice.value() - 1e-9;
        if (result.fit) {
            result.doubles = whenReaching(*result.fit, twice);
        }
    }
    return result;
}

} // namespace ullage::chemistry
