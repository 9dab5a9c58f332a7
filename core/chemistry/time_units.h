// One unit of time as another: the only place where sixty, twenty-four and a thousand stand for
// that.
#pragma once

#include "core/chemistry/quantities.h"

#include <chrono>

namespace ullage::chemistry
{

inline constexpr double kSecondsInMinute = 60;
inline constexpr double kSecondsInDay = 86'400;
inline constexpr double kHoursInDay = 24;

/// As a number of minutes: for axes and words.
constexpr double inMinutes(Seconds time) { return time.value() / kSecondsInMinute; }
constexpr Seconds fromMinutes(double minutes) { return Seconds(minutes * kSecondsInMinute); }

constexpr Hours inHours(Days time) { return Hours(time.value() * kHoursInDay); }
constexpr Days inDays(Hours time) { return Days(time.value() / kHoursInDay); }
constexpr Days inDays(Seconds time) { return Days(time.value() / kSecondsInDay); }

/// Of what a clock counted, to the millisecond.
constexpr Seconds inSeconds(std::chrono::milliseconds time)
{
    return Seconds(std::chrono::duration<double>(time).count());
}

} // namespace ullage::chemistry
