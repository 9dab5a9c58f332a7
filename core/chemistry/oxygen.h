// Oxygen in water and in photographic solutions.
#pragma once

#include "core/chemistry/quantities.h"

namespace ullage::chemistry
{

/// Oxygen that fresh water holds in equilibrium with humid air at 101.325 kPa, mg/L, 0 to 40 °C
/// (9.092 at 20 °C). Source: Benson & Krause 1984, Limnol. Oceanogr. 29, 620.
double freshWaterOxygen(Celsius temperature);

/// The same in mmol/L.
MillimolesPerLitre freshWaterSaturation(Celsius temperature);

/// Salts dissolved, mol/L, for salting out.
struct Salts {
    double sulfite = 0;     ///< sodium sulfite
    double sulfate = 0;     ///< sodium sulfate
    double thiosulfate = 0; ///< sodium thiosulfate
};

/// Factor on the solubility of oxygen in a salt solution at 25 °C, 0 to 1; exactly 1 without salt.
/// Source: Schumpe 1993, Chem. Eng. Sci. 48, 153 (ion constants).
double saltingOut(const Salts& salts);

/// What the model uses for a solution: saturation at 20 °C × its oxygen factor (0 to 1).
MillimolesPerLitre solutionSaturation(double oxygenFactor);

} // namespace ullage::chemistry
