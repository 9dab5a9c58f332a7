#include "core/store/packet_reader.h"

#include "core/ledger/cupboard_check.h"

#include <algorithm>

namespace ullage::store
{

using namespace ledger;

Result<std::vector<Packet>> packetsAtHand(SqlStore& store)
{
    const auto cupboard = readCupboard(store);
    if (!cupboard) {
        return tl::unexpected(cupboard.error());
    }
    const auto ended = store.itemsEnded(chemistry::Instant::max());
    if (!ended) {
        return tl::unexpected(ended.error());
    }
    std::vector<Packet> left;
    for (Packet& packet : cupboard->packets.standing()) {
        const Item item = itemOf(packet);
        if (item.kind == ItemKind::Powder &&
            std::find(ended->begin(), ended->end(), packet.id) != ended->end()) {
            continue;
        }
        const auto entered = eventsOnItem(store, *cupboard, packet.id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        const auto stock = stockOf(item, *entered);
        if (!stock) {
            return tl::unexpected(stock.error());
        }
        if (suitsMixing(item, *stock)) {
            left.push_back(std::move(packet));
        }
    }
    std::sort(left.begin(), left.end(), [](const Packet& a, const Packet& b) {
        if (a.useBy != b.useBy) {
            return !a.useBy.empty() && (b.useBy.empty() || a.useBy < b.useBy);
        }
        return a.id < b.id;
    });
    return left;
}

} // namespace ullage::store
