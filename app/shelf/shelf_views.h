// From the ledger to what the shelf shows: pure functions, no widget among them.
#pragma once

#include "app/shelf/bottle_view.h"
#include "app/words/units.h"
#include "core/chemistry/developing.h"
#include "core/ledger/verdict.h"

#include <QString>

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

/// The next load of film in a developer, factor by factor.
struct NextFilm {
    struct Row {
        QString what;  ///< "Wear, 7 films in 1 L"
        QString value; ///< "× 1.32"
    };
    QString time; ///< "12:35"; empty without a base time
    QString note; ///< "at 20 °C, 1 film, 8th in this bottle"; or why there is no time
    std::vector<Row> rows;
};

/// `pairs` are the film maker's times typed in for this developer, if any; `temperature` that of
/// the next bath.
NextFilm nextFilm(const ledger::Batch& batch, const ledger::Assessment& assessment,
                  std::span<const chemistry::TimeAtTemperature> pairs,
                  chemistry::Celsius temperature, const Wording& wording);

} // namespace ullage::app
