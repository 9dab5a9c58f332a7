#include "core/ledger/batch.h"

#include "core/chemistry/films.h"
#include "core/ledger/fillings.h"
#include "core/ledger/mixture.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Films;
using chemistry::Instant;
using chemistry::litres;
using chemistry::Millilitres;

namespace
{

// Volumes come from sums of user's figures; a billionth of a millilitre is nothing.
constexpr double kVolumeSlack = 1e-9;

Error overVolume(ErrorCode code, const char* field, Millilitres asked, Millilitres most,
                 const std::string& batch)
{
    return {.code = code,
            .field = field,
            .number = asked.value(),
            .low = 0,
            .high = most.value(),
            .unit = "ml",
            .subject = batch};
}

// Refuses taking more than is there.
Result<void> mustHold(const Batch& batch, const char* field, Millilitres asked)
{
    if (asked.value() > batch.volume.value() + kVolumeSlack) {
        return refuse(overVolume(ErrorCode::NotEnough, field, asked, batch.volume, batch.name));
    }
    return {};
}

Result<void> mustFit(const formulary::Vessel& vessel, const char* field, Millilitres volume,
                     Millilitres most, const std::string& batch)
{
    if (volume.value() > most.value() + kVolumeSlack) {
        auto error = overVolume(ErrorCode::TooMuch, field, volume, most, batch);
        error.allowed = vessel.name;
        return refuse(std::move(error));
    }
    return {};
}

// Of a second fixing bath: a film carries over about 20 mL of a first one at, on its average, 1.5
// g/L silver, a fifth of what it brings.
constexpr double kFeltBySecond = 0.2;

// Keeps spentAfter: when s last rose to 1.
void watchSpent(Batch& batch)
{
    const auto used = batch.standingUsed();
    if (!used || *used < 1) {
        batch.spentAfter.reset();
    } else if (!batch.spentAfter) {
        batch.spentAfter = chemistry::daysBetween(batch.mixedAt, batch.asOf);
    }
}

void remember(Batch& batch)
{
    batch.trace.push_back({batch.asOf, batch.volume, batch.wear, batch.standing});
}

// What each kind of event refuses, before anything is changed.
struct Refusals {
    const Batch& batch;
    const formulary::Formulary& formulary;

    Result<void> operator()(const Mixed&) const
    {
        return refuse({.code = ErrorCode::AlreadyMixed, .field = "batch", .text = batch.id});
    }
    Result<void> operator()(const Processed& e) const
    {
        if (e.used) {
            if (auto fine = mustHold(batch, "used_ml", *e.used); !fine) {
                return fine;
            }
        }
        return mustHold(batch, "lost_ml", e.lost);
    }
    Result<void> operator()(const Drawn& e) const { return mustHold(batch, "volume_ml", e.volume); }
    Result<void> operator()(const ToppedUp& e) const
    {
        if (!e.solution.empty() &&
            (e.solution != batch.solution->replenisher || !batch.solution->replenishPerFilm)) {
            return refuse({.code = ErrorCode::Conflict,
                           .field = "solution",
                           .text = e.solution,
                           .allowed = "the solution's own replenisher",
                           .subject = batch.name});
        }
        const Millilitres room = batch.vessel->capacity - batch.volume;
        return mustFit(*batch.vessel, "volume_ml", e.volume, room, batch.name);
    }
    Result<void> operator()(const Moved& e) const
    {
        const auto vessel = formulary.vessel(e.vessel);
        if (!vessel) {
            return refuse({.code = ErrorCode::UnknownId, .field = "vessel", .text = e.vessel});
        }
        return mustFit(*vessel, "vessel", batch.volume, vessel->capacity, batch.name);
    }
    template <class Other>
    Result<void> operator()(const Other&) const
    {
        return {};
    }
};

// What each kind of event does to the state; nothing here can fail.
struct Effects {
    Batch& batch;
    const Event& event;
    const formulary::Formulary& formulary;
    const chemistry::AirConstants& constants;
    const Batch* donor;

