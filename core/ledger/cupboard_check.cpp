#include "core/ledger/cupboard_check.h"

#include "core/ledger/connected_events.h"
#include "core/ledger/fold_together.h"

#include <algorithm>

namespace ullage::ledger
{

namespace
{

// Those that name any of the ids, in order of entry, each once.
template <class Asked>
Result<std::vector<Event>> eventsOfAll(const std::vector<std::string>& ids, Asked asked)
{
    std::vector<Event> all;
    for (const std::string& id : ids) {
        auto found = asked(id);
        if (!found) {
            return found;
        }
        all.insert(all.end(), std::make_move_iterator(found->begin()),
                   std::make_move_iterator(found->end()));
    }
    if (ids.size() > 1) {
        std::stable_sort(all.begin(), all.end(),
                         [](const Event& a, const Event& b) { return a.entry < b.entry; });
        all.erase(std::unique(all.begin(), all.end(),
                              [](const Event& a, const Event& b) { return a.id == b.id; }),
                  all.end());
    }
    return all;
}

} // namespace

Result<Cupboard> readCupboard(StorePort& store)
{
    const auto lines = store.cupboard();
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    Cupboard cupboard;
    for (const Entry& line : *lines) {
        cupboard.add(line);
    }
    return cupboard;
}

Result<std::vector<Event>> eventsOnItem(StorePort& store, const Cupboard& cupboard,
                                        const std::string& id)
{
    return eventsOfAll(cupboard.idsOfItem(id),
                       [&](const std::string& one) { return store.eventsOnItem(one); });
}

Result<std::vector<Event>> eventsOnContainer(StorePort& store, const Cupboard& cupboard,
                                             const std::string& id)
{
    return eventsOfAll(cupboard.idsOfContainer(id),
                       [&](const std::string& one) { return store.eventsOnContainer(one); });
}

Result<std::optional<Event>> rootOf(StorePort& store, const Event& event)
{
    std::optional<Event> root = event;
    while (root && std::holds_alternative<Voided>(root->what)) {
        auto taken = store.event(std::get<Voided>(root->what).voids);
        if (!taken) {
            return taken;
        }
        root = std::move(*taken);
    }
    return root;
}

Result<std::vector<Event>> eventsAbout(StorePort& store, const Event& event)
{
    const auto root = rootOf(store, event);
    if (!root) {
        return tl::unexpected(root.error());
    }
    CupboardTouched about;
    if (*root) {
        about.add(**root);
    }
    if (!about.items.empty()) {
        return store.eventsOnItem(*about.items.begin());
    }
    return about.containers.empty() ? Result<std::vector<Event>>()
                                    : store.eventsOnContainer(*about.containers.begin());
}

void CupboardTouched::add(const Event& event)
{
    std::visit(
        [&](const auto& what) {
            if constexpr (requires { what.item; }) {
                items.insert(what.item);
            }
            if constexpr (requires { what.container; }) {
                if (!what.container.empty()) {
                    containers.insert(what.container);
                }
            }
            if constexpr (requires { what.packet; }) {
                if (!what.packet.empty()) {
                    items.insert(what.packet);
                }
            }
        },
        event.what);
}

BatchThen batchThen(StorePort& store, const formulary::Formulary& formulary)
{
    return [&store, &formulary](const std::string& id,
                                chemistry::Instant at) -> Result<std::optional<PouredBatch>> {
        const auto entered = connectedEvents(store, id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        return foldTogether(id, *entered, at, formulary).map([](const std::optional<Batch>& batch) {
            return batch ? std::optional(PouredBatch{batch->volume, batch->silver}) : std::nullopt;
        });
    };
}

Result<void> goTogether(StorePort& store, const CupboardTouched& touched,
                        const BatchThen& batchThen)
{
    if (touched.empty()) {
        return {};
    }
    const auto cupboard = readCupboard(store);
    if (!cupboard) {
        return tl::unexpected(cupboard.error());
    }
    for (const std::string& id : touched.items) {
        const auto item = cupboard->item(id);
        const auto entered = eventsOnItem(store, *cupboard, id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        if (const auto stock = item ? stockOf(*item, *entered) : ItemStock(); !stock) {
            return tl::unexpected(stock.error());
        }
    }
    for (const std::string& id : touched.containers) {
        const auto* can = cupboard->containers.now(id);
        const auto entered = eventsOnContainer(store, *cupboard, id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        const auto stock = can ? canStock(*can, *entered, batchThen) : CanStock();
        if (!stock) {
            return tl::unexpected(stock.error());
        }
    }
    return {};
}

Result<void> packetSuits(StorePort& store, const std::string& packet)
{
    const auto cupboard = readCupboard(store);
    if (!cupboard) {
        return tl::unexpected(cupboard.error());
    }
    const auto item = cupboard->item(packet);
    if (!item) {
        return refuse({.code = ErrorCode::NotSuitable,
                       .field = "packet",
                       .text = packet,
                       .allowed = kPacketHereForm});
    }
    return eventsOnItem(store, *cupboard, packet)
        .and_then([&](const std::vector<Event>& entered) { return stockOf(*item, entered); })
        .and_then([&](const ItemStock& stock) { return suitsMixing(*item, stock); });
}

} // namespace ullage::ledger
