#include "core/ledger/verdict.h"

#include "core/chemistry/films.h"
#include "core/chemistry/mixing.h"
#include "core/chemistry/pace.h"
#include "core/ledger/replenish.h"

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
        sum += load.felt;
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
    if (!so.filmsLeft || !batch.solution->replenisher.empty()) {
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
    if (so.discardIn) {
        last.chanceFilmsFirst = chemistry::chanceWithin(last.loads, pace, *so.discardIn);
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
    const Days now = chemistry::daysBetween(batch.mixedAt, batch.asOf);
    std::optional<Days> spentIn;
    if (batch.spentAfter) {
        spentIn = *batch.spentAfter - now;
    } else if (batch.volume.value() > 0) {
        auto closed = batch.closed();
        closed.bottle = enclosure(*batch.vessel, constants);
        spentIn = chemistry::daysUntilSpent(batch.standing, closed, *batch.limits, constants);
    }
    if (spentIn) {
        so.spentAt = chemistry::addDays(batch.asOf, *spentIn);
    }
    if (batch.historyUnknown && !batch.dateKnown) {
        return;
    }
    const auto start = chemistry::addDays(batch.mixedAt, batch.keepsFrom);
    so.keepsUntil = chemistry::addKeepingTime(start, *batch.solution->keeping.full);
    so.keepsIn = batch.keepsFrom + chemistry::daysBetween(start, *so.keepsUntil) - now;
    // A day or two beside the calendar's date is the calendar's date told by a blunter clock.
    const bool before = spentIn && *so.keepsIn - *spentIn >= Days(chemistry::kCalendarNear.value);
    so.discardBy = before ? so.spentAt : so.keepsUntil;
    so.discardIn = before ? spentIn : so.keepsIn;
}

// Films that are left in it: one-shot by its volume, else by what its solution can do.
std::optional<Films> filmsLeft(const Batch& batch, const Assessment& so)
{
    if (batch.usedOnce()) {
        return Films(batch.volume / *batch.solution->oneShotPerFilm);
    }
    if (!so.capacity || (batch.historyUnknown && !batch.filmsKnown)) {
        return std::nullopt;
    }
    return std::max(Films(0), (*so.capacity - batch.wear) * litres(batch.volume));
}

// The last test that was passed; what a later one showed that was not is a reason of its own.
std::optional<Mark> lastPass(const Batch& batch)
{
    std::optional<Mark> last;
    if (!batch.passes.empty()) {
        last = batch.passes.back();
    }
    if (batch.solution->role != formulary::Role::Fixer) {
        return last;
    }
    for (std::size_t i = batch.lapsedTests; i < batch.tests.size(); ++i) {
        const auto& test = batch.tests[i];
        const auto fresh = chemistry::freshClearing(batch.tests, test.film, fixerKnown(batch));
        const bool passed = fresh && test.at20.value() < 2 * fresh->value() - 1e-9;
        if (passed && (!last || batch.testMarks[i].at > last->at)) {
            last = batch.testMarks[i];
        }
    }
    return last;
}

// It vouches for the solution for a while. One before it does no more, though topping up may have
// brought the wear back below where that was made: what was asked last was answered last.
bool vouchedFor(const Batch& batch)
{
    const auto pass = lastPass(batch);
    return pass && chemistry::daysBetween(pass->at, batch.asOf) < kPassKeeps &&
           (batch.wear - pass->wear).value() < kPassKeepsFilms.value() - kFilmSlack;
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
        addIf(m_batch.testFailed(), ReasonCode::TestFailed);
        if (m_so.clearing && m_so.clearing->doubled) {
            addIf(true, ReasonCode::ClearingDoubled,
                  {{"last_s", m_so.clearing->doubled->last.value()},
                   {"fresh_s", m_so.clearing->doubled->fresh.value()}});
        }
        if (const auto capacity = capacityAsked()) {
            addIf(m_batch.wear.value() >= capacity->value() - kFilmSlack,
                  ReasonCode::CapacityReached,
                  {{"wear", m_batch.wear.value()}, {"capacity", capacity->value()}});
        }
        if (m_so.filmsLeft) {
            addIf(m_so.filmsLeft->value() < kLeastFilm - kFilmSlack,
                  ReasonCode::LessThanQuarterFilm, {{"films_left", m_so.filmsLeft->value()}});
        }
        if (pastCalendar()) {
            addIf(true, ReasonCode::PastKeeping,
                  {{"days_over", -m_so.keepsIn->value()},
                   {"full_days", m_batch.solution->keeping.full->value()}});
        }
        if (const auto limit = m_batch.solution->silverLimit) {
            addIf(m_batch.silver.value() > limit->value() + kFilmSlack, ReasonCode::SilverOverLimit,
                  {{"silver", m_batch.silver.value()}, {"limit", limit->value()}});
        }
        if (const auto limit = m_batch.solution->turnoverLimit) {
            const double used = turnovers(m_batch);
            addIf(used > *limit + kFilmSlack, ReasonCode::TurnoverOverLimit,
                  {{"turnovers", used}, {"limit", *limit}});
        }
    }

    void testFirst()
    {
        const bool vouched = vouchedFor(m_batch);
        if (m_so.standingUsed && *m_so.standingUsed >= 1 && !pastCalendar() && !vouched) {
            addIf(true, ReasonCode::StandingSpent, {{"standing", *m_so.standingUsed}});
        }
        if (m_batch.solution->role == formulary::Role::Fixer) {
            const Mark last =
                m_batch.testMarks.empty() ? Mark{m_batch.madeAt, {}} : m_batch.testMarks.back();
            const auto films = m_batch.wear - last.wear;
            const Days days = chemistry::daysBetween(last.at, m_batch.asOf);
            addIf(films.value() >= kClearingTestEveryFilms.value() - kFilmSlack ||
                      days >= kClearingTestEvery,
                  ReasonCode::ClearingTestDue,
                  {{"films_since", films.value()}, {"days_since", days.value()}});
        }
        addIf(m_batch.inDoubt() && !vouched, ReasonCode::HistoryUnknown);
        if (m_batch.testAskedAt) {
            addIf(true, ReasonCode::TestAsked,
                  {{"days_since",
                    chemistry::daysBetween(*m_batch.testAskedAt, m_batch.asOf).value()}});
        }
    }

    void nearItsEnd()
    {
        if (const auto capacity = capacityAsked()) {
            addIf(m_batch.wear.value() >= kNearShare * capacity->value() - kFilmSlack,
                  ReasonCode::CapacityNear,
                  {{"wear", m_batch.wear.value()}, {"capacity", capacity->value()}});
        }
        if (m_so.filmsLeft) {
            addIf(m_so.filmsLeft->value() <= m_so.meanLoad.value() + kFilmSlack,
                  ReasonCode::FilmsFew,
                  {{"films_left", m_so.filmsLeft->value()}, {"mean_load", m_so.meanLoad.value()}});
        }
        if (m_so.standingUsed && *m_so.standingUsed >= kNearShare) {
            addIf(true, ReasonCode::StandingNear, {{"standing", *m_so.standingUsed}});
        }
        if (m_so.discardIn) {
            addIf(*m_so.discardIn <= kSoon, ReasonCode::DiscardSoon,
                  {{"days", m_so.discardIn->value()}});
        }
    }

    // What is poured away after use is not asked how worn it is.
    [[nodiscard]] std::optional<chemistry::FilmsPerLitre> capacityAsked() const
    {
        return m_batch.usedOnce() ? std::nullopt : m_so.capacity;
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
    if (code <= ReasonCode::TurnoverOverLimit) {
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

bool knownClear(const Batch& batch)
{
    return batch.dissolved || batch.solution->form == formulary::Form::Liquid ||
           batch.filmsDone.value() > 0 || !batch.passes.empty() || !batch.tests.empty();
}

chemistry::FixerKnown fixerKnown(const Batch& fixer)
{
    return {fixer.solution->freshClearing, formulary::capacityOf(*fixer.solution),
            !fixer.historyUnknown};
}

Assessment assess(const Batch& batch, const chemistry::AirConstants& constants)
{
    Assessment so;
    const auto& solution = *batch.solution;
    so.age = chemistry::daysBetween(batch.madeAt, batch.asOf);
    so.atLeast = batch.inDoubt();
    so.capacity = formulary::capacityOf(solution);
    so.wearFactor = chemistry::wearFactor(solution.wear, batch.wear);
    so.meanLoad = meanLoad(batch);
    so.filmsLeft = filmsLeft(batch, so);
    assessStanding(batch, constants, so);
    if (solution.role == formulary::Role::Fixer) {
        so.clearing = chemistry::clearing(batch.tests, batch.wear, fixerKnown(batch));
    }
    so.lastFilm = lastFilm(batch, so);
    so.reasons = Reasons(batch, so).all();
    so.verdict = so.reasons.empty() ? Verdict::Good : verdictOf(so.reasons.front().code);
    so.shown = so.verdict;
    if (batch.inUse() && so.verdict < Verdict::TestFirst && !knownClear(batch)) {
        so.shown = Verdict::Resting;
        if (chemistry::daysBetween(batch.mixedAt, batch.asOf) < kRestIsLong) {
            so.lookAt = chemistry::nextDissolvingCheck(batch.mixedAt, batch.asOf);
        }
    }
    return so;
}

} // namespace ullage::ledger
