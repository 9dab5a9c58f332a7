#include "core/chemistry/developing.h"

#include <algorithm>
#include <cmath>

namespace ullage::chemistry
{

namespace
{

Result<void> checkPairs(std::span<const TimeAtTemperature> pairs)
{
    if (pairs.empty()) {
        return refuse({.code = ErrorCode::NoFigure, .field = "base"});
    }
    for (const TimeAtTemperature& pair : pairs) {
        if (auto fine = checkRange("base time", pair.time.value(), kShortestBase.value(),
                                   kLongestBase.value(), "s");
            !fine) {
            return fine;
        }
        if (auto fine = checkRange("base temperature", pair.temperature.value(),
                                   kCoolestBase.value(), kWarmestBase.value(), "°C");
            !fine) {
            return fine;
        }
    }
    return {};
}

} // namespace

Result<BaseTime> baseTime(std::span<const TimeAtTemperature> pairs, Celsius temperature, double q10)
{
    if (auto fine = checkPairs(pairs); !fine) {
        return tl::unexpected(fine.error());
    }
    if (auto fine = checkRange("q10", q10, 1, 5, ""); !fine) {
        return tl::unexpected(fine.error());
    }
    std::vector<TimeAtTemperature> sorted(pairs.begin(), pairs.end());
    std::sort(sorted.begin(), sorted.end(),
              [](const auto& a, const auto& b) { return a.temperature < b.temperature; });
    const auto twin =
        std::adjacent_find(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) {
            return a.temperature == b.temperature;
        });
    if (twin != sorted.end()) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "base",
                       .allowed = "one time for each temperature",
                       .number = twin->temperature.value(),
                       .unit = "°C"});
    }

    const TimeAtTemperature& coolest = sorted.front();
    const TimeAtTemperature& warmest = sorted.back();
    const double low = std::min(kCoolest, coolest.temperature).value();
    const double high = std::max(kWarmest, warmest.temperature).value();
    if (auto fine = checkRange("temperature", temperature.value(), low, high, "°C"); !fine) {
        return tl::unexpected(fine.error());
    }

    BaseTime result;
    if (temperature < kCoolestUsual || temperature > kWarmestUsual) {
        result.warnings.push_back(TimeWarning::OutsideUsualRange);
    }
    const bool outside = temperature < coolest.temperature || temperature > warmest.temperature;
    if (outside) {
        const auto& nearest = temperature < coolest.temperature ? coolest : warmest;
        const double tens = (nearest.temperature - temperature).value() / 10;
        result.time = nearest.time * std::pow(q10, tens);
        result.warnings.push_back(TimeWarning::Extrapolated);
        return result;
    }
    const auto above = std::find_if(sorted.begin(), sorted.end(), [&](const auto& pair) {
        return pair.temperature >= temperature;
    });
    if (above->temperature == temperature) {
        result.time = above->time;
        return result;
    }
    const auto below = above - 1;
    const double share =
        (temperature - below->temperature) / (above->temperature - below->temperature);
    result.time = below->time * std::pow(above->time / below->time, share);
    return result;
}

Result<std::optional<CarriedRange>> carriedRange(std::span<const TimeAtTemperature> pairs,
                                                 Celsius temperature, double q10,
                                                 const Constant& range)
{
    const auto usual = baseTime(pairs, temperature, q10);
    if (!usual) {
        return tl::unexpected(usual.error());
    }
    const auto& warnings = usual->warnings;
    if (std::find(warnings.begin(), warnings.end(), TimeWarning::Extrapolated) == warnings.end()) {
        return std::nullopt;
    }
    const auto slow = baseTime(pairs, temperature, std::min(q10, range.low));
    const auto fast = baseTime(pairs, temperature, std::max(q10, range.high));
    if (!slow || !fast) {
        return tl::unexpected(slow ? fast.error() : slow.error());
    }
    const auto [shortest, longest] = std::minmax(slow->time, fast->time);
    return CarriedRange{shortest, longest, pairs.size() == 1};
}

} // namespace ullage::chemistry
