// How far the discard-by date can be believed: the same batch under other constants.
//
// The constants of the air and age model are known as ranges. Each set of them is given the whole
// chain anew: the solution's limits are solved again, the batch folded again, the date read off. So
// a constant that the published keeping times already pin down moves the date little.
//
// Simplifications: the ranges are taken as independent and a share of each range as uniform on both
// sides of the value (half of the samples lie below it). That is a way of looking at ranges, not a
// measured distribution. The calendar's limit does not move.
#pragma once

#include "core/chemistry/constants.h"
#include "core/ledger/batch.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace ullage::ledger
{

/// Where each constant stands in its range: −1 low, 0 the value, 1 high.
struct ConstantShares {
    double bottleExchange = 0;
    double trayExchange = 0;
    double ageing = 0;
    double permeability = 0;
    double capLeak = 0;
};
inline constexpr std::size_t kSampledConstants = 5;

chemistry::AirConstants airConstantsAt(const ConstantShares& shares);

/// A Latin hypercube: in each dimension every one of `count` equal slices of [−1, 1] is met once.
/// The same seed gives the same sample on every machine.
std::vector<ConstantShares> latinHypercube(int count, std::uint32_t seed);

struct DateRange {
    chemistry::Instant value;                  ///< with the constants as they are
    std::optional<chemistry::Instant> allLow;  ///< empty where the keeping times then contradict
    std::optional<chemistry::Instant> allHigh; ///< likewise
    chemistry::Instant early;                  ///< 10 % of the sample lie before
    chemistry::Instant late;                   ///< 90 % do
    int used = 0;                              ///< samples under which the keeping times make sense
};

struct RangeSettings {
    int samples = 200; ///< 10 or more
    std::uint32_t seed = 20'260'601;
};

/// The discard-by date of a batch as of `until`, and its range; the events in order of entry. Empty
/// without a date or before it was mixed; an error as foldUntil().
Result<std::optional<DateRange>> discardRange(const std::vector<Event>& entered,
                                              chemistry::Instant until,
                                              const formulary::Formulary& formulary,
                                              const RangeSettings& settings = {});

} // namespace ullage::ledger
