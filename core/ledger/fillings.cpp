#include "core/ledger/fillings.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>

namespace ullage::ledger
{

std::optional<FillingHalf> halfOf(const Event& event)
{
    if (const auto* drawn = std::get_if<Drawn>(&event.what); drawn && !drawn->to.empty()) {
        return FillingHalf{event.batch, drawn->to, drawn->volume, true};
    }
    if (const auto* mixed = std::get_if<Mixed>(&event.what); mixed && !mixed->from.empty()) {
        return FillingHalf{mixed->from, event.batch, mixed->volume, false};
    }
    if (const auto* filled = std::get_if<ToppedUp>(&event.what); filled && !filled->from.empty()) {
        return FillingHalf{filled->from, event.batch, filled->volume, false};
    }
    return std::nullopt;
}

Pairing pairHalves(const std::vector<Event>& entered, const std::unordered_set<std::string>& taken)
{
    // Of one filling that was entered twice there are two of each.
    struct Side {
        std::vector<std::size_t> standing;
        std::size_t taken = 0;
    };
    std::map<std::tuple<std::string, std::string, chemistry::Instant, double>, std::array<Side, 2>>
        fillings;
    for (std::size_t i = 0; i < entered.size(); ++i) {
        if (const auto half = halfOf(entered[i])) {
            Side& side = fillings[{half->donor, half->heir, entered[i].at, half->volume.value()}]
                                 [half->drawn ? 0 : 1];
            if (taken.contains(entered[i].id)) {
                ++side.taken;
            } else {
                side.standing.push_back(i);
            }
        }
    }
    Pairing pairing;
    for (const auto& [what, sides] : fillings) {
        const std::size_t pairs = std::min(sides[0].standing.size(), sides[1].standing.size());
        for (const auto& [mine, other] : {std::pair(sides[0], sides[1]), {sides[1], sides[0]}}) {
            for (std::size_t i = pairs; i < mine.standing.size(); ++i) {
                (i - pairs < other.taken ? pairing.gone : pairing.lone).push_back(mine.standing[i]);
            }
        }
    }
    std::sort(pairing.gone.begin(), pairing.gone.end());
    std::sort(pairing.lone.begin(), pairing.lone.end());
    return pairing;
}

const Event* otherHalf(const std::vector<Event>& entered, const Event& half,
                       const std::unordered_set<std::string>& taken)
{
    const auto mine = halfOf(half);
    if (!mine) {
        return nullptr;
    }
    std::vector<const Event*> same;
    std::vector<const Event*> others;
    for (const Event& event : entered) {
        const auto its = halfOf(event);
        if (!its || taken.contains(event.id) || event.at != half.at || its->donor != mine->donor ||
            its->heir != mine->heir || its->volume != mine->volume) {
            continue;
        }
        (its->drawn == mine->drawn ? same : others).push_back(&event);
    }
    const auto place = std::find_if(same.begin(), same.end(),
                                    [&](const Event* event) { return event->id == half.id; });
    const auto turn = static_cast<std::size_t>(place - same.begin());
    return place != same.end() && turn < others.size() ? others[turn] : nullptr;
}

} // namespace ullage::ledger
