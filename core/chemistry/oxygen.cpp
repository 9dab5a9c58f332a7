#include "core/chemistry/oxygen.h"

#include "core/chemistry/constants.h"

#include <cmath>

namespace ullage::chemistry
{

double freshWaterOxygen(Celsius temperature)
{
    const double inverse = 1 / temperature.kelvin();
    return std::exp(
        -139.34411 +
        inverse * (1.575701e5 +
                   inverse * (-6.642308e7 + inverse * (1.243800e10 + inverse * -8.621949e11))));
}

MillimolesPerLitre freshWaterSaturation(Celsius temperature)
{
    return MillimolesPerLitre(freshWaterOxygen(temperature) / kOxygenMass.value);
}

double saltingOut(const Salts& salts)
{
    // Sums over the ions of each salt, L/mol: 2 × 0.1171 (Na⁺) plus the anion.
    constexpr double kSodium = 0.1171;
    const double exponent = salts.sulfite * (2 * kSodium + 0.1537) +
                            salts.sulfate * (2 * kSodium + 0.1185) +
                            salts.thiosulfate * (2 * kSodium + 0.1109);
    return std::pow(10, -exponent);
}

MillimolesPerLitre solutionSaturation(double oxygenFactor)
{
    return freshWaterSaturation(Celsius(kReferenceTemperature.value)) * oxygenFactor;
}

} // namespace ullage::chemistry
