// Which bottles a load should go through, why, and what stands in the way.
//
// The oldest developer that can still take the whole load goes first, so that bottles are used up
// and not outlived; within the developer wanted, because another one takes another time. The fixer
// mixed as a set with it is preferred; without one, the oldest fixer that can. A bottle to discard
// is never offered. One that is not known to be clear is not proposed, nor one of unknown history
// that no test vouches for, nor one that has done film where the bath is thrown away after use;
// they can be chosen. Where a film is fixed in two baths, the more worn goes first and the one that
// was second before, else the least worn, second.
#pragma once

#include "core/ledger/batch.h"
#include "core/ledger/tank.h"
#include "core/ledger/verdict.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::ledger
{

/// A batch with what was made of it at the same moment.
struct Judged {
    Batch batch;
    Assessment assessment;
};

/// Whether it may be proposed for a load at all: not one to discard, nor one that is not known to
/// be clear, nor one of unknown history that no test vouches for.
bool proposable(const Judged& judged);

/// One of the baths of a run: its role, and whether it is the second of two fixing baths.
struct BathPlace {
    // A role alone says which bath is meant wherever there is one of it.
    BathPlace(formulary::Role is, bool isSecond = false) : role(is), second(isSecond) {} // NOLINT
    formulary::Role role;
    bool second;
    friend auto operator<=>(const BathPlace&, const BathPlace&) = default;
};

/// A bath the run needs.
struct BathNeed {
    formulary::Role role{};
    chemistry::Millilitres volume;     ///< taken from the bottle (for 1+n: of the stock)
    bool oneShot = false;              ///< not poured back
    bool required = true;              ///< false: the run can do without a bottle from the shelf
    std::string chosen;                ///< the batch the user wants, or empty
    std::vector<std::string> within{}; ///< solutions that a bottle is proposed from; empty: any
    bool evenToDiscard = false;        ///< what was done is told: a chosen bottle is taken as it is
    bool second = false;               ///< the second of two fixing baths

    [[nodiscard]] BathPlace place() const { return {role, second}; }
};

struct PlanRequest {
    Load load;
    std::optional<Tank> tank;
    std::vector<BathNeed> needs; ///< each place once
};

/// Why a batch cannot take the load.
enum class Hindrance {
    Discard,
    VolumeShort,
    CapacityShort,
    Worn, ///< has done film, and the bath is thrown away after use: a fresh one is wanted
};

struct Candidate {
    std::size_t judged = 0; ///< index in what planRun() was given
    std::optional<Hindrance> hindrance;
    double has = 0;   ///< VolumeShort: mL in the bottle; CapacityShort: films left; Worn: films/L
    double needs = 0; ///< and what the load needs
    bool otherSolution = false; ///< not one that is proposed from
    bool sameSet = false;
    bool elsewhere = false;      ///< chosen for the other of two fixing baths
    bool pairedSecond = false;   ///< was the second bath of the first one taken
    bool markedDissolved = true; ///< or known to be clear otherwise
    bool untested = false;       ///< of unknown history, and no test vouches for it

    [[nodiscard]] bool can() const { return !hindrance; }
};

/// Why this one.
enum class ChoiceReason {
    OnlyOne,
    SameSet,
    OldestThatCan,
    Chosen,
    NoneCan,
    MoreWorn,     ///< the first of two fixing baths
    SecondBefore, ///< the second of two: it was so before
    LeastWorn,    ///< the second of two, where none was
};
inline constexpr std::array<std::string_view, 8> kChoiceCodes{
    "only-one", "same-set",  "oldest-that-can", "chosen",
    "none-can", "more-worn", "second-before",   "least-worn"};
std::string_view code(ChoiceReason reason);

struct BathChoice {
    BathNeed need;
    std::vector<Candidate> candidates; ///< best first; those to discard at the end
    std::optional<std::size_t> taken;  ///< index in candidates; empty if there is no bottle to take
    std::optional<std::size_t> next;   ///< the next best that can take the load
    ChoiceReason why = ChoiceReason::NoneCan;
};

enum class PlanProblemCode {
    NoBottle,           ///< no bottle of this role
    VolumeShort,        ///< mL needed, mL in the bottle
    LeftOut,            ///< the same of a bath that the run can do without: no bottle is taken
    Discard,            ///< chosen all the same; see reason
    CapacityShort,      ///< films in the load, films left
    Tank,               ///< see finding
    TestFirst,          ///< the reason that asks for a test
    NotMarkedDissolved, ///< mixed, but nobody said that it is clear
    Worn,               ///< films/L it has done; the bath is thrown away after use
    NoSecondBath,       ///< there is no bottle for the second of two fixing baths: one does it all
    ExchangeDue,        ///< the first of two fixing baths has had its time; see judged, other
};
struct PlanProblem {
    PlanProblemCode code{};
    std::optional<formulary::Role> role;
    std::optional<std::size_t> judged;
    double number = 0;
    double limit = 0;
    std::optional<TankFinding> finding;
    std::optional<ReasonCode> reason;
    /// NotMarkedDissolved, TestFirst: there is no other, and it is not taken for that.
    bool noBottle = false;
    bool second = false;                   ///< of the second of two fixing baths
    std::optional<std::size_t> other = {}; ///< ExchangeDue: the bath that takes its place

    [[nodiscard]] bool isOf(BathPlace place) const
    {
        return role == place.role && second == place.second;
    }
    /// Whether the run cannot be done like this; otherwise it is for the user to decide.
    [[nodiscard]] bool blocks() const;
};

/// One part of a load that is too big; a bottle is empty where a fresh one must be mixed.
struct SplitPart {
    Load load;
    std::optional<std::size_t> developer;
    std::optional<std::size_t> fixer;
};

struct RunPlan {
    std::vector<BathChoice> baths;     ///< in the order of the needs
    std::vector<PlanProblem> problems; ///< gravest first
    std::vector<SplitPart> split;      ///< two parts or more, or empty when the load can go whole

    [[nodiscard]] const BathChoice* bath(BathPlace place) const;
    [[nodiscard]] bool blocked() const;
    [[nodiscard]] bool has(PlanProblemCode code) const;
};

/// Plans one load. `judged` may hold any batches of the book; those not in use or of another role
/// are passed over. A second fixing bath is asked for after the first one, and never is the same
/// bottle.
RunPlan planRun(const PlanRequest& request, const std::vector<Judged>& judged);

/// Mixed as a set: within a day of each other.
bool mixedAsSet(const Batch& a, const Batch& b);

/// What of a bottle's stock a bath of this volume takes at 1+n: total/(n+1).
chemistry::Millilitres stockNeeded(chemistry::Millilitres volume, double parts);

} // namespace ullage::ledger
