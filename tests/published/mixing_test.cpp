#include "core/chemistry/mixing.h"

#include "core/chemistry/dilution.h"
#include "core/chemistry/films.h"
#include "core/chemistry/formula.h"
#include "core/chemistry/process_constants.h"
#include "core/chemistry/replenishment.h"
#include "core/chemistry/water.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

// NAVEDTRA 14209, ch. 9: start with one half to three fourths of the final volume; developers are
// mixed at 90 to 125 °F, fixers not much above 80 °F.
TEST(Mixing, waterToStartWith)
{
    const auto start = startVolume(Millilitres(1000), Millilitres(5000), Millilitres(0));
    EXPECT_EQ(start->least, Millilitres(500));
    EXPECT_EQ(start->most, Millilitres(750));
    EXPECT_NEAR(kDeveloperWater.low, (90 - 32) / 1.8, 0.5);
    EXPECT_NEAR(kDeveloperWater.high, (125 - 32) / 1.8, 0.5);
    EXPECT_NEAR(kFixerWater.value, (80 - 32) / 1.8, 0.5);
}

// Common practice, no source: powder for a litre into a bottle half full of water of 38 to 41 °C,
// looked at every 10 minutes.
TEST(Mixing, packagedLitre)
{
    const auto start = startVolume(Millilitres(1000), Millilitres(1000), displacement(110, 0));
    EXPECT_TRUE(start->halfBottle);
    EXPECT_EQ(start->advised, Millilitres(500));
    EXPECT_GE(kDeveloperWater.value, 38);
    EXPECT_LE(kDeveloperWater.value, 41);
    const Instant mixed{};
    EXPECT_EQ(nextDissolvingCheck(mixed, mixed), mixed + std::chrono::minutes(10));
}

// IAPWS-IF97, kg/m³, two decimals.
TEST(Water, density)
{
    constexpr std::pair<double, double> kTable[] = {{0.01, 999.84}, {10, 999.70}, {20, 998.21},
                                                    {30, 995.65},   {40, 992.22}, {50, 988.05},
                                                    {60, 983.21}};
    for (const auto& [celsius, density] : kTable) {
        EXPECT_NEAR(waterDensity(Celsius(celsius)), density, 0.005) << celsius << " °C";
    }
}

