#include "core/chemistry/developing.h"

#include "core/chemistry/constants.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

constexpr Celsius fahrenheit(double degrees) { return Celsius((degrees - 32) / 1.8); }

TimeAtTemperature pair(double degrees, double minutes)
{
    return {fahrenheit(degrees), Seconds(minutes * 60)};
}

double minutesAt(std::span<const TimeAtTemperature> pairs, double degrees, double q10)
{
    const auto time = baseTime(pairs, fahrenheit(degrees), q10);
    EXPECT_TRUE(time) << degrees << " °F";
    return time ? time->time.value() / 60 : 0;
}

// Kodak publication F-32, rotary-tube table: minutes at 68, 70, 72, 75 °F, printed in quarters.
struct Row {
    const char* film;
    std::array<double, 4> minutes;
};
constexpr std::array kRows{Row{"MQ-borax stock, medium speed", {6.5, 6, 5.5, 5}},
                           Row{"MQ-borax stock, high speed", {7, 6.5, 6, 5.5}}};
constexpr std::array kAscorbate{Row{"ascorbate stock, first", {6, 5.25, 4.75, 4}},
                                Row{"ascorbate stock, second", {5.5, 5, 4.5, 4}}};
constexpr std::array<double, 4> kFahrenheit{68, 70, 72, 75};
constexpr double kHalfAQuarter = 0.125; // the table's own rounding

double fittedQ10(const Row& row)
{
    const double tens = (fahrenheit(kFahrenheit[3]) - fahrenheit(kFahrenheit[0])).value() / 10;
    return std::pow(row.minutes[0] / row.minutes[3], 1 / tens);
}

// Q10 from the ends; the two times between must follow.
TEST(TimeAndTemperature, oneQ10FromTheEndsGivesTheMiddle)
{
    for (const auto& rows : {kRows, kAscorbate}) {
        for (const Row& row : rows) {
            const std::array pairs{pair(68, row.minutes[0])};
            for (const std::size_t i : {1U, 2U}) {
                EXPECT_NEAR(minutesAt(pairs, kFahrenheit[i], fittedQ10(row)), row.minutes[i],
                            kHalfAQuarter)
                    << row.film << ", " << kFahrenheit[i] << " °F";
            }
        }
    }
}

TEST(TimeAndTemperature, endsEnteredAsPairsGiveTheMiddleToo)
{
    for (const auto& rows : {kRows, kAscorbate}) {
        for (const Row& row : rows) {
            const std::array pairs{pair(68, row.minutes[0]), pair(75, row.minutes[3])};
            for (const std::size_t i : {1U, 2U}) {
                EXPECT_NEAR(minutesAt(pairs, kFahrenheit[i], kQ10.value), row.minutes[i],
                            kHalfAQuarter)
                    << row.film;
            }
        }
    }
}

// One pair and the default: each printed time of these developers lies within what is shown, and
// the time itself within a quarter of a minute for metol-hydroquinone.
TEST(TimeAndTemperature, aCarriedTimesRangeHoldsThePrintedTimes)
{
    const auto check = [](const Row& row, const Constant& known) {
        const std::array pairs{pair(68, row.minutes[0])};
        for (const std::size_t i : {1U, 2U, 3U}) {
            const auto range = carriedRange(pairs, fahrenheit(kFahrenheit[i]), known.value, known);
            ASSERT_TRUE(range && *range);
            EXPECT_TRUE((*range)->fromOnePair);
            EXPECT_GE(row.minutes[i], (*range)->shortest.value() / 60 - kHalfAQuarter) << row.film;
            EXPECT_LE(row.minutes[i], (*range)->longest.value() / 60 + kHalfAQuarter) << row.film;
        }
    };
    for (const Row& row : kRows) {
        check(row, kQ10);
        const std::array pairs{pair(68, row.minutes[0])};
        for (const std::size_t i : {1U, 2U, 3U}) {
            EXPECT_NEAR(minutesAt(pairs, kFahrenheit[i], kQ10.value), row.minutes[i], 0.25);
        }
    }
    for (const Row& row : kAscorbate) {
        check(row, kQ10Ascorbate);
    }
}

