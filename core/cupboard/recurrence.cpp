#include "core/cupboard/recurrence.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace ullage::cupboard
{

using chemistry::Instant;
using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::weekday;
using std::chrono::year_month;

namespace
{

constexpr std::size_t kMost = 10'000;
constexpr std::array<std::string_view, 7> kDayCodes{"SU", "MO", "TU", "WE", "TH", "FR", "SA"};

std::optional<int> number(std::string_view text)
{
    if (text.starts_with('+')) {
        text.remove_prefix(1);
    }
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool whole = error == std::errc() && end == text.data() + text.size();
    return whole ? std::optional(value) : std::nullopt;
}

std::optional<int> numberWithin(std::string_view text, int low, int high)
{
    const auto value = number(text);
    return value && *value >= low && *value <= high ? value : std::nullopt;
}

std::vector<std::string_view> parts(std::string_view text, char between)
{
    std::vector<std::string_view> found;
    while (true) {
        const auto end = text.find(between);
        found.push_back(text.substr(0, end));
        if (end == std::string_view::npos) {
            return found;
        }
        text.remove_prefix(end + 1);
    }
}

std::optional<weekday> dayOfCode(std::string_view code)
{
    const auto found = std::find(kDayCodes.begin(), kDayCodes.end(), code);
    return found == kDayCodes.end()
               ? std::nullopt
               : std::optional(weekday(static_cast<unsigned>(found - kDayCodes.begin())));
}

std::optional<RuleDay> ruleDay(std::string_view text)
{
    if (text.size() < 2) {
        return std::nullopt;
    }
    const auto day = dayOfCode(text.substr(text.size() - 2));
    const auto before = text.substr(0, text.size() - 2);
    const auto count = before.empty() ? std::optional(0) : numberWithin(before, -5, 5);
    if (!day || !count || (!before.empty() && *count == 0)) {
        return std::nullopt;
    }
    return RuleDay{*day, *count};
}

// "20261231" is all of that day, "20261231T190000Z" a moment.
std::optional<Instant> until(std::string_view text)
{
    const auto piece = [&](std::size_t at, std::size_t size) {
        return text.size() >= at + size ? numberWithin(text.substr(at, size), 0, 9999)
                                        : std::nullopt;
    };
    const auto year = piece(0, 4);
    const auto month = piece(4, 2);
    const auto day = piece(6, 2);
    if (!year || !month || !day) {
        return std::nullopt;
    }
    const std::chrono::year_month_day date{std::chrono::year(*year),
                                           std::chrono::month(static_cast<unsigned>(*month)),
                                           std::chrono::day(static_cast<unsigned>(*day))};
    if (!date.ok()) {
        return std::nullopt;
    }
    if (text.size() == 8) {
        return sys_days(date) + days(1) - std::chrono::milliseconds(1);
    }
    const auto hour = piece(9, 2);
    const auto minute = piece(11, 2);
    const auto second = piece(13, 2);
    const bool moment = (text.size() == 15 || (text.size() == 16 && text[15] == 'Z')) &&
                        text[8] == 'T' && hour && minute && second;
    return moment ? std::optional<Instant>(sys_days(date) + std::chrono::hours(*hour) +
                                           std::chrono::minutes(*minute) +
                                           std::chrono::seconds(*second))
                  : std::nullopt;
}

bool take(Recurrence& rule, std::string_view name, std::string_view value)
{
    if (name == "INTERVAL") {
        rule.interval = numberWithin(value, 1, 1000).value_or(0);
        return rule.interval > 0;
    }
    if (name == "COUNT") {
        rule.count = numberWithin(value, 1, static_cast<int>(kMost));
        return rule.count.has_value();
    }
    if (name == "UNTIL") {
        rule.until = until(value);
        rule.untilShown = !value.ends_with('Z');
        return rule.until.has_value();
    }
    if (name == "WKST") {
        const auto day = dayOfCode(value);
        rule.weekStart = day.value_or(rule.weekStart);
        return day.has_value();
    }
    if (name == "BYDAY") {
        for (const auto one : parts(value, ',')) {
            const auto day = ruleDay(one);
            if (!day) {
                return false;
            }
            rule.days.push_back(*day);
        }
        return true;
    }
    if (name == "BYMONTHDAY") {
        for (const auto one : parts(value, ',')) {
            const auto day = numberWithin(one, -31, 31);
            if (!day || *day == 0) {
                return false;
            }
            rule.monthDays.push_back(*day);
        }
        return true;
    }
    return false;
}

bool goesTogether(const Recurrence& rule)
{
    const bool numbered = std::any_of(rule.days.begin(), rule.days.end(),
                                      [](const RuleDay& day) { return day.number != 0; });
    switch (rule.frequency) {
    case Frequency::Weekly:
        return rule.monthDays.empty() && !numbered;
    case Frequency::Monthly:
        return rule.monthDays.empty() || rule.days.empty();
    default:
        return rule.monthDays.empty() && rule.days.empty();
    }
}

// Days of the month that the rule means, those that the month does not have left out.
std::vector<sys_days> daysOf(const year_month& month, const Recurrence& rule, unsigned firstsDay)
{
    std::vector<sys_days> found;
    const auto last =
        std::chrono::year_month_day_last(month.year(), std::chrono::month_day_last(month.month()));
    const int size = static_cast<int>(static_cast<unsigned>(last.day()));
    const auto add = [&](int day) {
        const int place = day < 0 ? size + 1 + day : day;
        if (place >= 1 && place <= size) {
            found.push_back(month / std::chrono::day(static_cast<unsigned>(place)));
        }
    };
    for (const RuleDay& day : rule.days) {
        const sys_days first = month / std::chrono::day(1);
        const int begin = static_cast<int>((day.day - weekday(first)).count()) + 1;
        const int count = (size - begin) / 7 + 1;
        for (int number = 1; number <= count; ++number) {
            if (day.number == 0 || day.number == number || day.number == number - count - 1) {
                add(begin + 7 * (number - 1));
            }
        }
    }
    for (const int day : rule.monthDays) {
        add(day);
    }
    if (rule.days.empty() && rule.monthDays.empty()) {
        add(static_cast<int>(firstsDay));
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

// Days of the rule's turn number `turn`, from the one that the first falls into.
std::vector<sys_days> daysOfTurn(const sys_days& first, const Recurrence& rule, int turn)
{
    const std::chrono::year_month_day date{first};
    const int step = turn * rule.interval;
    switch (rule.frequency) {
    case Frequency::Daily:
        return {first + days(step)};
    case Frequency::Weekly: {
        if (rule.days.empty()) {
            return {first + days(7 * step)};
        }
        const sys_days week = first - (weekday(first) - rule.weekStart) + days(7 * step);
        std::vector<sys_days> found;
        for (const RuleDay& day : rule.days) {
            found.push_back(week + (day.day - rule.weekStart));
        }
        std::sort(found.begin(), found.end());
        return found;
    }
    case Frequency::Monthly:
        return daysOf(date.year() / date.month() + std::chrono::months(step), rule,
                      static_cast<unsigned>(date.day()));
    case Frequency::Yearly:
        return daysOf((date.year() + std::chrono::years(step)) / date.month(), rule,
                      static_cast<unsigned>(date.day()));
    }
    return {};
}

std::vector<Instant> occurrencesInUtc(Instant first, const Recurrence& rule, Instant from,
                                      Instant to)
{
    const auto day = std::chrono::floor<days>(first);
    const auto time = first - day;
    std::vector<Instant> found;
    int count = 0;
    // A rule may mean days that hardly ever come: the turns are counted too.
    constexpr int kMostTurns = 200'000;
    for (int turn = 0; turn < kMostTurns; ++turn) {
        for (const sys_days& one : daysOfTurn(day, rule, turn)) {
            const Instant at = one + time;
            if (at < first) {
                continue;
            }
            if (at > to || (rule.until && at > *rule.until) ||
                (rule.count && count >= *rule.count) || found.size() >= kMost) {
                return found;
            }
            ++count;
            if (at >= from) {
                found.push_back(at);
            }
        }
    }
    return found;
}

} // namespace

std::optional<Recurrence> readRule(std::string_view rule)
{
    constexpr std::array<std::string_view, 4> kFrequencies{"DAILY", "WEEKLY", "MONTHLY", "YEARLY"};
    Recurrence read;
    bool frequency = false;
    for (const auto part : parts(rule, ';')) {
        const auto equals = part.find('=');
        if (equals == std::string_view::npos) {
            return std::nullopt;
        }
        const auto name = part.substr(0, equals);
        const auto value = part.substr(equals + 1);
        if (name == "FREQ") {
            const auto found = std::find(kFrequencies.begin(), kFrequencies.end(), value);
            if (found == kFrequencies.end()) {
                return std::nullopt;
            }
            read.frequency = static_cast<Frequency>(found - kFrequencies.begin());
            frequency = true;
        } else if (!take(read, name, value)) {
            return std::nullopt;
        }
    }
    const bool bothEnds = read.count && read.until; // RFC 5545 allows one of them
    return frequency && !bothEnds && goesTogether(read) ? std::optional(read) : std::nullopt;
}

std::vector<Instant> occurrences(Instant first, const Recurrence& rule, Instant from, Instant to,
                                 const WallClock& clock)
{
    if (!clock.shows || !clock.when) {
        return occurrencesInUtc(first, rule, from, to);
    }
    Recurrence shown = rule;
    if (rule.until && !rule.untilShown) {
        shown.until = clock.shows(*rule.until);
    }
    // No clock is ever put by more; what lies outside is left out below.
    constexpr std::chrono::hours kMostPut{24};
    auto found = occurrencesInUtc(clock.shows(first), shown, clock.shows(from) - kMostPut,
                                  clock.shows(to) + kMostPut);
    for (Instant& at : found) {
        at = clock.when(at);
    }
    std::erase_if(found, [&](Instant at) { return at < from || at > to; });
    return found;
}

} // namespace ullage::cupboard
