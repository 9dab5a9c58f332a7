#include "core/ledger/deed_events.h"

#include <utility>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

// Why something was drawn is a code, worded by the application.
constexpr const char* kForTopUp = "top-up";
constexpr const char* kForDecanting = "decant";
constexpr const char* kForRoom = "make-room";

Event drawn(const std::string& batch, Drawn what, Instant at, const IdMaker& newId)
{
    return {newId(), batch, at, std::move(what), {}};
}

} // namespace

std::vector<Event> eventsOf(const NewBatch& batch, const std::string& id, When when,
                            const IdMaker& newId)
{
    const Mixed mixed{batch.solution, batch.vessel,         batch.volume, batch.name,
                      batch.packet,   batch.historyUnknown, batch.from,   batch.mixedOn,
                      batch.assumed,  batch.filmsBefore};
    const auto air = batch.airLeft ? batch.airLeft : when.airLeft;
    std::vector<Event> events{{newId(), id, when.at, mixed, air}};
    if (!batch.from.empty()) {
        events.push_back(drawn(batch.from, {batch.volume, kForDecanting, id}, when.at, newId));
    }
    if (batch.dissolved) {
        events.push_back({newId(), id, when.at, Dissolved{}, {}});
    }
    for (const NewBatch::Take& take : batch.takes) {
        events.push_back({newId(), {}, when.at, Taken{take.item, take.amount, id}, {}});
    }
    return events;
}

std::vector<Event> eventsOf(const FilmRun& run, const std::string& id, Instant at,
                            const IdMaker& newId)
{
    std::vector<Event> events;
    for (const Bath& bath : run.baths) {
        const Processed processed{run.load, bath.used, bath.lost, bath.oneShot, id, bath.second};
        events.push_back({newId(), bath.batch, at, processed, bath.airLeft});
    }
    for (const RunTopUp& topUp : run.topUps) {
        if (topUp.drawn.value() > 0) {
            events.push_back(drawn(topUp.batch, {topUp.drawn, kForRoom, {}}, at, newId));
        }
        if (!topUp.drawnFrom.empty()) {
            events.push_back(drawn(topUp.drawnFrom, {topUp.volume, kForTopUp, {}}, at, newId));
        }
        const auto filled = topUpEvents(topUp.batch, {topUp.volume, topUp.from, topUp.solution},
                                        {at, topUp.airLeft}, newId);
        events.insert(events.end(), filled.begin(), filled.end());
    }
    return events;
}

std::vector<Event> topUpEvents(const std::string& batch, const ToppedUp& what, When when,
                               const IdMaker& newId)
{
    std::vector<Event> events{{newId(), batch, when.at, what, when.airLeft}};
    if (!what.from.empty()) {
        events.push_back(drawn(what.from, {what.volume, kForTopUp, batch}, when.at, newId));
    }
    return events;
}

std::vector<Event> exchangeEvents(const std::string& first, const Discarded& going,
                                  const std::string& second, const std::string& note, When when,
                                  const IdMaker& newId)
{
    return {{newId(), first, when.at, going, when.airLeft},
            {newId(), second, when.at, Noted{note, {}}, {}}};
}

} // namespace ullage::ledger
