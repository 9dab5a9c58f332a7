#include "core/chemistry/oxygen.h"

#include "core/chemistry/constants.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

// Benson & Krause 1984, Limnol. Oceanogr. 29, 620, as tabulated by USGS and APHA; to 0.001 mg/L.
TEST(Oxygen, freshWaterAsTabulated)
{
    constexpr std::pair<double, double> kTable[] = {
        {0, 14.621}, {10, 11.288}, {20, 9.092}, {30, 7.559}, {40, 6.413}};
    for (const auto& [celsius, milligrams] : kTable) {
        EXPECT_NEAR(freshWaterOxygen(Celsius(celsius)), milligrams, 0.0005) << celsius << " °C";
    }
}

// EN 25814 (ISO 5814), table of oxygen in water at 101.325 kPa, as printed in a meter's manual,
// appendix, p. 52: mg/L at 0, 1, 2 … 30 °C, one decimal to 15 °C, then two. Its
// figures for 6 and 7 °C lie 0.05 and 0.06 above both fits, more than rounding would explain.
TEST(Oxygen, standardTableDegreeByDegree)
{
    constexpr double kTable[] = {14.6, 14.2, 13.8, 13.5, 13.1, 12.8, 12.5, 12.2, 11.8, 11.6, 11.3,
                                 11.0, 10.8, 10.5, 10.3, 10.1, 9.87, 9.66, 9.47, 9.28, 9.09, 8.91,
                                 8.74, 8.58, 8.42, 8.26, 8.11, 7.97, 7.83, 7.69, 7.56};
    for (int celsius = 0; celsius <= 30; ++celsius) {
        EXPECT_NEAR(freshWaterOxygen(Celsius(celsius)), kTable[celsius],
                    celsius <= 15 ? 0.061 : 0.0051)
            << celsius << " °C";
    }
}

// Garcia & Gordon 1992, Limnol. Oceanogr. 37, 1307: a fit by other authors in other units.
double garciaGordon(double celsius) // µmol/kg, fresh water
{
    constexpr std::array<double, 6> kA{5.80871, 3.20291, 4.17887, 5.10006, -0.0986643, 3.80369};
    const double scaled = std::log((298.15 - celsius) / (273.15 + celsius));
    double sum = 0;
    for (std::size_t i = kA.size(); i-- > 0;) {
        sum = sum * scaled + kA[i];
    }
    return std::exp(sum);
}

TEST(Oxygen, freshWaterAgreesWithAnIndependentFit)
{
    EXPECT_NEAR(garciaGordon(20), 284.65, 0.005);
    EXPECT_NEAR(garciaGordon(30), 237.25, 0.005);
    // Water density from IAPWS-IF97, kg/L, brings mmol/L to µmol/kg. The two fits differ by 0.01 %.
    const auto perKilogram = [](double celsius, double density) {
        return freshWaterSaturation(Celsius(celsius)).value() * 1000 / density;
    };
    EXPECT_NEAR(perKilogram(20, 0.99821), 284.65, 284.65e-4);
    EXPECT_NEAR(perKilogram(30, 0.99565), 237.25, 237.25e-4);
}

// Schumpe 1993, Chem. Eng. Sci. 48, 153: ion constants at 25 °C, L/mol, each to 0.0001.
TEST(Oxygen, saltingOutSumsTheIons)
{
    constexpr double kSodium = 0.1171;
    constexpr double kSulfite = 0.1537;
    constexpr double kSulfate = 0.1185;
    constexpr double kThiosulfate = 0.1109;
    EXPECT_NEAR(-std::log10(saltingOut({.sulfite = 1})), 2 * kSodium + kSulfite, 1e-12);
    EXPECT_NEAR(-std::log10(saltingOut({.sulfate = 1})), 2 * kSodium + kSulfate, 1e-12);
    EXPECT_NEAR(-std::log10(saltingOut({.thiosulfate = 1})), 2 * kSodium + kThiosulfate, 1e-12);
    EXPECT_EQ(saltingOut({}), 1);
    EXPECT_NEAR(saltingOut({.sulfite = 0.3, .sulfate = 0.2}),
                saltingOut({.sulfite = 0.3}) * saltingOut({.sulfate = 0.2}), 1e-15);
}

TEST(Oxygen, aHundredGramsOfSulfiteHalveIt)
{
    // 100 g/L at 126.04 g/mol.
    EXPECT_NEAR(100 / 126.04, 0.793, 0.0005);
    EXPECT_NEAR(saltingOut({.sulfite = 0.793}), 0.49, 0.005);
    EXPECT_NEAR(kOxygenFactor.value, 0.49, 1e-12);
    EXPECT_NEAR(solutionSaturation(kOxygenFactor.value).value(), 9.092 / 31.998 * 0.49, 1e-5);
}

// Humid air at 20 °C: CRC Handbook, vapour pressure of water 2.339 kPa; oxygen 20.95 % of dry air.
TEST(Oxygen, airHoldsWhatTheGasLawSays)
{
    const double pascal = 0.2095 * (101'325 - 2'339);
    const double perCubicMetre = pascal / (8.314462618 * 293.15); // mol/m³ = mmol/L
    EXPECT_NEAR(kAirOxygen.value * 1000, perCubicMetre, 0.0005);
    EXPECT_NEAR(kMolarVolume.value, 8.314462618 * 273.15 / 101'325 * 1000, 0.0005);
    EXPECT_NEAR(kOxygenInAir.value, 0.2095, 1e-12);
    EXPECT_NEAR(kOxygenMass.value, 2 * 15.999, 1e-9);
}

} // namespace
} // namespace ullage::chemistry
