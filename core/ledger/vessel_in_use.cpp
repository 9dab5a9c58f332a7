#include "core/ledger/vessel_in_use.h"

namespace ullage::ledger
{

namespace
{

// Where the last mixing or move put it.
std::string vesselOf(const std::vector<Event>& entered)
{
    std::string vessel;
    for (const Event& event : happened(entered)) {
        if (const auto* mixed = std::get_if<Mixed>(&event.what)) {
            vessel = mixed->vessel;
        } else if (const auto* moved = std::get_if<Moved>(&event.what)) {
            vessel = moved->vessel;
        }
    }
    return vessel;
}

} // namespace

Result<void> standsInVessel(const Batch& batch, const formulary::Formulary& formulary)
{
    if (!batch.inUse() || !formulary.isWithdrawnVessel(batch.vessel->id)) {
        return {};
    }
    return refuse({.code = ErrorCode::NotSuitable,
                   .field = "vessel",
                   .text = batch.vessel->name,
                   .allowed = kVesselThereForm,
                   .subject = batch.name});
}

Result<void> vesselsAreEmpty(StorePort& store, const formulary::Formulary& formulary)
{
    const auto inUse = store.batches(chemistry::Instant::max(), false);
    if (!inUse) {
        return tl::unexpected(inUse.error());
    }
    for (const BatchState& state : *inUse) {
        const auto entered = store.eventsOf(state.id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        const std::string id = vesselOf(*entered);
        if (formulary.isWithdrawnVessel(id)) {
            const auto vessel = formulary.vessel(id);
            return refuse({.code = ErrorCode::NotSuitable,
                           .field = "withdrawn",
                           .text = vessel ? vessel->name : id,
                           .allowed = kEmptyVesselForm,
                           .subject = state.name});
        }
    }
    return {};
}

Result<std::set<std::string>> vesselsInUse(StorePort& store, const std::set<std::string>& without)
{
    const auto inUse = store.batches(chemistry::Instant::max(), false);
    if (!inUse) {
        return tl::unexpected(inUse.error());
    }
    std::set<std::string> found;
    for (const BatchState& state : *inUse) {
        if (without.contains(state.id)) {
            continue;
        }
        const auto entered = store.eventsOf(state.id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        found.insert(vesselOf(*entered));
    }
    return found;
}

} // namespace ullage::ledger
