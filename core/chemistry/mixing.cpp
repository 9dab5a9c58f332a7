#include "core/chemistry/mixing.h"

#include "core/chemistry/constants.h"
#include "core/chemistry/formula.h"
#include "core/chemistry/process_constants.h"
#include "core/chemistry/water.h"

#include <algorithm>

namespace ullage::chemistry
{

namespace
{

// A packet for the bottle it goes into leaves no more room than a neck.
constexpr double kBottleItself = 0.9;

} // namespace

Millilitres displacement(double gramsSulfite, double gramsThiosulfateCrystals)
{
    return Millilitres(gramsSulfite * kSulfiteDisplacement.value +
                       gramsThiosulfateCrystals * kThiosulfateDisplacement.value);
}

Millilitres anhydrousThiosulfate(double grams)
{
    const double crystals =
        grams * hydrateFactor("sodium-thiosulfate", "anhydrous", "pentahydrate").value_or(1);
    const double water =
        (crystals - grams) / waterDensity(Celsius(kReferenceTemperature.value)) * 1000; // g/L
    return Millilitres(crystals * kThiosulfateDisplacement.value - water);
}

Result<StartVolume> startVolume(Millilitres makes, Millilitres capacity, Millilitres displaced)
{
    if (makes > capacity || !(makes.value() > 0)) {
        Error error{.code = ErrorCode::TooMuch, .field = "volume_ml", .number = makes.value()};
        error.low = 0;
        error.high = capacity.value();
        error.unit = "ml";
        return refuse(std::move(error));
    }
    const Millilitres fits = capacity * (1 - kMixingRoom.value) - displaced;
    if (fits.value() <= 0) {
        return refuse({.code = ErrorCode::NotEnough,
                       .field = "capacity_ml",
                       .number = capacity.value(),
                       .unit = "ml"});
    }
    StartVolume start;
    start.least = makes * kStartShare.low;
    start.most = std::min(makes * kStartShare.high, fits);
    start.tight = start.most < start.least;
    if (start.tight) {
        start.advised = start.most;
        return start;
    }
    start.halfBottle = makes >= capacity * kBottleItself;
    start.advised = start.halfBottle
                        ? std::clamp(capacity * kHalfBottle.value, start.least, start.most)
                        : std::clamp(makes * kStartShare.value, start.least, start.most);
    return start;
}

Result<StartVolume> startForLiquid(Millilitres makes, Millilitres capacity, Millilitres liquid)
{
    const auto tooMuch = [](const char* field, Millilitres asked, Millilitres most) {
        return refuse({.code = ErrorCode::TooMuch,
                       .field = field,
                       .number = asked.value(),
                       .low = 0,
                       .high = most.value(),
                       .unit = "ml"});
    };
    if (makes.value() <= 0 || makes > capacity) {
        return tooMuch("volume_ml", makes, capacity);
    }
    if (liquid.value() <= 0 || liquid >= makes) {
        return tooMuch("liquid_ml", liquid, makes);
    }
    const Millilitres water = makes - liquid;
    return StartVolume{.advised = water * kLiquidStart.value,
                       .least = water * kLiquidStart.low,
                       .most = water * kLiquidStart.high};
}

Instant nextDissolvingCheck(Instant mixed, Instant now)
{
    const auto every =
        std::chrono::milliseconds(static_cast<std::int64_t>(kDissolvingCheck.value * 60'000));
    if (now < mixed) {
        return mixed + every;
    }
    return mixed + every * ((now - mixed) / every + 1);
}

} // namespace ullage::chemistry
