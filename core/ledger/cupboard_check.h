// Whether what happens to things in the cupboard and to cans goes together: asked when a deed has
// been entered, and of an import on the whole.
#pragma once

#include "core/ledger/can_stock.h"
#include "core/ledger/item_stock.h"
#include "core/ledger/store_port.h"

#include <set>
#include <string>

namespace ullage::ledger
{

/// All lines of the cupboard.
Result<Cupboard> readCupboard(StorePort& store);

/// Events on an item's whole family, as stockOf() asks for them.
Result<std::vector<Event>> eventsOnItem(StorePort& store, const Cupboard& cupboard,
                                        const std::string& id);
/// Likewise of a can, for canStock().
Result<std::vector<Event>> eventsOnContainer(StorePort& store, const Cupboard& cupboard,
                                             const std::string& id);

/// What happened in the end: a voiding of a voiding is about what the latter is about. Empty if the
/// store does not have it.
Result<std::optional<Event>> rootOf(StorePort& store, const Event& event);

/// Every event about the thing of the cupboard, or the can, that the root of `event` is about, as
/// the store has them; none where that is neither.
Result<std::vector<Event>> eventsAbout(StorePort& store, const Event& event);

/// Things that events were about.
struct CupboardTouched {
    std::set<std::string> items;
    std::set<std::string> containers;

    /// What the event names, a mixing's packet and a discarding's can among it.
    void add(const Event& event);
    [[nodiscard]] bool empty() const { return items.empty() && containers.empty(); }
};

/// A batch as it was, by the store.
BatchThen batchThen(StorePort& store, const formulary::Formulary& formulary);

/// The first refusal of stockOf() or canStock() among what was touched; what was withdrawn is
/// passed over, as what nobody counts.
Result<void> goTogether(StorePort& store, const CupboardTouched& touched,
                        const BatchThen& batchThen);

/// Whether a mixing that is not entered yet may name its packet (suitsMixing()).
Result<void> packetSuits(StorePort& store, const std::string& packet);

} // namespace ullage::ledger
