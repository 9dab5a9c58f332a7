#include "core/ledger/cupboard.h"

namespace ullage::ledger
{

namespace
{

std::optional<double> numberOf(const std::optional<chemistry::Millilitres>& volume)
{
    return volume ? std::optional(volume->value()) : std::nullopt;
}

} // namespace

bool isLiquid(const Packet& packet)
{
    return packet.form ? *packet.form == formulary::Form::Liquid : packet.volume.has_value();
}

Item itemOf(const Packet& packet)
{
    const bool liquid = isLiquid(packet);
    return {.id = packet.id,
            .name = {},
            .solution = packet.solution,
            .kind = liquid ? ItemKind::Liquid : ItemKind::Powder,
            .bought = liquid ? numberOf(packet.volume) : std::optional(1.0),
            .makes = packet.makes,
            .keepsOpened = packet.keepsOpened,
            .useBy = packet.useBy,
            .place = packet.place};
}

Item itemOf(const Chemical& chemical)
{
    Item item;
    item.id = chemical.id;
    item.name = chemical.name;
    item.kind = ItemKind::Chemical;
    item.bought = chemical.grams;
    item.useBy = chemical.useBy;
    item.place = chemical.place;
    return item;
}

Item itemOf(const Supply& supply)
{
    Item item;
    item.id = supply.id;
    item.name = supply.name;
    item.kind = ItemKind::Supply;
    item.bought = supply.amount;
    item.useBy = supply.useBy;
    item.place = supply.place;
    return item;
}

void Cupboard::add(const Entry& entry)
{
    if (const auto* packet = std::get_if<Packet>(&entry.what)) {
        packets.add(*packet);
    } else if (const auto* chemical = std::get_if<Chemical>(&entry.what)) {
        chemicals.add(*chemical);
    } else if (const auto* supply = std::get_if<Supply>(&entry.what)) {
        supplies.add(*supply);
    } else if (const auto* barcode = std::get_if<Barcode>(&entry.what)) {
        barcodes.add(*barcode);
    } else if (const auto* work = std::get_if<Work>(&entry.what)) {
        works.add(*work);
    } else if (const auto* container = std::get_if<Container>(&entry.what)) {
        containers.add(*container);
    }
}

std::optional<Item> Cupboard::item(const std::string& id) const
{
    if (const auto* packet = packets.now(id)) {
        return itemOf(*packet);
    }
    if (const auto* chemical = chemicals.now(id)) {
        return itemOf(*chemical);
    }
    const auto* supply = supplies.now(id);
    return supply ? std::optional(itemOf(*supply)) : std::nullopt;
}

std::vector<Item> Cupboard::items() const
{
    std::vector<Item> all;
    for (const Packet& packet : packets.standing()) {
        all.push_back(itemOf(packet));
    }
    for (const Chemical& chemical : chemicals.standing()) {
        all.push_back(itemOf(chemical));
    }
    for (const Supply& supply : supplies.standing()) {
        all.push_back(itemOf(supply));
    }
    return all;
}

std::vector<std::string> Cupboard::idsOfItem(const std::string& id) const
{
    if (packets.now(id) || packets.given().isWithdrawn(id)) {
        return packets.given().family(id);
    }
    if (chemicals.now(id) || chemicals.given().isWithdrawn(id)) {
        return chemicals.given().family(id);
    }
    return supplies.given().family(id);
}

} // namespace ullage::ledger
