#include "core/ledger/verdict.h"

#include "core/chemistry/films.h"
#include "core/chemistry/pace.h"

#include <algorithm>
#include <cassert>

namespace ullage::ledger
{

using chemistry::Days;
using chemistry::Films;
using chemistry::kFilmSlack;

namespace
{

constexpr double kLeastFilm = 0.25;
constexpr double kNearShare = 0.8;
constexpr Days kSoon{14};

Films meanLoad(const Batch& batch)
{
    if (batch.loads.empty()) {
        return Films(1);
    }
    Films sum;
    for (const LoadDone& load : batch.loads) {
        sum += load.units;
    }
    return sum / static_cast<double>(batch.loads.size());
}

chemistry::Pace paceOf(const Batch& batch)
{
    chemistry::Pace pace;
    if (batch.loads.empty()) {
        return pace;
    }
    const auto window = chemistry::addDays(batch.asOf, -chemistry::kPaceWindow);
    const auto start = std::max(batch.loads.front().at, window);
    pace.observed = chemistry::daysBetween(start, batch.asOf);
    pace.loads =
        static_cast<int>(std::count_if(batch.loads.begin(), batch.loads.end(),
                                       [&](const auto& load) { return load.at >= start; }));
    return pace;
}

std::optional<LastFilm> lastFilm(const Batch& batch, const Assessment& so)
{
    if (!so.filmsLeft) {
        return std::nullopt;
    }
    LastFilm last;
    last.loads = chemistry::loadsLeft(*so.filmsLeft, so.meanLoad);
    if (last.loads == 0) {
        return std::nullopt;
    }
    const auto pace = paceOf(batch);
    last.early = chemistry::waitFor(last.loads, pace, 0.1);
    last.median = chemistry::waitFor(last.loads, pace, 0.5);
    last.late = chemistry::waitFor(last.loads, pace, 0.9);
    if (so.discardBy) {
        last.chanceFilmsFirst = chemistry::chanceWithin(
            last.loads, pace, chemistry::daysBetween(batch.asOf, *so.discardBy));
    }
    return last;
}

void assessStanding(const Batch& batch, const chemistry::AirConstants& constants, Assessment& so)
{
    if (!batch.limits) {
        return;
    }
    so.agePart = batch.standing.aged / batch.limits->age;
    so.airPart = batch.standing.taken.total() / batch.limits->oxygen;
    so.standingUsed = batch.standingUsed();
    so.keepsUntil = chemistry::addKeepingTime(batch.mixedAt, *batch.solution->keeping.full);
    if (batch.spentSince) {
        so.spentAt = batch.spentSince;
    } else if (batch.volume.value() > 0) {
        auto closed = batch.closed();
        closed.bottle = enclosure(*batch.vessel, constants);
        so.spentAt =
            chemistry::addDays(batch.asOf, chemistry::daysUntilSpent(batch.standing, closed,
                                                                     *batch.limits, constants));
    }
    // A day or two beside the calendar's date is the calendar's date told by a blunter clock.
    const bool before = so.spentAt && chemistry::daysBetween(*so.spentAt, *so.keepsUntil) >=
                                          Days(chemistry::kCalendarNear.value);
    so.discardBy = before ? so.spentAt : so.keepsUntil;
}

// A passed test vouches for the solution for a while.
bool vouchedFor(const Batch& batch, const Assessment& so)
{
    const auto holds = [&](const Mark& pass) {
        return chemistry::daysBetween(pass.at, batch.asOf) < kPassKeeps &&
               (batch.wear - pass.wear).value() < kPassKeepsFilms.value() - kFilmSlack;
    };
    if (std::any_of(batch.passes.begin(), batch.passes.end(), holds)) {
        return true;
    }
    if (batch.solution->role != formulary::Role::Fixer || !so.clearing || !so.clearing->fresh) {
        return false;
    }
    // A test that was passed vouches for its time, whatever a later one showed: that one is a
    // reason of its own.
    const double twice = 2 * so.clearing->fresh->value();
    for (std::size_t i = 0; i < batch.tests.size(); ++i) {
        if (batch.tests[i].at20.value() < twice - 1e-9 && holds(batch.testMarks[i])) {
            return true;
        }
    }
    return false;
}

class Reasons
{
public:
    Reasons(const Batch& batch, const Assessment& so) : m_batch(batch), m_so(so) {}

    std::vector<Reason> all()
    {
        discard();
        testFirst();
        nearItsEnd();
        return std::move(m_reasons);
    }

private:
    using Numbers = std::vector<std::pair<std::string_view, double>>;

    void addIf(bool applies, ReasonCode code, Numbers numbers = {})
    {
        if (applies) {
            m_reasons.push_back({code, std::move(numbers)});
        }
    }

