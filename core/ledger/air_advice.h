// Which way the oxygen came, and what would keep it out: each answer is the model run on from the
// bottle as it is now, not a rule of thumb.
#pragma once

#include "core/ledger/batch.h"

#include <array>
#include <memory>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace ullage::ledger
{

enum class Route { Pouring, BottleAir, Wall, Cap, OpenVessel };
inline constexpr std::array<std::string_view, 5> kRouteCodes{"pouring", "bottle-air", "wall", "cap",
                                                             "open-vessel"};
std::string_view code(Route route);

struct RouteShare {
    Route route{};
    chemistry::MillimolesPerLitre taken;
    double share = 0; ///< of all oxygen taken up, 0 to 1
};

/// All five, largest first.
std::array<RouteShare, 5> routeShares(const Batch& batch);

enum class Remedy {
    Squeeze,       ///< squeeze or displace the air out and close again
    SmallerBottle, ///< pour into the smallest of the bottles at hand that holds it
    Glass,         ///< the same bottle in glass
    TopUp,         ///< fill to the brim with fresh solution
};
inline constexpr std::array<std::string_view, 4> kRemedyCodes{"squeeze", "smaller-bottle", "glass",
                                                              "top-up"};
std::string_view code(Remedy remedy);

struct Help {
    Remedy remedy{};
    chemistry::Instant discardBy;
    chemistry::Days gained;                          ///< against leaving it as it is; may be < 0
    std::shared_ptr<const formulary::Vessel> vessel; ///< SmallerBottle: into this one
    std::optional<chemistry::Millilitres> topUp;     ///< TopUp: so much
};

struct AirAdvice {
    chemistry::Instant discardBy;
    std::vector<Help> helps; ///< that apply to this bottle, most days gained first
};

/// Opening the bottle lets fresh air in, which is counted: so a remedy can cost more than it gains.
/// Dates never pass the published full-bottle time from mixing, topped up or not. `atHand` are
/// bottles free to use. Empty without keeping figures or a date to discard by, and for a batch no
/// longer in use.
std::optional<AirAdvice> airAdvice(const Batch& batch,
                                   std::span<const std::shared_ptr<const formulary::Vessel>> atHand,
                                   const chemistry::AirConstants& constants = {});

} // namespace ullage::ledger
