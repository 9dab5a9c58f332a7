// The units the user reads and types. A setting of the window: what is stored is always millilitres
// and degrees Celsius, and changing the units changes no stored value.
#pragma once

#include <QLocale>

namespace ullage::app
{

enum class VolumeUnit { Millilitre, FluidOunce }; ///< the fluid ounce is the US one
enum class TemperatureUnit { Celsius, Fahrenheit };

struct Units {
    VolumeUnit volume = VolumeUnit::Millilitre;
    TemperatureUnit temperature = TemperatureUnit::Celsius;

    bool operator==(const Units&) const = default;
};

/// How numbers are worded for this user.
struct Wording {
    Units units;
    QLocale locale;
};

/// What a country usually uses: US fluid ounces and °F in the USA, else ml and °C.
Units usualUnits(const QLocale& locale);

inline constexpr double kMillilitresPerFluidOunce =
    29.5735295625; // exact: 1/128 of 231 cubic inches

double toFluidOunces(double millilitres);
double fromFluidOunces(double fluidOunces);
double toFahrenheit(double celsius);
double fromFahrenheit(double fahrenheit);

} // namespace ullage::app
