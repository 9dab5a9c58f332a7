#include "core/ledger/item_stock.h"

#include "core/ledger/batch.h"

#include <algorithm>

namespace ullage::ledger
{

namespace
{

// Amounts come from sums of typed figures; a billionth of a gram is nothing.
constexpr double kItemSlack = 1e-9;

const char* unitOf(ItemKind kind)
{
    switch (kind) {
    case ItemKind::Liquid:
        return "ml";
    case ItemKind::Chemical:
        return "g";
    default:
        return "";
    }
}

struct ItemFolding {
    const Item& item;
    ItemStock stock;
    const Event* event = nullptr;

    void end()
    {
        stock.left = 0;
        stock.endedAt = event->at;
    }
    [[nodiscard]] tl::unexpected<Error> afterEnd() const
    {
        return refuse({.code = ErrorCode::AfterEnd,
                       .field = "item",
                       .text = event->id,
                       .subject = item.name.empty() ? item.id : item.name});
    }
    [[nodiscard]] bool isGone() const { return stock.usedWhole || stock.thrownAway; }

    Result<void> operator()(const Mixed& mixed)
    {
        if (item.kind != ItemKind::Powder || isGone()) {
            return {}; // books of before could name one twice
        }
        stock.openedAt = stock.openedAt.value_or(event->at);
        stock.uses.push_back({event->id, event->at, stock.left.value_or(1), event->batch});
        (void)mixed;
        stock.usedWhole = true;
        end();
        return {};
    }
    Result<void> operator()(const OpenedPacket&)
    {
        stock.openedAt = stock.openedAt.value_or(event->at);
        return {};
    }
    Result<void> operator()(const Taken& taken)
    {
        if (isGone()) {
            return afterEnd();
        }
        if (stock.left && taken.amount > *stock.left + kItemSlack) {
            return refuse({.code = ErrorCode::NotEnough,
                           .field = "amount",
                           .text = event->id,
                           .number = taken.amount,
                           .low = 0,
                           .high = *stock.left,
                           .unit = unitOf(item.kind),
                           .subject = item.name.empty() ? item.id : item.name});
        }
        stock.openedAt = stock.openedAt.value_or(event->at);
        stock.uses.push_back({event->id, event->at, taken.amount, taken.forBatch});
        if (stock.left) {
            *stock.left = std::max(0.0, *stock.left - taken.amount);
            if (*stock.left <= kItemSlack) {
                end();
            }
        }
        return {};
    }
    Result<void> operator()(const Counted& counted)
    {
        if (isGone()) {
            return afterEnd();
        }
        stock.left = counted.amount;
        stock.endedAt.reset();
        if (counted.amount <= kItemSlack) {
            end();
        }
        return {};
    }
    Result<void> operator()(const ThrownAway&)
    {
        if (isGone()) {
            return afterEnd();
        }
        stock.thrownAway = true;
        end();
        return {};
    }
    template <class Other>
    Result<void> operator()(const Other&)
    {
        return {};
    }
};

} // namespace

Result<ItemStock> stockOf(const Item& item, const std::vector<Event>& entered,
                          chemistry::Instant until)
{
    const auto gone = takenBack(entered);
    std::vector<const Event*> stood;
    for (const Event& event : entered) {
        if (!gone.contains(event.id) && event.at <= until) {
            stood.push_back(&event);
        }
    }
    std::stable_sort(stood.begin(), stood.end(),
                     [](const Event* a, const Event* b) { return a->at < b->at; });
    ItemFolding folding{item, {}, nullptr};
    folding.stock.left = item.bought;
    for (const Event* event : stood) {
        folding.event = event;
        if (auto fine = std::visit(folding, event->what); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return std::move(folding.stock);
}

std::optional<double> liquidFor(const Item& item, chemistry::Millilitres volume)
{
    if (item.kind != ItemKind::Liquid || !item.bought || !item.makes || item.makes->value() <= 0) {
        return std::nullopt;
    }
    return *item.bought * (volume / *item.makes);
}

Result<void> suitsMixing(const Item& item, const ItemStock& stock)
{
    if (item.kind == ItemKind::Powder && stock.isHere() && !stock.isPartOfPacket()) {
        return {};
    }
    if (item.kind == ItemKind::Liquid && stock.isHere()) {
        return {};
    }
    return refuse({.code = ErrorCode::NotSuitable,
                   .field = "packet",
                   .text = item.id,
                   .allowed = stock.isPartOfPacket() ? kWholePacketForm : kPacketHereForm});
}

} // namespace ullage::ledger
