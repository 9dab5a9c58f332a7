#include "core/ledger/deed_events.h"

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

// Why something was drawn is a code, worded by the application.
constexpr const char* kForTopUp = "top-up";
constexpr const char* kForRoom = "make-room";

Event drawn(const std::string& batch, chemistry::Millilitres volume, const char* why, Instant at,
            const IdMaker& newId)
{
    return {newId(), batch, at, Drawn{volume, why}, {}};
}

} // namespace

std::vector<Event> eventsOf(const NewBatch& batch, const std::string& id, When when,
                            const IdMaker& newId)
{
    const Mixed mixed{batch.solution, batch.vessel, batch.volume,
                      batch.name,     batch.packet, batch.historyUnknown};
    std::vector<Event> events{{newId(), id, when.at, mixed, when.airLeft}};
    if (batch.dissolved) {
        events.push_back({newId(), id, when.at, Dissolved{}, {}});
    }
    return events;
}

std::vector<Event> eventsOf(const FilmRun& run, const std::string& id, Instant at,
                            const IdMaker& newId)
{
    std::vector<Event> events;
    for (const Bath& bath : run.baths) {
        const Processed processed{run.load, bath.used, bath.lost, bath.oneShot, id};
        events.push_back({newId(), bath.batch, at, processed, bath.airLeft});
    }
    for (const RunTopUp& topUp : run.topUps) {
        if (topUp.drawn.value() > 0) {
            events.push_back(drawn(topUp.batch, topUp.drawn, kForRoom, at, newId));
        }
        const auto filled =
            topUpEvents(topUp.batch, topUp.volume, {at, topUp.airLeft}, topUp.from, newId);
        events.insert(events.end(), filled.begin(), filled.end());
    }
    return events;
}

std::vector<Event> topUpEvents(const std::string& batch, chemistry::Millilitres volume, When when,
                               const std::string& from, const IdMaker& newId)
{
    std::vector<Event> events;
    if (!from.empty()) {
        events.push_back(drawn(from, volume, kForTopUp, when.at, newId));
    }
    events.push_back({newId(), batch, when.at, ToppedUp{volume, from}, when.airLeft});
    return events;
}

} // namespace ullage::ledger
