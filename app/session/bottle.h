// A bottle as all of the window speaks of it.
#pragma once

#include "core/ledger/run_plan.h"

namespace ullage::app
{

/// A batch in use and what to make of it.
using Bottle = ledger::Judged;

} // namespace ullage::app
