// The control strips of one developer: what each read, what it is judged by, and the factor on the
// development time that follows from the next one.
//
// The strips of all batches of one solution are one record, in order of time: one bottle seldom
// sees enough of them for limits. A strip is developed for the time that the tool gives for it, so
// wear and an accepted factor are in it already and what is left is what they do not account for.
//
// Each strip is judged by the individuals chart (chemistry/strips.h) of the strips before it that
// lay within; the first kStripsForLimits are judged together. So one bad strip neither widens the
// limits nor moves the centre for the next, and a strip keeps its mark when others follow.
//
// The journal has no field for a reference strip, and none is needed: what counts afterwards is the
// factor that was accepted, which is in it. The reference is found instead as the fresh clearing
// time is: the batch's own first strip read at kReferenceWear or less, else the newest such strip
// of another batch. The user may choose another to compare with.
#pragma once

#include "core/chemistry/strips.h"
#include "core/ledger/batch.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// Strips that limits are first drawn from. A convention: of two or three the moving range says
/// next to nothing.
inline constexpr std::size_t kStripsForLimits = 5;
/// Wear up to which a strip may stand for the fresh developer.
inline constexpr chemistry::FilmsPerLitre kReferenceWear{1};

struct StripReading {
    std::string batch;
    std::string batchName;
    StripDone strip;
};

struct StripRecord {
    std::vector<StripReading> readings; ///< oldest first
    /// What each was judged by; empty while there are too few.
    std::vector<std::optional<chemistry::ControlChart>> judgedBy;
    std::vector<chemistry::ControlMark> marks;
    std::optional<chemistry::ControlChart> next; ///< what the next one will be judged by

    /// Positions of those that are out of control.
    [[nodiscard]] std::vector<std::size_t> outOfControl() const;
    /// Of those beyond their limits the ones that somebody passed all the same.
    [[nodiscard]] std::vector<std::size_t> overridden() const;
    /// What the limits say of the next strip, for its result to begin with: passed within them.
    /// Empty as long as there are none.
    [[nodiscard]] std::optional<bool> preset(double density) const;
};

/// `readings` in any order; equal times keep theirs.
StripRecord stripRecord(std::vector<StripReading> readings);

/// Positions of the batch's own strips that were passed although they lay beyond their limits.
std::vector<std::size_t> overriddenIn(const StripRecord& record, const std::string& batch);

/// Position of the reference strip for a batch; empty where no strip was read fresh.
std::optional<std::size_t> referenceStrip(const StripRecord& record, const std::string& batch);

/// A factor to accept or not.
struct StripProposal {
    double correction = 1; ///< what this strip asks for
    double factor = 1;     ///< times the factor in force: the one to accept
};

/// What a strip that reads `density` asks for. Empty while there are no limits and for a density
/// within them. Refuses as chemistry::stripFactor() does, and with NotSuitable also when the factor
/// on the whole would be beyond its reach. `inForce` > 0: the factor the strip was developed by.
Result<std::optional<StripProposal>> proposal(const StripRecord& record, double density,
                                              double reference, double inForce);

} // namespace ullage::ledger
