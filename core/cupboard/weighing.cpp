#include "core/cupboard/weighing.h"

#include <algorithm>
#include <map>

namespace ullage::cupboard
{

namespace
{

using ledger::ItemHere;

// Amounts come from sums of typed figures; a billionth of a gram is nothing.
constexpr double kSlack = 1e-9;

// What of the items is that chemical, the first to end in front.
std::vector<const ItemHere*> thingsOf(const chemistry::Ingredient& part,
                                      const std::vector<ItemHere>& items, const NamesOfPart& names)
{
    std::vector<const ItemHere*> found;
    for (const ItemHere& here : items) {
        const auto* chemical = std::get_if<ledger::Chemical>(&here.line);
        if (chemical && here.stock.isHere() && isOf(*chemical, part, names)) {
            found.push_back(&here);
        }
    }
    std::stable_sort(found.begin(), found.end(), [](const ItemHere* a, const ItemHere* b) {
        return a->life.until.value_or(chemistry::Instant::max()) <
               b->life.until.value_or(chemistry::Instant::max());
    });
    return found;
}

} // namespace

bool WeighOut::isLacking() const
{
    return keepsChemicals && std::any_of(parts.begin(), parts.end(),
                                         [](const WeighedPart& one) { return one.lacks > 0; });
}

std::vector<NewBatch::Take> WeighOut::takes() const
{
    std::vector<NewBatch::Take> all;
    for (const WeighedPart& one : parts) {
        for (const NewBatch::Take& take : one.takes) {
            const auto same = std::find_if(all.begin(), all.end(), [&](const NewBatch::Take& had) {
                return had.item == take.item;
            });
            if (same == all.end()) {
                all.push_back(take);
            } else {
                same->amount += take.amount;
            }
        }
    }
    return all;
}

WeighOut weighOut(const chemistry::Formula& formula, const std::vector<ItemHere>& items,
                  const NamesOfPart& names, const std::vector<NewBatch::Take>& promised)
{
    WeighOut all;
    all.keepsChemicals = std::any_of(items.begin(), items.end(), [](const ItemHere& here) {
        return here.item.kind == ledger::ItemKind::Chemical;
    });
    std::map<std::string, double> gone; // by the thing: one chemical may come twice in a formula
    for (const NewBatch::Take& take : promised) {
        gone[take.item] += take.amount;
    }
    for (const chemistry::Ingredient& part : formula.ingredients) {
        WeighedPart one;
        one.part = part;
        one.part.amount = chemistry::asWeighed(part.amount);
        double wanted = part.unit == chemistry::AmountUnit::Gram ? one.part.amount : 0;
        const ItemHere* uncounted = nullptr;
        for (const ItemHere* thing : thingsOf(part, items, names)) {
            one.kept = true;
            if (!thing->stock.left) {
                uncounted = uncounted ? uncounted : thing;
                continue;
            }
            double& had = gone[thing->item.id];
            const double left = std::max(0.0, *thing->stock.left - had);
            one.here += left;
            const double take = std::min(left, wanted);
            if (take > kSlack) {
                one.takes.push_back({thing->item.id, take});
                had += take;
                wanted -= take;
            }
        }
        if (uncounted && wanted > kSlack) {
            one.takes.push_back({uncounted->item.id, wanted});
            wanted = 0;
        }
        one.uncounted = uncounted != nullptr;
        one.lacks = wanted > kSlack ? wanted : 0;
        all.parts.push_back(std::move(one));
    }
    return all;
}

std::string_view otherFormHere(const chemistry::Ingredient& part,
                               const std::vector<ItemHere>& items, const NamesOfPart& names)
{
    if (!thingsOf(part, items, names).empty()) {
        return {};
    }
    for (const chemistry::SaltForm& known : chemistry::saltForms()) {
        chemistry::Ingredient other = part;
        other.form = known.form;
        if (known.salt == part.name && known.form != part.form &&
            !thingsOf(other, items, names).empty()) {
            return known.form;
        }
    }
    return {};
}

} // namespace ullage::cupboard
