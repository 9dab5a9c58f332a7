// Bottles that were filled from one another, folded together in the one order of time and entry.
//
// A filling reads the donor at its very turn: so it is always the donor as it was then, a
// correction on the donor reaches whoever was filled from it, and no circle can arise.
#pragma once

#include "core/ledger/batch.h"

#include <map>
#include <string>
#include <vector>

namespace ullage::ledger
{

class FoldTogether
{
public:
    /// `formulary` must outlive the folds.
    explicit FoldTogether(const formulary::Formulary& formulary,
                          const chemistry::AirConstants& constants = {},
                          FoldDepth depth = FoldDepth::Whole);

    /// Applies the next event, of any of the bottles, as Fold::apply() does. A donor that is not
    /// there counts as fresh: whether it has to be is judged where fillings are entered.
    Result<void> apply(const Event& event);
    /// The same for every event that happened until then, in their order.
    Result<void> applyAll(const std::vector<Event>& entered,
                          chemistry::Instant until = chemistry::Instant::max());

    /// Whether `event` can simply follow: not before the last one of any bottle.
    [[nodiscard]] bool follows(const Event& event) const { return event.at >= m_last; }
    /// Null for a batch that was not mixed.
    [[nodiscard]] const Fold* of(const std::string& batch) const;

private:
    const formulary::Formulary* m_formulary;
    chemistry::AirConstants m_constants;
    FoldDepth m_depth;
    std::map<std::string, Fold> m_folds;
    chemistry::Instant m_last = chemistry::Instant::min();
};

/// One batch as foldUntil() has it. `entered`: its events and those of every bottle it is connected
/// with by filling, in order of entry.
Result<std::optional<Batch>>
foldTogether(const std::string& batch, const std::vector<Event>& entered, chemistry::Instant until,
             const formulary::Formulary& formulary, const chemistry::AirConstants& constants = {});

} // namespace ullage::ledger
