// Moments as the tables hold them: milliseconds since 1970.
#pragma once

#include "core/chemistry/quantities.h"

#include <cstdint>

namespace ullage::store
{

[[nodiscard]] inline chemistry::Instant instantOf(std::int64_t milliseconds)
{
    return chemistry::Instant(std::chrono::milliseconds(milliseconds));
}

[[nodiscard]] inline std::int64_t millisecondsOf(chemistry::Instant at)
{
    return at.time_since_epoch().count();
}

} // namespace ullage::store
