// Long statements that can be stopped.
#pragma once

#include "core/store/connection.h"
#include "core/store/progress.h"

#include <functional>

namespace ullage::store
{

/// Does `work`, which waits for statements on `connection`, and stops them when `watch` says so:
/// then whatever they gave means nothing, and Cancelled is returned. `watch` is asked before, and
/// then every few milliseconds by a thread beside this one.
Result<void> interruptibly(Connection& connection, const Watch& watch,
                           const std::function<Result<void>()>& work);

} // namespace ullage::store
