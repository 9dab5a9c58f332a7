#include "core/chemistry/dilution.h"

#include "core/chemistry/constants.h"
#include "core/chemistry/water.h"

#include <limits>

namespace ullage::chemistry
{

double mixedPercent(double concentrate, double percent, double water)
{
    return concentrate * percent / (concentrate + water);
}

Result<PartsByWeight> dilutionByWeight(double from, double to)
{
    constexpr double kLeast = std::numeric_limits<double>::min(); // above nothing
    if (auto fine = checkRange("from", from, kLeast, 100, "%"); !fine) {
        return tl::unexpected(fine.error());
    }
    if (auto fine = checkRange("to", to, kLeast, from, "%"); !fine) {
        return tl::unexpected(fine.error());
    }
    return PartsByWeight{to, from - to};
}

Result<VolumesToPour> dilutionByVolume(Millilitres makes, const Strength& from, const Strength& to)
{
    const auto parts = dilutionByWeight(from.percent, to.percent);
    if (!parts) {
        return tl::unexpected(parts.error());
    }
    for (const double density : {from.density, to.density}) {
        if (auto fine = checkRange("density", density, 0.5, 2.5, "g/ml"); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    if (auto fine = checkRange("volume_ml", makes.value(), 1, 1'000'000, "ml"); !fine) {
        return tl::unexpected(fine.error());
    }
    const double whole = makes.value() * to.density; // g
    const double concentrate = whole * parts->concentrate / (parts->concentrate + parts->water);
    const double ofWater = waterDensity(Celsius(kReferenceTemperature.value)) / 1000; // g/mL
    return VolumesToPour{Millilitres((whole - concentrate) / ofWater),
                         Millilitres(concentrate / from.density)};
}

} // namespace ullage::chemistry
