// Diluting a liquid of known strength, by weight and by volume.
//
// Simplification: densities are the user's, at one temperature; volumes of acid and water do not
// quite add up, which is why weights do the reckoning. Acid is poured into water, never the
// reverse.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

namespace ullage::chemistry
{

/// Percent by weight of a mixture of `concentrate` parts by weight at `percent` (0 to 100) with
/// `water` parts.
double mixedPercent(double concentrate, double percent, double water);

struct PartsByWeight {
    double concentrate = 0;
    double water = 0;
};

/// c2 : (c1 − c2), in percent by weight. Refuses `from` outside (0, 100] and `to` outside (0, from]
/// (OutOfRange, NotFinite).
Result<PartsByWeight> dilutionByWeight(double from, double to);

/// A liquid as its bottle says: strength in percent by weight, density in g/mL.
struct Strength {
    double percent = 0;
    double density = 1; ///< 0.5 to 2.5
    friend bool operator==(const Strength&, const Strength&) = default;
};

struct VolumesToPour {
    Millilitres water; ///< first, at 20 °C
    Millilitres concentrate;
};

/// What gives `makes` of strength `to` from a liquid of strength `from`. The two need not add up to
/// `makes`: make up to the mark. Refuses strengths as dilutionByWeight(), densities out of range
/// and a volume outside 1 to 1 000 000 mL (OutOfRange, NotFinite).
Result<VolumesToPour> dilutionByVolume(Millilitres makes, const Strength& from, const Strength& to);

} // namespace ullage::chemistry
