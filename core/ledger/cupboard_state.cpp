#include "core/ledger/cupboard_state.h"

#include "core/ledger/cupboard_check.h"

#include <algorithm>
#include <charconv>
#include <set>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

// What a thing costs and when it came stands on its own line.
void addLine(ItemHere& here, const Cupboard& cupboard)
{
    const auto take = [&](const auto& line) {
        here.line = line;
        here.bought = line.bought;
        here.cost = line.cost;
        here.currency = line.currency;
    };
    if (const auto* packet = cupboard.packets.now(here.item.id)) {
        take(*packet);
        here.lot = packet->lot;
    } else if (const auto* chemical = cupboard.chemicals.now(here.item.id)) {
        take(*chemical);
    } else if (const auto* supply = cupboard.supplies.now(here.item.id)) {
        take(*supply);
    }
}

Result<std::vector<ItemHere>> itemsHere(StorePort& store, const Cupboard& cupboard, Instant at)
{
    const auto ended = store.itemsEnded(at);
    if (!ended) {
        return tl::unexpected(ended.error());
    }
    const std::set<std::string> gone(ended->begin(), ended->end());
    std::vector<ItemHere> found;
    for (const Item& item : cupboard.items()) {
        const auto ids = cupboard.idsOfItem(item.id);
        // A liquid that a mixing names is not used whole by it.
        if (item.kind != ItemKind::Liquid &&
            std::any_of(ids.begin(), ids.end(),
                        [&](const std::string& id) { return gone.contains(id); })) {
            continue;
        }
        const auto entered = eventsOnItem(store, cupboard, item.id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        auto stock = stockOf(item, *entered, at);
        if (!stock) {
            return tl::unexpected(stock.error());
        }
        if (!stock->isHere()) {
            continue;
        }
        ItemHere here;
        here.item = item;
        here.life = shelflife(item, *stock, at);
        here.stock = std::move(*stock);
        addLine(here, cupboard);
        found.push_back(std::move(here));
    }
    return found;
}

template <class T>
void addThings(std::map<std::string, ItemLine>& things, const Lines<T>& lines)
{
    for (const T& line : lines.standing()) {
        for (const std::string& id : lines.given().family(line.id)) {
            things[id] = line;
        }
    }
}

} // namespace

std::optional<Instant> endOfDay(const std::string& day)
{
    const auto number = [&](std::size_t from, std::size_t count) -> std::optional<int> {
        int value = 0;
        const char* first = day.data() + from;
        const auto [end, error] = std::from_chars(first, first + count, value);
        return error == std::errc() && end == first + count ? std::optional(value) : std::nullopt;
    };
    if (day.size() != 10 || day[4] != '-' || day[7] != '-') {
        return std::nullopt;
    }
    const auto year = number(0, 4);
    const auto month = number(5, 2);
    const auto date = number(8, 2);
    if (!year || !month || !date || *month < 0 || *date < 0) {
        return std::nullopt;
    }
    const std::chrono::year_month_day found{std::chrono::year(*year),
                                            std::chrono::month(static_cast<unsigned>(*month)),
                                            std::chrono::day(static_cast<unsigned>(*date))};
    if (!found.ok()) {
        return std::nullopt;
    }
    return std::chrono::sys_days(found) + std::chrono::days(1) - std::chrono::milliseconds(1);
}

Shelflife shelflife(const Item& item, const ItemStock& stock, Instant at)
{
    Shelflife life;
    life.until = endOfDay(item.useBy);
    if (item.keepsOpened && stock.openedAt) {
        const Instant opened = chemistry::addDays(*stock.openedAt, *item.keepsOpened);
        if (!life.until || opened < *life.until) {
            life.until = opened;
            life.byOpening = true;
        }
    }
    if (life.until && *life.until < at) {
        life.keeps = Keeps::Past;
    } else if (life.until && chemistry::daysBetween(at, *life.until) <= kEndsSoon) {
        life.keeps = Keeps::EndsSoon;
    }
    return life;
}

Result<CupboardState> cupboardState(StorePort& store, Instant at, const BatchThen& batchThen,
                                    std::vector<Unread>* leftOut)
{
    const auto cupboard = readCupboard(store);
    if (!cupboard) {
        return tl::unexpected(cupboard.error());
    }
    CupboardState state;
    auto items = itemsHere(store, *cupboard, at);
    if (!items) {
        return tl::unexpected(items.error());
    }
    state.items = std::move(*items);
    for (const Container& can : cupboard->containers.standing()) {
        const auto entered = eventsOnContainer(store, *cupboard, can.id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        auto stock = canStock(can, *entered, batchThen, at);
        if (!stock && leftOut && stock.error().code != ErrorCode::StoreFailed) {
            leftOut->push_back({can.id, can.name, {}, state.cans.size(), stock.error()});
            continue;
        }
        if (!stock) {
            return tl::unexpected(stock.error());
        }
        state.cans.push_back({can, std::move(*stock)});
    }
    state.packets = cupboard->packets.standing();
    addThings(state.things, cupboard->chemicals);
    addThings(state.things, cupboard->supplies);
    state.barcodes = cupboard->barcodes.standing();
    state.works = cupboard->works.standing();
    for (const Work& work : state.works) {
        state.firstIds[work.id] = cupboard->works.given().family(work.id).front();
    }
    return state;
}

} // namespace ullage::ledger
