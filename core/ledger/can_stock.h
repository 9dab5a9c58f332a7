// What is in a can for waste, by what was poured into it and handed over.
#pragma once

#include "core/formulary/solution.h"
#include "core/ledger/cupboard.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// One pouring; a bottle that was discarded into the can is one of all that was left in it.
struct PouredDone {
    std::string event;
    chemistry::Instant at;
    std::string batch; ///< or empty
    chemistry::Millilitres volume;
    std::optional<double>
        silver; ///< g in it; empty where the batch, and so its silver, is not known
};

struct HandedOverDone {
    std::string event;
    chemistry::Instant at;
    std::string to;
    chemistry::Millilitres volume;
    double silver = 0; ///< g in it, of what was in the can by its share
    std::string document;
};

struct CanStock {
    chemistry::Millilitres volume; ///< in it now
    double silver = 0;             ///< g in it now
    bool silverAtLeast = false;    ///< something in it was of unknown silver
    /// Since when it is full to nine tenths (a convention: a can is not carried full to the brim).
    std::optional<chemistry::Instant> fullAt;
    std::vector<PouredDone> poured;     ///< oldest first
    std::vector<HandedOverDone> handed; ///< oldest first

    /// Share of the can that is filled, 0 to 1.
    [[nodiscard]] double filled(const Container& can) const;
};

inline constexpr double kFullShare = 0.9;

/// What went through a can in a time.
struct CanTotals {
    chemistry::Millilitres poured;
    chemistry::Millilitres handed;
    double silverHanded = 0; ///< g
};
/// From `from`, up to but without `until`.
CanTotals totalsBetween(const CanStock& stock, chemistry::Instant from, chemistry::Instant until);

/// Batches of which something was poured in since the can was last empty; each once. What was
/// poured in without a batch is not among them.
std::vector<std::string> batchesInside(const CanStock& stock);

/// What a batch held at a moment; as it ended where that was before.
struct PouredBatch {
    chemistry::Millilitres volume;
    chemistry::GramsPerLitre silver;
};
/// Asked for what was in a batch; empty for one that was not mixed by then.
using BatchThen =
    std::function<Result<std::optional<PouredBatch>>(const std::string& batch, chemistry::Instant)>;

/// What is in the can at `until`. `entered`: every event that names any line of the can's family,
/// discardings among them, and those that take such events back, in order of entry
/// (StorePort::eventsOnContainer()). They count by time, then by order of entry.
///
/// What was poured in by name from a batch that was discarded into the same can, then or later, is
/// a part of that discarding, which stands for the rest only: nothing is poured twice.
/// What is handed over is all that is in the can where no volume is said; more than was poured in
/// by the book is taken for all of it, as the receiver measures.
/// Of a batch that is not what was entered the silver that was poured in is not known.
/// Refuses a pouring that the can does not hold (TooMuch; `text` is the event's id) and whatever
/// `batchThen` refuses of a batch that was discarded into it, whose volume is not known then.
Result<CanStock> canStock(const Container& can, const std::vector<Event>& entered,
                          const BatchThen& batchThen,
                          chemistry::Instant until = chemistry::Instant::max());

/// The kind of can that a solution belongs into.
Waste wasteOf(formulary::Role role);

/// What speaks against pouring a solution into a can.
enum class PouringDoubt {
    OtherKind,     ///< the can is for another kind of waste
    SulfurDioxide, ///< acid and sulfite or thiosulfate come together
    Ammonia,       ///< alkali and a fixer of ammonium thiosulfate come together
};
/// By the solution's role and what it is made of, against what is in the can by what it is for and
/// by the solutions that were poured into it since it was last empty.
std::vector<PouringDoubt> pouringDoubts(const formulary::Solution& solution, const Container& can,
                                        const std::vector<const formulary::Solution*>& inside);

} // namespace ullage::ledger
