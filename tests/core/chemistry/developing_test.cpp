#include "core/chemistry/developing.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

using Pairs = std::vector<TimeAtTemperature>;

TimeAtTemperature pair(double celsius, double minutes)
{
    return {Celsius(celsius), Seconds(minutes * 60)};
}

double minutes(const Pairs& pairs, double celsius, double q10 = 1.9)
{
    const auto time = baseTime(pairs, Celsius(celsius), q10);
    return time ? time->time.value() / 60 : -1;
}

Error refused(const Pairs& pairs, double celsius, double q10 = 1.9)
{
    const auto time = baseTime(pairs, Celsius(celsius), q10);
    return time ? Error{.code = ErrorCode::StoreFailed, .field = "accepted"} : time.error();
}

TEST(BaseTime, oneFigureGoesByQ10)
{
    const Pairs one{pair(20, 10)};
    EXPECT_EQ(minutes(one, 20), 10);
    EXPECT_NEAR(minutes(one, 30), 10 / 1.9, 1e-12);
    EXPECT_NEAR(minutes(one, 15), 13.784048752090222, 1e-12); // 10·√1.9
    EXPECT_NEAR(minutes(one, 15, 2.07), 14.38749456993816, 1e-12);
}

TEST(BaseTime, betweenFiguresTheLogarithmIsStraight)
{
    const Pairs two{pair(24, 8), pair(18, 12)}; // the order they are entered in does not matter
    EXPECT_NEAR(minutes(two, 21), std::sqrt(96), 1e-12);
    EXPECT_NEAR(minutes(two, 20), 12 * std::pow(8.0 / 12, 2.0 / 6), 1e-12);
    EXPECT_EQ(minutes(two, 18), 12);
    EXPECT_EQ(minutes(two, 24), 8);
    const Pairs three{pair(18, 12), pair(20, 10), pair(24, 8)};
    EXPECT_EQ(minutes(three, 20), 10);
    EXPECT_NEAR(minutes(three, 22), std::sqrt(80), 1e-12);
}

TEST(BaseTime, outsideFiguresTheNearestGoesByQ10)
{
    const Pairs two{pair(18, 12), pair(24, 8)};
    EXPECT_NEAR(minutes(two, 28), 8 * std::pow(1.9, -0.4), 1e-12);
    EXPECT_NEAR(minutes(two, 14), 12 * std::pow(1.9, 0.4), 1e-12);
}

TEST(BaseTime, warnsWithoutRefusing)
{
    using W = std::vector<TimeWarning>;
    const Pairs two{pair(16, 14), pair(26, 7)};
    EXPECT_EQ(baseTime(two, Celsius(18), 1.9)->warnings, W{});
    EXPECT_EQ(baseTime(two, Celsius(24), 1.9)->warnings, W{});
    EXPECT_EQ(baseTime(two, Celsius(17.9), 1.9)->warnings, W{TimeWarning::OutsideUsualRange});
    EXPECT_EQ(baseTime(two, Celsius(24.1), 1.9)->warnings, W{TimeWarning::OutsideUsualRange});
    EXPECT_EQ(baseTime({{pair(20, 10)}}, Celsius(21), 1.9)->warnings, W{TimeWarning::Extrapolated});
    EXPECT_EQ(baseTime({{pair(20, 10)}}, Celsius(25), 1.9)->warnings,
              (W{TimeWarning::OutsideUsualRange, TimeWarning::Extrapolated}));
}

TEST(BaseTime, refusesTemperaturesNoFigureReaches)
{
    const Pairs one{pair(20, 10)};
    EXPECT_GT(minutes(one, 13), 0);
    EXPECT_GT(minutes(one, 30), 0);
    EXPECT_EQ(refused(one, 12.9).field, "temperature");
    EXPECT_EQ(refused(one, 12.9).low, 13);
    EXPECT_EQ(refused(one, 30.1).high, 30);
    EXPECT_EQ(refused(one, 200).number, 200);
    EXPECT_EQ(refused(one, NAN).code, ErrorCode::NotFinite);
    const Pairs wide{pair(10, 30), pair(38, 3)};
    EXPECT_GT(minutes(wide, 10), 0);
    EXPECT_GT(minutes(wide, 38), 0);
    EXPECT_EQ(refused(wide, 9.9).low, 10);
    EXPECT_EQ(refused(wide, 38.1).high, 38);
}

TEST(BaseTime, refusesFiguresThatCannotBe)
{
    EXPECT_EQ(refused({}, 20).code, ErrorCode::NoFigure);
    EXPECT_EQ(refused({pair(20, 10), pair(20, 11)}, 20).code, ErrorCode::Conflict);
    EXPECT_EQ(refused({{Celsius(20), Seconds(9.9)}}, 20).field, "base time");
    EXPECT_EQ(refused({{Celsius(20), Seconds(14'401)}}, 20).field, "base time");
    EXPECT_EQ(refused({pair(4.9, 10)}, 20).field, "base temperature");
    EXPECT_EQ(refused({pair(60.1, 10)}, 20).field, "base temperature");
    EXPECT_EQ(refused({pair(20, 10)}, 20, 0.9).field, "q10");
    EXPECT_EQ(refused({pair(20, 10)}, 20, 5.1).field, "q10");
}

TEST(CarriedRange, isTheTimeUnderTheEndsOfTheRange)
{
    const std::array one{TimeAtTemperature{Celsius(20), Seconds(600)}};
    const auto cold = carriedRange(one, Celsius(18), 1.9, kQ10);
    ASSERT_TRUE(cold && *cold);
    EXPECT_NEAR((*cold)->shortest.value(), 600 * std::pow(1.5, 0.2), 1e-9);
    EXPECT_NEAR((*cold)->longest.value(), 600 * std::pow(3.0, 0.2), 1e-9);
    EXPECT_TRUE((*cold)->fromOnePair);
    const auto warm = carriedRange(one, Celsius(24), 2.5, kQ10Ascorbate);
    EXPECT_NEAR((*warm)->shortest.value(), 600 * std::pow(3.0, -0.4), 1e-9);
    EXPECT_NEAR((*warm)->longest.value(), 600 * std::pow(2.3, -0.4), 1e-9);
    // The solution's own figure is always within.
    const auto steep = carriedRange(one, Celsius(18), 4, kQ10);
    EXPECT_NEAR((*steep)->longest.value(), 600 * std::pow(4.0, 0.2), 1e-9);
}

TEST(CarriedRange, isEmptyWhereNothingIsCarried)
{
    const std::array two{TimeAtTemperature{Celsius(20), Seconds(600)},
                         TimeAtTemperature{Celsius(24), Seconds(450)}};
    for (const double celsius : {20.0, 22.0, 24.0}) {
        const auto range = carriedRange(two, Celsius(celsius), 1.9, kQ10);
        ASSERT_TRUE(range);
        EXPECT_FALSE(*range) << celsius;
    }
    const auto beyond = carriedRange(two, Celsius(25), 1.9, kQ10);
    ASSERT_TRUE(beyond && *beyond);
    EXPECT_FALSE((*beyond)->fromOnePair);
    EXPECT_EQ(carriedRange(two, Celsius(5), 1.9, kQ10).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(carriedRange({}, Celsius(20), 1.9, kQ10).error().code, ErrorCode::NoFigure);
}

} // namespace
} // namespace ullage::chemistry
