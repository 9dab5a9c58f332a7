// A fixer's clearing tests, what they say of today, and when the clearing time will have doubled.
//
// Simplifications: clearing time grows in a straight line with wear; the temperature rule (doubling
// for each 10 °C below 20) is used for test and bath alike and gives nothing above 20 °C.
#pragma once

#include "core/chemistry/quantities.h"

#include <optional>
#include <span>

namespace ullage::chemistry
{

/// Factor on clearing and fixing at a temperature: 2^((20−T)/10), never under 1. Source:
/// kFixDoubling.
double coldFactor(Celsius temperature);

/// One clearing test: the time at 20 °C, and the wear at which it was made.
struct ClearingTest {
    FilmsPerLitre wear;
    Seconds at20;
};

/// Ordinary least squares of clearing time on wear; three tests or more at two or more wears.
struct ClearingFit {
    double intercept = 0; ///< s
    double slope = 0;     ///< s per film/L
    double residualSd = 0;
    double meanWear = 0;
    double spread = 0; ///< Σ (w − mean)²
    int tests = 0;

    [[nodiscard]] Seconds at(FilmsPerLitre wear) const;
    /// Half width of the 90 % prediction band (Student's t, n − 2).
    [[nodiscard]] Seconds band(FilmsPerLitre wear) const;
};

std::optional<ClearingFit> fitClearing(std::span<const ClearingTest> tests);

/// Where the line, and the edges of its band, rise to a clearing time; empty where they never do.
struct Crossing {
    std::optional<FilmsPerLitre> at;
    std::optional<FilmsPerLitre> low;  ///< the upper edge gets there first
    std::optional<FilmsPerLitre> high; ///< the lower edge last
};

Crossing whenReaching(const ClearingFit& fit, Seconds clearing);

/// Everything the tests of one batch say.
struct Clearing {
    Seconds now;                  ///< the fit at the present wear, else the last test
    Seconds last;                 ///< the last test
    std::optional<Seconds> fresh; ///< first test at wear ≤ 1, else the solution's figure
    std::optional<ClearingFit> fit;
    Crossing doubles;
    bool doubled = false; ///< judged on the last test, never on the fit

    /// Fixing time at 20 °C for ordinary films: twice the clearing time.
    [[nodiscard]] Seconds fixingTime() const;
};

/// Whether a solution with this much silver is hazardous waste in the US: at the limit or above it.
/// Source: kSilverWaste. Other places have other limits; the local authority decides.
bool silverIsHazardousWaste(GramsPerLitre silver);

/// Empty without a test. `tests` in the order they were made.
std::optional<Clearing> clearing(std::span<const ClearingTest> tests, FilmsPerLitre wear,
                                 std::optional<Seconds> freshFigure);

} // namespace ullage::chemistry
