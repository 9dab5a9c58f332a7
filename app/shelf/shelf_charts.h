// The charts of one bottle, computed from its batch: what happened, from the events; what is to
// come, by letting the bottle stand on as it is now.
#pragma once

#include "app/charts/chart.h"
#include "app/words/units.h"
#include "core/ledger/load_times.h"
#include "core/ledger/verdict.h"

#include <span>
#include <vector>

namespace ullage::app
{

/// Moments at which whatIsLeftChart() wants the past: `count` of them from mixing to now.
std::vector<chemistry::Instant> pastMoments(const ledger::Batch& batch, int count = 40);

/// Films as steps, standing, age alone, air's share between them, and what is to come with the
/// forecast's fan. `past` are states of the same batch at pastMoments(), oldest first.
ChartSpec whatIsLeftChart(const ledger::Batch& batch, const ledger::Assessment& assessment,
                          std::span<const ledger::Batch> past, const Wording& wording);

/// Oxygen taken up over time, stacked by the way it came, with what the solution can take and what
/// age leaves of that: it is spent where the stack meets the falling line. `past` as above.
ChartSpec airChart(const ledger::Batch& batch, const ledger::Assessment& assessment,
                   std::span<const ledger::Batch> past, const Wording& wording);

/// One bar a film: done, next and to come. In minutes where the film maker's times are known, else
/// as factors on them. Empty (no series) for what has no wear on time: anything but a developer.
ChartSpec filmTimesChart(const ledger::Batch& batch, const ledger::Assessment& assessment,
                         std::span<const chemistry::TimeAtTemperature> pairs,
                         chemistry::Celsius temperature, const Wording& wording);

/// A fixer's clearing tests against films a litre, the fitted line and its band, twice the fresh
/// time, and the films still to come as the line foretells them.
ChartSpec clearingChart(const ledger::Batch& batch, const ledger::Assessment& assessment,
                        const Wording& wording);

} // namespace ullage::app
