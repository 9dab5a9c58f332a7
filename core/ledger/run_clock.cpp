#include "core/ledger/run_clock.h"

#include "core/chemistry/fixing.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage::ledger
{

using chemistry::Celsius;
using chemistry::Seconds;

namespace
{

Seconds seconds(std::chrono::milliseconds time)
{
    return Seconds(static_cast<double>(time.count()) / 1000);
}

} // namespace

RunClock::RunClock(RunState state, SteadyClock steady, Clock wall)
    : m_state(std::move(state)), m_steady(std::move(steady)), m_wall(std::move(wall)),
      m_since(m_steady())
{
    // A wall clock that was set back tells nothing; then no time has passed.
    const Seconds away = std::max(Seconds(0), seconds(m_wall() - m_state.savedAt));
    if (m_state.phase == RunPhase::Running) {
        m_state.times[m_state.current].real += away;
    } else if (m_state.phase == RunPhase::Held) {
        m_state.times[m_state.current].held += away;
    }
    m_state.savedAt = m_wall();
}

void RunClock::settle()
{
    const auto now = m_steady();
    const Seconds passed = std::max(Seconds(0), seconds(now - m_since));
    if (m_state.phase == RunPhase::Running) {
        m_state.times[m_state.current].real += passed;
    } else if (m_state.phase == RunPhase::Held) {
        m_state.times[m_state.current].held += passed;
    }
    m_since = now;
    m_state.savedAt = m_wall();
}

RunState RunClock::state() const
{
    RunClock copy(*this);
    copy.settle();
    return copy.m_state;
}

Seconds RunClock::elapsed() const
{
    const Seconds counted = m_state.times[m_state.current].real;
    return m_state.phase == RunPhase::Running
               ? counted + std::max(Seconds(0), seconds(m_steady() - m_since))
               : counted;
}

Seconds RunClock::target() const { return m_state.times[m_state.current].target; }

Seconds RunClock::left() const { return target() - elapsed(); }

AgitationCue RunClock::cue() const { return cueAt(step().agitation, elapsed(), target()); }

WaterCue RunClock::water() const
{
    WaterCue cue;
    const int fills = step().changes;
    const Seconds now = elapsed();
    if (fills < 2 || target().value() <= 0 || now >= target()) {
        return cue;
    }
    const Seconds each = target() / fills;
    const int done = std::min(static_cast<int>(now / each + 1e-9), fills - 1);
    const Seconds since = now - each * done;
    cue.change = done > 0 && since < std::min(kChangeShown, each / 2);
    if (done + 1 < fills) {
        cue.next = each - since;
    }
    return cue;
}

bool RunClock::farTooEarly() const
{
    const bool going = m_state.phase == RunPhase::Running || m_state.phase == RunPhase::Held;
    return going && step().kind != StepKind::PourBack && elapsed() < target() / 2;
}

Seconds RunClock::leftOfRun() const
{
    if (m_state.phase == RunPhase::Done) {
        return Seconds(0);
    }
    Seconds sum = std::max(Seconds(0), left());
    for (std::size_t i = m_state.current + 1; i < m_state.times.size(); ++i) {
        sum += m_state.times[i].target;
    }
    return sum;
}

void RunClock::start()
{
    if (m_state.phase != RunPhase::Ready) {
        return;
    }
    settle();
    m_state.phase = RunPhase::Running;
    m_state.times[m_state.current].began = m_wall();
}

void RunClock::hold()
{
    if (m_state.phase == RunPhase::Running) {
        settle();
        m_state.phase = RunPhase::Held;
    }
}

void RunClock::goOn()
{
    if (m_state.phase == RunPhase::Held) {
        settle();
        m_state.phase = RunPhase::Running;
    }
}

void RunClock::leave(bool skipped)
{
    if (m_state.phase != RunPhase::Running && m_state.phase != RunPhase::Held) {
        return;
    }
    settle();
    StepTime& time = m_state.times[m_state.current];
    time.ended = m_wall();
    time.skipped = skipped;
    if (m_state.current + 1 == m_state.times.size()) {
        m_state.phase = RunPhase::Done;
        return;
    }
    ++m_state.current;
    m_state.phase = RunPhase::Running;
    m_state.times[m_state.current].began = m_wall();
}

void RunClock::next() { leave(false); }

void RunClock::skip() { leave(true); }

void RunClock::back()
{
    settle();
    if (m_state.phase == RunPhase::Done) {
        StepTime& last = m_state.times[m_state.current];
        if (last.ended) {
            last.real += std::max(Seconds(0), seconds(m_wall() - *last.ended));
        }
        last.ended.reset();
        last.skipped = false;
        m_state.phase = RunPhase::Running;
        return;
    }
    if (m_state.phase == RunPhase::Ready || m_state.current == 0) {
        return;
    }
    StepTime& left = m_state.times[m_state.current];
    StepTime& again = m_state.times[m_state.current - 1];
    again.real += left.real;
    again.held += left.held;
    again.ended.reset();
    again.skipped = false;
    left.real = left.held = Seconds(0);
    left.began.reset();
    --m_state.current;
}

Result<double> RunClock::factor(const RunStep& step, Celsius reading) const
{
    if (step.rule() == TemperatureRule::Fixer) {
        return chemistry::coldFactor(reading) / chemistry::coldFactor(m_state.temperature);
    }
    if (step.rule() == TemperatureRule::None) {
        return 1.0;
    }
    const TemperatureBasis& basis = m_state.sheet.basis;
    const auto then = chemistry::baseTime(basis.pairs, m_state.temperature, basis.q10);
    const auto now = chemistry::baseTime(basis.pairs, reading, basis.q10);
    if (!then) {
        return tl::unexpected(then.error());
    }
    return now.map([&](const chemistry::BaseTime& base) { return base.time / then->time; });
}

Result<std::vector<Adjustment>> RunClock::preview(Celsius reading) const
{
    std::vector<Adjustment> changes;
    if (m_state.phase == RunPhase::Done) {
        return changes;
    }
    if (auto fine = checkRange("temperature_c", reading.value(), 0, 60, "°C"); !fine) {
        return tl::unexpected(fine.error());
    }
    for (std::size_t i = m_state.current; i < m_state.times.size(); ++i) {
        const auto by = factor(m_state.sheet.steps[i], reading);
        if (!by) {
            return tl::unexpected(by.error());
        }
        const Seconds before =
            i == m_state.current ? std::max(Seconds(0), left()) : m_state.times[i].target;
        const Seconds after = before * *by;
        if (std::abs((after - before).value()) >= 0.5) {
            changes.push_back({i, before, after});
        }
    }
    return changes;
}

Result<void> RunClock::accept(Celsius reading)
{
    settle();
    const auto changes = preview(reading);
    if (!changes) {
        return tl::unexpected(changes.error());
    }
    for (const Adjustment& change : *changes) {
        StepTime& time = m_state.times[change.step];
        const Seconds target =
            change.step == m_state.current ? time.real + change.after : change.after;
        time.target = Seconds(std::round(target.value()));
    }
    m_state.temperature = reading;
    m_state.readings.push_back({m_wall(), m_state.current, reading});
    return {};
}

} // namespace ullage::ledger