// The ascorbate rows stand apart: a metol-hydroquinone developer's Q10 misses the first by two
// thirds of a minute at 75 °F, the ascorbate's own by less than half of that in both.
TEST(TimeAndTemperature, ascorbateDevelopersAreSteeper)
{
    for (const Row& row : kAscorbate) {
        const std::array pairs{pair(68, row.minutes[0])};
        const double own = std::abs(minutesAt(pairs, 75, kQ10Ascorbate.value) - row.minutes[3]);
        const double other = std::abs(minutesAt(pairs, 75, kQ10.value) - row.minutes[3]);
        EXPECT_LT(own, 0.3) << row.film;
        EXPECT_LT(own, other) << row.film;
    }
}

// An amateur's own trials with a replenished ascorbate developer (apug.org, post 1251429): 23 min
// at 55 °F do what 2 min 40 s do at 95 °F. Over that wide a span its Q10 lies within the range that
// a rotary table of four close temperatures gave, and not within the metol-hydroquinone rows of it.
TEST(TimeAndTemperature, ascorbateOverFortyDegreesFahrenheit)
{
    const double tens = (fahrenheit(95) - fahrenheit(55)).value() / 10;
    const double q10 = std::pow(23 / (2 + 40.0 / 60), 1 / tens);
    EXPECT_GT(q10, kQ10Ascorbate.low);
    EXPECT_LT(q10, kQ10Ascorbate.high);
    for (const Row& row : kRows) {
        EXPECT_GT(q10, fittedQ10(row) + 0.5) << row.film;
    }
}

// Clerc, Photography: Theory and Practice, § 573 (Glover 1924): an MQ paper developer takes 30 to
// 60 s at 55 °F and 20 to 40 s at 65 °F, told in fives. The default was not fitted to it.
TEST(TimeAndTemperature, mqPaperDeveloper)
{
    const std::array quick{pair(55, 0.5)};
    const std::array slow{pair(55, 1)};
    EXPECT_NEAR(60 * minutesAt(quick, 65, kQ10.value), 20, 2.5);
    EXPECT_NEAR(60 * minutesAt(slow, 65, kQ10.value), 40, 2.5);
}

// T.O. 33B-1-1, Table 6-16, p. 6-75 (held out: the default was not fitted to it): normal developing
// times of radiographic film in an MQ developer, minutes in quarters. Its own steps are uneven,
// half a minute from 70 to 72 °F beside a quarter from 72 to 76, so two points come out beyond the
// rounding: 70 °F by 0.16 min, 72 °F by 0.34, and both are held.
TEST(TimeAndTemperature, radiographicFilmHeldOut)
{
    const std::array usual{pair(68, 5)};
    constexpr std::pair<double, double> kTable[] = {
        {80, 3.25}, {76, 3.75}, {68, 5}, {65, 5.5}, {63, 6}};
    for (const auto& [degrees, minutes] : kTable) {
        EXPECT_NEAR(minutesAt(usual, degrees, kQ10.value), minutes, kHalfAQuarter) << degrees;
    }
    EXPECT_NEAR(minutesAt(usual, 70, kQ10.value) - 4.5, 0.16, 0.01);
    EXPECT_NEAR(minutesAt(usual, 72, kQ10.value) - 4, 0.34, 0.01);
}

// New Mexico Administrative Code 20.3.6.612 App. C: minutes for radiographic film, 60 to 80 °F.
const std::array kNewMexico{pair(80, 2), pair(76, 3),   pair(72, 4),
                            pair(68, 5), pair(64, 6.5), pair(60, 9.5)};

