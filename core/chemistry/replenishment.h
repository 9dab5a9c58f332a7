// Topping up a little after each film, so that the wear comes to rest instead of rising.
//
// With r mL of fresh solution for each film, the wear after film and before topping up goes
// w ← w·(1 − r/V) + 1/L and rests at 1000/r films per litre, whatever it was and however large the
// bottle.
#pragma once

#include "core/chemistry/quantities.h"

#include <vector>

namespace ullage::chemistry
{

/// Where the wear comes to rest: 1000/r. `perFilm` > 0.
FilmsPerLitre steadyWear(Millilitres perFilm);

/// The rate that holds a wanted wear (> 0): 1000/w.
Millilitres topUpFor(FilmsPerLitre wear);

/// A rate published by area as a rate per film: `volume` for each `area` (> 0).
Millilitres topUpPerFilm(Millilitres volume, SquareCentimetres area);

/// Wear after the 1st, 2nd … of `films` single films, each measured before its topping up of
/// `perFilm` (0 to `volume`) in a bottle kept at `volume` (> 0), starting from `start`.
std::vector<FilmsPerLitre> wearWhileToppingUp(FilmsPerLitre start, Millilitres volume,
                                              Millilitres perFilm, int films);

} // namespace ullage::chemistry
