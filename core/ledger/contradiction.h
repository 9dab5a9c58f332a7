// What an import finds that does not go together, and what a person decides about it.
#pragma once

#include "core/ledger/entry.h"
#include "core/ledger/store_port.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// A line that cannot come in as things stand.
struct Contradiction {
    Error error;                  ///< why; error.line is the journal's, 0 for a taking back of ours
    std::optional<Entry> entry;   ///< what the line says; empty if it cannot be read
    std::optional<Entry> against; ///< what it stands against, where it is one entry
    bool againstOurs = false;     ///< `against` was in the book before
    int waiting = 0;              ///< further lines of this batch that nothing can be said of yet
};

/// A bottle of the journal that looks like one of this book, entered here and there under two ids.
struct LikelySame {
    int line = 0; ///< of their mixing
    Event theirs;
    Event ours;
    std::string oursName;
};

/// Mixings further apart are two bottles.
inline constexpr std::chrono::hours kSameBottleWithin{6};

/// How a contradiction may be settled.
enum class WayOut {
    LeaveOut,   ///< the line, and what depends on it
    ChangeTime, ///< of their event
    TakeBack,   ///< our entry that it stands against
};

/// The ways that may help, the one that always does first. None for a taking back of ours: that is
/// given up by not asking for it.
std::vector<WayOut> waysOut(const Contradiction& contradiction);

/// What was decided. Lines by their number in the journal.
struct Settlement {
    std::set<int> leftOut;
    std::map<int, chemistry::Instant> retimed; ///< when their event really was
    std::set<std::string> takenBack;           ///< ids of events of this book
    std::set<int> twoBottles; ///< mixings that look like one of ours and are another bottle

    [[nodiscard]] bool empty() const
    {
        return leftOut.empty() && retimed.empty() && takenBack.empty() && twoBottles.empty();
    }
};

/// Reasons that the takings back of an import carry; words come from the application.
inline constexpr const char* kRetimedReason = "time-changed-on-import";
inline constexpr const char* kSettledReason = "taken-back-for-import";

} // namespace ullage::ledger
