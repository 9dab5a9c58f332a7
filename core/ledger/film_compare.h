// What went wrong? What the films marked have in common, and how many of the good films of the same
// time share it.
//
// It counts and compares, no more. A few films prove nothing: something they share and the good
// ones do not is where to look first, not a cause that was found.
#pragma once

#include "core/ledger/film_trace.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::ledger
{

enum class NoCause;

enum class FilmTrait {
    Bottle,        ///< went through this bottle: subject its id, role
    WearOver,      ///< the bottle of this role had done `number` films per litre or more
    StandingOver,  ///< the bottle of this role had used `number` of its standing or more
    BeyondVerdict, ///< the bottle of this role was to be tested first, or discarded
    StepLonger, ///< the step took at least `number` more than planned, as a share: subject its kind
    StepShorter,   ///< the step took at least `number` less than planned, as a share
    Warmer,        ///< developed at `number` °C or more
    Colder,        ///< developed at `number` °C or less
    OneRun,        ///< all went together in one run: subject its id
    Film,          ///< the film's name: subject
    Format,        ///< subject
    ExposureIndex, ///< number
    Tank,          ///< subject: its name
    Person,        ///< subject
};

/// How often a trait was found among the films of which it is known.
struct TraitCount {
    int with = 0;
    int known = 0;
    [[nodiscard]] double share() const { return known == 0 ? 0 : double(with) / known; }
};

struct TraitFound {
    FilmTrait trait{};
    std::string subject;                 ///< as listed for the trait, else empty
    std::optional<formulary::Role> role; ///< of the bottle, where the trait is about one
    double number = 0;                   ///< as listed for the trait
    TraitCount marked;                   ///< among the films marked
    TraitCount good;                     ///< among the good ones
};

/// Something that sets the films apart and cannot have made them what they are (film_cause.h).
struct RuledOut {
    TraitFound found;
    FilmFault fault{}; ///< of those asked about, the first
    NoCause why{};     ///< it is no cause of that
};

/// A step that was not run as its sheet had it, and can have made the films what they are.
struct OffPlan {
    std::string step;           ///< its kind
    chemistry::Seconds planned; ///< of the film that was furthest off, all steps of the kind
    chemistry::Seconds real;
    TraitCount marked; ///< films marked that were off the same way, of those whose times are known
    [[nodiscard]] double share() const { return (real - planned) / planned; }
};

struct FilmComparison {
    int marked = 0; ///< films compared
    int good = 0;   ///< those that went in one run with a film marked are left out
    /// What was run differently from its plan, the furthest off first. It needs no good film beside
    /// it: it was meant otherwise.
    std::vector<OffPlan> offPlan;
    /// Shared by the films marked, and by at most half as many of the good ones; steps off their
    /// plan first, then the clearest difference. Empty without good films: there is nothing to
    /// compare with.
    std::vector<TraitFound> apart;
    /// Shared by the films marked, and by the good ones about as often; or with no good film that
    /// it is known of.
    std::vector<TraitFound> common;
    /// What would stand in `apart`, but can be no cause of any of the marks asked about.
    std::vector<RuledOut> ruledOut;
    /// Ids of bottles that a look is worth, the most pointed at first: those that set the films
    /// apart.
    std::vector<std::string> suspects;
};

// Conventions, no source.
inline constexpr double kStepOff = 0.05; ///< of the planned time, before it is worth a word
inline constexpr chemistry::Seconds kStepOffLeast{5}; ///< and so much at the least
inline constexpr double kTelling = 0.5;               ///< of the share among the films marked
inline constexpr int kMostNeeded = 4; ///< from so many marked films on, not every one
inline constexpr double kMost = 0.75; ///< but so many of them must share a trait

/// Traits of numbers take the least (or greatest) figure among the films marked as their limit.
/// What cannot be a cause of `fault` is left out of `apart`, `common` and `suspects`; without
/// `fault`, what can be a cause of none of the marks that the films marked have.
/// A film that went in one run with a marked one is no good film to compare with, whether or not
/// somebody looked at it.
FilmComparison compareFilms(const std::vector<FilmTrace>& marked,
                            const std::vector<FilmTrace>& good,
                            std::optional<FilmFault> fault = {});

} // namespace ullage::ledger
