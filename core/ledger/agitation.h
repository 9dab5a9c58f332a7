// When to agitate during a step: for the first seconds, then for some seconds every so often.
//
// Everything counts from the start of the step, so a step that is lengthened or overruns goes on
// in the same beat.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace ullage::ledger
{

enum class AgitationKind { None, Continuous, Intervals };
inline constexpr std::array<std::string_view, 3> kAgitationCodes{"none", "continuous", "intervals"};
std::string_view code(AgitationKind kind);

struct Agitation {
    AgitationKind kind = AgitationKind::None;
    chemistry::Seconds first; ///< Intervals: from the start of the step; 0 to 600
    chemistry::Seconds each;  ///< Intervals: length of every later spell; 1 to `every`
    chemistry::Seconds every; ///< Intervals: from the start of one to the next; 5 to 3600
    friend bool operator==(const Agitation&, const Agitation&) = default;
};

/// Refuses figures outside the ranges above (OutOfRange, NotFinite); other kinds need none.
Result<void> check(const Agitation& agitation);

struct AgitationBlock {
    chemistry::Seconds from;
    chemistry::Seconds until;
    friend bool operator==(const AgitationBlock&, const AgitationBlock&) = default;
};

/// The blocks of a step of this length, in order, cut at its end. Spells start at whole multiples
/// of `every`, the first of them after the opening spell is over.
std::vector<AgitationBlock> agitationBlocks(const Agitation& agitation, chemistry::Seconds length);

struct AgitationCue {
    bool agitate = false;
    /// Seconds until agitating starts or stops; empty when nothing more changes in this step.
    std::optional<chemistry::Seconds> change;
};

/// What to do at `elapsed` of a step of this length; nothing any more from its end on.
AgitationCue cueAt(const Agitation& agitation, chemistry::Seconds elapsed,
                   chemistry::Seconds length);

} // namespace ullage::ledger
