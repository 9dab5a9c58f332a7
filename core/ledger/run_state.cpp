#include "core/ledger/run_state.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

using chemistry::Instant;

std::string_view code(RunPhase phase) { return kRunPhaseCodes[static_cast<std::size_t>(phase)]; }

const RunBath* RunState::bath(const std::string& batch) const
{
    const auto found = std::find_if(baths.begin(), baths.end(),
                                    [&](const RunBath& bath) { return bath.batch == batch; });
    return batch.empty() || found == baths.end() ? nullptr : &*found;
}

std::optional<DevelopingFactors> developingNow(const RunState& state)
{
    auto factors = state.sheet.developing;
    const auto& steps = state.sheet.steps;
    const auto developing = std::find_if(
        steps.begin(), steps.end(), [](const RunStep& s) { return s.kind == StepKind::Develop; });
    if (!factors || developing == steps.end()) {
        return std::nullopt;
    }
    const auto step = static_cast<std::size_t>(developing - steps.begin());
    const auto last = std::find_if(state.readings.rbegin(), state.readings.rend(),
                                   [&](const Reading& reading) { return reading.step <= step; });
    if (last == state.readings.rend()) {
        return factors;
    }
    const TemperatureBasis& basis = state.sheet.basis;
    if (auto base = chemistry::baseTime(basis.pairs, last->temperature, basis.q10)) {
        factors->base = std::move(*base);
        factors->temperature = factors->base.time / factors->nearest.time;
        factors->time = factors->base.time * factors->wear * factors->strip;
        factors->carried.reset(); // was said of the temperature planned for
    }
    return factors;
}

Load loadOf(const std::vector<RunFilm>& films)
{
    Load load;
    for (const RunFilm& film : films) {
        const auto same = std::find_if(load.films.begin(), load.films.end(),
                                       [&](const FilmCount& c) { return c.format == film.format; });
        if (same != load.films.end()) {
            same->count += film.count;
        } else {
            load.films.push_back({film.format, static_cast<double>(film.count)});
        }
    }
    return load;
}

std::vector<FilmRecord> recordsOf(const std::vector<RunFilm>& films)
{
    std::vector<FilmRecord> records;
    for (const RunFilm& film : films) {
        for (int piece = 0; piece < film.count; ++piece) {
            records.push_back({.format = film.format,
                               .name = film.name,
                               .exposureIndex = film.exposureIndex,
                               .notes = film.notes});
        }
    }
    return records;
}

FilmRun runOf(const std::vector<RunFilm>& films, std::vector<Bath> baths)
{
    return {.load = loadOf(films), .baths = std::move(baths), .films = recordsOf(films)};
}

std::vector<std::vector<RunFilm>> splitByTime(const std::vector<RunFilm>& films,
                                              const std::vector<FilmTimeHere>& times)
{
    const auto groups = byTime(times);
    std::vector<std::vector<RunFilm>> runs(groups.size() + 1);
    for (const RunFilm& film : films) {
        const auto wants = [&](std::size_t i) {
            return formulary::sameFilm(times[i].film.name, film.name) &&
                   times[i].film.exposureIndex == film.exposureIndex && times[i].time;
        };
        const auto group = std::find_if(groups.begin(), groups.end(), [&](const auto& one) {
            return std::any_of(one.begin(), one.end(), wants);
        });
        runs[static_cast<std::size_t>(group - groups.begin())].push_back(film);
    }
    std::erase_if(runs, [](const auto& run) { return run.empty(); });
    return runs;
}

RunState readyRun(const LoadWishes& wishes, const std::vector<RunFilm>& films, const NextLoad& next,
                  Instant now)
{
    RunState state;
    state.savedAt = now;
    state.temperature = *wishes.temperature;
    state.tank = wishes.tank.value_or(Tank());
    state.films = films;
    state.sheet = *next.sheet;
    for (const BathChoice& bath : next.plan.baths) {
        if (const Judged* taken = next.taken(bath.need.place())) {
            state.baths.push_back({bath.need.role, taken->batch.id, taken->batch.name,
                                   bath.need.volume, bath.need.oneShot, taken->batch.wear.value(),
                                   bath.need.second});
        }
    }
    for (const RunStep& step : state.sheet.steps) {
        state.times.push_back({step.planned, step.planned, {}, {}, false, {}, {}});
    }
    return state;
}