// Every other row of that table entered as pairs must give the rows between, told in halves.
TEST(TimeAndTemperature, pairsCarryATable)
{
    constexpr std::pair<double, double> kBetween[] = {
        {78, 2.5}, {74, 3.5}, {70, 4.5}, {66, 5.5}, {62, 8}};
    for (const auto& [degrees, minutes] : kBetween) {
        EXPECT_NEAR(minutesAt(kNewMexico, degrees, kQ10.value), minutes, 0.25) << degrees;
    }
}

// North Dakota Administrative Code 33.1-10-06 App. D: the same table by another state, also at odd
// degrees, told in halves.
TEST(TimeAndTemperature, pairsCarryAnotherStatesOddDegrees)
{
    constexpr std::pair<double, double> kOdd[] = {{79, 2}, {77, 2.5}, {75, 3},   {73, 3.5},
                                                  {71, 4}, {69, 4.5}, {67, 5.5}, {65, 6},
                                                  {63, 7}, {61, 8.5}};
    for (const auto& [degrees, minutes] : kOdd) {
        EXPECT_NEAR(minutesAt(kNewMexico, degrees, kQ10.value), minutes, 0.25) << degrees;
    }
}

// A single pair carried to the cold end of the same table misses by minutes, and even the range
// does not reach it: why a second pair is asked for.
TEST(TimeAndTemperature, onePairDoesNotCarryIt)
{
    const std::array single{kNewMexico[3]};
    EXPECT_NEAR(9.5 - minutesAt(single, 60, kQ10.value), 2.85, 0.005);
    const auto range = carriedRange(single, fahrenheit(60), kQ10.value, kQ10);
    ASSERT_TRUE(range && *range);
    EXPECT_LT((*range)->longest.value() / 60, 9.5);
}

// Photography, ch. Development of the Negative: at 55 °F hydroquinone's action practically ceases.
// So no time is carried down there. TM 11-2323, para 33 b, and Clerc § 573 do develop at 55 °F:
// with a time of their own, and then it is taken.
TEST(TimeAndTemperature, noTimeIsCarriedToWhereHydroquinoneCeases)
{
    const std::array usual{pair(68, 10)};
    EXPECT_FALSE(baseTime(usual, fahrenheit(55), kQ10.value));
    const std::array known{pair(55, 20), pair(68, 10)};
    EXPECT_TRUE(baseTime(known, fahrenheit(55), kQ10.value));
}

// Development gone through at a temperature that drifts evenly by 5 °C, summed piece by piece,
// against the time at the mean: they differ as a tenth of a degree does, or less.
TEST(TimeAndTemperature, aDriftCountsByItsMean)
{
    const std::array usual{pair(68, 10)};
    const auto minutes = [&](double celsius) {
        return baseTime(usual, Celsius(celsius), kQ10.value)->time.value() / 60;
    };
    constexpr int kPieces = 1000;
    double rate = 0; // of the whole, each minute
    for (int i = 0; i < kPieces; ++i) {
        rate += 1 / minutes(17.5 + 5 * (i + 0.5) / kPieces) / kPieces;
    }
    EXPECT_LT(1 / rate, minutes(20)); // the warm half gains more than the cold one loses
    EXPECT_GT(1 / rate, minutes(20.1));
}

// US Army SS0509-8: 68 to 75 °F is best. Nothing is warned of there, and below and above it is.
TEST(TimeAndTemperature, usualRangeIsTheManuals)
{
    const std::array pairs{pair(55, 20), pair(86, 5)};
    const auto warned = [&](double degrees) {
        const auto warnings = baseTime(pairs, fahrenheit(degrees), kQ10.value)->warnings;
        return std::find(warnings.begin(), warnings.end(), TimeWarning::OutsideUsualRange) !=
               warnings.end();
    };
    EXPECT_FALSE(warned(68));
    EXPECT_FALSE(warned(75));
    EXPECT_TRUE(warned(60));
    EXPECT_TRUE(warned(80));
}

} // namespace
} // namespace ullage::chemistry
