#include "core/ledger/charges.h"

#include "core/ledger/batch.h"
#include "core/ledger/cupboard_check.h"
#include "core/ledger/item_stock.h"

#include <algorithm>
#include <numeric>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

template <class Line>
Purchase madeOf(const Line& line)
{
    return {itemOf(line), line.bought, line.cost, line.currency};
}

template <class Line>
void addPurchases(std::vector<Purchase>& all, const Lines<Line>& lines)
{
    for (const Line& line : lines.standing()) {
        all.push_back(madeOf(line));
    }
}

// The mixings that name the thing, by time.
std::vector<const Event*> mixingsAmong(const std::vector<Event>& entered, Instant until)
{
    const auto gone = takenBack(entered);
    std::vector<const Event*> found;
    for (const Event& event : entered) {
        if (std::holds_alternative<Mixed>(event.what) && event.at <= until &&
            !gone.contains(event.id)) {
            found.push_back(&event);
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Event* a, const Event* b) { return a->at < b->at; });
    return found;
}

// What each of `uses` costs; without a price, or where it is not known how much was bought, no more
// than that it does.
std::vector<Cost> costsOfUses(const Purchase& purchase, const std::vector<ItemUse>& uses)
{
    std::vector<double> weights;
    for (const ItemUse& use : uses) {
        weights.push_back(use.amount);
    }
    const double used = std::accumulate(weights.begin(), weights.end(), 0.0);
    std::vector<Cost> costs(uses.size(), Cost{{}, false});
    if (!purchase.price || !purchase.item.bought || used <= 0) {
        return costs;
    }
    // Counted up again, more can have been taken than was bought.
    weights.push_back(std::max(0.0, *purchase.item.bought - used));
    Money price;
    price.add(*purchase.price, purchase.currency);
    const auto parts = price.split(weights);
    for (std::size_t i = 0; i < uses.size(); ++i) {
        costs[i] = {parts[i], true};
    }
    return costs;
}

// A packet of powder is used whole by the first mixing that names it; all that do share in it.
void chargeMixings(std::vector<Charge>& charges, const Cost& cost,
                   const std::vector<const Event*>& mixings)
{
    std::vector<double> volumes;
    for (const Event* event : mixings) {
        volumes.push_back(std::get<Mixed>(event->what).volume.value());
    }
    const auto parts = cost.money.split(volumes);
    for (std::size_t i = 0; i < mixings.size(); ++i) {
        charges.push_back(
            {mixings[i]->id, mixings[i]->batch, mixings[i]->at, {parts[i], cost.whole}});
    }
}

void addByBatch(Charges& all, std::vector<Charge> charges)
{
    for (Charge& charge : charges) {
        auto& those = all[charge.batch];
        those.push_back(std::move(charge));
    }
}

void sortByTime(Charges& all)
{
    for (auto& [batch, charges] : all) {
        std::stable_sort(charges.begin(), charges.end(),
                         [](const Charge& a, const Charge& b) { return a.at < b.at; });
    }
}

std::optional<Purchase> standingPurchase(const Cupboard& cupboard, const std::string& id)
{
    if (const auto* packet = cupboard.packets.now(id)) {
        return madeOf(*packet);
    }
    if (const auto* chemical = cupboard.chemicals.now(id)) {
        return madeOf(*chemical);
    }
    const auto* supply = cupboard.supplies.now(id);
    return supply ? std::optional(madeOf(*supply)) : std::nullopt;
}

// Events by the thing that they, or what they take back, are about: under the id that stands.
std::map<std::string, std::vector<Event>> byThing(const Cupboard& cupboard,
                                                  std::vector<Event> entered)
{
    std::map<std::string, std::vector<Event>> found;
    std::map<std::string, std::string> thingOf; // of an event, by its id
    for (Event& event : entered) {
        std::string thing;
        if (const auto* voided = std::get_if<Voided>(&event.what)) {
            thing = thingOf[voided->voids];
        } else {
            CupboardTouched touched;
            touched.add(event);
            const auto item =
                touched.items.empty() ? std::nullopt : cupboard.item(*touched.items.begin());
            thing = item ? item->id : std::string();
        }
        thingOf[event.id] = thing;
        if (!thing.empty()) {
            found[thing].push_back(std::move(event));
        }
    }
    return found;
}

} // namespace

