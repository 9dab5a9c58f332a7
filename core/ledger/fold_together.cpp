#include "core/ledger/fold_together.h"

#include "core/ledger/fillings.h"

#include <algorithm>

namespace ullage::ledger
{

FoldTogether::FoldTogether(const formulary::Formulary& formulary,
                           const chemistry::AirConstants& constants, FoldDepth depth)
    : m_formulary(&formulary), m_constants(constants), m_depth(depth)
{
}

Result<void> FoldTogether::apply(const Event& event)
{
    auto found = m_folds.find(event.batch);
    if (found == m_folds.end()) {
        found = m_folds.emplace(event.batch, Fold(*m_formulary, m_constants, m_depth)).first;
    }
    const Batch* donor = nullptr;
    if (const auto half = halfOf(event); half && !half->drawn && half->donor != event.batch) {
        const auto from = m_folds.find(half->donor);
        if (from != m_folds.end() && from->second.started()) {
            from->second.standTo(event.at);
            donor = &from->second.batch();
        }
    }
    m_last = std::max(m_last, event.at);
    return found->second.apply(event, donor);
}

Result<void> FoldTogether::applyAll(const std::vector<Event>& entered, chemistry::Instant until)
{
    for (const Event& event : happened(entered)) {
        if (event.at > until) {
            break;
        }
        if (auto fine = apply(event); !fine) {
            return fine;
        }
    }
    return {};
}

const Fold* FoldTogether::of(const std::string& batch) const
{
    const auto found = m_folds.find(batch);
    return found == m_folds.end() || !found->second.started() ? nullptr : &found->second;
}

Result<std::optional<Batch>>
foldTogether(const std::string& batch, const std::vector<Event>& entered, chemistry::Instant until,
             const formulary::Formulary& formulary, const chemistry::AirConstants& constants)
{
    FoldTogether folds(formulary, constants);
    if (auto fine = folds.applyAll(entered, until); !fine) {
        return tl::unexpected(fine.error());
    }
    const Fold* fold = folds.of(batch);
    return fold ? std::optional(fold->at(until)) : std::nullopt;
}

} // namespace ullage::ledger
