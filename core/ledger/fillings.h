// What goes from one bottle into another is two events: `drawn` with `to` on the donor, `mixed` or
// `topped-up` with `from` on the heir. They pair by instant, by who and whom, and by volume.
#pragma once

#include "core/ledger/event.h"

#include <optional>
#include <string>
#include <unordered_set>
#include <vector>

namespace ullage::ledger
{

// What the other bottle of a filling has to be, and its other half.
inline constexpr const char* kOtherBottleForm = "another bottle";
inline constexpr const char* kSameSolutionForm = "a bottle of the same solution";
inline constexpr const char* kSameKindForm = "a bottle of the same kind";
inline constexpr const char* kOtherHalfForm =
    "with its other half, at the same time and of the same volume";

/// What one such event says.
struct FillingHalf {
    std::string donor;
    std::string heir;
    chemistry::Millilitres volume;
    bool drawn = false; ///< the donor's half

    /// The field that names the other bottle.
    [[nodiscard]] const char* field() const { return drawn ? "to" : "from"; }
    [[nodiscard]] const std::string& other() const { return drawn ? heir : donor; }
};

/// Empty for an event that is no half of a filling.
std::optional<FillingHalf> halfOf(const Event& event);

/// Places of halves in a list of events, those of all bottles concerned in order of entry.
struct Pairing {
    std::vector<std::size_t> gone; ///< never happened, because their other half was taken back
    std::vector<std::size_t> lone; ///< happened, and there is no other half
};

/// `taken`: ids of what was taken back by name. Halves that stand pair first, in order of entry.
Pairing pairHalves(const std::vector<Event>& entered, const std::unordered_set<std::string>& taken);

/// The other half of the filling that `half` is one of, both among `entered` and not `taken`; null
/// for no half, or a lone one. Of a filling entered twice, its own.
const Event* otherHalf(const std::vector<Event>& entered, const Event& half,
                       const std::unordered_set<std::string>& taken);

} // namespace ullage::ledger
