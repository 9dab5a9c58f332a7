// What to make of a batch: the verdict, every reason with its numbers, and what is still to come.
#pragma once

#include "core/chemistry/fixing.h"
#include "core/ledger/batch.h"

#include <array>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

namespace ullage::ledger
{

/// Resting is shown only (Assessment::shown): the verdict of the report is one of the four.
enum class Verdict { Good, NearItsEnd, TestFirst, Discard, Resting };
inline constexpr std::array<std::string_view, 5> kVerdictCodes{"good", "near-its-end", "test-first",
                                                               "discard", "resting"};
std::string_view code(Verdict verdict);

/// With the names of its numbers: films a litre, films, days, seconds at 20 °C, g/L, shares of 1.
enum class ReasonCode {
    // Discard
    Contaminated,
    TestFailed,
    ClearingDoubled,     ///< last_s, fresh_s
    CapacityReached,     ///< wear, capacity
    LessThanQuarterFilm, ///< films_left
    PastKeeping,         ///< days_over, full_days
    SilverOverLimit,     ///< silver, limit
    TurnoverOverLimit,   ///< turnovers, limit; replenisher used ÷ volume first mixed
    // Test first
    StandingSpent,   ///< standing; not while a passed test vouches for it
    ClearingTestDue, ///< films_since, days_since; fixers only
    HistoryUnknown,  ///< likewise; also where something of unknown history was poured in
    TestAsked,       ///< days_since; somebody asked for a test that has not been made
    // Near its end
    CapacityNear, ///< wear, capacity; from 0.8 of it on
    FilmsFew,     ///< films_left, mean_load; left for one such load or less
    StandingNear, ///< standing; from 0.8 on
    DiscardSoon,  ///< days; 14 or fewer, < 0 once it is past
};
inline constexpr std::array<std::string_view, 16> kReasonCodes{
    "contaminated",           "test-failed",       "clearing-doubled",  "capacity-reached",
    "less-than-quarter-film", "past-keeping",      "silver-over-limit", "turnover-over-limit",
    "standing-spent",         "clearing-test-due", "history-unknown",   "test-asked",
    "capacity-near",          "films-few",         "standing-near",     "discard-soon"};
std::string_view code(ReasonCode code);
/// The verdict this reason asks for.
Verdict verdictOf(ReasonCode code);

struct Reason {
    ReasonCode code;
    std::vector<std::pair<std::string_view, double>> numbers; ///< name as listed above → value
    /// The number of that name; the name must be one listed for the code.
    [[nodiscard]] double number(std::string_view name) const;
};

/// When the last film will have come, in days from now, if film keeps its pace.
struct LastFilm {
    int loads = 0;         ///< still to come
    chemistry::Days early; ///< 10 %
    chemistry::Days median;
    chemistry::Days late; ///< 90 %
    std::optional<double>
        chanceFilmsFirst; ///< films run out before standing does; empty without keeping
};

struct Assessment {
    Verdict verdict = Verdict::Good; ///< what its reasons ask for; never Resting
    /// What a person is told of a batch in use: Resting while it is not known to be clear, unless
    /// it is to be discarded or tested anyhow; else the verdict.
    Verdict shown = Verdict::Good;
    /// While it rests, and until kRestIsLong after mixing: when to shake it and look again.
    std::optional<chemistry::Instant> lookAt;
    std::vector<Reason> reasons; ///< all that apply, gravest first; empty when Good
    /// Films a litre it does, its solution's own or by default; in one-shot use no rule asks.
    std::optional<chemistry::FilmsPerLitre> capacity;
    /// Never below 0. In one-shot use what the volume is enough for; empty without a capacity, and
    /// for an unknown history whose films nobody guessed.
    std::optional<chemistry::Films> filmsLeft;
    chemistry::Films meanLoad{1}; ///< mean load so far as the bottle felt it, 1 if none
    /// What was counted of it is the least there is: its history is not known.
    bool atLeast = false;
    double wearFactor = 1; ///< on the next load's development time
    chemistry::Days age;
    std::optional<double> agePart;             ///< g
    std::optional<double> airPart;             ///< N/N_c
    std::optional<double> standingUsed;        ///< s
    std::optional<chemistry::Instant> spentAt; ///< when s reaches (or last rose to) 1
    /// When its published full-bottle time is over; empty as long as the mixing date is not known.
    std::optional<chemistry::Instant> keepsUntil;
    std::optional<chemistry::Instant> discardBy; ///< the earlier of the two
    std::optional<chemistry::Days> keepsIn;      ///< from batch.asOf to then, not rounded
    std::optional<chemistry::Days> discardIn;    ///< likewise to discardBy
    std::optional<chemistry::Clearing> clearing; ///< a fixer with a test
    /// Empty without films left or a load to come, and for what is replenished.
    std::optional<LastFilm> lastFilm;
};

/// What is known of a fixer besides its tests.
chemistry::FixerKnown fixerKnown(const Batch& fixer);

/// Judges a batch at batch.asOf. Rules and limits: core/chemistry/README.md.
Assessment assess(const Batch& batch, const chemistry::AirConstants& constants = {});

/// Marked as dissolved, mixed from a liquid, or proved clear by the film it has done or a test it
/// has passed.
bool knownClear(const Batch& batch);

// Conventions, no source.
/// What has not cleared for so long is not watched by the minute any more.
inline constexpr chemistry::Days kRestIsLong{0.5};
/// A passed test vouches for a bottle for less than so long, and for less than so much wear.
inline constexpr chemistry::Days kPassKeeps{14};
inline constexpr chemistry::FilmsPerLitre kPassKeepsFilms{2};
/// A fixer is to be tested once either has come since the last test, or since mixing.
inline constexpr chemistry::Days kClearingTestEvery{30};
inline constexpr chemistry::FilmsPerLitre kClearingTestEveryFilms{5};

} // namespace ullage::ledger
