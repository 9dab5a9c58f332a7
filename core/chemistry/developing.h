// The development time: base(film, developer, dilution, T) × wear × strip.
//
// Simplifications: temperature acts through one Q10 outside the entered pairs; there is no factor
// from one dilution to another, because published ratios run from 1.4 to 1.7. No figure, no time.
#pragma once

#include "core/chemistry/constants.h"
#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <optional>
#include <span>
#include <vector>

namespace ullage::chemistry
{

/// What a time for a fresh bath, and its temperature, may be.
inline constexpr Seconds kShortestBase{10};
inline constexpr Seconds kLongestBase{4 * 3600.0};
inline constexpr Celsius kCoolestBase{5};
inline constexpr Celsius kWarmestBase{60};

/// One figure of the film's maker for a fresh bath.
struct TimeAtTemperature {
    Celsius temperature;
    Seconds time;
    friend bool operator==(const TimeAtTemperature&, const TimeAtTemperature&) = default;
};

enum class TimeWarning {
    OutsideUsualRange, ///< below 18 or above 24 °C
    Extrapolated,      ///< outside the entered pairs, by Q10
};

struct BaseTime {
    Seconds time;
    std::vector<TimeWarning> warnings;
};

/// The base time at `temperature`. Between pairs a straight line in ln(time) against temperature;
/// outside, or from one pair, Q10 from the nearest. Refuses: no pairs or two at one temperature; a
/// time outside 10 s to 4 h; a pair outside 5 to 60 °C; `temperature` below 13 or above 30 °C
/// unless the pairs cover it; q10 outside 1 to 5. Not rounded.
Result<BaseTime> baseTime(std::span<const TimeAtTemperature> pairs, Celsius temperature,
                          double q10);

/// What a time that is carried by Q10 may be as well, Q10 being known as a range.
struct CarriedRange {
    Seconds shortest;
    Seconds longest;
    bool fromOnePair = false; ///< a second pair would fix Q10 for this film and developer
};

/// baseTime() under every Q10 in `range`, which is widened to hold `q10`. Empty where nothing is
/// carried: at a pair, and between two. Refuses as baseTime().
Result<std::optional<CarriedRange>> carriedRange(std::span<const TimeAtTemperature> pairs,
                                                 Celsius temperature, double q10,
                                                 const Constant& range);

inline constexpr Celsius kCoolestUsual{18};
inline constexpr Celsius kWarmestUsual{24};
/// Hydroquinone is inert near 13 °C: Wellington, Photographic Handbook, p. 130, where it loses
/// power fast below 60 °F (15.6 °C). TM 11-2323, para 33 b, still develops at 55 °F (12.8 °C), at
/// full strength.
inline constexpr Celsius kCoolest{13};
inline constexpr Celsius kWarmest{30};

} // namespace ullage::chemistry
