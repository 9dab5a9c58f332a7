// A film maker's time against temperature, as the formulary shows it.
#pragma once

#include "core/chemistry/developing.h"

#include <optional>
#include <span>
#include <vector>

namespace ullage::formulary
{

/// The time of a fresh bath at 20 °C; empty where the times give none.
std::optional<chemistry::Seconds> timeAt20(std::span<const chemistry::TimeAtTemperature> times,
                                           double q10);

struct TimeCurve {
    chemistry::Celsius low;                            ///< coolest that has a time
    chemistry::Celsius high;                           ///< warmest
    std::vector<chemistry::TimeAtTemperature> below;   ///< by Q10 from the coolest entered
    std::vector<chemistry::TimeAtTemperature> between; ///< between those entered; empty for one
    std::vector<chemistry::TimeAtTemperature> above;   ///< by Q10 from the warmest
};

/// Over every temperature that a time can be given for, 30 steps a part; empty for no times and for
/// those that chemistry::baseTime() refuses.
std::optional<TimeCurve> timeCurve(std::span<const chemistry::TimeAtTemperature> times, double q10);

} // namespace ullage::formulary
