#include "core/store/statistics_reader.h"

#include "core/store/each_row.h"
#include "core/store/journal_codec.h"

#include <algorithm>
#include <map>

namespace ullage::store
{

using namespace ledger;

namespace
{

constexpr const char* kPackets = "SELECT body FROM entry WHERE type = 'packet'";

Result<std::map<std::string, Packet>> packets(SqlStore& store)
{
    std::map<std::string, Packet> found;
    Statement statement(store.connection(), QString::fromLatin1(kPackets));
    const auto fine = eachRow(statement.run(), [&](const Rows& row) -> Result<void> {
        const auto entry = decodeStored(row.bytes(0));
        if (!entry) {
            return tl::unexpected(entry.error());
        }
        if (const auto* packet = std::get_if<Packet>(&entry->what)) {
            found[packet->id] = *packet;
        }
        return {};
    });
    if (!fine) {
        return tl::unexpected(fine.error());
    }
    return found;
}

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

std::optional<Price> priceOf(const std::vector<Event>& entered,
                             const std::map<std::string, Packet>& packets)
{
    for (const Event& event : happened(entered)) {
        const auto* mixed = std::get_if<Mixed>(&event.what);
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
    const auto known = packets(store);
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
        const auto entered = store.eventsOf(state.id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        const auto batch = foldUntil(*entered, request.now, *formulary);
        if (!batch) {
            return tl::unexpected(batch.error());
        }
        if (*batch) {
            sum.add(**batch, priceOf(*entered, *known));
        }
        if (request.progress && !request.progress(++done, all)) {
            return std::nullopt;
        }
    }
    return sum.result();
}

} // namespace ullage::store
