// Dates that a calendar shows: when to discard, test, mix and buy, and the known work.
#pragma once

#include "core/cupboard/needs.h"
#include "core/ledger/batch.h"
#include "core/ledger/cupboard_state.h"

#include <array>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::cupboard
{

enum class DateKind {
    DiscardBy, ///< a bottle in use
    TestDue,   ///< a fixer's next clearing test, by its time; film may ask for it sooner
    MixBy,     ///< a solution, from a packet that is here
    BuyBy,     ///< a solution of which nothing is here
    Work,      ///< film that is known to come
};

/// As settings name them, in the order of the enum.
inline constexpr std::array<std::string_view, 5> kDateKindCodes{"discard-by", "test-due", "mix-by",
                                                                "buy-by", "work"};
using DateKinds = std::set<DateKind>;
DateKinds everyDateKind();

struct KnownDate {
    DateKind kind = DateKind::Work;
    /// The same as long as it is the same date of the same thing, wherever it moves to: a calendar
    /// that is given it again replaces what it had.
    std::string key;
    std::string of; ///< id of the batch, the solution or the work
    chemistry::Instant at;
    std::string rule; ///< how work comes again, or empty; as readRule() understands it
    std::optional<chemistry::Films> films; ///< of work
    int packets = 0;                       ///< to buy
};

/// Of batches in use, of a plan, and all known work from its first time on, each as a single date
/// with its rule. By kind, then as they come.
std::vector<KnownDate> knownDates(const std::vector<ledger::Batch>& batches, const Plan& plan,
                                  const ledger::CupboardState& cupboard);

} // namespace ullage::cupboard
