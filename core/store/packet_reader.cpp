#include "core/store/packet_reader.h"

#include "core/store/each_row.h"
#include "core/store/line_proof.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

constexpr const char* kPackets = "e.type = 'packet'";
constexpr const char* kMixings =
    "e.kind = 'mixed' AND e.id NOT IN "
    "(SELECT voids FROM entry WHERE kind = 'voided' AND voids IS NOT NULL)";

} // namespace

Result<std::map<std::string, Packet>> readPackets(SqlStore& store)
{
    std::map<std::string, Packet> found;
    LineProof proof(store.connection());
    Statement statement(store.connection(), LineProof::select(kPackets));
    const auto fine = eachRow(statement.run(), [&](const Rows& row) -> Result<void> {
        const auto entry = proof.entry(row);
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

Result<std::vector<Packet>> packetsAtHand(SqlStore& store)
{
    auto packets = readPackets(store);
    if (!packets) {
        return tl::unexpected(packets.error());
    }
    std::vector<Packet> left;
    if (packets->empty()) { // most books: then the mixings need not be read
        return left;
    }
    LineProof proof(store.connection());
    Statement statement(store.connection(), LineProof::select(kMixings));
    const auto fine = eachRow(statement.run(), [&](const Rows& row) -> Result<void> {
        const auto entry = proof.entry(row);
        if (!entry) {
            return tl::unexpected(entry.error());
        }
        if (const auto* event = std::get_if<Event>(&entry->what)) {
            if (const auto* mixed = std::get_if<Mixed>(&event->what)) {
                packets->erase(mixed->packet);
            }
        }
        return {};
    });
    if (!fine) {
        return tl::unexpected(fine.error());
    }
    for (auto& [id, packet] : *packets) {
        left.push_back(std::move(packet));
    }
    return left;
}

} // namespace ullage::store