    void discard()
    {
        addIf(m_batch.contaminated, ReasonCode::Contaminated);
        addIf(m_batch.testFailed, ReasonCode::TestFailed);
        if (m_so.clearing && m_so.clearing->doubled) {
            addIf(true, ReasonCode::ClearingDoubled,
                  {{"last_s", m_so.clearing->last.value()},
                   {"fresh_s", m_so.clearing->fresh->value()}});
        }
        if (const auto capacity = m_batch.solution->capacity) {
            addIf(m_batch.wear.value() >= capacity->value() - kFilmSlack,
                  ReasonCode::CapacityReached,
                  {{"wear", m_batch.wear.value()}, {"capacity", capacity->value()}});
            addIf(m_so.filmsLeft->value() < kLeastFilm - kFilmSlack,
                  ReasonCode::LessThanQuarterFilm, {{"films_left", m_so.filmsLeft->value()}});
        }
        if (pastCalendar()) {
            addIf(true, ReasonCode::PastKeeping,
                  {{"days_over", chemistry::daysBetween(*m_so.keepsUntil, m_batch.asOf).value()},
                   {"full_days", m_batch.solution->keeping.full->value()}});
        }
        if (const auto limit = m_batch.solution->silverLimit) {
            addIf(m_batch.silver.value() > limit->value() + kFilmSlack, ReasonCode::SilverOverLimit,
                  {{"silver", m_batch.silver.value()}, {"limit", limit->value()}});
        }
    }

    void testFirst()
    {
        const bool vouched = vouchedFor(m_batch, m_so);
        if (m_so.standingUsed && *m_so.standingUsed >= 1 && !pastCalendar() && !vouched) {
            addIf(true, ReasonCode::StandingSpent, {{"standing", *m_so.standingUsed}});
        }
        if (m_batch.solution->role == formulary::Role::Fixer) {
            const Mark last = m_batch.lastClearingTest.value_or(Mark{m_batch.mixedAt, {}});
            const auto films = m_batch.wear - last.wear;
            const Days days = chemistry::daysBetween(last.at, m_batch.asOf);
            addIf(films.value() >= kClearingTestEveryFilms.value() - kFilmSlack ||
                      days >= kClearingTestEvery,
                  ReasonCode::ClearingTestDue,
                  {{"films_since", films.value()}, {"days_since", days.value()}});
        }
        addIf(m_batch.historyUnknown && !vouched, ReasonCode::HistoryUnknown);
        if (m_batch.testAskedAt) {
            addIf(true, ReasonCode::TestAsked,
                  {{"days_since",
                    chemistry::daysBetween(*m_batch.testAskedAt, m_batch.asOf).value()}});
        }
    }

    void nearItsEnd()
    {
        if (const auto capacity = m_batch.solution->capacity) {
            addIf(m_batch.wear.value() >= kNearShare * capacity->value() - kFilmSlack,
                  ReasonCode::CapacityNear,
                  {{"wear", m_batch.wear.value()}, {"capacity", capacity->value()}});
            addIf(m_so.filmsLeft->value() <= m_so.meanLoad.value() + kFilmSlack,
                  ReasonCode::FilmsFew,
                  {{"films_left", m_so.filmsLeft->value()}, {"mean_load", m_so.meanLoad.value()}});
        }
        if (m_so.standingUsed && *m_so.standingUsed >= kNearShare) {
            addIf(true, ReasonCode::StandingNear, {{"standing", *m_so.standingUsed}});
        }
        if (m_so.discardBy) {
            const Days days = chemistry::daysBetween(m_batch.asOf, *m_so.discardBy);
            addIf(days <= kSoon, ReasonCode::DiscardSoon, {{"days", days.value()}});
        }
    }

    [[nodiscard]] bool pastCalendar() const
    {
        return m_so.keepsUntil && m_batch.asOf > *m_so.keepsUntil;
    }

    const Batch& m_batch;
    const Assessment& m_so;
    std::vector<Reason> m_reasons;
};

} // namespace

std::string_view code(Verdict verdict) { return kVerdictCodes[static_cast<std::size_t>(verdict)]; }

std::string_view code(ReasonCode code) { return kReasonCodes[static_cast<std::size_t>(code)]; }

Verdict verdictOf(ReasonCode code)
{
    if (code <= ReasonCode::SilverOverLimit) {
        return Verdict::Discard;
    }
    return code <= ReasonCode::TestAsked ? Verdict::TestFirst : Verdict::NearItsEnd;
}

double Reason::number(std::string_view name) const
{
    const auto found = std::find_if(numbers.begin(), numbers.end(),
                                    [&](const auto& pair) { return pair.first == name; });
    assert(found != numbers.end());
    return found->second;
}

Assessment assess(const Batch& batch, const chemistry::AirConstants& constants)
{
    Assessment so;
    const auto& solution = *batch.solution;
    so.age = chemistry::daysBetween(batch.mixedAt, batch.asOf);
    so.wearFactor = chemistry::wearFactor(solution.wear, batch.wear);
    so.meanLoad = meanLoad(batch);
    if (solution.capacity) {
        const auto left = (*solution.capacity - batch.wear) * litres(batch.volume);
        so.filmsLeft = std::max(Films(0), left);
    }
    assessStanding(batch, constants, so);
    if (solution.role == formulary::Role::Fixer) {
        so.clearing = chemistry::clearing(batch.tests, batch.wear, solution.freshClearing);
    }
    so.lastFilm = lastFilm(batch, so);
    so.reasons = Reasons(batch, so).all();
    so.verdict = so.reasons.empty() ? Verdict::Good : verdictOf(so.reasons.front().code);
    return so;
}

} // namespace ullage::ledger
