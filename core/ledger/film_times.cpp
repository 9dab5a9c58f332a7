#include "core/ledger/film_times.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

namespace
{

// The time as it is shown, in steps of 5 s.
double shown(chemistry::Seconds time) { return std::round(time / kTimesApart); }

} // namespace

std::vector<FilmTimeHere> timesHere(const Batch& developer, const Assessment& so,
                                    const std::vector<formulary::FilmTime>& wanted,
                                    chemistry::Celsius temperature)
{
    std::vector<FilmTimeHere> times;
    for (const formulary::FilmTime& one : wanted) {
        FilmTimeHere here{one.film, one.figure, std::nullopt};
        if (one.figure) {
            const auto time = developingTime(developer, so, one.figure->times, temperature);
            here.time = time ? std::optional(time->time) : std::nullopt;
        }
        times.push_back(std::move(here));
    }
    return times;
}

std::optional<TimesApart> timesApart(const std::vector<FilmTimeHere>& times)
{
    std::optional<TimesApart> apart;
    for (const FilmTimeHere& one : times) {
        if (!one.time) {
            continue;
        }
        if (!apart) {
            apart = TimesApart{*one.time, *one.time};
        }
        apart->shortest = std::min(apart->shortest, *one.time);
        apart->longest = std::max(apart->longest, *one.time);
    }
    const bool differ = apart && shown(apart->shortest) != shown(apart->longest);
    return differ ? apart : std::nullopt;
}

std::vector<std::vector<std::size_t>> byTime(const std::vector<FilmTimeHere>& times)
{
    std::vector<std::vector<std::size_t>> groups;
    std::vector<std::size_t> unknown;
    for (std::size_t i = 0; i < times.size(); ++i) {
        if (!times[i].time) {
            unknown.push_back(i);
            continue;
        }
        const auto same = std::find_if(groups.begin(), groups.end(), [&](const auto& group) {
            return shown(*times[group.front()].time) == shown(*times[i].time);
        });
        if (same == groups.end()) {
            groups.push_back({i});
        } else {
            same->push_back(i);
        }
    }
    if (!unknown.empty()) {
        groups.push_back(std::move(unknown));
    }
    return groups;
}

} // namespace ullage::ledger
