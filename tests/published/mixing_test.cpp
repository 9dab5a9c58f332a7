#include "core/chemistry/mixing.h"

#include "core/chemistry/dilution.h"
#include "core/chemistry/films.h"
#include "core/chemistry/formula.h"
#include "core/chemistry/process_constants.h"
#include "core/chemistry/replenishment.h"
#include "core/chemistry/storing.h"
#include "core/chemistry/water.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

// NAVEDTRA 14209, ch. 9: start with one half to three fourths of the final volume; ABC der
// Röntgentechnik, scan 123: about three quarters of the water first.
TEST(Mixing, waterToStartWith)
{
    const auto start = startVolume(Millilitres(2000), Millilitres(5000), Millilitres(0));
    EXPECT_DOUBLE_EQ(start->least.value(), 2000 * 0.5);
    EXPECT_DOUBLE_EQ(start->most.value(), 2000 * 0.75);
}

// NAVEDTRA 14209, ch. 9: developers are mixed at 90 to 125 °F, fixers not much above 80 °F. ABC der
// Röntgentechnik, scan 123, stops at 50 °C, two degrees lower.
TEST(Mixing, waterTemperatures)
{
    constexpr double kRounding = 0.5; // the constants are whole degrees
    EXPECT_NEAR(kDeveloperWater.low, (90 - 32) / 1.8, kRounding);
    EXPECT_NEAR(kDeveloperWater.high, (125 - 32) / 1.8, kRounding);
    EXPECT_NEAR(kFixerWater.value, (80 - 32) / 1.8, kRounding);
    EXPECT_NEAR(kDeveloperWater.high - 50, 2, kRounding);
}

// Held out, between the points of the program's table: water data page, density at 1 atm. The cubic
// between points rounded to 0.01 is good to 0.02.
TEST(Water, densityBetweenThePoints)
{
    EXPECT_NEAR(waterDensity(Celsius(4)), 999.9720, 0.02);
    EXPECT_NEAR(waterDensity(Celsius(15)), 999.1026, 0.02);
    EXPECT_NEAR(waterDensity(Celsius(22)), 997.7735, 0.02);
    EXPECT_NEAR(waterDensity(Celsius(25)), 997.0479, 0.02);
}

// CRC Handbook (from memory): ice of 0 °C is 916.7 kg/m³. A bottle filled no further than the model
// says does not burst: its ice has room, and 13 % of the bottle stays empty.
TEST(Storing, iceHasItsRoom)
{
    const double ice = kFreezingFill.value * waterDensity(Celsius(0.01)) / 916.7;
    EXPECT_NEAR(1 - ice, 0.127, 0.0005);
}

// IUPAC atomic weights, abridged to two decimals: what is in a formula unit.
TEST(MolarMasses, areSumsOfAtoms)
{
    constexpr double kNa = 22.99, kS = 32.06, kO = 16.00, kC = 12.01, kB = 10.81, kH = 1.008;
    constexpr double kK = 39.10, kAl = 26.98;
    constexpr double kWater = 2 * kH + kO;
    const auto expect = [](std::string_view salt, std::string_view form, double mass) {
        for (const SaltForm& known : saltForms()) {
            if (known.salt == salt && known.form == form) {
                EXPECT_NEAR(known.molarMass, mass, 0.05) << salt << ", " << form;
                return;
            }
        }
        ADD_FAILURE() << salt << ", " << form;
    };
    const double sulfite = 2 * kNa + kS + 3 * kO;
    const double carbonate = 2 * kNa + kC + 3 * kO;
    const double thiosulfate = 2 * kNa + 2 * kS + 3 * kO;
    const double sulfate = 2 * kNa + kS + 4 * kO;
    const double borax = 2 * kNa + 4 * kB + 7 * kO;
    const double citric = 6 * kC + 8 * kH + 7 * kO;
    const double alum = kK + kAl + 2 * (kS + 4 * kO);
    expect("sodium-sulfite", "anhydrous", sulfite);
    expect("sodium-sulfite", "heptahydrate", sulfite + 7 * kWater);
    expect("sodium-carbonate", "anhydrous", carbonate);
    expect("sodium-carbonate", "monohydrate", carbonate + kWater);
    expect("sodium-carbonate", "decahydrate", carbonate + 10 * kWater);
    expect("sodium-thiosulfate", "anhydrous", thiosulfate);
    expect("sodium-thiosulfate", "pentahydrate", thiosulfate + 5 * kWater);
    expect("sodium-sulfate", "anhydrous", sulfate);
    expect("sodium-sulfate", "decahydrate", sulfate + 10 * kWater);
    expect("borax", "anhydrous", borax);
    expect("borax", "pentahydrate", borax + 5 * kWater);
    expect("borax", "decahydrate", borax + 10 * kWater);
    expect("citric-acid", "anhydrous", citric);
    expect("citric-acid", "monohydrate", citric + kWater);
    expect("potassium-alum", "anhydrous", alum);
    expect("potassium-alum", "dodecahydrate", alum + 12 * kWater);
}

