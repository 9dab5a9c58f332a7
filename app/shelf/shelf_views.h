// From the ledger to what the shelf shows: pure functions, no widget among them.
#pragma once

#include "app/shelf/bottle_view.h"
#include "app/shelf/selected_bottle.h"
#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/ledger/next_load.h"
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

/// Above everything that is less grave; within a verdict the one further spent comes first. 0 to 4.
double urgency(const ledger::Assessment& assessment, const ledger::Batch& batch);

/// "5 bottles in use · 1 to discard · next to expire 9 Dec".
QString shelfSummary(std::span<const BottleView> bottles,
                     std::optional<chemistry::Instant> nextExpiry, chemistry::Instant now,
                     const Wording& wording);
/// Empty unless the clock stands so far before the newest entry that it must be wrong, or was then.
QString clockBehindText(chemistry::Instant newest, chemistry::Instant now, const Wording& wording);

/// The next load of film in a developer, factor by factor.
struct NextFilm {
    std::optional<chemistry::Seconds> seconds; ///< unrounded; none without the maker's time
    QString time; ///< "12:35"; without the film maker's time the factor on it
    QString note; ///< what the time is for; or why there is none
    std::vector<FactorRow> rows;
    QStringList warnings;
};

/// `so` is the time of the next load in this developer at `temperature`, or why there is none.
NextFilm nextFilm(const ledger::Judged& developer, const Result<ledger::DevelopingFactors>& so,
                  chemistry::Celsius temperature, const Wording& wording);

/// `pairs` are the film maker's times typed in for this developer, if any; `temperature` that of
/// the next bath.
NextFilm nextFilm(const ledger::Batch& batch, const ledger::Assessment& assessment,
                  std::span<const chemistry::TimeAtTemperature> pairs,
                  chemistry::Celsius temperature, const Wording& wording);

/// A fixer's time for the next film at a temperature: by its clearing tests, else by the solution's
/// figure when fresh.
NextFilm nextFixing(const ledger::Batch& batch, const ledger::Assessment& assessment,
                    chemistry::Celsius temperature, const Wording& wording);

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
