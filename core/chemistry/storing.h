// Where a bottle stands too cold or too warm.
#pragma once

#include "core/chemistry/constants.h"
#include "core/chemistry/quantities.h"

#include <optional>

namespace ullage::chemistry
{

/// Below it hydroquinone may crystallise, and a full bottle burst where it freezes.
inline constexpr Constant kColdStore{
    "cold-store", 5, 5, 5, "°C", Grade::Published, "below 40 °F: TM 11-2323, para 33"};
/// Above it a fixer spoils.
inline constexpr Constant kWarmFixer{"warm-fixer",
                                     29,
                                     29,
                                     29,
                                     "°C",
                                     Grade::Published,
                                     "Anchell, The Darkroom Cookbook, 3rd ed. 2008, p. 108"};
/// How full a bottle may be that may freeze.
inline constexpr Constant kFreezingFill{
    "freezing-fill", 0.8, 0.8, 0.8, "of the bottle", Grade::Published, "TM 11-2323, para 33"};

enum class StoreWarning {
    TooCold,
    TooWarm, ///< for a fixer
};

/// What speaks against storing a solution there; empty if nothing does. At the limits nothing does.
std::optional<StoreWarning> storeWarning(Celsius temperature, bool fixer);

} // namespace ullage::chemistry
