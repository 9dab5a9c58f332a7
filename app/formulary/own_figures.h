// What the darkroom's own tests say of a solution in words, charts and figures to take over.
#pragma once

#include "app/charts/chart.h"
#include "app/words/explanation.h"
#include "core/formulary/solution.h"
#include "core/ledger/own_record.h"

#include <QDate>

#include <optional>
#include <vector>

namespace ullage::app
{

/// One figure that the tests say.
struct OwnOffer {
    ledger::OwnKind kind = ledger::OwnKind::Capacity;
    /// "Your 14 tests in 5 bottles say 22 films a litre (18 – 27); the packet says 20."
    QString sentence;
    ChartSpec chart; ///< the tests as dots, what they say as a line with its span
    Explanation why;
    /// The solution with the figure and its source; empty where no solution can have it.
    std::optional<formulary::Solution> changed;
};

/// Those that are offered, `bottles` having been looked at. `today` goes into the source.
std::vector<OwnOffer> ownOffers(const formulary::Solution& solution,
                                const ledger::OwnRecord& record, int bottles, QDate today,
                                const Wording& wording);

} // namespace ullage::app
