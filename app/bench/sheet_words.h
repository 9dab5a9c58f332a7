// Where the times of a run sheet come from, in sentences; the same on the bench and on paper.
#pragma once

#include "app/words/units.h"
#include "core/ledger/run_sheet.h"

#include <QStringList>

namespace ullage::app
{

/// How washing and fixing times were found, then how the developing time comes about and what is to
/// be said of it. `washRead`: the wash water's own temperature is known.
QStringList timeNotes(const ledger::RunSheet& sheet, bool washRead, const Wording& wording);

} // namespace ullage::app
