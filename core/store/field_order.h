// The order in which fields stand on a line; those not named here follow as they were read.
#pragma once

#include <span>
#include <string_view>

namespace ullage::store
{

/// Empty for an unknown type.
std::span<const std::string_view> fieldOrder(std::string_view type);

} // namespace ullage::store
