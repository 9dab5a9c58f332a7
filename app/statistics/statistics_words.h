// Statistics as a chart and as bars with their words.
#pragma once

#include "app/charts/chart.h"
#include "app/statistics/bar_rows.h"
#include "app/words/explanation.h"
#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/ledger/statistics.h"

#include <vector>

namespace ullage::app
{

/// Films developed by month; by year where that would be more than three years of months.
ChartSpec filmsChart(const ledger::Statistics& statistics, const Wording& wording);

/// Films put through each solution, most first.
std::vector<BarRow> filmRows(const ledger::Statistics& statistics,
                             const formulary::Formulary& formulary, const Wording& wording);
/// Mean time from mixing to the end, longest first; solutions without an ended bottle are left out.
std::vector<BarRow> lifeRows(const ledger::Statistics& statistics,
                             const formulary::Formulary& formulary, const Wording& wording);
/// Bottles by the cause of their end, in the order of the causes; empty if none ended.
std::vector<BarRow> endRows(const ledger::Statistics& statistics, const Wording& wording);
std::vector<BarRow> costRows(const ledger::Statistics& statistics,
                             const formulary::Formulary& formulary, const Wording& wording);

/// How each of the charts was counted.
std::vector<Explanation> statisticsFigures(const ledger::Statistics& statistics,
                                           const Wording& wording);

/// The month of a moment on the user's clock.
std::chrono::year_month localMonth(chemistry::Instant at);

} // namespace ullage::app