// The Dictionary of Photography (rodsmith.org.uk, p. 691): crystals of sulfite, with seven waters,
// are 252 in whole numbers of its day.
TEST(MolarMasses, ofAnOldDictionary)
{
    for (const SaltForm& known : saltForms()) {
        if (known.salt == "sodium-sulfite" && known.form == "heptahydrate") {
            EXPECT_NEAR(known.molarMass, 252, 0.5);
            return;
        }
    }
    ADD_FAILURE();
}

double factor(const char* salt, const char* from, const char* to)
{
    return *hydrateFactor(salt, from, to);
}

// Anchell, The Darkroom Cookbook, 3rd ed., p. 330: what to multiply by, two decimals.
TEST(Hydrates, conversionTable)
{
    EXPECT_NEAR(factor("sodium-thiosulfate", "anhydrous", "pentahydrate"), 1.57, 0.005);
    EXPECT_NEAR(factor("sodium-thiosulfate", "pentahydrate", "anhydrous"), 0.64, 0.005);
    EXPECT_NEAR(factor("sodium-sulfate", "decahydrate", "anhydrous"), 0.44, 0.005);
    EXPECT_NEAR(factor("sodium-sulfate", "anhydrous", "decahydrate"), 2.27, 0.005);
    EXPECT_NEAR(factor("sodium-sulfite", "anhydrous", "heptahydrate"), 2.0, 0.05);
    EXPECT_NEAR(factor("sodium-sulfite", "heptahydrate", "anhydrous"), 0.5, 0.005);
}

// Langford, Basic Photography, App. D: carbonate monohydrate × 1.2, one decimal.
TEST(Hydrates, carbonateMonohydrate)
{
    EXPECT_NEAR(factor("sodium-carbonate", "anhydrous", "monohydrate"), 1.2, 0.05);
}

// One developer as printed twice, from a forum of cinematography (topic 60060): 45 g anhydrous or
// 52.5 g of monohydrate carbonate, told in half grams, and 121 g of decahydrate.
TEST(Hydrates, oneDeveloperInThreeForms)
{
    EXPECT_NEAR(45 * factor("sodium-carbonate", "anhydrous", "monohydrate"), 52.5, 0.25);
    EXPECT_NEAR(52.5 * factor("sodium-carbonate", "monohydrate", "decahydrate"), 121, 0.5);
}

// Wellington, Photographic Handbook, pp. 160 and 161: dry sulfite is twice as strong as crystals,
// and of carbonate's crystals take 5 parts dry for 14, which is 3.6 % less than by molar mass.
TEST(Hydrates, ofAnOldHandbook)
{
    EXPECT_NEAR(factor("sodium-sulfite", "heptahydrate", "anhydrous"), 1.0 / 2, 0.005);
    const double dry = factor("sodium-carbonate", "decahydrate", "anhydrous");
    EXPECT_NEAR(5.0 / 14 / dry - 1, -0.036, 0.001);
}

// Schiff's table of carbonate solutions, Encyclopedia of Practical Receipts and Processes, no. 628
// (chestofbooks.com): percent of crystals and of dry salt. All of them are about half a thousandth
// above the program's, which has the atomic masses of today.
TEST(Hydrates, carbonateSolutionsOfAnOldTable)
{
    constexpr std::array<std::pair<double, double>, 10> kTable{{{10, 3.706},
                                                                {15, 5.558},
                                                                {20, 7.412},
                                                                {25, 9.264},
                                                                {27, 10.005},
                                                                {30, 11.118},
                                                                {34, 12.600},
                                                                {40, 14.824},
                                                                {45, 16.677},
                                                                {50, 18.530}}};
    const double dry = factor("sodium-carbonate", "decahydrate", "anhydrous");
    for (const auto& [crystals, printed] : kTable) {
        EXPECT_NEAR(printed / (crystals * dry) - 1, 0.00045, 0.00015) << crystals << " %";
    }
}

