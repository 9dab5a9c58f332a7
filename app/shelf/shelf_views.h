// From the ledger to what the shelf shows: pure functions, no widget among them.
#pragma once

#include "app/shelf/selected_bottle.h"
#include "app/widgets/bottle_view.h"
#include "app/words/next_film.h"
#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/ledger/range.h"
#include "core/ledger/verdict.h"

#include <QString>
#include <QStringList>

#include <span>
#include <vector>

namespace ullage::app
{

BottleView bottleView(const ledger::Batch& batch, const ledger::Assessment& assessment,
                      const Wording& wording);

/// Above everything that is less grave, and the same within a verdict: there bottles keep their
/// places. 0 to 4.
int urgency(const ledger::Assessment& assessment);

/// "5 bottles in use · 1 to discard · next to discard 9 Dec".
QString shelfSummary(std::span<const BottleView> bottles,
                     std::optional<chemistry::Instant> nextExpiry, chemistry::Instant now,
                     const Wording& wording);
/// Empty unless the clock stands so far before the newest entry that it must be wrong, or was then.
QString clockBehindText(chemistry::Instant newest, chemistry::Instant now, const Wording& wording);

/// The film maker's times that a bottle's next time is told from.
struct KnownTimes {
    std::vector<chemistry::TimeAtTemperature> pairs;
    QString film;          ///< whose times they are; empty where no film was named
    QString source;        ///< as entered
    bool lastUsed = false; ///< with this developer, undiluted; else from the notebook
};

/// The notebook's first entry for this developer as it stands in the bottle: undiluted, or at a
/// dilution that the solution's own name gives. Empty if there is none.
KnownTimes notebookTimes(const formulary::Formulary& formulary,
                         const formulary::Solution& developer);

/// Everything the shelf says of the bottle selected. `past` as whatIsLeftChart() wants it; `range`
/// of its discard-by date, if there is one.
SelectedBottle selectedBottle(const ledger::Batch& batch, const ledger::Assessment& assessment,
                              std::span<const ledger::Batch> past, const KnownTimes& times,
                              const std::optional<ledger::DateRange>& range,
                              chemistry::Celsius temperature, const Wording& wording);

} // namespace ullage::app
