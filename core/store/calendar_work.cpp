#include "core/store/calendar_work.h"

#include <string_view>

namespace ullage::store
{

namespace
{

constexpr std::string_view kOurs = "@ullage";
constexpr std::string_view kWork = "work-";

// Empty for a date of ours that is no work.
std::string idOf(const std::string& uid)
{
    if (!uid.ends_with(kOurs)) {
        return uid;
    }
    return uid.starts_with(kWork)
               ? uid.substr(kWork.size(), uid.size() - kWork.size() - kOurs.size())
               : std::string();
}

const ledger::Work* find(const ledger::CupboardState& cupboard, const std::string& id)
{
    for (const ledger::Work& work : cupboard.works) {
        const auto first = cupboard.firstIds.find(work.id);
        if (work.id == id || (first != cupboard.firstIds.end() && first->second == id)) {
            return &work;
        }
    }
    return nullptr;
}

} // namespace

std::vector<ledger::Work> workOf(const std::vector<CalendarEvent>& events,
                                 const ledger::CupboardState& cupboard)
{
    std::vector<ledger::Work> found;
    for (const CalendarEvent& event : events) {
        const std::string id = idOf(event.uid);
        if (id.empty()) {
            continue;
        }
        ledger::Work work;
        work.id = id;
        work.at = event.at;
        work.rule = event.rule;
        work.name = event.summary.toStdString();
        if (event.films) {
            work.films = chemistry::Films(*event.films);
        }
        if (const auto* known = find(cupboard, id)) {
            work.films = work.films ? work.films : known->films;
            work.developer = known->developer; // no calendar says so
            if (work.at == known->at && work.rule == known->rule && work.films == known->films &&
                work.name == known->name) {
                continue;
            }
            work.id.clear();
            work.replaces = known->id;
        }
        found.push_back(std::move(work));
    }
    return found;
}

} // namespace ullage::store
