#include "core/chemistry/quantities.h"

#include <concepts>
#include <gtest/gtest.h>
#include <type_traits>

namespace ullage::chemistry
{
namespace
{

// Mixes that must not compile -------------------------------------------------------------------

template <class A, class B>
concept Adds = requires(A a, B b)
{
    a + b;
};
template <class A, class B>
concept Subtracts = requires(A a, B b)
{
    a - b;
};
template <class A, class B>
concept Multiplies = requires(A a, B b)
{
    a* b;
};
template <class A, class B>
concept Divides = requires(A a, B b)
{
    a / b;
};
template <class A, class B>
concept Compares = requires(A a, B b)
{
    a < b;
};
template <class A, class B>
concept AddsTo = requires(A a, B b)
{
    a += b;
};

// The concepts themselves can hold, or the denials below would prove nothing.
static_assert(Adds<Millilitres, Millilitres> && Subtracts<Millilitres, Millilitres>);
static_assert(Multiplies<Millilitres, double> && Multiplies<double, Millilitres>);
static_assert(Divides<Millilitres, double> && Divides<Millilitres, Millilitres>);
static_assert(Compares<Days, Days> && AddsTo<Days, Days>);

static_assert(!Adds<Millilitres, Celsius> && !Adds<Celsius, Millilitres>);
static_assert(!Adds<Millilitres, Litres> && !Compares<Millilitres, Litres>);
static_assert(!Adds<Seconds, Days> && !Compares<Hours, Days> && !AddsTo<Seconds, Hours>);
static_assert(!Adds<Films, FilmsPerLitre> && !AddsTo<FilmsPerLitre, Films>);
static_assert(!Adds<GramsPerLitre, MilligramsPerLitre>);
static_assert(!Adds<Millimoles, MillimolesPerLitre>);
static_assert(!Adds<Millilitres, double> && !Adds<double, Millilitres>);
static_assert(!Compares<Millilitres, double> && !AddsTo<Millilitres, double>);
static_assert(!Multiplies<Millilitres, Millilitres> && !Divides<double, Millilitres>);

// A temperature is a point, not an amount.
static_assert(!Adds<Celsius, Celsius> && !Multiplies<Celsius, double> && !Divides<Celsius, double>);
static_assert(!AddsTo<Celsius, Celsius> && !Adds<Celsius, double> && !Compares<Celsius, double>);
static_assert(!Adds<CelsiusDelta, Celsius> && !Compares<Celsius, CelsiusDelta>);
static_assert(std::same_as<decltype(Celsius(20) - Celsius(18)), CelsiusDelta>);
static_assert(std::same_as<decltype(Celsius(20) + CelsiusDelta(1)), Celsius>);
static_assert(std::same_as<decltype(Celsius(20) - CelsiusDelta(1)), Celsius>);

// Nothing goes in or out by itself.
static_assert(!std::convertible_to<double, Millilitres> && !std::convertible_to<int, Celsius>);
static_assert(!std::convertible_to<Millilitres, double> && !std::convertible_to<Celsius, double>);
static_assert(!std::constructible_from<Millilitres, Litres>);
static_assert(!std::constructible_from<Celsius, CelsiusDelta>);
static_assert(!std::assignable_from<Days&, double>);
static_assert(std::constructible_from<Millilitres, double>);

// The few products that have a name.
static_assert(std::same_as<decltype(Films(1) / Litres(1)), FilmsPerLitre>);
static_assert(std::same_as<decltype(FilmsPerLitre(1) * Litres(1)), Films>);
static_assert(std::same_as<decltype(Millimoles(1) / Litres(1)), MillimolesPerLitre>);
static_assert(std::same_as<decltype(Millilitres(1) / Millilitres(2)), double>);
static_assert(!Divides<Films, Millilitres>); // per litre means per litre
static_assert(!Divides<Millimoles, Millilitres>);

// Values
// -------------------------------------------------------------------------------------------

Instant at(int year, unsigned month, unsigned day, int hour = 0)
{
    using namespace std::chrono;
    return sys_days(std::chrono::year(year) / month / day) + hours(hour);
}

TEST(Quantities, keepTheirNumberUnrounded)
{
    EXPECT_EQ(Millilitres(0.1).value(), 0.1);
    EXPECT_EQ((Millilitres(600) - Millilitres(20)).value(), 580);
    EXPECT_EQ((-Days(3)).value(), -3);
    EXPECT_EQ((2 * Films(1.5) / 3).value(), 1);
    EXPECT_EQ(Millilitres(250) / Millilitres(1000), 0.25);
    EXPECT_EQ(litres(Millilitres(250)).value(), 0.25);
    EXPECT_EQ((Films(2) / Litres(0.5)).value(), 4);
    EXPECT_EQ((MillimolesPerLitre(13) * Litres(0.5)).value(), 6.5);
    EXPECT_EQ(Celsius(20).kelvin(), 293.15);
    EXPECT_EQ((Celsius(24) - Celsius(20)).value(), 4);
}

TEST(Instants, countDaysToTheMillisecond)
{
    const Instant noon = at(2026, 6, 1, 12);
    EXPECT_EQ(daysBetween(noon, at(2026, 6, 2, 0)).value(), 0.5);
    EXPECT_EQ(daysBetween(at(2026, 6, 2, 0), noon).value(), -0.5);
    EXPECT_EQ(addDays(noon, Days(0.5)), at(2026, 6, 2, 0));
    EXPECT_EQ(addDays(noon, Days(-1)), at(2026, 5, 31, 12));
    // 1.4 ms is nearest to 1 ms.
    EXPECT_EQ(addDays(noon, Days(1.4 / 86'400'000)), noon + std::chrono::milliseconds(1));
}

TEST(Instants, addCalendarMonthsKeptToTheMonthsEnd)
{
    EXPECT_EQ(addMonths(at(2026, 8, 31, 9), 6), at(2027, 2, 28, 9));
    EXPECT_EQ(addMonths(at(2027, 8, 31, 9), 6), at(2028, 2, 29, 9));
    EXPECT_EQ(addMonths(at(2026, 1, 30), 1), at(2026, 2, 28));
    EXPECT_EQ(addMonths(at(2026, 11, 30), 3), at(2027, 2, 28));
    EXPECT_EQ(addMonths(at(2026, 5, 15, 23), 12), at(2027, 5, 15, 23));
    EXPECT_EQ(addMonths(at(2026, 12, 31), 1), at(2027, 1, 31));
}

} // namespace
} // namespace ullage::chemistry
