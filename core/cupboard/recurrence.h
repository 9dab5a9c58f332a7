// When known work comes again, by the rule that its line says as iCalendar writes it (RFC 5545,
// 3.3.10): a course every second Tuesday, a stock-taking on the first of the month.
//
// Understood are days, weeks, months and years with INTERVAL, COUNT, UNTIL, WKST, BYDAY of a week
// or (with its number) of a month, and BYMONTHDAY. Days and times of day are those of a clock on
// the wall that is handed in, as the core knows no zones: an evening course stays in the evening
// when the clock is put forward.
#pragma once

#include "core/chemistry/quantities.h"

#include <chrono>
#include <functional>
#include <optional>
#include <string_view>
#include <vector>

namespace ullage::cupboard
{

enum class Frequency { Daily, Weekly, Monthly, Yearly };

struct RuleDay {
    std::chrono::weekday day;
    int number = 0; ///< of the month: 2 is the second, −1 the last; 0 every one
};

struct Recurrence {
    Frequency frequency = Frequency::Weekly;
    int interval = 1;         ///< 1 to 1000
    std::optional<int> count; ///< occurrences in all, the first counted in; 1 to 10 000
    std::optional<chemistry::Instant> until; ///< the last may be at it
    bool untilShown = false; ///< `until` is what the clock on the wall shows: a day, or without Z
    std::chrono::weekday weekStart = std::chrono::Monday;
    std::vector<RuleDay> days;  ///< of Weekly without, of Monthly with or without a number
    std::vector<int> monthDays; ///< of Monthly: 1 to 31, or −1 to −31 from the end
};

/// The clock that people go by. Without functions it is that of UTC.
struct WallClock {
    /// What it shows at a moment, as the moment at which a clock of UTC shows the same.
    std::function<chemistry::Instant(chemistry::Instant)> shows;
    /// Back; of a time that it shows twice, or never, one that lies next to it.
    std::function<chemistry::Instant(chemistry::Instant)> when;
};

/// Empty for a text that is no rule, and for one with parts that are not understood: then it is not
/// known when the work comes again, and nothing is guessed.
std::optional<Recurrence> readRule(std::string_view rule);

/// Every occurrence from `from` to `to`, both included, in order, at the first one's time of day;
/// `first` is the first. At most 10 000.
std::vector<chemistry::Instant> occurrences(chemistry::Instant first, const Recurrence& rule,
                                            chemistry::Instant from, chemistry::Instant to,
                                            const WallClock& clock = {});

} // namespace ullage::cupboard
