// A fixer's clearing tests, what they say of today, and when the clearing time will have doubled.
//
// Simplifications: clearing time grows in a straight line with wear, and doubles over the capacity
// where a single test says no more; what warmth does to a test is one law up and down, above 20 °C
// an extension of the published one for the cold.
#pragma once

#include "core/chemistry/quantities.h"

#include <optional>
#include <span>
#include <string>

namespace ullage::chemistry
{

/// Factor on clearing and fixing at a temperature: 2^((20−T)/10), never under 1. Source:
/// kFixDoubling.
double coldFactor(Celsius temperature);

/// A clearing test's time brought to 20 °C: t·2^((T−20)/10), in the warmth as in the cold, so that
/// a warm test does not hide a spent bath. Source: kFixDoubling; above 20 °C an extension of it.
Seconds clearingAt20(Seconds time, Celsius temperature);

/// One clearing test: the time at 20 °C, the wear at which it was made, and the film it was made
/// with. Tests are compared within one film only; those without a name share one.
struct ClearingTest {
    FilmsPerLitre wear;
    Seconds at20;
    std::string film = {};
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

/// Everything the tests of one batch say. Today's time is that of the film of the last test.
struct Clearing {
    Seconds now;  ///< the last test carried on to the present wear, or the fit's where that is more
    Seconds last; ///< the last test
    std::optional<Seconds> fresh; ///< of the last test's film
    std::optional<ClearingFit> fit;
    Crossing doubles; ///< empty where the fitted line does not rise
    /// A film's last test took twice its fresh time, or more; of several the latest made. Judged on
    /// tests, never on the fit.
    struct Doubled {
        Seconds last;
        Seconds fresh;
    };
    std::optional<Doubled> doubled;

    /// Fixing time at 20 °C for ordinary films: twice the clearing time.
    [[nodiscard]] Seconds fixingTime() const;
};

/// What else is known of the fixer that was tested.
struct FixerKnown {
    std::optional<Seconds> freshFigure;    ///< its solution's, when fresh
    std::optional<FilmsPerLitre> capacity; ///< over which its clearing time doubles
    bool testedFresh = true; ///< false of a bottle found: no test of its own is a fresh one
};

/// Whether a solution with this much silver is hazardous waste in the US: at the limit or above it.
/// Source: kSilverWaste. Other places have other limits; the local authority decides.
bool silverIsHazardousWaste(GramsPerLitre silver);

/// Clearing time of a film when fresh: its first test at wear ≤ 1, else the solution's figure.
std::optional<Seconds> freshClearing(std::span<const ClearingTest> tests, const std::string& film,
                                     const FixerKnown& fixer);

/// Empty without a test. `tests` in the order they were made.
std::optional<Clearing> clearing(std::span<const ClearingTest> tests, FilmsPerLitre wear,
                                 const FixerKnown& fixer);

} // namespace ullage::chemistry
