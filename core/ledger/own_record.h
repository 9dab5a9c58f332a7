// What a darkroom's own tests say of a solution, gathered from all its bottles
// (chemistry/own_figures.h has the estimates). Proposals: nothing is taken over by itself.
#pragma once

#include "core/chemistry/own_figures.h"
#include "core/ledger/batch.h"

#include <array>
#include <optional>
#include <vector>

namespace ullage::ledger
{

/// One test as the estimate sees it: at this wear, so many times what a fresh bath needs.
struct OwnTest {
    chemistry::FilmsPerLitre wear;
    double times = 1;
};

/// A look or a strip as the estimate sees it: after so long in a half-full bottle it would have
/// been spent as far.
struct OwnTrial {
    chemistry::Days halfFull;
    bool passed = false;
};

/// How likely a half-full bottle passes a look or a strip after so long.
struct OwnChance {
    chemistry::Days halfFull;
    double chance = 0; ///< by the own figure
    double low = 0;    ///< by the lower end of its span
    double high = 0;   ///< by the upper one
};

/// What tests can say: films a litre of a fixer, percent a film of a developer, days that a
/// half-full bottle of a developer keeps.
enum class OwnKind { Capacity, Wear, Keeping };
inline constexpr std::array kOwnKinds{OwnKind::Capacity, OwnKind::Wear, OwnKind::Keeping};

struct OwnRecord {
    /// A fixer's, in films per litre: from clearing tests, each beside the fresh test of its film.
    std::optional<chemistry::OwnFigure> capacity;
    /// A developer's with the rule per film, in percent: from control strips.
    std::optional<chemistry::OwnFigure> wear;
    std::vector<OwnTest> tests; ///< what either is made of
    /// The oxygen limit, in mmol/L: from looks and strips of bottles that films wore little.
    std::optional<chemistry::OwnFigure> oxygen;
    /// The same as the days that a half-full bottle keeps (formulary::halfTimeFor()); there where
    /// `oxygen` is.
    std::optional<chemistry::OwnFigure> halfDays;
    std::vector<OwnTrial> trials;   ///< what it is made of
    std::vector<OwnChance> chances; ///< what it means, days rising; empty without it

    /// In films per litre, percent or days; empty where the tests do not say it.
    [[nodiscard]] const std::optional<chemistry::OwnFigure>& of(OwnKind kind) const;
};

/// From the batches of this solution, whole folds; others are passed over only if they hold no
/// test that counts. A test counts in the bottle it was made in; of a bottle of unknown history no
/// clearing test, look or strip does.
OwnRecord ownRecord(const formulary::Solution& solution, const std::vector<Batch>& batches);

} // namespace ullage::ledger