    void operator()(const Processed& e) const
    {
        const Films units = e.load.units();
        const Films felt = feltOf(units, e.second);
        const Millilitres used = e.used.value_or(batch.volume);
        batch.loads.push_back({event.id, event.at, units, batch.wear, felt, e.oneShot, event.by});
        if (e.oneShot) {
            batch.filmsDone += units;
            batch.volume -= used;
            return;
        }
        addFilms(batch, units, felt);
        batch.standing.taken.pouring += saturation(*batch.solution) * (used / batch.volume);
        batch.volume -= e.lost;
    }
    void operator()(const ToppedUp& e) const
    {
        if (donor) {
            pourIn(batch, *donor, e.volume);
        } else if (!e.solution.empty()) {
            pourInReplenisher(batch, e.volume);
        } else {
            pourInFresh(batch, e.volume);
        }
        remember(e.from, e.volume, true);
    }
    void operator()(const Drawn& e) const
    {
        batch.volume -= e.volume;
        remember(e.to, e.volume, false);
    }
    void operator()(const Moved& e) const { batch.vessel = formulary.vessel(e.vessel); }
    void operator()(const StoodOpen& e) const
    {
        batch.standing.taken.openVessel +=
            chemistry::openUptake(e.time, e.surface, batch.volume, saturation(*batch.solution),
                                  chemistry::trayExchange(batch.limits, constants));
    }
    void operator()(const StoredAt& e) const { batch.temperature = e.temperature; }
    void operator()(const ClearingTested& e) const
    {
        batch.tests.push_back({batch.wear, chemistry::clearingAt20(e.time, e.temperature), e.film});
        batch.testMarks.push_back({event.at, batch.wear});
        batch.testAskedAt.reset();
    }
    void operator()(const StripTested& e) const
    {
        if (e.density) {
            batch.strips.push_back({event.id, event.at, batch.wear, *e.density,
                                    batch.stripFactor.value_or(1), e.passed});
        }
        if (e.factor) {
            batch.stripFactor = e.factor;
            batch.stripAt = event.at;
        }
        judge(e.passed, std::nullopt);
        batch.testAskedAt.reset();
    }
    void operator()(const Looked& e) const
    {
        judge(e.passed, e.what);
        if (e.passed) { // a look that judges nothing is no test
            batch.testAskedAt.reset();
        }
    }
    void operator()(const Filtered&) const
    {
        std::erase(batch.failures, std::optional(LookedAt::Precipitate));
    }
    void operator()(const Measured& e) const
    {
        batch.silver = e.silver;
        batch.silverMeasuredAt = event.at;
    }
    void operator()(const TestAsked&) const { batch.testAskedAt = event.at; }
    void operator()(const Contaminated&) const { batch.contaminated = true; }
    void operator()(const Dissolved&) const { batch.dissolved = true; }
    void operator()(const Discarded&) const { end(BatchEnd::Discarded); }
    template <class Other>
    void operator()(const Other&) const
    {
    }

    void judge(std::optional<bool> passed, std::optional<LookedAt> what) const
    {
        if (!passed) {
            return;
        }
        if (*passed) {
            batch.passes.push_back({event.at, batch.wear});
        } else {
            batch.failures.push_back(what);
        }
        if (batch.limits && what != LookedAt::Precipitate) {
            batch.trials.push_back({event.at, batch.wear, batch.standing.taken.total(),
                                    batch.standing.aged / batch.limits->age, *passed});
        }
    }
    void remember(const std::string& other, Millilitres volume, bool into) const
    {
        if (!other.empty()) {
            batch.fillings.push_back({event.id, event.at, other, volume, into});
        }
    }
    void end(BatchEnd how) const
    {
        batch.end = how;
        batch.endedAt = event.at;
        batch.endedBy = event.entry;
    }
};

} // namespace

Films feltOf(Films units, bool second) { return second ? units * kFeltBySecond : units; }

Fold::Fold(const formulary::Formulary& formulary, const chemistry::AirConstants& constants,
           FoldDepth depth)
    : m_formulary(&formulary), m_constants(constants), m_depth(depth)
{
}

bool Fold::follows(const Event& event) const { return !m_started || event.at >= m_batch.asOf; }

