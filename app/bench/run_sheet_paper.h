// The run sheet on paper: what a load goes through, to be followed and ticked by the tank.
#pragma once

#include "app/paper/papers.h"
#include "core/ledger/run_state.h"

#include <vector>

namespace ullage::app
{

/// What is to be printed of a run that is planned, or of one in hand.
struct PlannedRun {
    ledger::RunState run;
    /// What stands against it and what is left afterwards; without plan and bottles: neither is
    /// said.
    ledger::NextLoad next = {};
    std::vector<ledger::RunFilm> later = {}; ///< of a split load, still to come
    bool washRead = false;                   ///< the wash water's own temperature is known
};

/// A pure function: the times are those of the sheet.
PaperDocument runSheetPaper(const PlannedRun& planned, const PaperAbout& about);

} // namespace ullage::app
