// What is left of a thing in the cupboard, by what happened to it.
#pragma once

#include "core/ledger/cupboard.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::ledger
{

// Forms of what is allowed where a packet is refused.
inline constexpr const char* kWholePacketForm =
    "a whole packet: powder does not lie evenly in it, so that a part is none of its formula";
inline constexpr const char* kPacketHereForm = "a packet that is still in the cupboard";

/// One taking from it, or the mixing that used it whole.
struct ItemUse {
    std::string event;
    chemistry::Instant at;
    double amount = 0;    ///< in the item's unit
    std::string forBatch; ///< or empty
};

struct ItemStock {
    /// In the item's unit: packets of powder, mL, g, or its own; empty: not known.
    std::optional<double> left;
    std::optional<chemistry::Instant> openedAt; ///< opened, or first taken from
    bool usedWhole = false;                     ///< by a mixing
    bool thrownAway = false;
    std::optional<chemistry::Instant> endedAt; ///< when nothing was left; counted again, it is back
    std::vector<ItemUse> uses;                 ///< oldest first

    /// Something is there, or may be.
    [[nodiscard]] bool isHere() const { return !endedAt; }
    /// Of a powder: opened and a part of it gone.
    [[nodiscard]] bool isPartOfPacket() const { return isHere() && left && *left < 1; }
};

/// What is left at `until`. `entered`: every event that names any line of the item's family, and
/// those that take such events back, in order of entry (StorePort::eventsOnItem()). They count by
/// time, then by order of entry. Refuses taking more than is there (NotEnough), and taking from or
/// counting what was used whole or thrown away before (AfterEnd); `text` is the event's id.
Result<ItemStock> stockOf(const Item& item, const std::vector<Event>& entered,
                          chemistry::Instant until = chemistry::Instant::max());

/// How much of a liquid so much of its solution takes, in mL; empty for what is no liquid, and
/// where it is not known what all of it makes.
std::optional<double> liquidFor(const Item& item, chemistry::Millilitres volume);

/// Whether a mixing may name it as its packet: powder is used whole and must be whole and there
/// (NotSuitable). A liquid may be named; what is used of it is said by what is taken.
Result<void> suitsMixing(const Item& item, const ItemStock& stock);

} // namespace ullage::ledger
