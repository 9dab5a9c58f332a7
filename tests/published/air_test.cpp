#include "core/chemistry/constants.h"

#include <gtest/gtest.h>
#include <string_view>

namespace ullage::chemistry
{
namespace
{

const WallConstant& wall(std::string_view material)
{
    for (const WallConstant& known : kWalls) {
        if (known.material == material) {
            return known;
        }
    }
    ADD_FAILURE() << material;
    return kWalls[0];
}

// Biosystems Engineering, Food Package Engineering, Table 11.2, p. 345: oxygen permeability at
// 25 °C in cm³·mil/(100 sq in·day·atm): LDPE 300–600, HDPE 100–250, PP unoriented 150–250, PET 3–6.
TEST(Permeability, rangesOfTheTable)
{
    constexpr double kMil = 0.0254;                          // mm
    constexpr double kHundredSquareInches = 100 * 6.4516e-4; // m²
    constexpr double kUnit = kMil / kHundredSquareInches;
    struct Row {
        const char* material;
        double low;
        double high;
    };
    for (const Row row :
         {Row{"ldpe", 300, 600}, Row{"hdpe", 100, 250}, Row{"pp", 150, 250}, Row{"pet", 3, 6}}) {
        const Constant& known = wall(row.material).permeability;
        // The table has one digit or two, and the constants are rounded to the unit (PET: tenth).
        const double rounding = known.high < 10 ? 0.05 : 0.5;
        EXPECT_NEAR(known.low, row.low * kUnit, rounding) << row.material;
        EXPECT_NEAR(known.high, row.high * kUnit, rounding) << row.material;
        EXPECT_GT(known.value, known.low);
        EXPECT_LT(known.value, known.high);
    }
    EXPECT_EQ(wall("glass").permeability.value, 0);
}

// What the ranges leave open: the values within them are the laboratory-bottle chart's, and walls
// are common practice. They are held here so that a change is noticed.
TEST(Permeability, valuesAsChosen)
{
    EXPECT_EQ(wall("pet").permeability.value, 1.8);
    EXPECT_EQ(wall("hdpe").permeability.value, 73);
    EXPECT_EQ(wall("ldpe").permeability.value, 197);
    EXPECT_EQ(wall("pp").permeability.value, 94);
    EXPECT_EQ(wall("pet").thickness.value, 0.30);
    EXPECT_EQ(wall("hdpe").thickness.value, 0.9);
    EXPECT_EQ(wall("ldpe").thickness.value, 1.0);
    EXPECT_EQ(wall("pp").thickness.value, 1.0);
    EXPECT_EQ(kCapLeak.value, 0.05);
    EXPECT_EQ(kCapLeak.low, 0.01);
    EXPECT_EQ(kCapLeak.high, 0.25);
}

// Cole et al. 2010, Limnol. Oceanogr.: Methods 8, 285, abstract: in small, low-wind lakes all
// methods but one converge on k600 between 0.35 and 0.74 m a day.
TEST(Exchange, smallStillLakes)
{
    EXPECT_NEAR(0.35 * 100 / 24, 1.5, 0.05);
    EXPECT_NEAR(0.74 * 100 / 24, 3.1, 0.05);
    EXPECT_NEAR(kBottleExchange.high, 0.74 * 100 / 24, 0.1);
    EXPECT_GT(kBottleExchange.value, 0.35 * 100 / 24);
    EXPECT_LT(kBottleExchange.value, 0.74 * 100 / 24);
}

// Emerson 1975, Limnol. Oceanogr. 20, 754, abstract: 0.2 ± 0.1 m a day in small lakes of the
// Canadian Shield, among the lowest in natural waters. The low end of a bottle's range lies there.
TEST(Exchange, theStillestLakes)
{
    EXPECT_GE(kBottleExchange.low, 0.1 * 100 / 24);
    EXPECT_LE(kBottleExchange.low, 0.3 * 100 / 24);
}

// Tellus B 66, 22827, 2014, abstract: median k600 of about 7 cm/h below 6 m/s of wind, with
// convective cooling.
TEST(Exchange, openWaterUnderConvectiveCooling) { EXPECT_NEAR(kTrayExchange.value, 7, 0.5); }

} // namespace
} // namespace ullage::chemistry