std::vector<std::string> bathsUsed(const RunState& state)
{
    std::vector<std::string> used;
    for (std::size_t i = 0; i < state.times.size(); ++i) {
        const RunStep& step = state.sheet.steps[i];
        if (roleOf(step.kind) && !step.batch.empty() && state.times[i].began &&
            !state.times[i].skipped) {
            used.push_back(step.batch);
        }
    }
    return used;
}

Instant lastBathAt(const RunState& state)
{
    Instant last = state.savedAt;
    for (std::size_t i = 0; i < state.times.size(); ++i) {
        const StepTime& time = state.times[i];
        if (roleOf(state.sheet.steps[i].kind) && !state.sheet.steps[i].batch.empty() &&
            time.began && !time.skipped) {
            last = time.ended.value_or(state.savedAt);
        }
    }
    return last;
}

namespace
{

// What was read last by the time the developer had done its work. A run planned at a temperature
// whose only readings came later keeps none: the reading it was planned with is not in its state.
std::optional<chemistry::Celsius> developedAt(const RunState& state)
{
    const auto& steps = state.sheet.steps;
    const auto develop = std::find_if(steps.begin(), steps.end(), [](const RunStep& step) {
        return step.kind == StepKind::Develop;
    });
    if (develop == steps.end()) {
        return std::nullopt;
    }
    const auto last = static_cast<std::size_t>(develop - steps.begin());
    std::optional<chemistry::Celsius> found;
    for (const Reading& reading : state.readings) {
        if (reading.step <= last) {
            found = reading.temperature;
        }
    }
    return found || !state.readings.empty() ? found : std::optional(state.temperature);
}

} // namespace

FilmRun filmRun(const RunState& state, const std::vector<BathClosing>& closings)
{
    FilmRun run = runOf(state.films, {});
    for (const BathClosing& closing : closings) {
        const RunBath* bath = state.bath(closing.batch);
        run.baths.push_back({.batch = closing.batch,
                             .used = bath ? std::optional(bath->used) : std::nullopt,
                             .lost = closing.lost,
                             .oneShot = bath && bath->oneShot,
                             .airLeft = closing.airLeft,
                             .second = bath && bath->second});
        if (closing.topUp) {
            run.topUps.push_back(*closing.topUp);
        }
    }
    for (std::size_t i = 0; i < state.times.size(); ++i) {
        const StepTime& time = state.times[i];
        if (time.began && !time.skipped) {
            run.times.steps.push_back(
                {std::string(code(state.sheet.steps[i].kind)), time.target, time.real + time.held});
        }
    }
    run.times.temperature = developedAt(state);
    run.times.tank = state.tank.name;
    run.times.tankVolume = state.tank.volume;
    return run;
}

Result<void> check(const RunState& state)
{
    const auto unfit = [](const char* field) {
        return refuse({.code = ErrorCode::Conflict, .field = field});
    };
    const std::size_t steps = state.sheet.steps.size();
    if (steps == 0 || state.times.size() != steps) {
        return unfit("times");
    }
    if (state.current >= steps) {
        return unfit("current");
    }
    for (const StepTime& time : state.times) {
        for (const auto value : {time.planned, time.target, time.real, time.held}) {
            if (!std::isfinite(value.value()) || value.value() < 0 || value.value() > 1e9) {
                return unfit("times");
            }
        }
    }
    for (const RunStep& step : state.sheet.steps) {
        if (!step.batch.empty() && !state.bath(step.batch)) {
            return unfit("batch");
        }
        if (auto fine = check(step.agitation); !fine) {
            return fine;
        }
    }
    if (state.films.empty() ||
        std::any_of(state.films.begin(), state.films.end(),
                    [](const RunFilm& film) { return film.count < 1 || film.count > 1000; })) {
        return unfit("films");
    }
    return check(state.tank);
}

} // namespace ullage::ledger
