#include "core/chemistry/oxygen.h"

#include "core/chemistry/constants.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

// Schumpe 1993, Chem. Eng. Sci. 48, 153: ion constants at 25 °C, L/mol. They are what the code is
// made from, so this only holds the sums.
TEST(SaltingOut, sumsTheIonsAndMultipliesTheSalts)
{
    constexpr double kSodium = 0.1171;
    EXPECT_NEAR(-std::log10(saltingOut({.sulfite = 1})), 2 * kSodium + 0.1537, 1e-12);
    EXPECT_NEAR(-std::log10(saltingOut({.sulfate = 1})), 2 * kSodium + 0.1185, 1e-12);
    EXPECT_NEAR(-std::log10(saltingOut({.thiosulfate = 1})), 2 * kSodium + 0.1109, 1e-12);
    EXPECT_EQ(saltingOut({}), 1);
    EXPECT_NEAR(saltingOut({.sulfite = 0.3, .sulfate = 0.2}),
                saltingOut({.sulfite = 0.3}) * saltingOut({.sulfate = 0.2}), 1e-15);
}

// The factors of the starter formulary: 100, 50 and 20 g/L of sulfite, 240 g/L of crystalline
// thiosulfate.
TEST(SaltingOut, givesTheFormularysFactors)
{
    EXPECT_NEAR(saltingOut({.sulfite = 100 / 126.04}), kOxygenFactor.value, 0.005);
    EXPECT_NEAR(saltingOut({.sulfite = 50 / 126.04}), 0.70, 0.005);
    EXPECT_NEAR(saltingOut({.sulfite = 20 / 126.04}), 0.868, 0.0005);
    EXPECT_NEAR(saltingOut({.thiosulfate = 240 / 248.18}), 0.46, 0.005);
    EXPECT_NEAR(solutionSaturation(0.49).value(), 9.092 / 31.998 * 0.49, 1e-5);
}

} // namespace
} // namespace ullage::chemistry