// Held out, between the points of the table: water data page, density at 1 atm (4, 15, 22, 25, 80
// and 100 °C). The cubic between points rounded to 0.01 is good to 0.02; the last two have one
// decimal.
TEST(Water, densityBetweenThePoints)
{
    EXPECT_NEAR(waterDensity(Celsius(4)), 999.9720, 0.02);
    EXPECT_NEAR(waterDensity(Celsius(15)), 999.1026, 0.02);
    EXPECT_NEAR(waterDensity(Celsius(22)), 997.7735, 0.02);
    EXPECT_NEAR(waterDensity(Celsius(25)), 997.0479, 0.02);
    EXPECT_NEAR(waterDensity(Celsius(80)), 971.8, 0.05);
    // 70 and 90 °C are points of the table, from memory: the parabola through 60, 80 and 100 °C
    // passes within a tenth of them.
    const double bend = 983.21 - 2 * 971.79 + 958.35;
    EXPECT_NEAR(waterDensity(Celsius(70)), (983.21 + 971.79) / 2 - bend / 8, 0.1);
    EXPECT_NEAR(waterDensity(Celsius(90)), (971.79 + 958.35) / 2 - bend / 8, 0.1);
    EXPECT_NEAR(waterDensity(Celsius(100)), 958.4, 0.05);
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

// Anchell, The Darkroom Cookbook, 3rd ed., p. 330: what to multiply by, two decimals; p. 268: the
// anhydrous thiosulfate is 64 % of the crystals by weight, 240 g of crystals are 153.6 g.
TEST(Hydrates, conversionTable)
{
    const auto factor = [](const char* salt, const char* from, const char* to) {
        return *hydrateFactor(salt, from, to);
    };
    EXPECT_NEAR(factor("sodium-thiosulfate", "anhydrous", "pentahydrate"), 1.57, 0.005);
    EXPECT_NEAR(factor("sodium-thiosulfate", "pentahydrate", "anhydrous"), 0.64, 0.005);
    EXPECT_NEAR(factor("sodium-thiosulfate", "pentahydrate", "anhydrous"), 0.637, 0.0005);
    EXPECT_NEAR(factor("sodium-sulfate", "decahydrate", "anhydrous"), 0.44, 0.005);
    EXPECT_NEAR(factor("sodium-sulfate", "anhydrous", "decahydrate"), 2.27, 0.005);
    EXPECT_NEAR(factor("sodium-sulfite", "anhydrous", "heptahydrate"), 2.0, 0.05);
    EXPECT_NEAR(factor("sodium-sulfite", "heptahydrate", "anhydrous"), 0.5, 0.005);
    // 64 % and 153.6 g are the rounded factor; the molar masses give 152.9 g.
    EXPECT_NEAR(240 * factor("sodium-thiosulfate", "pentahydrate", "anhydrous"), 240 * 0.64,
                240 * 0.005);
}

// Langford, Basic Photography, App. D, beside molar masses: what to weigh for the dry salt. Tables
// print 1.2 for the carbonate's monohydrate.
TEST(Hydrates, crystalsForDrySalt)
{
    EXPECT_NEAR(*hydrateFactor("sodium-carbonate", "anhydrous", "monohydrate"), 1.17, 0.005);
    EXPECT_NEAR(*hydrateFactor("sodium-carbonate", "anhydrous", "monohydrate"), 1.2, 0.05);
    EXPECT_NEAR(*hydrateFactor("sodium-carbonate", "anhydrous", "decahydrate"), 2.70, 0.005);
    EXPECT_NEAR(*hydrateFactor("sodium-sulfite", "anhydrous", "heptahydrate"), 2.00, 0.005);
}

// US Army SS0509: acid stop bath, 1.5 oz of 28 % acetic acid in 32 oz of water; 46.9 mL per litre.
TEST(Formulas, acidStopBath)
{
    constexpr double kOunce = 29.5735; // mL
    const Formula bath{Millilitres(32 * kOunce),
                       {{"acetic acid 28 %", "", 1.5 * kOunce, AmountUnit::Millilitre}}};
    EXPECT_NEAR(scaled(bath, Millilitres(1000)).ingredients[0].amount, 46.9, 0.05);
}

// Formula SB-5 as printed by Anchell, p. 268: 32 mL of 28 % acetic acid and 45 g of sodium sulfate
// to the litre, 12 films; here for 600 mL.
TEST(Formulas, sulfateStopBathForSixHundred)
{
    const Formula bath{Millilitres(1000),
                       {{"acetic acid 28 %", "", 32, AmountUnit::Millilitre},
                        {"sodium-sulfate", "anhydrous", 45, AmountUnit::Gram}}};
    const auto small = scaled(bath, Millilitres(600));
    EXPECT_NEAR(small.ingredients[0].amount, 19.2, 0.05);
    EXPECT_NEAR(small.ingredients[1].amount, 27, 0.5);
    EXPECT_NEAR((FilmsPerLitre(12) * litres(small.makes)).value(), 7.2, 0.05);
}

// NAVEDTRA 14209, ch. 9, safety: 3 oz of 99.5 % glacial acetic acid into 8 oz of water are 28 %.
// The book rounds to whole ounces, the specific gravity of 1.05 is from chemist's handbooks.
TEST(Dilution, glacialAceticAcidIntoWater)
{
    const double water = 8 * waterDensity(Celsius(20)) / 1000;
    EXPECT_NEAR(mixedPercent(3 * 1.05, 99.5, water), 28, 0.5);
}

// Anchell, The Darkroom Cookbook, 3rd ed., p. 171: parts of water and of 99.5 % acid by weight, and
// the strength they give, one decimal.
TEST(Dilution, acidByWeight)
{
    constexpr double kAcid = 99.5;
    struct Row {
        double water;
        double acid;
        double percent;
    };
    for (const Row& row : {Row{71, 28, 28.1}, Row{63, 36, 36.2}, Row{43, 56, 56.3}}) {
        EXPECT_NEAR(mixedPercent(row.acid, kAcid, row.water), row.percent, 0.05);
        const auto parts = dilutionByWeight(kAcid, row.percent);
        ASSERT_TRUE(parts);
        EXPECT_NEAR(99 * parts->concentrate / (parts->concentrate + parts->water), row.acid, 0.1);
    }
}

// US Army SS0513 p. 24: 9.0 oz of glacial acetic acid in 32 oz make 28 %, whole percents. Densities
// at 20 °C (1.049 glacial, 1.037 at 28 %) from memory of chemist's handbooks.
TEST(Dilution, acidByVolume)
{
    constexpr double kOunce = 29.5735; // mL
    const auto pour = dilutionByVolume(Millilitres(32 * kOunce), {99.5, 1.049}, {28, 1.037});
    ASSERT_TRUE(pour);
    // Half a percent of strength is 0.16 oz of acid.
    EXPECT_NEAR(pour->concentrate.value() / kOunce, 9.0, 0.16);
}

// US Army SS0513 p. 23: 8 oz of replenisher for 800 sq in.
TEST(Replenishing, rateOfADeveloperByArea)
{
    const SquareCentimetres published(800 * 2.54 * 2.54);
    EXPECT_NEAR(topUpPerFilm(Millilitres(8 * 29.5735), published).value(), 23.7, 0.05);
}

// New Mexico Administrative Code 20.3.6.612 App. C: 1 L for each 3,100 sq in.
TEST(Replenishing, rateByArea)
{
    const SquareCentimetres published(3100 * 2.54 * 2.54);
    const Millilitres perFilm = topUpPerFilm(Millilitres(1000), published);
    EXPECT_NEAR(perFilm.value(), 25.8, 0.05);
    EXPECT_NEAR(perFilm.value() * 500 / kFilmArea.value, 25.0, 0.05);
    EXPECT_NEAR(steadyWear(perFilm).value(), 3100.0 / 80, 0.005);
}

// Sodium thiosulfate pentahydrate, chemical dictionary and data sheets: 1.67 g/mL as a solid.
// Dissolved it takes less room than as crystals, and more than its dry part's share.
TEST(Displacement, liesBelowTheCrystalsOwnVolume)
{
    EXPECT_LT(displacement(0, 100).value(), 100 / 1.67);
    EXPECT_GT(displacement(0, 100).value(), 0.36 * 100); // its water of crystals alone
}

} // namespace
} // namespace ullage::chemistry
