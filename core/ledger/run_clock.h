// Keeps time through the steps of a run.
//
// Seconds come from a steady clock that is passed in; it should go on while the machine sleeps, for
// the film does not sleep. A step ends only when the user says so: what runs over is counted up.
// After a crash the wall clock tells how much time has passed since the state was saved.
#pragma once

#include "core/ledger/run_state.h"

#include <chrono>
#include <functional>
#include <optional>
#include <vector>

namespace ullage::ledger
{

/// Time since any fixed moment; never goes back.
using SteadyClock = std::function<std::chrono::milliseconds()>;

/// What a reading would do to a step.
struct Adjustment {
    std::size_t step = 0;
    chemistry::Seconds before; ///< left of the current step, or the whole of a later one
    chemistry::Seconds after;
};

/// What to do about the water of a step with several fills, which share its time evenly.
struct WaterCue {
    bool change = false;                    ///< now: shown for kChangeShown from when it is due
    std::optional<chemistry::Seconds> next; ///< until the next change; empty when none comes
};
/// Convention, no source.
inline constexpr chemistry::Seconds kChangeShown{10};

class RunClock
{
public:
    /// Takes a state up where it was: of a running one the time since it was saved has passed in
    /// its step, of a held one on hold. The state must have passed check().
    RunClock(RunState state, SteadyClock steady, Clock wall);

    /// Plain values of this moment.
    [[nodiscard]] RunState state() const;
    [[nodiscard]] RunPhase phase() const { return m_state.phase; }
    [[nodiscard]] std::size_t current() const { return m_state.current; }
    [[nodiscard]] const RunStep& step() const { return m_state.sheet.steps[m_state.current]; }
    [[nodiscard]] const RunSheet& sheet() const { return m_state.sheet; }

    [[nodiscard]] chemistry::Seconds elapsed() const; ///< in the current step, holds left out
    [[nodiscard]] chemistry::Seconds target() const;
    [[nodiscard]] chemistry::Seconds left() const; ///< negative when it runs over
    [[nodiscard]] AgitationCue cue() const;        ///< in this step
    [[nodiscard]] WaterCue water() const;          ///< in this step
    /// Whether ending the step now would cut it to less than half its time. Pouring back takes as
    /// long as it takes.
    [[nodiscard]] bool farTooEarly() const;
    /// From now to the end if nothing runs over.
    [[nodiscard]] chemistry::Seconds leftOfRun() const;

    // Each does nothing in a phase where it makes no sense.
    void start();
    void hold();
    void goOn();
    /// Ends the step at what it took; after the last one the run is done.
    void next();
    /// Leaves the current step out: what it would do was not done.
    void skip();
    /// Takes the last next() or skip() back: the step goes on as if it had not been ended.
    void back();

    /// What a reading would change: the rest of the current step and the steps to come, by the rule
    /// of their bath. Empty when nothing changes. Refuses what baseTime() refuses.
    [[nodiscard]] Result<std::vector<Adjustment>> preview(chemistry::Celsius reading) const;
    Result<void> accept(chemistry::Celsius reading);

private:
    void settle();
    void leave(bool skipped);
    [[nodiscard]] Result<double> factor(const RunStep& step, chemistry::Celsius reading) const;

    RunState m_state;
    SteadyClock m_steady;
    Clock m_wall;
    std::chrono::milliseconds m_since; ///< up to here the current step's times are counted
};

} // namespace ullage::ledger
