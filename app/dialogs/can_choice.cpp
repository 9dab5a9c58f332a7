#include "app/dialogs/can_choice.h"

#include <algorithm>

namespace ullage::app
{

namespace
{

QString canChoiceName(formulary::Role role)
{
    const auto waste = static_cast<std::size_t>(ledger::wasteOf(role));
    const std::string_view code = ledger::kWasteCodes[waste];
    return QStringLiteral("can-for-") +
           QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
}

} // namespace

std::vector<ledger::PouringDoubt> doubtsAbout(const formulary::Solution& solution,
                                              const ledger::CanHere& can, Door& door)
{
    std::vector<ledger::Batch> batches;
    for (const std::string& id : ledger::batchesInside(can.stock)) {
        if (auto batch = door.batch(id, door.now()))
            batches.push_back(std::move(*batch));
    }
    std::vector<const formulary::Solution*> inside;
    for (const ledger::Batch& batch : batches)
        inside.push_back(batch.solution.get());
    return ledger::pouringDoubts(solution, can.can, inside);
}

// What a can took last is in the book; that none was wanted is not.
int canOffered(formulary::Role role, const std::vector<ledger::CanHere>& cans, const Door& door)
{
    if (door.lastFigure(canChoiceName(role)) == 0.0)
        return -1;
    int offered = -1;
    chemistry::Instant last = chemistry::Instant::min();
    for (std::size_t i = 0; i < cans.size(); ++i) {
        if (cans[i].can.holds != ledger::wasteOf(role))
            continue;
        const auto& poured = cans[i].stock.poured;
        const auto at = poured.empty() ? chemistry::Instant::min() : poured.back().at;
        if (offered < 0 || at > last) {
            offered = static_cast<int>(i);
            last = at;
        }
    }
    return offered;
}

void rememberCan(formulary::Role role, bool taken, Door& door)
{
    door.setLastFigure(canChoiceName(role), taken ? 1 : 0);
}

} // namespace ullage::app
