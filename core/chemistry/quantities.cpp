#include "core/chemistry/quantities.h"

#include <cmath>

namespace ullage::chemistry
{

Instant addDays(Instant start, Days days)
{
    return start + std::chrono::milliseconds(std::llround(days.value() * 86'400'000.0));
}

Instant addMonths(Instant start, int months)
{
    using namespace std::chrono;
    const auto midnight = floor<std::chrono::days>(start);
    year_month_day date{midnight};
    date += std::chrono::months(months);
    if (!date.ok()) {
        date = date.year() / date.month() / last;
    }
    return sys_days(date) + (start - midnight);
}

} // namespace ullage::chemistry
