// One small type per quantity, so that millilitres can never be added to degrees by mistake.
//
// A quantity is a double with a unit fixed by its type. Construction is explicit, the number comes
// out again only through value(), and nothing is rounded. Quantities of one kind add, subtract,
// compare and scale; two of one kind divide to a plain number. Every other mix fails to compile
// (tests/core/chemistry/quantities_test.cpp proves that). "Not known" is std::optional, never 0.
#pragma once

#include <chrono>
#include <compare>

namespace ullage::chemistry
{

template <class Tag>
class Quantity
{
public:
    constexpr Quantity() = default;
    constexpr explicit Quantity(double value) : m_value(value) {}

    [[nodiscard]] constexpr double value() const { return m_value; }

    constexpr Quantity& operator+=(Quantity other)
    {
        m_value += other.m_value;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity other)
    {
        m_value -= other.m_value;
        return *this;
    }
    constexpr Quantity& operator*=(double factor)
    {
        m_value *= factor;
        return *this;
    }

    friend constexpr Quantity operator+(Quantity a, Quantity b)
    {
        return Quantity(a.m_value + b.m_value);
    }
    friend constexpr Quantity operator-(Quantity a, Quantity b)
    {
        return Quantity(a.m_value - b.m_value);
    }
    friend constexpr Quantity operator-(Quantity a) { return Quantity(-a.m_value); }
    friend constexpr Quantity operator*(Quantity a, double factor)
    {
        return Quantity(a.m_value * factor);
    }
    friend constexpr Quantity operator*(double factor, Quantity a) { return a * factor; }
    friend constexpr Quantity operator/(Quantity a, double divisor)
    {
        return Quantity(a.m_value / divisor);
    }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.m_value / b.m_value; }
    friend constexpr auto operator<=>(Quantity a, Quantity b) = default;

private:
    double m_value = 0;
};

using Millilitres = Quantity<struct MillilitresTag>;
using Litres = Quantity<struct LitresTag>;
using SquareCentimetres = Quantity<struct SquareCentimetresTag>;
using Millimetres = Quantity<struct MillimetresTag>;
using Seconds = Quantity<struct SecondsTag>;
using Hours = Quantity<struct HoursTag>;
using Days = Quantity<struct DaysTag>;
/// Counting units of film: one is 80 square inches (see films.h).
using Films = Quantity<struct FilmsTag>;
using FilmsPerLitre = Quantity<struct FilmsPerLitreTag>;
using Millimoles = Quantity<struct MillimolesTag>;
using MillimolesPerLitre = Quantity<struct MillimolesPerLitreTag>;
using GramsPerLitre = Quantity<struct GramsPerLitreTag>;
using MilligramsPerLitre = Quantity<struct MilligramsPerLitreTag>;
/// Gas passed by a bottle cap, cm³ of air's oxygen a day (the published unit).
using CubicCentimetresPerDay = Quantity<struct CubicCentimetresPerDayTag>;
/// A difference of temperatures; 1 unit is 1 K.
using CelsiusDelta = Quantity<struct CelsiusDeltaTag>;

/// A temperature. Two of them differ by a CelsiusDelta; they cannot be added or scaled.
class Celsius
{
public:
    constexpr Celsius() = default;
    constexpr explicit Celsius(double value) : m_value(value) {}

    [[nodiscard]] constexpr double value() const { return m_value; }
    [[nodiscard]] constexpr double kelvin() const { return m_value + 273.15; }

    friend constexpr CelsiusDelta operator-(Celsius a, Celsius b)
    {
        return CelsiusDelta(a.m_value - b.m_value);
    }
    friend constexpr Celsius operator+(Celsius a, CelsiusDelta d)
    {
        return Celsius(a.m_value + d.value());
    }
    friend constexpr Celsius operator-(Celsius a, CelsiusDelta d)
    {
        return Celsius(a.m_value - d.value());
    }
    friend constexpr auto operator<=>(Celsius a, Celsius b) = default;

private:
    double m_value = 0;
};

constexpr Litres litres(Millilitres v) { return Litres(v.value() / 1000); }

// Concentration and amount; the only products of two quantities the model needs by name.
constexpr FilmsPerLitre operator/(Films f, Litres v)
{
    return FilmsPerLitre(f.value() / v.value());
}
constexpr Films operator*(FilmsPerLitre c, Litres v) { return Films(c.value() * v.value()); }
constexpr MillimolesPerLitre operator/(Millimoles n, Litres v)
{
    return MillimolesPerLitre(n.value() / v.value());
}
constexpr Millimoles operator*(MillimolesPerLitre c, Litres v)
{
    return Millimoles(c.value() * v.value());
}

/// A moment in UTC to the millisecond. Local time exists only where words are made for people.
using Instant = std::chrono::sys_time<std::chrono::milliseconds>;

/// From a to b in days; negative if b is earlier.
constexpr Days daysBetween(Instant a, Instant b)
{
    return Days(static_cast<double>((b - a).count()) / 86'400'000.0);
}

/// `start` moved by `days`, rounded to the nearest millisecond.
Instant addDays(Instant start, Days days);

/// Calendar months kept to the last day of a shorter month (31 Aug + 6 months = 28 or 29 Feb), the
/// time of day kept.
Instant addMonths(Instant start, int months);

} // namespace ullage::chemistry
