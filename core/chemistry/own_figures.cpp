#include "core/chemistry/own_figures.h"

#include "core/chemistry/process_constants.h"

#include <array>
#include <cmath>
#include <map>
#include <string_view>

namespace ullage::chemistry
{

namespace
{

constexpr double kEighty = 1.2816; // sd either way that hold 8 in 10 of a normal distribution
constexpr double kClearingVariance = kOwnClearing.value * kOwnClearing.value;
constexpr double kStripVariance = kOwnStrip.value * kOwnStrip.value;
constexpr int kGrid = 401;
constexpr double kGridReach = 4; // sd of the prior

/// A normal belief as it takes in straight-line measurements through the origin.
struct Belief {
    double precision;
    double pull; // precision × mean

    Belief(double mean, double sd) : precision(1 / (sd * sd)), pull(mean / (sd * sd)) {}
    [[nodiscard]] double mean() const { return pull / precision; }
    [[nodiscard]] double reach() const { return kEighty / std::sqrt(precision); }
};

template <class T>
OwnFigure counted(std::span<const std::vector<T>> bottles)
{
    OwnFigure figure;
    for (const auto& bottle : bottles) {
        figure.tests += static_cast<int>(bottle.size());
        figure.bottles += bottle.empty() ? 0 : 1;
    }
    return figure;
}

// Sums over the tests that share a fresh one.
struct Shared {
    double ww = 0;
    double wy = 0;
    double cw = 0;
    double cy = 0;
    double cc = 0;
};

// Takes in one bottle. Where a fresh test is shared the covariance is 0.01·(I + c·cᵀ), whose
// inverse is 100·(I − c·cᵀ/(1 + cᵀc)).
void takeIn(Belief& slope, const std::vector<WornClearing>& bottle, double capacity)
{
    std::map<std::string_view, Shared> byFilm;
    for (const WornClearing& test : bottle) {
        Shared& sums = byFilm[test.film];
        const double w = test.wear.value();
        const double y = test.at20 / test.fresh - 1;
        const double c = 1 + w / capacity;
        sums.ww += w * w;
        sums.wy += w * y;
        sums.cw += c * w;
        sums.cy += c * y;
        sums.cc += c * c;
    }
    for (const auto& [film, sums] : byFilm) {
        slope.precision += (sums.ww - sums.cw * sums.cw / (1 + sums.cc)) / kClearingVariance;
        slope.pull += (sums.wy - sums.cw * sums.cy / (1 + sums.cc)) / kClearingVariance;
    }
}

double logChance(const KeepingTrial& trial, double limit)
{
    const double used = trial.oxygen.value() / limit + trial.agePart;
    // Φ of a falling argument by erfc, which keeps its digits on both sides; s = 0 is −ln 0 = ∞.
    const double above = used > 0 ? -std::log(used) / kOwnTrial.value : INFINITY;
    const double share = 0.5 * std::erfc((trial.passed ? -above : above) / std::sqrt(2.0));
    return std::log(kOwnMistake.value + (1 - 2 * kOwnMistake.value) * share);
}

using Grid = std::array<double, kGrid>;

// Where the trapezoid sum of `density` passes `share` of the whole, straight within a step.
double quantile(const Grid& at, const Grid& density, double share)
{
    Grid below{};
    for (std::size_t i = 1; i < at.size(); ++i) {
        below[i] = below[i - 1] + (density[i] + density[i - 1]) / 2 * (at[i] - at[i - 1]);
    }
    const double wanted = share * below.back();
    std::size_t i = 1;
    while (i + 1 < at.size() && below[i] < wanted) {
        ++i;
    }
    return at[i - 1] + (at[i] - at[i - 1]) * (wanted - below[i - 1]) / (below[i] - below[i - 1]);
}

} // namespace

std::optional<OwnFigure> ownFixerCapacity(std::span<const std::vector<WornClearing>> bottles,
                                          FilmsPerLitre published)
{
    OwnFigure figure = counted(bottles);
    if (figure.tests < 4 || figure.bottles < 2) {
        return std::nullopt;
    }
    const double capacity = published.value();
    Belief slope(1 / capacity, 0.5 / capacity);
    for (const auto& bottle : bottles) {
        takeIn(slope, bottle, capacity);
    }
    if (slope.mean() - slope.reach() <= 0) {
        return std::nullopt;
    }
    figure.value = 1 / slope.mean();
    figure.low = 1 / (slope.mean() + slope.reach());
    figure.high = 1 / (slope.mean() - slope.reach());
    return figure;
}

double StripMeasure::wanted() const
{
    return factorInForce * std::pow(reference / density, 1 / kStripResponse.value);
}

std::optional<OwnFigure> ownDeveloperWear(std::span<const std::vector<StripMeasure>> bottles,
                                          double published)
{
    OwnFigure figure = counted(bottles);
    if (figure.tests < 5 || figure.bottles < 2) {
        return std::nullopt;
    }
    Belief slope(published / 100, published / 100);
    for (const auto& bottle : bottles) {
        for (const StripMeasure& strip : bottle) {
            const double w = strip.wear.value();
            slope.precision += w * w / kStripVariance;
            slope.pull += w * (strip.wanted() - 1) / kStripVariance;
        }
    }
    figure.value = 100 * slope.mean();
    figure.low = 100 * (slope.mean() - slope.reach());
    figure.high = 100 * (slope.mean() + slope.reach());
    return figure;
}

double trialChance(const KeepingTrial& trial, MillimolesPerLitre limit)
{
    return std::exp(logChance(trial, limit.value()));
}

std::optional<OwnFigure> ownOxygenLimit(std::span<const std::vector<KeepingTrial>> bottles,
                                        MillimolesPerLitre calibrated)
{
    OwnFigure figure = counted(bottles);
    bool failed = false;
    for (const auto& bottle : bottles) {
        for (const KeepingTrial& trial : bottle) {
            failed = failed || !trial.passed;
        }
    }
    if (figure.tests < 5 || figure.bottles < 3 || !failed) {
        return std::nullopt;
    }
    const double middle = std::log(calibrated.value());
    const double sd = std::log(2.0) / 1.645;
    Grid at{};
    Grid density{};
    double most = -INFINITY;
    for (std::size_t i = 0; i < at.size(); ++i) {
        const double z = kGridReach * (2.0 * static_cast<double>(i) / (kGrid - 1) - 1);
        at[i] = middle + sd * z;
        density[i] = -z * z / 2;
        for (const auto& bottle : bottles) {
            for (const KeepingTrial& trial : bottle) {
                density[i] += logChance(trial, std::exp(at[i]));
            }
        }
        most = std::max(most, density[i]);
    }
    double whole = 0;
    double moment = 0;
    for (std::size_t i = 0; i < at.size(); ++i) {
        density[i] = std::exp(density[i] - most);
        const double weight = i == 0 || i + 1 == at.size() ? 0.5 : 1; // trapezoids
        whole += weight * density[i];
        moment += weight * density[i] * at[i];
    }
    figure.value = std::exp(moment / whole);
    figure.low = std::exp(quantile(at, density, 0.1));
    figure.high = std::exp(quantile(at, density, 0.9));
    return figure;
}

} // namespace ullage::chemistry
