// What the time is and what something new is called: always passed in, so that both can be told.
#pragma once

#include "core/chemistry/quantities.h"

#include <functional>
#include <string>

namespace ullage::ledger
{

using Clock = std::function<chemistry::Instant()>;
/// Makes an id that nothing has yet.
using IdMaker = std::function<std::string()>;

} // namespace ullage::ledger
