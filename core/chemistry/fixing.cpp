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

Seconds clearingAt20(Seconds time, Celsius temperature)
{
    const double tens =
        (temperature - Celsius(kReferenceTemperature.value)).value() / kFixDoubling.value;
    return time * std::exp2(tens);
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

std::optional<Seconds> freshClearing(std::span<const ClearingTest> tests, const std::string& film,
                                     const FixerKnown& fixer)
{
    if (fixer.testedFresh) {
        const auto first = std::find_if(tests.begin(), tests.end(), [&](const ClearingTest& test) {
            return test.film == film && test.wear.value() <= 1 + kFilmSlack;
        });
        if (first != tests.end()) {
            return first->at20;
        }
    }
    return fixer.freshFigure;
}

namespace
{

bool lastOfItsFilm(std::span<const ClearingTest> tests, std::size_t place)
{
    return std::none_of(tests.begin() + static_cast<std::ptrdiff_t>(place) + 1, tests.end(),
                        [&](const ClearingTest& later) { return later.film == tests[place].film; });
}

std::optional<Clearing::Doubled> doubledIn(std::span<const ClearingTest> tests,
                                           const FixerKnown& fixer)
{
    for (std::size_t i = tests.size(); i-- > 0;) {
        const auto fresh = freshClearing(tests, tests[i].film, fixer);
        constexpr double kSlack = 1e-9;
        if (fresh && lastOfItsFilm(tests, i) &&
            tests[i].at20.value() >= fresh->value() * kDiscardDoubling.value - kSlack) {
            return Clearing::Doubled{tests[i].at20, *fresh};
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<Clearing> clearing(std::span<const ClearingTest> tests, FilmsPerLitre wear,
                                 const FixerKnown& fixer)
{
    if (tests.empty()) {
        return std::nullopt;
    }
    const ClearingTest& last = tests.back();
    Clearing result;
    result.last = result.now = last.at20;
    result.fresh = freshClearing(tests, last.film, fixer);
    if (result.fresh && fixer.capacity) {
        result.now += *result.fresh * ((wear - last.wear) / *fixer.capacity);
    }
    std::vector<ClearingTest> sameFilm;
    std::copy_if(tests.begin(), tests.end(), std::back_inserter(sameFilm),
                 [&](const ClearingTest& test) { return test.film == last.film; });
    result.fit = fitClearing(sameFilm);
    if (result.fit) {
        result.now = std::max(result.now, result.fit->at(wear));
    }
    if (result.fresh && result.fit && result.fit->slope > 0) {
        result.doubles = whenReaching(*result.fit, *result.fresh * kDiscardDoubling.value);
    }
    result.doubled = doubledIn(tests, fixer);
    return result;
}

} // namespace ullage::chemistry
