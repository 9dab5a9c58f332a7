#include "core/ledger/connected_events.h"

#include "core/ledger/fillings.h"

#include <algorithm>
#include <set>

namespace ullage::ledger
{

Result<std::vector<Event>> connectedEvents(StorePort& store, const std::string& batch)
{
    std::vector<Event> all;
    std::set<std::string> seen;
    std::vector<std::string> next{batch};
    while (!next.empty()) {
        const std::string id = std::move(next.back());
        next.pop_back();
        if (!seen.insert(id).second) {
            continue;
        }
        auto entered = store.eventsOf(id);
        if (!entered) {
            return entered;
        }
        const auto others = store.filledWith(id);
        if (!others) {
            return tl::unexpected(others.error());
        }
        next.insert(next.end(), others->begin(), others->end());
        for (Event& event : *entered) {
            if (const auto half = halfOf(event)) {
                next.push_back(half->other());
            }
            all.push_back(std::move(event));
        }
    }
    if (seen.size() > 1) {
        std::stable_sort(all.begin(), all.end(),
                         [](const Event& a, const Event& b) { return a.entry < b.entry; });
    }
    return all;
}

} // namespace ullage::ledger