// Anchell, p. 329: where borax means decahydrate and pentahydrate is at hand take 0.76 of it, the
// other way 1.32. The second is the first one's reciprocal, rounded; by molar mass it is 1.309.
TEST(Hydrates, borax)
{
    EXPECT_NEAR(factor("borax", "decahydrate", "pentahydrate"), 0.76, 0.005);
    EXPECT_NEAR(1.32 - factor("borax", "pentahydrate", "decahydrate"), 0.011, 0.0005);
}

// Formula SB-5 as printed by Anchell, p. 268, has 45 g of dry sodium sulfate; a sheet of the same
// bath (atelierelealbe.eu/sb5) 105 g of crystals. By molar mass 45 g are 102.1 g: the sheet rounds
// up by 2.9 %.
TEST(Formulas, sulfateStopBathFromCrystals)
{
    const Formula printed{Millilitres(1000),
                          {{"acetic acid 28 %", "", 32, AmountUnit::Millilitre},
                           {"sodium-sulfate", "anhydrous", 45, AmountUnit::Gram}}};
    const auto crystals = withForm(printed, "sodium-sulfate", "decahydrate");
    ASSERT_TRUE(crystals);
    EXPECT_NEAR(105 / crystals->ingredients[1].amount - 1, 0.029, 0.001);
    EXPECT_EQ(crystals->ingredients[0].amount, 32);
}

constexpr double kOunce = 29.5735; // mL

// US Army SS0509: 1½ oz of 28 % acetic acid to 32 oz of water, 46.9 mL to the litre.
TEST(Formulas, acidStopBathToTheLitreOfWater)
{
    const Formula printed{Millilitres(32 * kOunce),
                          {{"acetic acid 28 %", "", 1.5 * kOunce, AmountUnit::Millilitre}}};
    EXPECT_NEAR(scaled(printed, Millilitres(1000)).ingredients[0].amount, 46.9, 0.05);
}

// Anchell, p. 268: 32 mL of 28 % acetic acid and 45 g of dry sulfate to the litre; for a tank of
// 600 mL 19.2 mL and 27 g.
TEST(Formulas, sulfateStopBathForSixHundredMillilitres)
{
    const Formula printed{Millilitres(1000),
                          {{"acetic acid 28 %", "", 32, AmountUnit::Millilitre},
                           {"sodium-sulfate", "anhydrous", 45, AmountUnit::Gram}}};
    const Formula tank = scaled(printed, Millilitres(600));
    EXPECT_DOUBLE_EQ(asWeighed(tank.ingredients[0].amount), 19.2);
    EXPECT_DOUBLE_EQ(asWeighed(tank.ingredients[1].amount), 27.0);
    EXPECT_EQ(tank.makes, Millilitres(600));
}

// Anchell, p. 268: of dry thiosulfate take 64 % of the crystals, 153.6 g for 240. By molar mass it
// is 152.9 g: the book rounds its percent before it multiplies.
TEST(Hydrates, dryThiosulfateForCrystals)
{
    const double dry = 240 * factor("sodium-thiosulfate", "pentahydrate", "anhydrous");
    EXPECT_NEAR(153.6 - dry, 0.7, 0.05);
}

constexpr Strength kGlacial{99.5, 1.049}; // this and all densities below from memory of handbooks
constexpr Strength kTwentyEight{28, 1.037};

double strengthOf(double acid, const Strength& from, double water) // volumes
{
    return mixedPercent(acid * from.density, from.percent, water * 0.9982);
}

// NAVEDTRA 14209, ch. 9, safety: 3 oz of glacial acetic acid into 8 oz of water are 28 %; Anchell,
// The Darkroom Cookbook, 3rd ed., p. 170, the same with 150 and 400 mL. Whole percents.
TEST(Dilution, glacialAceticAcidIntoWater)
{
    EXPECT_NEAR(strengthOf(3, kGlacial, 8), 28, 0.5);
    EXPECT_NEAR(strengthOf(150, kGlacial, 400), 28, 0.5);
}

// Anchell, p. 170: parts of water and of glacial acid by weight for 28, 36 and 56 %: 71 and 28, 63
// and 36, 43 and 56. The parts add up to 99, so the table is that of an acid of 99 %.
TEST(Dilution, acidByWeight)
{
    struct Row {
        double percent;
        double water;
        double mixed; // of an acid of 99½ %, as the same parts are reckoned elsewhere
    };
    for (const Row& row : {Row{28, 71, 28.1}, Row{36, 63, 36.2}, Row{56, 43, 56.3}}) {
        const auto parts = dilutionByWeight(99, row.percent);
        ASSERT_TRUE(parts);
        EXPECT_NEAR(parts->water / parts->concentrate * row.percent, row.water, 0.5);
        EXPECT_NEAR(mixedPercent(row.percent, kGlacial.percent, row.water), row.mixed, 0.05);
    }
}

