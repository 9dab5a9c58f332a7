#include "core/chemistry/water.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace ullage::chemistry
{

namespace
{

// kg/m³ at 0, 10 … 100 °C.
constexpr std::array kDensity{999.84, 999.70, 998.21, 995.65, 992.22, 988.05,
                              983.21, 977.76, 971.79, 965.31, 958.35};
constexpr double kStep = 10;

} // namespace

double waterDensity(Celsius temperature)
{
    // A cubic through the four nearest points.
    const double at = temperature.value() / kStep;
    constexpr int kPoints = 4;
    const int first =
        std::clamp(static_cast<int>(std::floor(at)) - 1, 0, int(kDensity.size()) - kPoints);
    double density = 0;
    for (int i = first; i < first + kPoints; ++i) {
        double weight = 1;
        for (int j = first; j < first + kPoints; ++j) {
            weight *= i == j ? 1 : (at - j) / (i - j);
        }
        density += weight * kDensity[std::size_t(i)];
    }
    return density;
}

Result<Blend> blend(Millilitres total, Celsius wanted, Celsius hot, Celsius cold)
{
    for (const auto& [field, value] : {std::pair{"hot", hot}, {"cold", cold}}) {
        if (auto fine = checkRange(field, value.value(), 0, 100, "°C"); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    if (hot <= cold) {
        return refuse({.code = ErrorCode::Conflict, .field = "hot", .number = hot.value()});
    }
    if (auto fine = checkRange("temperature", wanted.value(), cold.value(), hot.value(), "°C");
        !fine) {
        return tl::unexpected(fine.error());
    }
    const double share = (wanted - cold) / (hot - cold); // by mass
    const double mass = total.value() * waterDensity(wanted);
    return Blend{Millilitres(share * mass / waterDensity(hot)),
                 Millilitres((1 - share) * mass / waterDensity(cold))};
}

} // namespace ullage::chemistry
