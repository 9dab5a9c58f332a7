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

/// Films developed by month; by year where that would be more than three years of months. The
/// summary says their sum and their mean over the months (or years) shown. No bars without a month.
ChartSpec filmsChart(const ledger::Statistics& statistics, const Wording& wording);

/// Films put through each solution, most first; solutions without film are left out. Values in
/// films; a solution that the formulary does not know is named by its id.
std::vector<BarRow> filmRows(const ledger::Statistics& statistics,
                             const formulary::Formulary& formulary, const Wording& wording);
/// Mean time from mixing to the end, longest first; solutions without an ended bottle are left out.
/// Values in days, words to the whole day.
std::vector<BarRow> lifeRows(const ledger::Statistics& statistics,
                             const formulary::Formulary& formulary, const Wording& wording);
/// Bottles by the cause of their end, in the order of the causes, those of 0 among them; empty if
/// none ended.
std::vector<BarRow> endRows(const ledger::Statistics& statistics, const Wording& wording);
/// Cost of a film by solution and currency, dearest first, to two decimals. Values of different
/// currencies stand side by side unconverted, so that their bars cannot be compared.
std::vector<BarRow> costRows(const ledger::Statistics& statistics,
                             const formulary::Formulary& formulary, const Wording& wording);

/// How each of the charts was counted, in their order, for "Where from?".
std::vector<Explanation> statisticsFigures(const ledger::Statistics& statistics,
                                           const Wording& wording);

} // namespace ullage::app
