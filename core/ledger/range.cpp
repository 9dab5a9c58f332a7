#include "core/ledger/range.h"

#include "core/ledger/fold_together.h"
#include "core/ledger/verdict.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

using Sample = std::array<double, kDrawn>;

Draw drawOf(const Sample& sample)
{
    return {sample[0], sample[1], sample[2], sample[3], sample[4], sample[5], sample[6], sample[7]};
}

// The distributions of the standard library differ between its makers; these do not.
double unit(std::mt19937& random) { return static_cast<double>(random()) / 4294967296.0; }

std::vector<int> shuffled(int count, std::mt19937& random)
{
    std::vector<int> order(static_cast<std::size_t>(count));
    std::iota(order.begin(), order.end(), 0);
    for (int left = count; left > 1; --left) {
        const int other = static_cast<int>(unit(random) * left);
        std::swap(order[std::size_t(left - 1)], order[std::size_t(other)]);
    }
    return order;
}

Result<std::optional<Instant>> dateUnder(const std::string& id, const std::vector<Event>& entered,
                                         Instant until, const formulary::Formulary& formulary,
                                         const chemistry::AirConstants& constants)
{
    const auto batch = foldTogether(id, entered, until, formulary, constants);
    if (!batch) {
        return tl::unexpected(batch.error());
    }
    return *batch ? assess(**batch, constants).discardBy : std::nullopt;
}

// The moment below which `share` of the sorted dates lie, straight between neighbours.
Instant quantile(const std::vector<Instant>& sorted, double share)
{
    const double at = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(std::floor(at));
    const auto above = std::min(below + 1, sorted.size() - 1);
    const auto span = chemistry::daysBetween(sorted[below], sorted[above]);
    return chemistry::addDays(sorted[below], span * (at - static_cast<double>(below)));
}

} // namespace

chemistry::AirConstants constantsOf(const Draw& draw)
{
    chemistry::AirConstants constants;
    constants.bottleExchange = at(chemistry::kBottleExchange, draw.bottleExchange);
    constants.trayExchange = at(chemistry::kTrayExchange, draw.trayExchange);
    constants.ageing = at(chemistry::kAgeing, draw.ageing);
    constants.permeability = draw.permeability;
    constants.capLeak = draw.capLeak;
    const auto& openings = chemistry::kHalfOpenings;
    constants.halfOpenings = static_cast<int>(
        openings.low + std::floor(draw.halfOpenings * (openings.high - openings.low + 1)));
    constants.fullRounding = draw.fullRounding;
    constants.halfRounding = draw.halfRounding;
    return constants;
}

std::vector<Draw> latinHypercube(int count, std::uint32_t seed)
{
    std::mt19937 random(seed);
    std::vector<Sample> samples(static_cast<std::size_t>(count));
    for (std::size_t dimension = 0; dimension < kDrawn; ++dimension) {
        const auto slices = shuffled(count, random);
        for (std::size_t i = 0; i < samples.size(); ++i) {
            samples[i][dimension] = (slices[i] + unit(random)) / count;
        }
    }
    std::vector<Draw> result;
    std::transform(samples.begin(), samples.end(), std::back_inserter(result), drawOf);
    return result;
}

Result<std::optional<DateRange>> discardRange(const std::string& batch,
                                              const std::vector<Event>& entered, Instant until,
                                              const formulary::Formulary& formulary,
                                              const RangeSettings& settings)
{
    const auto value = dateUnder(batch, entered, until, formulary, {});
    if (!value) {
        return tl::unexpected(value.error());
    }
    if (!*value) {
        return std::nullopt;
    }
    DateRange range;
    range.value = **value;
    std::vector<Instant> dates;
    for (const Draw& draw : latinHypercube(settings.samples, settings.seed)) {
        const auto date = dateUnder(batch, entered, until, formulary, constantsOf(draw));
        if (date && *date) {
            dates.push_back(**date);
        }
    }
    range.used = static_cast<int>(dates.size());
    if (dates.empty()) {
        range.early = range.late = range.value;
        return range;
    }
    std::sort(dates.begin(), dates.end());
    range.early = quantile(dates, 0.1);
    range.late = quantile(dates, 0.9);
    return range;
}

} // namespace ullage::ledger
