// The clock a run goes by: steady, and going on while the machine sleeps.
#pragma once

#include "core/ledger/run_clock.h"

namespace ullage::app
{

/// The platform's clock that counts sleep too (on an unknown platform the plain steady one, which
/// may not).
ledger::SteadyClock steadyTime();

/// The wall clock.
ledger::Clock wallTime();

} // namespace ullage::app
