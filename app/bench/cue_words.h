// What the clock says: what to do now, and when the next thing comes.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QString>

#include "app/bench/cue_panel.h"
#include "core/ledger/run_clock.h"

namespace ullage::app
{

struct CueWords {
    QString now;  ///< "Agitate in 0:20", "Pour back now", "Change the water in 0:58"
    QString more; ///< in small: how to agitate, what else comes
    CuePanel::Mood mood = CuePanel::Mood::Calm;
};

/// `then`: the title of the next step; empty after the last.
CueWords cueWords(const ledger::RunClock& run, const QString& then);

/// In place of it, while it is asked whether the step is to be left far too early.
CueWords earlyWords(const ledger::RunClock& run);

} // namespace ullage::app
