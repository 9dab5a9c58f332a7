#include "core/chemistry/washing.h"

#include "core/chemistry/process_constants.h"

#include <algorithm>
#include <cmath>

namespace ullage::chemistry
{

namespace
{

constexpr Celsius kColdest{10};
constexpr Celsius kColdEnds{15};
constexpr Celsius kUsualBegins{18};
constexpr Celsius kWarmestWash{30};

Seconds minutes(double count) { return Seconds(count * 60); }

} // namespace

Result<double> coldWashFactor(Celsius water)
{
    if (auto fine =
            checkRange("temperature", water.value(), kColdest.value(), kWarmestWash.value(), "°C");
        !fine) {
        return tl::unexpected(fine.error());
    }
    const double cold = std::clamp((kUsualBegins - water) / (kUsualBegins - kColdEnds), 0.0, 1.0);
    return std::pow(kColdWash.value, cold);
}

Result<std::vector<WashStep>> washSteps(WashWay way, Celsius water)
{
    const auto factor = coldWashFactor(water);
    if (!factor) {
        return tl::unexpected(factor.error());
    }
    const auto wash = [&](const Constant& time, std::optional<Seconds> changeEvery = {}) {
        return WashStep{WashBath::Wash, minutes(time.value * *factor), changeEvery, time.source};
    };
    std::vector<WashStep> steps;
    switch (way) {
    case WashWay::Running:
        steps = {wash(kWashRunning)};
        break;
    case WashWay::Changes:
        steps = {wash(kWashChanges, minutes(kWashChangeEvery.value))};
        break;
    case WashWay::Aid:
        steps = {{WashBath::Rinse, Seconds(kWashRinse.value), {}, kWashRinse.source},
                 {WashBath::Aid, minutes(kWashAid.value), {}, kWashAid.source},
                 wash(kWashAfterAid)};
        break;
    }
    return steps;
}

bool mayReticulate(Celsius fixer, Celsius water)
{
    return std::abs((fixer - water).value()) > kReticulation.value;
}

double leftAfterDumps(Millilitres carried, Millilitres filling, int times)
{
    return std::pow(carried / (filling + carried), times);
}

int dumpsNeeded(Millilitres carried, Millilitres filling, double share)
{
    if (share >= 1) {
        return 0;
    }
    const double fillings = std::log(share) / std::log(carried / (filling + carried));
    constexpr double kRounding = 1e-9; // an exact power must not need one more
    return static_cast<int>(std::ceil(fillings - kRounding));
}

double shareForStorage(GramsPerLitre thiosulfate, Millilitres carried, SquareCentimetres film)
{
    constexpr double kSquareCentimetresInSquareMetre = 1e4;
    const double mayStay =
        kThiosulfateLeft.value * film.value() / kSquareCentimetresInSquareMetre; // g
    constexpr double kIon = 112.12;  // g/mol, S₂O₃²⁻
    constexpr double kSalt = 158.10; // g/mol, Na₂S₂O₃
    return mayStay / (thiosulfate.value() * kIon / kSalt * litres(carried).value());
}

double leftAfterRunning(Seconds time) { return std::exp2(-time / minutes(kHypoHalving.value)); }

} // namespace ullage::chemistry
