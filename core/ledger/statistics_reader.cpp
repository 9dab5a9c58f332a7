#include "core/ledger/statistics_reader.h"

#include "core/ledger/connected_events.h"
#include "core/ledger/costs.h"
#include "core/ledger/cupboard_check.h"
#include "core/ledger/fold_together.h"

#include <algorithm>
#include <map>

namespace ullage::ledger
{

namespace
{

Result<formulary::Formulary> formularyOf(StorePort& store)
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

// Of bottles connected with each other all are reckoned at once, and kept until they are asked for.
class CostsInTurn
{
public:
    CostsInTurn(Charges charges, chemistry::Instant until, const formulary::Formulary& formulary)
        : m_charges(std::move(charges)), m_until(until), m_formulary(&formulary)
    {
    }

    Result<Cost> of(const std::string& batch, const std::vector<Event>& connected)
    {
        auto found = m_known.find(batch);
        if (found == m_known.end()) {
            auto costs = costsOf(connected, m_until, m_charges, *m_formulary);
            if (!costs) {
                return tl::unexpected(costs.error());
            }
            m_known.merge(*costs);
            found = m_known.find(batch);
        }
        if (found == m_known.end()) {
            return Cost{{}, false};
        }
        Cost cost = std::move(found->second);
        m_known.erase(found);
        return cost;
    }

private:
    Charges m_charges;
    chemistry::Instant m_until;
    const formulary::Formulary* m_formulary;
    std::map<std::string, Cost> m_known;
};

} // namespace

Result<std::optional<Statistics>> readStatistics(StorePort& store,
                                                 const formulary::Formulary& formulary,
                                                 const StatisticsRequest& request)
{
    const auto cupboard = readCupboard(store);
    if (!cupboard) {
        return tl::unexpected(cupboard.error());
    }
    auto charges = readCharges(store, *cupboard, request.now);
    auto states = store.batches(request.now, true);
    if (!charges || !states) {
        return tl::unexpected(!charges ? charges.error() : states.error());
    }
    // What ended before the period or was mixed after it has nothing to say.
    std::erase_if(*states, [&](const BatchState& state) {
        return (request.period.from && state.endedAt && *state.endedAt < *request.period.from) ||
               (request.period.until && state.mixedAt >= *request.period.until);
    });
    StatisticsSum sum(request.period, request.calendar, request.bottles);
    for (const Purchase& purchase : purchasesOf(*cupboard)) {
        sum.add(purchase);
    }
    CostsInTurn costs(std::move(*charges), request.now, formulary);
    int done = 0;
    const int all = static_cast<int>(states->size());
    for (const BatchState& state : *states) {
        const auto entered = connectedEvents(store, state.id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        const auto batch = foldTogether(state.id, *entered, request.now, formulary);
        if (!batch) {
            return tl::unexpected(batch.error());
        }
        if (*batch) {
            const auto cost = costs.of(state.id, *entered);
            if (!cost) {
                return tl::unexpected(cost.error());
            }
            sum.add(**batch, *cost);
        }
        if (request.progress && !request.progress(++done, all)) {
            return std::nullopt;
        }
    }
    return sum.result();
}

Result<std::optional<Statistics>> readStatistics(StorePort& store, const StatisticsRequest& request)
{
    const auto formulary = formularyOf(store);
    if (!formulary) {
        return tl::unexpected(formulary.error());
    }
    return readStatistics(store, *formulary, request);
}

} // namespace ullage::ledger
