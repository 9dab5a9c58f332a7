#include "app/words/units.h"

namespace ullage::app
{

Units usualUnits(const QLocale& locale)
{
    if (locale.territory() == QLocale::UnitedStates)
        return {VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit};
    return {};
}

double toFluidOunces(double millilitres) { return millilitres / kMillilitresPerFluidOunce; }
double fromFluidOunces(double fluidOunces) { return fluidOunces * kMillilitresPerFluidOunce; }
double toFahrenheit(double celsius) { return celsius * 9 / 5 + 32; }
double fromFahrenheit(double fahrenheit) { return (fahrenheit - 32) * 5 / 9; }

} // namespace ullage::app
