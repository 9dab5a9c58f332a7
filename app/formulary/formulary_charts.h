// Charts of what a solution's figures imply, as plain values.
#pragma once

#include "app/charts/chart.h"
#include "app/words/units.h"
#include "core/formulary/notebook.h"
#include "core/formulary/solution.h"

namespace ullage::app
{

/// How long it keeps by how full the bottle of 1030 mL is, in glass and in polyethylene (HDPE),
/// with the published points; x is the share that is empty, y in months, days or hours. No series
/// without a keeping time, or where its figures do not pass their check.
ChartSpec keepingChart(const formulary::Solution& solution, const Wording& wording);

/// "Calibrated on the two points; good to a factor of two elsewhere." On one, if only the
/// full-bottle time is there; without it, that no bottle gets a date. Its figures are not checked.
QString keepingCaution(const formulary::Solution& solution);

/// Factor on the first film's time for each film in a litre; for a fixer the silver it takes up to
/// its capacity, with what its clearing times mean in the summary. No series for what has no wear
/// or one that chemistry::check() refuses; of a fixer, without a capacity or silver.
ChartSpec wearChart(const formulary::Solution& solution, const Wording& wording);

/// Development time against temperature: the times entered, the line between them, and Q10 outside
/// as far as a time would be given. Lines mark the usual range. x in the user's unit, y in minutes;
/// the summary is the time at 20 °C to five seconds. No series without times, or where
/// chemistry::baseTime() refuses them. `q10` 1 to 5.
ChartSpec developmentChart(const std::vector<chemistry::TimeAtTemperature>& times, double q10,
                           const Wording& wording);

} // namespace ullage::app
