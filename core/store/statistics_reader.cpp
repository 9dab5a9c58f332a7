#include "core/store/statistics_reader.h"

#include "core/ledger/connected_events.h"
#include "core/ledger/fold_together.h"
#include "core/store/packet_reader.h"

#include <algorithm>
#include <map>

namespace ullage::store
{

using namespace ledger;

namespace
{

Result<formulary::Formulary> formularyOf(SqlStore& store)
{
    formulary::Formulary formulary;
    const auto definitions = store.definitions();
    if (!definitions) {
        return tl::unexpected(definitions.error());
    }
    for (const Entry& entry : *definitions) {
        if (const auto* solution = std::get_if<formulary::Solution>(&entry.what)) {
            formulary.add(*solution);
        } else if (const auto* vessel = std::get_if<formulary::Vessel>(&entry.what)) {
            formulary.add(*vessel);
        }
    }
    return formulary;
}

std::optional<Price> priceOf(const std::string& batch, const std::vector<Event>& entered,
                             const std::map<std::string, Packet>& packets)
{
    for (const Event& event : happened(entered)) {
        const auto* mixed = event.batch == batch ? std::get_if<Mixed>(&event.what) : nullptr;
        const auto found = mixed ? packets.find(mixed->packet) : packets.end();
        if (found != packets.end()) {
            return ledger::priceOf(found->second, mixed->volume);
        }
    }
    return std::nullopt;
}

} // namespace

Result<std::optional<Statistics>> readStatistics(SqlStore& store, const StatisticsRequest& request)
{
    const auto known = readPackets(store);
    const auto formulary = formularyOf(store);
    auto states = store.batches(request.now, true);
    if (!known || !formulary || !states) {
        return tl::unexpected(!known       ? known.error()
                              : !formulary ? formulary.error()
                                           : states.error());
    }
    // What ended before the period or was mixed after it has nothing to say.
    std::erase_if(*states, [&](const BatchState& state) {
        return (request.period.from && state.endedAt && *state.endedAt < *request.period.from) ||
               (request.period.until && state.mixedAt >= *request.period.until);
    });
    StatisticsSum sum(request.period, request.monthOf);
    int done = 0;
    const int all = static_cast<int>(states->size());
    for (const BatchState& state : *states) {
        const auto entered = connectedEvents(store, state.id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        const auto batch = foldTogether(state.id, *entered, request.now, *formulary);
        if (!batch) {
            return tl::unexpected(batch.error());
        }
        if (*batch) {
            sum.add(**batch, priceOf(state.id, *entered, *known));
        }
        if (request.progress && !request.progress(++done, all)) {
            return std::nullopt;
        }
    }
    return sum.result();
}

} // namespace ullage::store
