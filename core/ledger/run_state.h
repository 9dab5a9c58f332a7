// A run in hand, as plain values that can be saved at any moment and taken up again.
#pragma once

#include "core/ledger/book.h"
#include "core/ledger/next_load.h"

#include <array>
#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::ledger
{

struct RunFilm {
    std::string format;
    int count = 1;
    std::string name;
    std::optional<double> exposureIndex;
    std::string notes;
    friend bool operator==(const RunFilm&, const RunFilm&) = default;
};

/// A bottle the run goes through.
struct RunBath {
    formulary::Role role{};
    std::string batch;
    std::string name;
    chemistry::Millilitres used;
    bool oneShot = false;
    double wearBefore = 0; ///< films per litre it had done, for the page to show
    bool second = false;   ///< the second of two fixing baths
};

/// A reading of the thermometer that was accepted.
struct Reading {
    chemistry::Instant at;
    std::size_t step = 0;
    chemistry::Celsius temperature;
};

/// A step as it was planned and as it went.
struct StepTime {
    chemistry::Seconds planned; ///< by the sheet
    chemistry::Seconds target;  ///< after readings of the thermometer
    chemistry::Seconds real;    ///< with the clock going
    chemistry::Seconds held;    ///< with the clock on hold: the film lay in the bath all the same
    bool skipped = false;
    std::optional<chemistry::Instant> began;
    std::optional<chemistry::Instant> ended;
};

enum class RunPhase { Ready, Running, Held, Done };
inline constexpr std::array<std::string_view, 4> kRunPhaseCodes{"ready", "running", "held", "done"};
std::string_view code(RunPhase phase);

struct RunState {
    RunPhase phase = RunPhase::Ready;
    std::size_t current = 0;
    chemistry::Instant savedAt;     ///< when this state was taken
    chemistry::Celsius temperature; ///< the last reading
    Tank tank;
    std::vector<RunFilm> films;
    std::vector<RunBath> baths;
    RunSheet sheet;
    std::vector<StepTime> times; ///< one a step
    std::vector<Reading> readings;
    /// The moment it is being logged at, set before it is; tells a run that was logged already.
    std::optional<chemistry::Instant> loggedAt;

    [[nodiscard]] const RunBath* bath(const std::string& batch) const;
};

/// How the developing time comes about by the last reading taken before the developer was poured
/// back: as it was planned, with the base time and the factor of that temperature. Empty where the
/// run has no developing step.
std::optional<DevelopingFactors> developingNow(const RunState& state);

/// The load of these films, by format.
Load loadOf(const std::vector<RunFilm>& films);

/// Every piece of film with a record of its own, for FilmRun.
std::vector<FilmRecord> recordsOf(const std::vector<RunFilm>& films);

/// What Book::process takes for these films: load and records. The rest is the caller's.
FilmRun runOf(const std::vector<RunFilm>& films, std::vector<Bath> baths);

/// The films cut into runs of one time each, by byTime(); those without a name go with the films of
/// no known time, at the end. One run where there is one time.
std::vector<std::vector<RunFilm>> splitByTime(const std::vector<RunFilm>& films,
                                              const std::vector<FilmTimeHere>& times);

/// The run, ready to start: `films` are those of `wishes.load`. Only when next.canStart().
RunState readyRun(const LoadWishes& wishes, const std::vector<RunFilm>& films, const NextLoad& next,
                  chemistry::Instant now);

/// Bottles that film has gone into by now, in order: a step begun and not skipped.
std::vector<std::string> bathsUsed(const RunState& state);

/// When the last bath was done with: what the run is logged at.
chemistry::Instant lastBathAt(const RunState& state);

/// What the user says of a bottle at the end.
struct BathClosing {
    std::string batch;
    chemistry::Millilitres lost;
    std::optional<chemistry::Millilitres> airLeft;
    std::optional<RunTopUp> topUp; ///< accepted for it
};

/// The run for Book::process: only the baths named, every piece of film with a record of its own,
/// and the steps begun with their times.
FilmRun filmRun(const RunState& state, const std::vector<BathClosing>& closings);

/// Refuses a state that does not fit together (a file that was tampered with): steps and times of
/// different number, a current step that is not there, figures that are not finite.
Result<void> check(const RunState& state);

} // namespace ullage::ledger
