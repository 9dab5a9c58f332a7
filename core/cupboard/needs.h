// What will be needed: for the film that is known to come, which solutions run out or expire before
// it, what to mix when, from which packet, what is missing, and what to buy by when.
//
// A walk through the film in order of time, film by film, by the same figures that the Shelf shows:
// what is left in a bottle and its date to discard. Of what can serve that is taken which ends
// first. Nothing is mixed before it is needed, so that nothing is left standing.
#pragma once

#include "core/formulary/solution.h"
#include "core/ledger/money.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::cupboard
{

/// What planning knows of a solution. `usual`: the volume that a bottle of it is mixed to.
struct PlannedSolution {
    std::string id;
    std::optional<chemistry::FilmsPerLitre> capacity; ///< empty: a bottle is never spent by film
    std::optional<chemistry::Days> keeps;             ///< in a full bottle; empty: it is not spoilt
    std::optional<chemistry::Millilitres> oneShot;    ///< for a film, where it is poured away
    chemistry::Millilitres usual{1000};
};

/// A bottle that may be used now.
struct PlannedBottle {
    std::string batch;
    std::string solution;
    std::optional<chemistry::Films> filmsLeft; ///< empty: not known, or without end
    std::optional<chemistry::Instant> discardBy;
};

/// A packet or liquid in the cupboard.
struct PlannedPacket {
    std::string item;
    std::string solution;
    bool liquid = false;
    chemistry::Millilitres makes;            ///< all that was bought makes; above 0
    double share = 1;                        ///< of it that is left, 0 to 1; a powder's is 1
    std::optional<chemistry::Instant> until; ///< its day, or its time once opened if it is
    std::optional<chemistry::Days> keepsOpened;
    bool opened = false;
};

/// Film that comes: known work, or what comes at the usual pace.
struct PlannedWork {
    chemistry::Instant at;
    chemistry::Films films;
    std::string developer; ///< id of a solution; empty: the plan's
    std::string name;
    bool atPace = false; ///< nobody said that it comes: it is what usually does
};

/// How a solution was bought last.
struct Bought {
    std::string solution;
    chemistry::Millilitres makes;
    std::optional<ledger::Decimal> cost;
    std::string currency;
};

struct PlanRequest {
    chemistry::Instant now;
    chemistry::Instant until; ///< work after it is not looked at
    std::vector<PlannedSolution> solutions;
    std::vector<PlannedBottle> bottles;
    std::vector<PlannedPacket> packets;
    std::vector<PlannedWork> work; ///< in any order; what was before `now` is passed over
    std::vector<Bought> bought;    ///< the last of a solution counts
    std::string developer;         ///< of work that names none
    std::vector<std::string> also; ///< solutions that every film goes through besides
};

enum class StretchKind {
    Stands,  ///< a bottle on the shelf
    Mix,     ///< one to be mixed from a packet that is here
    Missing, ///< one for which nothing is here
};

/// One bottle's part of the plan.
struct Stretch {
    StretchKind kind = StretchKind::Stands;
    std::string of;          ///< the batch, or the item it is to be mixed from; empty if missing
    chemistry::Instant from; ///< now, or when it is to be mixed or bought at the latest
    chemistry::Instant to;   ///< when it is spent or ends; the end of the plan if it lasts
    chemistry::Films films;  ///< that it does
    chemistry::Millilitres volume; ///< to be mixed; 0 for what stands
    bool expires = false;          ///< it ends by its date, before the plan does
    chemistry::Films unused;       ///< left in it then, where that is known
};

struct SolutionPlan {
    std::string solution;
    chemistry::Films needed;
    std::vector<Stretch> stretches; ///< what stands first, then as it is needed
    /// The first film that nothing which stands on the shelf can do; empty if all can be done.
    std::optional<chemistry::Instant> runsOutAt;
    chemistry::Films missing; ///< for which nothing is here
};

struct ToBuy {
    std::string solution;
    int packets = 0;
    chemistry::Millilitres makes; ///< one of them, as it was bought last or as it is usual
    chemistry::Instant by;        ///< for the first of them
    std::optional<ledger::Decimal> each;
    std::string currency;
    /// That one packet does by the solution's capacity, or for use once; empty: not known.
    std::optional<chemistry::Films> does = {};
};
/// What of a packet's price falls to each film that it does, as Money::forEachOf() rounds; empty
/// where either is not known.
ledger::Money costOfFilm(const ToBuy& toBuy);

struct Plan {
    std::vector<SolutionPlan> solutions; ///< those that are needed, in the order of the request
    std::vector<ToBuy> toBuy;            ///< soonest first
    ledger::Money cost;                  ///< of what has a price
    bool costKnown = true;               ///< all of it has one
    /// The last work for which everything is here; empty if the first is not covered.
    std::optional<chemistry::Instant> enoughUntil;
};

/// A bottle is mixed, and a packet bought, the day before it is needed, so that it is clear and
/// cool (common practice, no source); never before now.
inline constexpr std::chrono::hours kAhead{24};
/// What a bottle has left for less than this is not counted on: the Shelf discards it then.
inline constexpr chemistry::Films kLeastFilm{0.25};

/// Refuses work without a developer where the request names none (Missing `developer`), and a
/// solution that is needed and not among `solutions` (UnknownId).
Result<Plan> planNeeds(const PlanRequest& request);

/// Film that comes at a pace beside the known work: `filmsPerDay` less what the work brings until
/// the end of the request, in loads of `load` each (above 0), evenly spaced from now. Marked so.
std::vector<PlannedWork> workAtPace(const PlanRequest& request, double filmsPerDay,
                                    chemistry::Films load);

} // namespace ullage::cupboard
