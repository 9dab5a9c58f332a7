// How the development time grows with the film a developer has done.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <vector>

namespace ullage::chemistry
{

enum class WearRule {
    None,
    PerFilm,  ///< additive on the first film's time: 1 + p·w/100
    Compound, ///< on the time before: (1 + p/100)^w
    Steps,    ///< the factor of the highest step with from ≤ w, 1 before the first
};

inline constexpr double kMostWearPercent = 100;
inline constexpr double kLeastWearFactor = 0.1;
inline constexpr double kMostWearFactor = 10;
inline constexpr FilmsPerLitre kMostWear{1000};

struct WearStep {
    FilmsPerLitre from;
    double factor = 1;
    friend bool operator==(const WearStep&, const WearStep&) = default;
};

/// "+10 % per film" is read both ways in the trade and differs by a quarter at the tenth film, so a
/// solution says which one its maker means.
struct Wear {
    WearRule rule = WearRule::None;
    double percent = 0;          ///< PerFilm and Compound; 0 to 100
    std::vector<WearStep> steps; ///< Steps; rising in `from`, factors 0.1 to 10
    friend bool operator==(const Wear&, const Wear&) = default;
};

/// Factor on the time of a load that finds the developer at `worn`; not rounded.
double wearFactor(const Wear& wear, FilmsPerLitre worn);

/// Refuses percents outside 0 to 100, steps out of order or factors outside 0.1 to 10.
Result<void> check(const Wear& wear);

} // namespace ullage::chemistry
