#include "app/bench/run_logged.h"

#include <algorithm>

namespace ullage::app
{

bool isLogged(Door& door, const ledger::RunState& state)
{
    if (!state.loggedAt)
        return false;
    const ledger::Load load = ledger::loadOf(state.films);
    for (const ledger::RunBath& bath : state.baths) {
        const auto events = door.events(bath.batch);
        const auto same = [&](const ledger::Event& event) {
            const auto* done = std::get_if<ledger::Processed>(&event.what);
            return done && event.at == *state.loggedAt && done->load == load;
        };
        if (events && std::any_of(events->begin(), events->end(), same))
            return true;
    }
    return false;
}

} // namespace ullage::app
