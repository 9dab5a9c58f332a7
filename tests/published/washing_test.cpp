#include "core/chemistry/washing.h"

#include "core/chemistry/process_constants.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

double minutes(const WashStep& step) { return step.time.value() / 60; }

double runningAt(double celsius)
{
    return minutes(washSteps(WashWay::Running, Celsius(celsius))->front());
}

// ABC der Röntgentechnik, scan 401: half an hour in running water. P. Johnson, The Complete
// Photobook, 1955 (as quoted): 30 minutes running, or eight to ten fillings within them. US Army
// MD0954, para 3-33: 25 to 30 minutes where the water changes eight times an hour. T.O. 33B-1-1,
// Table 6-17, p. 6-78: 20 minutes at eight changes an hour, 35 at four. The way is SS0509's.
TEST(Washing, runningWaterByFourOtherBooks)
{
    EXPECT_DOUBLE_EQ(runningAt(20), 30);
    EXPECT_GT(runningAt(20), 20);
    EXPECT_LT(runningAt(20), 35);
    // The way with changes, which is NAVEDTRA 14209's, changes as often as the third book.
    const auto changes = washSteps(WashWay::Changes, Celsius(20))->front();
    EXPECT_GE(changes.changeEvery->value() / 60, 30.0 / 10);
    EXPECT_LE(changes.changeEvery->value() / 60, 30.0 / 8);
}

// US Army SS0509, lesson 1: wash water of 65 to 75 °F: nothing is lengthened there.
TEST(Washing, usualWater)
{
    EXPECT_DOUBLE_EQ(*coldWashFactor(Celsius((65 - 32) / 1.8)), 1);
    EXPECT_DOUBLE_EQ(*coldWashFactor(Celsius((75 - 32) / 1.8)), 1);
}

// Three sources, three laws for cold water, and the program takes the longest. T.O. 33B-1-1, p.
// 6-78: three times at 50 to 60 °F, and below 50 °F it can't be done. TM 11-2323, para 33 d, of
// prints: twice at 50 °F, four times at 35 °F. US Army MD0954, para 3-34: water of 68 to 70 °F is
// 40 percent more efficient than water of 40 °F.
TEST(Washing, coldWaterByThreeBooks)
{
    for (const double fahrenheit : {50.0, 55.0, 59.0}) {
        EXPECT_NEAR(runningAt((fahrenheit - 32) / 1.8) / runningAt(22), 3, 1e-9) << fahrenheit;
    }
    EXPECT_FALSE(coldWashFactor(Celsius((49 - 32) / 1.8)));
    EXPECT_NEAR(*coldWashFactor(Celsius(10)) / 2, 1.5, 1e-9)
        << "half as long again as by TM 11-2323";
    EXPECT_FALSE(coldWashFactor(Celsius((35 - 32) / 1.8))) << "where TM 11-2323 washes four times";
    EXPECT_GT(*coldWashFactor(Celsius(10)), 1.4) << "longer than by MD0954";
}

// The same amateur as in developing_test.cpp (apug.org, post 1251429) washes as well in 4 min at 90
// °F as in 10 at 68 °F. That law, carried down, asks for less in the cold than the program.
TEST(Washing, coldWaterByAnAmateurAsksForLess)
{
    const double tens = (90 - 68) / 1.8 / 10;
    const double q10 = std::pow(10.0 / 4, 1 / tens);
    for (const double celsius : {10.0, 12.0, 15.0}) {
        const double factor = std::pow(q10, (20 - celsius) / 10);
        EXPECT_GT(*coldWashFactor(Celsius(celsius)), factor) << celsius;
    }
}

// T.O. 33B-1-1, p. 6-78: wash and fixer more than 15 °F apart may reticulate. The program warns
// from 8 °C, a third of a degree earlier.
TEST(Washing, reticulation)
{
    const auto warned = [](double fahrenheitApart) {
        return mayReticulate(Celsius(21), Celsius(21 - fahrenheitApart / 1.8));
    };
    EXPECT_TRUE(warned(16));
    EXPECT_TRUE(warned(15));
    EXPECT_FALSE(warned(14));
}

// NAVEDTRA 14209, p. 10-8, has hypo halve each minute; US Army SS0509, lesson 1, every 15 seconds
// of direct contact with running water. The program takes the slower, by a factor of four.
TEST(Washing, hypoHalvesFourTimesSlowerThanByTheOtherManual)
{
    double halving = 0;
    while (leftAfterRunning(Seconds(halving)) > 0.5) {
        halving += 1;
    }
    EXPECT_EQ(halving / 15, 4);
}

// R. Torzynski 2004: a tank that holds 10 mL back and takes 500 mL dilutes what was left 50 times,
// one that was shaken out to 2 mL 250 times.
TEST(Washing, oneFillingDilutesAsPrinted)
{
    EXPECT_NEAR(1 / leftAfterDumps(Millilitres(10), Millilitres(500), 1), 50, 1);
    EXPECT_NEAR(1 / leftAfterDumps(Millilitres(2), Millilitres(500), 1), 250, 1);
}

// 36 CFR 1238.14 (c), after ISO 18901: 0.014 g of the thiosulfate ion a square metre of microfilm;
// a methylene-blue laboratory writes 1.4 µg/cm².
TEST(Washing, whatMayStay)
{
    constexpr double kMicrograms = 1.4;
    const SquareCentimetres film(516.128);
    // 1 mL of a fixer whose thiosulfate, as the salt, holds just 1.4 µg/cm² of the ion on this
    // film.
    const double salt = kMicrograms * 1e-6 * film.value() * 158.10 / 112.12; // g
    EXPECT_NEAR(shareForStorage(GramsPerLitre(salt * 1000), Millilitres(1), film), 1, 1e-3);
}

// Composed of two sources. Calhoun, J. SMPE 43 (4), 1944, p. 238, table 2: 35 mm negative holds
// 0.96 g of water a foot after the squeegee, 4.6 mL on 80 sq in. If that is fixer of 240 g/L
// crystals, the limit above is reached between NAVEDTRA 14209's times: 5 minutes in a rapid washer
// and 20 otherwise.
TEST(Washing, limitIsReachedBetweenTheManualsTimes)
{
    const SquareCentimetres film(516.128);
    const Millilitres held(film.value() / 3.5 / 30.48 * 0.96);
    const double share = shareForStorage(GramsPerLitre(240 * 158.10 / 248.18), held, film);
    EXPECT_GT(leftAfterRunning(Seconds(5 * 60)), share);
    EXPECT_LT(leftAfterRunning(Seconds(20 * 60)), share);
    // Filling and dumping by dilution alone would be done after two fillings where the books ask
    // for eight: what must diffuse out of the film is not counted.
    EXPECT_LE(dumpsNeeded(Millilitres(10), Millilitres(500), share), 2);
}

} // namespace
} // namespace ullage::chemistry
