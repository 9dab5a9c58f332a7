#include "core/cupboard/needs_request.h"

#include "core/chemistry/pace.h"
#include "core/ledger/verdict.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <map>

namespace ullage::cupboard
{

using chemistry::Instant;
using formulary::Role;

namespace
{

// Every id of a solution to the id of the one that is offered now.
std::map<std::string, std::string> currentIds(const formulary::Formulary& formulary)
{
    std::map<std::string, std::string> now;
    for (const auto& solution : formulary.currentSolutions()) {
        for (const std::string& id : formulary.family(solution->id)) {
            now[id] = solution->id;
        }
        now[solution->id] = solution->id;
    }
    return now;
}

std::string nowOf(const std::map<std::string, std::string>& ids, const std::string& id)
{
    const auto found = ids.find(id);
    return found == ids.end() ? id : found->second;
}

// Of each kind but developers, whose work is named.
bool everyFilmGoesThrough(Role role)
{
    return role == Role::Stop || role == Role::Fixer || role == Role::WashAid ||
           role == Role::WettingAgent;
}

// What they hold nobody knows, but they are what films went through last all the same.
void countAsMixedLast(PlanRequest& request, const std::vector<ledger::Unread>& leftOut,
                      const std::vector<ledger::Batch>& batches,
                      const formulary::Formulary& formulary)
{
    const auto ids = currentIds(formulary);
    const auto roleOf = [&](const std::string& id) {
        const auto solution = formulary.solution(id);
        return solution ? solution->role : Role::Other;
    };
    for (const ledger::Unread& one : leftOut) {
        const Role role = roleOf(one.solution);
        const std::size_t mixed = std::min(one.place, batches.size());
        const bool anotherSince =
            std::any_of(batches.begin() + static_cast<std::ptrdiff_t>(mixed), batches.end(),
                        [&](const ledger::Batch& batch) { return batch.solution->role == role; });
        if (anotherSince) {
            continue;
        }
        if (role == Role::Developer) {
            request.developer = nowOf(ids, one.solution);
        } else if (everyFilmGoesThrough(role)) {
            std::erase_if(request.also, [&](const std::string& id) { return roleOf(id) == role; });
            request.also.push_back(nowOf(ids, one.solution));
        }
    }
}

} // namespace

std::vector<PlannedWork> knownWork(const std::vector<ledger::Work>& works, Instant from,
                                   Instant until, const WallClock& clock)
{
    std::vector<PlannedWork> found;
    for (const ledger::Work& work : works) {
        const auto rule = work.rule.empty() ? std::nullopt : readRule(work.rule);
        const auto times =
            rule ? occurrences(work.at, *rule, from, until, clock) : std::vector<Instant>{work.at};
        for (const Instant at : times) {
            if (at >= from && at <= until) {
                found.push_back(
                    {at, work.films.value_or(chemistry::Films(0)), work.developer, work.name});
            }
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const PlannedWork& a, const PlannedWork& b) { return a.at < b.at; });
    return found;
}

PlanRequest needsOf(const std::vector<ledger::Batch>& batches,
                    const formulary::Formulary& formulary, const ledger::CupboardState& cupboard,
                    Instant now, Instant until, const WallClock& clock)
{
    PlanRequest request;
    request.now = now;
    request.until = until;
    const auto ids = currentIds(formulary);
    std::map<std::string, chemistry::Millilitres> usual;
    std::map<Role, std::pair<Instant, std::string>> last; // of a kind, mixed last
    for (const ledger::Batch& batch : batches) {
        const std::string id = nowOf(ids, batch.solution->id);
        auto& latest = last[batch.solution->role];
        if (latest.second.empty() || batch.mixedAt >= latest.first) {
            latest = {batch.mixedAt, id};
        }
        usual[id] = batch.mixedVolume;
        if (!batch.inUse()) {
            continue;
        }
        const auto so = ledger::assess(batch);
        // What nobody knows the history of has a capacity and yet nothing known to be left: such a
        // bottle would be taken for one without end.
        const bool known = so.filmsLeft || !formulary::capacityOf(*batch.solution);
        if (so.verdict != ledger::Verdict::Discard && known) {
            request.bottles.push_back({batch.id, id, so.filmsLeft, so.discardBy});
        }
    }
    for (const auto& solution : formulary.currentSolutions()) {
        PlannedSolution planned{.id = solution->id,
                                .capacity = formulary::capacityOf(*solution),
                                .keeps = solution->keeping.full,
                                .oneShot = solution->oneShotPerFilm};
        if (const auto volume = usual.find(solution->id); volume != usual.end()) {
            planned.usual = volume->second;
        }
        if (planned.capacity) {
            planned.oneShot.reset(); // used again as long as it is good for it
        }
        request.solutions.push_back(planned);
    }
    for (const ledger::ItemHere& here : cupboard.items) {
        if (here.item.solution.empty() || !here.item.makes ||
            !ledger::suitsMixing(here.item, here.stock)) {
            continue;
        }
        const bool liquid = here.item.kind == ledger::ItemKind::Liquid;
        const double share = liquid && here.item.bought && here.stock.left
                                 ? *here.stock.left / *here.item.bought
                                 : 1;
        const std::string id = nowOf(ids, here.item.solution);
        request.packets.push_back({.item = here.item.id,
                                   .solution = id,
                                   .liquid = liquid,
                                   .makes = *here.item.makes,
                                   .share = std::clamp(share, 0.0, 1.0),
                                   .until = here.life.until,
                                   .keepsOpened = here.item.keepsOpened,
                                   .opened = here.stock.openedAt.has_value()});
    }
    for (const ledger::Packet& packet : cupboard.packets) {
        if (packet.makes) {
            request.bought.push_back(
                {nowOf(ids, packet.solution), *packet.makes, packet.cost, packet.currency});
        }
    }
    request.work = knownWork(cupboard.works, now, until, clock);
    for (PlannedWork& work : request.work) {
        work.developer = nowOf(ids, work.developer);
    }
    for (const auto& [role, latest] : last) {
        if (role == Role::Developer) {
            request.developer = latest.second;
        } else if (everyFilmGoesThrough(role)) {
            request.also.push_back(latest.second);
        }
    }
    return request;
}

PlanRequest forFilms(PlanRequest request, chemistry::Films films)
{
    request.work = {{request.now, films, {}, {}}};
    return request;
}

FilmPace filmPace(const std::vector<ledger::Batch>& batches, Instant now)
{
    const Instant from = chemistry::addDays(now, -chemistry::kPaceWindow);
    FilmPace pace;
    chemistry::Pace seen;
    double films = 0;
    std::optional<Instant> first;
    for (const ledger::Batch& batch : batches) {
        if (batch.solution->role != Role::Developer) {
            continue;
        }
        for (const ledger::LoadDone& load : batch.loads) {
            if (load.at >= from && load.at <= now) {
                ++seen.loads;
                films += load.units.value();
                first = std::min(first.value_or(load.at), load.at);
            }
        }
    }
    if (seen.loads == 0) {
        return pace;
    }
    pace.loads = seen.loads;
    seen.observed = chemistry::daysBetween(*first, now);
    const auto rate = chemistry::belief(seen);
    pace.load = chemistry::Films(films / seen.loads);
    pace.filmsPerDay = rate.shape / rate.time.value() * pace.load.value();
    return pace;
}

PlanRequest withPace(PlanRequest request, const Beside& beside, const FilmPace& usual)
{
    const bool given = beside.kind == Beside::Kind::Given;
    if (!given && (beside.kind == Beside::Kind::Nothing || !usual.isKnown())) {
        return request;
    }
    const chemistry::Films load(std::max(1.0, std::round(usual.load.value())));
    const auto more = workAtPace(request, given ? beside.filmsPerDay : usual.filmsPerDay, load);
    request.work.insert(request.work.end(), more.begin(), more.end());
    std::stable_sort(request.work.begin(), request.work.end(),
                     [](const PlannedWork& a, const PlannedWork& b) { return a.at < b.at; });
    return request;
}

Needs needsFrom(std::vector<ledger::Batch> batches, const formulary::Formulary& formulary,
                ledger::CupboardState cupboard, Instant now, const PlanFor& planFor,
                const WallClock& clock)
{
    const FilmPace usual = filmPace(batches, now);
    const Instant until = now + std::chrono::days(7 * planFor.weeks);
    auto request = needsOf(batches, formulary, cupboard, now, until, clock);
    request = planFor.films ? forFilms(std::move(request), chemistry::Films(*planFor.films))
                            : withPace(std::move(request), planFor.beside, usual);
    return {std::move(batches), std::move(cupboard), usual, std::move(request), {}};
}

Result<Needs> readNeeds(ledger::Book& book, Instant now, const PlanFor& planFor,
                        const WallClock& clock)
{
    std::vector<ledger::Unread> leftOut;
    auto batches = book.batchesSince(chemistry::addDays(now, -chemistry::kPaceWindow), now,
                                     Role::Developer, &leftOut);
    if (!batches) {
        return tl::unexpected(batches.error());
    }
    auto cupboard = book.cupboard(now, &leftOut);
    if (!cupboard) {
        return tl::unexpected(cupboard.error());
    }
    Needs needs =
        needsFrom(std::move(*batches), book.formulary(), std::move(*cupboard), now, planFor, clock);
    countAsMixedLast(needs.request, leftOut, needs.batches, book.formulary());
    needs.leftOut = std::move(leftOut);
    return needs;
}

} // namespace ullage::cupboard
