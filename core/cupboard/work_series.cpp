#include "core/cupboard/work_series.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace ullage::cupboard
{

using chemistry::Instant;

namespace
{

std::optional<Recurrence> ruleOf(const ledger::Work& work)
{
    return work.rule.empty() ? std::nullopt : readRule(work.rule);
}

// "20261222T180000Z" (RFC 5545, 3.3.5), to the second.
std::string momentInUtc(Instant at)
{
    const auto day = std::chrono::floor<std::chrono::days>(at);
    const std::chrono::year_month_day date(day);
    const std::chrono::hh_mm_ss time(std::chrono::floor<std::chrono::seconds>(at - day));
    std::array<char, 32> text{};
    (void)std::snprintf(text.data(), text.size(), "%04d%02u%02uT%02d%02d%02dZ",
                        static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                        static_cast<unsigned>(date.day()), static_cast<int>(time.hours().count()),
                        static_cast<int>(time.minutes().count()),
                        static_cast<int>(time.seconds().count()));
    return text.data();
}

// Without its end, and another in place of it; none if that is empty.
std::string withEnd(const std::string& rule, const std::string& end)
{
    std::string made;
    std::size_t at = 0;
    while (at <= rule.size()) {
        const std::size_t next = std::min(rule.find(';', at), rule.size());
        const std::string part = rule.substr(at, next - at);
        if (!part.starts_with("UNTIL=") && !part.starts_with("COUNT=")) {
            made += (made.empty() ? "" : ";") + part;
        }
        at = next + 1;
    }
    return end.empty() ? made : made + ';' + end;
}

// The rule after so many of its times; empty for one that comes but once more.
std::string ruleAfter(const std::string& rule, const Recurrence& read, int times)
{
    if (!read.count) {
        return rule;
    }
    const int left = *read.count - times;
    return left <= 1 ? std::string() : withEnd(rule, "COUNT=" + std::to_string(left));
}

} // namespace

std::vector<Instant> nextTimes(const ledger::Work& work, Instant from, std::size_t most,
                               const WallClock& clock)
{
    const auto rule = ruleOf(work);
    if (!rule) {
        return work.at >= from && most > 0 ? std::vector{work.at} : std::vector<Instant>();
    }
    std::vector<Instant> found;
    // Most rules come often, some every few years.
    for (const int years : {1, 5, 40}) {
        found = occurrences(work.at, *rule, from,
                            std::max(from, work.at) + std::chrono::days(366 * years), clock);
        if (found.size() >= most) {
            found.resize(most);
            break;
        }
    }
    return found;
}

std::string ruleUntil(const std::string& rule, Instant last)
{
    return withEnd(rule, "UNTIL=" + momentInUtc(last));
}

std::vector<ledger::Work> withoutOnce(const ledger::Work& work, Instant at, const WallClock& clock)
{
    const auto rule = ruleOf(work);
    const auto before =
        rule ? occurrences(work.at, *rule, work.at, at, clock) : std::vector<Instant>{work.at};
    if (before.empty() || before.back() != at) {
        return {};
    }
    const auto after = nextTimes(work, at + std::chrono::milliseconds(1), 1, clock);
    ledger::Work first = work;
    first.id.clear();
    first.replaces = work.id;
    ledger::Work rest = first;
    if (!after.empty()) {
        rest.at = after.front();
        rest.rule = ruleAfter(work.rule, *rule, static_cast<int>(before.size()));
    }
    if (before.size() == 1) {
        if (after.empty()) {
            first.withdrawn = true;
            return {first};
        }
        return {rest};
    }
    const Instant last = before[before.size() - 2];
    first.rule = before.size() == 2 ? std::string() : ruleUntil(work.rule, last);
    if (after.empty()) {
        return {first};
    }
    rest.replaces.clear();
    return {first, rest};
}

} // namespace ullage::cupboard
