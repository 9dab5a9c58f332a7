#include "core/chemistry/keeping.h"
#include "core/chemistry/oxygen.h"

#include <cmath>
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
// What enclosure() makes of a bottle with so much wall, a mil thick, must be the table's.
TEST(Permeability, rangesOfTheTable)
{
    constexpr double kMil = 0.0254;                          // mm
    constexpr double kHundredSquareInches = 100 * 6.4516e-4; // m²
    // The bottle whose wall is that large.
    const Millilitres bottle(1000 * std::pow(kHundredSquareInches * 1e4 / 620, 1.5));
    const auto throughWall = [&](double permeability) {
        const auto flow = enclosure(bottle, permeability, Millimetres(kMil), {}).wallFlow;
        return flow / 0.2095 * 22.414; // mmol a day in air → cm³ a day at 1 atm of oxygen
    };
    struct Row {
        const char* material;
        double low;
        double high;
    };
    for (const Row row :
         {Row{"ldpe", 300, 600}, Row{"hdpe", 100, 250}, Row{"pp", 150, 250}, Row{"pet", 3, 6}}) {
        const Constant& known = wall(row.material).permeability;
        // The constants are rounded to the unit, PET's to a tenth.
        const double rounding = known.high < 10 ? 0.13 : 1.3;
        EXPECT_NEAR(throughWall(known.low), row.low, rounding) << row.material;
        EXPECT_NEAR(throughWall(known.high), row.high, rounding) << row.material;
        EXPECT_GT(throughWall(known.value), row.low);
        EXPECT_LT(throughWall(known.value), row.high);
    }
    EXPECT_EQ(throughWall(wall("glass").permeability.value), 0);
}

// Polymer International 30, 109 (1993), abstract: 31.3 kJ/mol for oxygen in LDPE, 257 to 313 K. The
// model's wall against Arrhenius with that figure in joules.
TEST(Permeability, ofPolyethyleneFallsInTheColdAsMeasured)
{
    for (const double celsius : {-16.0, 0.0, 5.0, 20.0, 40.0}) {
        const double kelvin = celsius + 273.15;
        EXPECT_NEAR(wallFactor(Celsius(celsius)),
                    std::exp(-31'300 / 8.314462618 * (1 / kelvin - 1 / 298.15)), 0.0005)
            << celsius << " °C";
    }
}

// Systech Illinois in gasworld 2003955: the cap is 0.5 to 6 % of what enters a plastic package. The
// model's default cap on a litre bottle agrees for HDPE, PP and LDPE. For PET, of which the page
// speaks, it is 39 %: cap too leaky or wall too tight by six at least, held so that a change is
// seen.
TEST(Caps, shareOfWhatEntersABottle)
{
    const auto share = [](std::string_view material) {
        const auto bottle = enclosure(Millilitres(1000), wall(material).permeability.value,
                                      Millimetres(wall(material).thickness.value),
                                      CubicCentimetresPerDay(kCapLeak.value));
        return bottle.capFlow / (bottle.capFlow + bottle.wallFlow);
    };
    for (const char* material : {"hdpe", "pp", "ldpe"}) {
        EXPECT_GE(share(material), 0.005) << material;
        EXPECT_LE(share(material), 0.06) << material;
    }
    EXPECT_NEAR(share("pet") / 0.06, 6.5, 0.05);
}

// OENO One, article 1618, abstract: eight closures of wine, four of them screw caps, let in 5 to 67
// µg of oxygen a day. The default lies 4 µg above the leakiest, the low end above the tightest.
TEST(Caps, measuredOnWine)
{
    const auto micrograms = [](double leak) {
        const auto bottle =
            enclosure(Millilitres(1000), 0, Millimetres(1), CubicCentimetresPerDay(leak));
        return bottle.capFlow * kOxygenMass.value * 1000;
    };
    EXPECT_NEAR(micrograms(kCapLeak.value) - 67, 4, 1);
    EXPECT_GT(micrograms(kCapLeak.low), 5);
    EXPECT_LT(micrograms(kCapLeak.low), 67);
    EXPECT_GT(micrograms(kCapLeak.high), 67);
}

// Cole et al. 2010, Limnol. Oceanogr.: Methods 8, 285, abstract: in small, low-wind lakes all
// methods but one converge on k600 between 0.35 and 0.74 m a day. A bottle is stiller than a lake:
// its range begins lower, with Emerson's.
TEST(Exchange, smallStillLakes)
{
    EXPECT_GT(kBottleExchange.value, 0.35 * 100 / 24);
    EXPECT_LT(kBottleExchange.high, 0.74 * 100 / 24);
    EXPECT_LT(kBottleExchange.low, 0.35 * 100 / 24);
}

// Emerson 1975, Limnol. Oceanogr. 20, 754, abstract: 0.2 ± 0.1 m a day in small lakes of the
// Canadian Shield, among the lowest in natural waters. The low end of a bottle's range lies there.
TEST(Exchange, theStillestLakes)
{
    EXPECT_GE(kBottleExchange.low, 0.1 * 100 / 24);
    EXPECT_LE(kBottleExchange.low, 0.3 * 100 / 24);
}

// Two figures that owe each other nothing: open water under convective cooling (Tellus B 66, 22827,
// 2014, abstract: median k600 about 7 cm/h), and an MQ-borax stock's day in an open tray beside its
// six and two months in bottles (from memory of Kodak publication J-78). By the first and the
// bottles a litre in a tray of 8×10 in would last 48 h: twice the published day, so no better than
// a factor of two, and that is where it is.
TEST(Exchange, openTrayByOpenWaterWithinAFactorOfTwo)
{
    const auto saturation = solutionSaturation(kOxygenFactor.value);
    const auto limits = calibrate({Days(182.625), Days(60.875)}, saturation);
    ASSERT_TRUE(limits);
    const SquareCentimetres tray(8 * 10 * 2.54 * 2.54);
    const auto anHour =
        openUptake(Hours(1), tray, Millilitres(1000), saturation, trayExchange(*limits));
    const double hours = (limits->oxygen - saturation) / anHour;
    EXPECT_NEAR(hours, 48, 0.5);
    EXPECT_LE(hours / 24, 2);
    EXPECT_GE(hours / 24, 0.5);
}

} // namespace
} // namespace ullage::chemistry