// US Army SS0513 p. 24: 9.0 oz of glacial acetic acid and 23 oz of water for 32 oz of 28 %. It
// divides percents as if they were of volume. Mixed by weight it takes 0.1 oz less of acid and 0.9
// oz more of water, and what the manual mixes is of 29 %: all three held.
TEST(Dilution, acidByVolume)
{
    const auto pour = dilutionByVolume(Millilitres(32 * kOunce), kGlacial, kTwentyEight);
    ASSERT_TRUE(pour);
    EXPECT_NEAR(pour->concentrate.value() / kOunce - 9.0, -0.1, 0.05);
    EXPECT_NEAR(pour->water.value() / kOunce - 23, 0.9, 0.05);
    EXPECT_NEAR(strengthOf(9, kGlacial, 23), 29.0, 0.05);
    // So it is by volume: 32 · 28/99.5.
    EXPECT_NEAR(32 * 28 / kGlacial.percent, 9.0, 0.05);
}

// Crabtree and Russell, J. SMPE 14, 1930: "5 % sulfuric acid, 1 + 19" is of volume. Five percent by
// weight take three fifths of that acid: why the dialog says which percent it means.
TEST(Dilution, percentByVolumeIsNotByWeight)
{
    const auto pour = dilutionByVolume(Millilitres(1000), {96, 1.84}, {5, 1.032});
    ASSERT_TRUE(pour);
    EXPECT_NEAR(pour->concentrate.value() / (1000.0 / 20), 0.58, 0.01);
    EXPECT_NEAR(strengthOf(1, {96, 1.84}, 19), 8.5, 0.05);
}

// Four rates for replenishing a developer that owe each other nothing: New Mexico Administrative
// Code 20.3.6.612 App. C, 1 L for 3,100 sq in; US Army SS0513 p. 23, 8 oz for 800 sq in; a data
// sheet for a print film (TI2497, 1999), 650 mL for 100 ft of 35 mm; Replenishing system,
// silvergrain.com/labs, 20 mL for 80 sq in. By the film they lie between 20 and 32 mL, and so the
// wear that they hold between 31 and 50 films a litre.
TEST(Replenishing, fourPublishedRatesByTheFilm)
{
    constexpr double kSquareInch = 2.54 * 2.54;
    const std::array rates{
        topUpPerFilm(Millilitres(1000), SquareCentimetres(3100 * kSquareInch)),
        topUpPerFilm(Millilitres(8 * kOunce), SquareCentimetres(800 * kSquareInch)),
        topUpPerFilm(Millilitres(650), SquareCentimetres(100 * 30.48 * 3.5)),
        topUpPerFilm(Millilitres(20), SquareCentimetres(80 * kSquareInch))};
    constexpr std::array kByTheFilm{25.8, 23.7, 31.4, 20.0}; // mL
    for (std::size_t i = 0; i < rates.size(); ++i) {
        EXPECT_NEAR(rates[i].value(), kByTheFilm[i], 0.05) << i;
    }
    // 3,100 sq in are two square metres: 25.0 mL for 500 cm².
    EXPECT_NEAR((rates[0] * filmsInArea(SquareCentimetres(500)).value()).value(), 25.0, 0.005);
    const auto most = std::max_element(rates.begin(), rates.end());
    EXPECT_NEAR(steadyWear(*most).value(), 31.8, 0.05);
}

// Densities of sodium thiosulfate solutions at 20 °C, percent of the dry salt by weight (CRC's
// values, engineeringtoolbox.com): the room that a gram of crystals takes up once dissolved. The
// program's one digit is good to a twentieth up to 20 %, 369 g/L.
TEST(Displacement, ofThiosulfateByItsDensities)
{
    constexpr std::pair<double, double> kTable[] = {{5, 1.0399}, {10, 1.0827}, {20, 1.1740}};
    for (const auto& [percent, density] : kTable) {
        const double crystals = 10 * percent * density *
                                factor("sodium-thiosulfate", "anhydrous", "pentahydrate"); // g/L
        const double water = (1000 * density - crystals) / 0.99821;                        // mL
        EXPECT_NEAR(displacement(0, crystals).value() / (1000 - water), 1, 0.05) << percent << " %";
    }
}

} // namespace
} // namespace ullage::chemistry
