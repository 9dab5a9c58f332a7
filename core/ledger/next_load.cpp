#include "core/ledger/next_load.h"

#include "core/ledger/pour.h"
#include "core/ledger/run_split.h"

#include <algorithm>
#include <utility>

namespace ullage::ledger
{

using chemistry::Films;
using chemistry::Millilitres;
using formulary::Role;

namespace
{

std::vector<BathNeed> needsOfSheet(const LoadWishes& wishes)
{
    std::vector<BathNeed> all;
    const Millilitres volume = wishes.tank ? wishes.tank->volume : Millilitres();
    for (const TemplateStep& step : wishes.sheet.steps) {
        const auto place = placeOf(step.kind);
        if (!place) {
            continue;
        }
        const Role role = place->role;
        const bool required = (role == Role::Developer || role == Role::Fixer) && !place->second;
        BathNeed need{
            .role = role, .volume = volume, .required = required, .second = place->second};
        if (role == Role::Developer) {
            need.volume = stockNeeded(volume, wishes.parts);
            // A dilution cannot go back.
            need.oneShot = wishes.oneShot.value_or(false) || wishes.parts > 0;
        }
        all.push_back(need);
    }
    return all;
}

std::vector<BathNeed> needs(const LoadWishes& wishes)
{
    std::vector<BathNeed> all = wishes.needs.empty() ? needsOfSheet(wishes) : wishes.needs;
    for (BathNeed& need : all) {
        if (const auto chosen = wishes.chosen.find(need.place()); chosen != wishes.chosen.end()) {
            need.chosen = chosen->second;
        }
        if (need.role == Role::Developer) {
            need.within = wishes.developers;
        }
    }
    std::erase_if(all, [](const BathNeed& need) { return need.chosen == kNoBottle; });
    return all;
}

// The plan; where nobody says whether the developer is poured away, as the one taken is used.
void addPlan(NextLoad& made, const LoadWishes& wishes)
{
    const auto plan = [&](const LoadWishes& wanted) {
        return planRun({wanted.load, wanted.tank, needs(wanted)}, made.judged);
    };
    made.plan = plan(wishes);
    const Judged* developer = made.taken(Role::Developer);
    if (wishes.oneShot || !developer || !developer->batch.usedOnce()) {
        return;
    }
    LoadWishes once = wishes;
    once.oneShot = true;
    RunPlan thrown = plan(once);
    std::swap(made.plan, thrown);
    if (made.taken(Role::Developer) != developer) {
        std::swap(made.plan, thrown); // then it is another that would be taken
    }
}

void addTimes(NextLoad& made, const Judged* developer, const Judged* fixer,
              std::span<const chemistry::TimeAtTemperature> pairs,
              std::optional<chemistry::Celsius> temperature)
{
    if (developer && temperature) {
        made.developing =
            developingTime(developer->batch, developer->assessment, pairs, *temperature);
    } else if (developer) {
        made.developing =
            tl::unexpected(Error{.code = ErrorCode::Missing, .field = "temperature_c"});
    }
    if (fixer && temperature) {
        made.fixing = fixingTime(fixer->batch, fixer->assessment, *temperature);
        made.fixingTabular = fixingTime(fixer->batch, fixer->assessment, *temperature, true);
        for (auto* fixing : {&made.fixing, &made.fixingTabular}) {
            if (*fixing) {
                (*fixing)->baths = made.taken({Role::Fixer, true}) ? 2 : 1;
            }
        }
    }
}

void addFilmTimes(NextLoad& made, const LoadWishes& wishes)
{
    const Judged* developer = made.taken(Role::Developer);
    if (!developer || !wishes.temperature || !wishes.notebook) {
        return;
    }
    const auto wanted = formulary::filmTimes(
        *wishes.notebook, {wishes.films, developer->batch.solution->id, wishes.parts});
    made.filmTimes =
        timesHere(developer->batch, developer->assessment, wanted, *wishes.temperature);
    made.apart = timesApart(made.filmTimes);
}

BathAfter afterLoad(const BathNeed& need, std::size_t index, const Judged& judged, Films load)
{
    const Batch& batch = judged.batch;
    BathAfter after{
        .role = need.role, .judged = index, .volume = batch.volume, .second = need.second};
    Batch then = batch;
    if (need.oneShot) {
        const Millilitres used = need.volume.value() > 0 ? need.volume : batch.volume;
        after.volume = std::max(batch.volume - used, Millilitres());
    } else if (batch.volume.value() > 0) {
        then.wear += feltOf(load, need.second) / chemistry::litres(batch.volume);
    }
    then.volume = after.volume;
    after.filmsLeft = filmsItCanDo({then, {}}, {.role = need.role});
    if (need.role == Role::Developer) {
        after.factor = factorThen(then, {.wearBefore = then.wear}) * then.stripFactor.value_or(1);
    }
    return after;
}

void addAfter(NextLoad& made, Films load)
{
    for (const BathChoice& bath : made.plan.baths) {
        if (bath.taken) {
            const std::size_t index = bath.candidates[*bath.taken].judged;
            made.after.push_back(afterLoad(bath.need, index, made.judged[index], load));
        }
    }
}

void addSheet(NextLoad& made, const LoadWishes& wishes)
{
    if (!wishes.temperature) {
        made.refusal = Error{.code = ErrorCode::Missing, .field = "temperature_c"};
        return;
    }
    SheetRequest request{.sheet = wishes.sheet,
                         .temperature = *wishes.temperature,
                         .pairs = wishes.pairs,
                         .tabularGrain = wishes.tabularGrain,
                         .washWater = wishes.washWater};
    for (const BathChoice& bath : made.plan.baths) {
        if (const Judged* taken = made.taken(bath.need.place())) {
            request.baths.push_back(
                {taken, bath.need.oneShot, pourOf(bath.need, wishes.tank), bath.need.second});
        }
    }
    auto sheet = makeSheet(request);
    if (sheet) {
        made.sheet = std::move(*sheet);
    } else {
        made.refusal = sheet.error();
    }
}

} // namespace

const Judged* NextLoad::taken(BathPlace place) const
{
    const BathChoice* bath = plan.bath(place);
    return bath && bath->taken ? &judged[bath->candidates[*bath->taken].judged] : nullptr;
}

const BathAfter* NextLoad::afterwards(BathPlace place) const
{
    const auto found = std::find_if(after.begin(), after.end(), [&](const BathAfter& one) {
        return BathPlace(one.role, one.second) == place;
    });
    return found == after.end() ? nullptr : &*found;
}

NextLoad nextLoad(const LoadWishes& wishes, std::vector<Judged> judged)
{
    NextLoad made{.judged = std::move(judged)};
    addPlan(made, wishes);
    addTimes(made, made.taken(Role::Developer), made.taken(Role::Fixer), wishes.pairs,
             wishes.temperature);
    addFilmTimes(made, wishes);
    addAfter(made, wishes.load.units());
    if (!wishes.sheet.steps.empty()) {
        addSheet(made, wishes);
    }
    return made;
}

NextLoad nextLoadIn(const Judged& bottle, std::span<const chemistry::TimeAtTemperature> pairs,
                    chemistry::Celsius temperature, Films films)
{
    const Role role = bottle.batch.solution->role;
    NextLoad made{.judged = {bottle}};
    const BathNeed need{.role = role, .chosen = bottle.batch.id, .evenToDiscard = true};
    made.plan = planRun({{{{"135-36", films.value()}}}, {}, {need}}, made.judged);
    const Judged& kept = made.judged.front();
    addTimes(made, role == Role::Developer ? &kept : nullptr, role == Role::Fixer ? &kept : nullptr,
             pairs, temperature);
    addAfter(made, films);
    return made;
}

std::vector<std::string> developersFor(const formulary::Formulary& formulary,
                                       const std::vector<Judged>& judged,
                                       const std::vector<formulary::FilmWanted>& films)
{
    struct Use {
        std::string solution;
        chemistry::Instant at;
        bool used = false;
    };
    std::vector<Use> uses;
    for (const Judged& one : judged) {
        if (one.batch.inUse() && one.batch.solution->role == Role::Developer) {
            const auto& loads = one.batch.loads;
            uses.push_back({one.batch.solution->id,
                            loads.empty() ? one.batch.mixedAt : loads.back().at, !loads.empty()});
        }
    }
    std::stable_sort(uses.begin(), uses.end(), [](const Use& a, const Use& b) {
        return std::pair(a.used, a.at) > std::pair(b.used, b.at);
    });
    const auto known = formulary::developersWithTimes(formulary, films);
    for (const Use& use : uses) {
        auto family = formulary.family(use.solution);
        const bool has = std::any_of(family.begin(), family.end(), [&](const std::string& id) {
            return std::find(known.begin(), known.end(), id) != known.end();
        });
        if (has && use.used) {
            return family;
        }
    }
    for (const std::string& developer : known) {
        auto family = formulary.family(developer);
        const bool held = std::any_of(uses.begin(), uses.end(), [&](const Use& use) {
            return std::find(family.begin(), family.end(), use.solution) != family.end();
        });
        if (held) {
            return family;
        }
    }
    return !uses.empty() && uses.front().used ? formulary.family(uses.front().solution)
                                              : std::vector<std::string>();
}

} // namespace ullage::ledger
