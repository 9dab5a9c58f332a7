#include "core/store/packet_reader.h"

#include "core/ledger/cupboard_check.h"
#include "core/ledger/cupboard_state.h"

#include <algorithm>
#include <tuple>

namespace ullage::store
{

using namespace ledger;

Result<std::vector<Packet>> packetsAtHand(SqlStore& store, chemistry::Instant now)
{
    const auto cupboard = readCupboard(store);
    if (!cupboard) {
        return tl::unexpected(cupboard.error());
    }
    const auto ended = store.itemsEnded(chemistry::Instant::max());
    if (!ended) {
        return tl::unexpected(ended.error());
    }
    struct AtHand {
        Packet packet;
        Shelflife life;
    };
    std::vector<AtHand> left;
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
            left.push_back({std::move(packet), shelflife(item, *stock, now)});
        }
    }
    const auto turn = [](const AtHand& one) {
        return std::tuple(one.life.keeps == Keeps::Past,
                          one.life.until.value_or(chemistry::Instant::max()), one.packet.id);
    };
    std::sort(left.begin(), left.end(),
              [&](const AtHand& a, const AtHand& b) { return turn(a) < turn(b); });
    std::vector<Packet> packets;
    for (AtHand& one : left) {
        packets.push_back(std::move(one.packet));
    }
    return packets;
}

} // namespace ullage::store