std::vector<Purchase> purchasesOf(const Cupboard& cupboard)
{
    std::vector<Purchase> all;
    addPurchases(all, cupboard.packets);
    addPurchases(all, cupboard.chemicals);
    addPurchases(all, cupboard.supplies);
    return all;
}

Purchase purchaseOf(const Packet& packet) { return madeOf(packet); }

Cost costOfMixing(const Purchase& purchase, chemistry::Millilitres volume)
{
    const bool liquid = purchase.item.kind == ItemKind::Liquid;
    const auto taken = liquid ? liquidFor(purchase.item, volume) : purchase.item.bought;
    const ItemUse use{{}, {}, taken.value_or(0), {}};
    return costsOfUses(purchase, {use}).front();
}

Result<std::vector<Charge>> chargesOf(const Purchase& purchase, const std::vector<Event>& entered,
                                      Instant until)
{
    const auto stock = stockOf(purchase.item, entered, until);
    if (!stock) {
        return tl::unexpected(stock.error());
    }
    const auto mixings = mixingsAmong(entered, until);
    const auto costs = costsOfUses(purchase, stock->uses);
    std::vector<Charge> charges;
    for (std::size_t i = 0; i < stock->uses.size(); ++i) {
        const ItemUse& use = stock->uses[i];
        const bool mixing = std::any_of(mixings.begin(), mixings.end(),
                                        [&](const Event* event) { return event->id == use.event; });
        if (mixing) {
            chargeMixings(charges, costs[i], mixings);
        } else if (!use.forBatch.empty()) {
            charges.push_back({use.event, use.forBatch, use.at, costs[i]});
        }
    }
    if (purchase.item.kind != ItemKind::Liquid) {
        return charges;
    }
    for (const Event* event : mixings) {
        const bool taken = std::any_of(charges.begin(), charges.end(), [&](const Charge& charge) {
            return charge.batch == event->batch;
        });
        charges.push_back({event->id, event->batch, event->at, {{}, taken}});
    }
    return charges;
}

Result<Charges> readCharges(StorePort& store, const Cupboard& cupboard, Instant until)
{
    auto entered = store.eventsOnItems();
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    const auto events = byThing(cupboard, std::move(*entered));
    Charges all;
    for (const Purchase& purchase : purchasesOf(cupboard)) {
        const auto about = events.find(purchase.item.id);
        if (about == events.end()) {
            continue;
        }
        auto charges = chargesOf(purchase, about->second, until);
        if (!charges) {
            return tl::unexpected(charges.error());
        }
        addByBatch(all, std::move(*charges));
    }
    sortByTime(all);
    return all;
}

Result<Charges> readCharges(StorePort& store, const std::vector<Event>& entered, Instant until)
{
    std::set<std::string> batches;
    std::set<std::string> things;
    for (const Event& event : entered) {
        batches.insert(event.batch);
        const auto* mixed = std::get_if<Mixed>(&event.what);
        if (mixed && !mixed->packet.empty()) {
            things.insert(mixed->packet);
        }
    }
    for (const std::string& batch : batches) {
        const auto taken = store.itemsTakenFor(batch);
        if (!taken) {
            return tl::unexpected(taken.error());
        }
        things.insert(taken->begin(), taken->end());
    }
    Charges all;
    if (things.empty()) {
        return all;
    }
    const auto cupboard = readCupboard(store);
    if (!cupboard) {
        return tl::unexpected(cupboard.error());
    }
    std::set<std::string> done; // by the ids that stand
    for (const std::string& thing : things) {
        const auto purchase = standingPurchase(*cupboard, thing);
        if (!purchase || !done.insert(purchase->item.id).second) {
            continue;
        }
        const auto about = eventsOnItem(store, *cupboard, purchase->item.id);
        if (!about) {
            return tl::unexpected(about.error());
        }
        auto charges = chargesOf(*purchase, *about, until);
        if (!charges) {
            return tl::unexpected(charges.error());
        }
        addByBatch(all, std::move(*charges));
    }
    sortByTime(all);
    return all;
}

} // namespace ullage::ledger
