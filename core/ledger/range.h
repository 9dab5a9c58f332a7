// How far the discard-by date can be believed: the same batch under other constants.
//
// The constants of the air and age model are known as ranges, the published times as rounded, and
// nobody knows how often the half-full bottle was opened. Each set of them is given the whole chain
// anew: the solution's limits are solved again, the batch folded again, the date read off. So a
// constant that the published keeping times already pin down moves the date little.
//
// Simplifications: the ranges are taken as independent, each uniform in its logarithm, the openings
// as 1 to 4 alike. That is a way of looking at ranges, not a measured distribution. The calendar's
// limit does not move.
#pragma once

#include "core/chemistry/constants.h"
#include "core/ledger/batch.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// A draw: where in its range each thing that is not known for certain stands, from 0 to below 1.
struct Draw {
    double bottleExchange = 0;
    double trayExchange = 0;
    double ageing = 0;
    double permeability = 0; ///< one place for the walls of all materials
    double capLeak = 0;
    double halfOpenings = 0;
    double fullRounding = 0;
    double halfRounding = 0;
};
inline constexpr std::size_t kDrawn = 8;

chemistry::AirConstants constantsOf(const Draw& draw);

/// A Latin hypercube: in each dimension every one of `count` equal slices of [0, 1) is met once.
/// The same seed gives the same sample on every machine.
std::vector<Draw> latinHypercube(int count, std::uint32_t seed);

struct DateRange {
    chemistry::Instant value; ///< with the constants as they are
    chemistry::Instant early; ///< 10 % of the sample lie before
    chemistry::Instant late;  ///< 90 % do
    int used = 0;             ///< samples under which the keeping times make sense
};

struct RangeSettings {
    int samples = 200; ///< 10 or more
    std::uint32_t seed = 20'260'601;
};

/// The discard-by date of a batch as of `until`, and its range; the events are those of the batch
/// and of all it is connected with by filling, in order of entry. Empty without a date or before it
/// was mixed; an error as foldTogether().
Result<std::optional<DateRange>>
discardRange(const std::string& batch, const std::vector<Event>& entered, chemistry::Instant until,
             const formulary::Formulary& formulary, const RangeSettings& settings = {});

} // namespace ullage::ledger
