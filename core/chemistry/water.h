// Water: its density, and blending hot with cold.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

namespace ullage::chemistry
{

/// Density of water, kg/m³ (g/L), 0 to 100 °C. Source: IAPWS-IF97 at every 10 °C, rounded to 0.01;
/// from 70 °C up from memory. Between them a cubic, good to 0.02.
double waterDensity(Celsius temperature);

/// Hot and cold water, each measured at its own temperature.
struct Blend {
    Millilitres hot;
    Millilitres cold;
};

/// Shares of `total` (measured at `wanted`) by mass: m_hot = m·(T − T_cold)/(T_hot − T_cold).
/// Not rounded. Refuses hot or cold outside 0 to 100 °C (OutOfRange, NotFinite), hot that is no
/// warmer than cold (Conflict), and a temperature that is not from cold to hot (OutOfRange).
/// Simplification: what the vessel takes up is left out, so the blend comes out a little nearer to
/// room temperature.
Result<Blend> blend(Millilitres total, Celsius wanted, Celsius hot, Celsius cold);

} // namespace ullage::chemistry
