// Whether a run in hand was logged already.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "app/session/door.h"
#include "core/ledger/run_state.h"

namespace ullage::app
{

/// The program may have ended between logging a run and forgetting it.
bool isLogged(Door& door, const ledger::RunState& state);

} // namespace ullage::app
