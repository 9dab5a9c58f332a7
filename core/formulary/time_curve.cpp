#include "core/formulary/time_curve.h"

#include "core/chemistry/developing.h"

#include <algorithm>

namespace ullage::formulary
{

using chemistry::Celsius;
using chemistry::Seconds;
using chemistry::TimeAtTemperature;

namespace
{

std::vector<TimeAtTemperature> stretch(std::span<const TimeAtTemperature> times, double q10,
                                       Celsius from, Celsius to)
{
    std::vector<TimeAtTemperature> points;
    constexpr int kSteps = 30;
    for (int i = 0; i <= kSteps && from < to; ++i) {
        // Rounding must not carry the last step out of the range that has a time.
        const Celsius at = std::min(from + (to - from) * (static_cast<double>(i) / kSteps), to);
        if (const auto base = chemistry::baseTime(times, at, q10)) {
            points.push_back({at, base->time});
        }
    }
    return points;
}

} // namespace

std::optional<Seconds> timeAt20(std::span<const TimeAtTemperature> times, double q10)
{
    const auto base = chemistry::baseTime(times, Celsius(20), q10);
    return base ? std::optional(base->time) : std::nullopt;
}

std::optional<TimeCurve> timeCurve(std::span<const TimeAtTemperature> times, double q10)
{
    if (times.empty() || !chemistry::baseTime(times, times.front().temperature, q10)) {
        return std::nullopt;
    }
    const auto [coolest, warmest] =
        std::minmax_element(times.begin(), times.end(), [](const auto& a, const auto& b) {
            return a.temperature < b.temperature;
        });
    TimeCurve curve{.low = std::min(chemistry::kCoolest, coolest->temperature),
                    .high = std::max(chemistry::kWarmest, warmest->temperature)};
    curve.below = stretch(times, q10, curve.low, coolest->temperature);
    curve.between = stretch(times, q10, coolest->temperature, warmest->temperature);
    curve.above = stretch(times, q10, warmest->temperature, curve.high);
    return curve;
}

} // namespace ullage::formulary