Result<void> Fold::apply(const Event& event, const Batch* donor)
{
    if (const auto* mixed = std::get_if<Mixed>(&event.what); mixed && !m_started) {
        return start(event, *mixed, donor);
    }
    if (!m_started) {
        return refuse({.code = ErrorCode::BeforeMixing,
                       .field = "at",
                       .text = event.id,
                       .subject = event.batch});
    }
    if (!m_batch.inUse()) {
        return refuse({.code = ErrorCode::AfterEnd,
                       .field = "at",
                       .text = event.id,
                       .subject = m_batch.name});
    }
    if (auto fine = std::visit(Refusals{m_batch, *m_formulary}, event.what); !fine) {
        return fine;
    }
    const bool whole = m_depth == FoldDepth::Whole;
    if (whole) {
        standUntil(m_batch, event.at);
        remember(m_batch);
    } else {
        m_batch.asOf = std::max(m_batch.asOf, event.at);
    }
    const Effects effects{m_batch, event, *m_formulary, m_constants, donor};
    std::visit(effects, event.what);
    if (m_batch.volume.value() <= kVolumeSlack) {
        m_batch.volume = Millilitres(0);
        if (m_batch.inUse()) {
            effects.end(BatchEnd::UsedUp);
        }
    }
    if (!whole) {
        return {};
    }
    if (opens(event.what)) {
        openBottle(event);
    }
    watchSpent(m_batch);
    remember(m_batch);
    return {};
}

Result<void> Fold::start(const Event& event, const Mixed& mixed, const Batch* donor)
{
    const auto solution = m_formulary->solution(mixed.solution);
    if (!solution) {
        return refuse({.code = ErrorCode::UnknownId, .field = "solution", .text = mixed.solution});
    }
    const auto vessel = m_formulary->vessel(mixed.vessel);
    if (!vessel) {
        return refuse({.code = ErrorCode::UnknownId, .field = "vessel", .text = mixed.vessel});
    }
    const std::string& name = mixed.name.empty() ? event.batch : mixed.name;
    if (auto fine = mustFit(*vessel, "volume_ml", mixed.volume, vessel->capacity, name); !fine) {
        return fine;
    }
    m_batch = Batch();
    m_batch.id = event.batch;
    m_batch.name = name;
    m_batch.solution = solution;
    m_batch.vessel = vessel;
    m_batch.mixedAt = m_batch.madeAt = m_batch.asOf = event.at;
    m_batch.mixedVolume = m_batch.volume = mixed.volume;
    if (!mixed.from.empty()) {
        m_batch.fillings.push_back({event.id, event.at, mixed.from, mixed.volume, true});
    }
    m_started = true;
    if (m_depth == FoldDepth::Volumes) {
        return {};
    }
    m_batch.limits = keepingLimits(*solution, m_constants);
    m_batch.standing.taken.pouring = saturation(*solution);
    if (donor) {
        takeFrom(m_batch, *donor);
    } else if (mixed.historyUnknown) {
        takeAsFound(m_batch, mixed);
    }
    if (mixed.filmsBefore) {
        addFilms(m_batch, *mixed.filmsBefore, *mixed.filmsBefore);
    }
    openBottle(event);
    watchSpent(m_batch);
    remember(m_batch);
    return {};
}

void Fold::openBottle(const Event& event)
{
    m_batch.standing.air =
        chemistry::freshAir(airAbove(*m_batch.vessel, m_batch.volume, event.airLeft));
    ++m_batch.openings;
}

void Fold::standUntil(Batch& batch, Instant time) const
{
    if (!batch.inUse() || time <= batch.asOf) {
        return;
    }
    auto closed = batch.closed();
    closed.bottle = enclosure(*batch.vessel, m_constants);
    const auto before = batch.standing;
    const Instant from = batch.asOf;
    batch.standing =
        chemistry::stand(before, chemistry::daysBetween(from, time), closed, m_constants);
    batch.asOf = time;
    const auto used = batch.standingUsed();
    if (used && *used >= 1 && !batch.spentAfter) {
        const auto days = chemistry::daysUntilSpent(before, closed, *batch.limits, m_constants);
        batch.spentAfter = std::min(chemistry::daysBetween(batch.mixedAt, from) + days,
                                    chemistry::daysBetween(batch.mixedAt, time));
    }
}

void Fold::standTo(Instant time)
{
    if (m_depth == FoldDepth::Whole) {
        standUntil(m_batch, time);
    }
}

Batch Fold::at(Instant time) const
{
    Batch batch = m_batch;
    standUntil(batch, time);
    return batch;
}

} // namespace ullage::ledger
