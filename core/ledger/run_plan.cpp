#include "core/ledger/run_plan.h"

#include "core/chemistry/films.h"
#include "core/ledger/run_split.h"
#include "core/ledger/two_baths.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

using chemistry::Films;
using chemistry::Millilitres;
using formulary::Role;

namespace
{

std::optional<Films> tooMuchFor(const Judged& judged, const BathNeed& need, Films load)
{
    const auto left = filmsItCanDo(judged, need);
    return left && feltOf(load, need.second) > *left + Films(chemistry::kFilmSlack) ? left
                                                                                    : std::nullopt;
}

bool wornForOnce(const Batch& batch, const BathNeed& need)
{
    return need.oneShot && batch.wear.value() > chemistry::kFilmSlack;
}

// Whose history is unknown is not proposed before a test vouches for it.
bool asksForHistory(const Assessment& so)
{
    return std::any_of(so.reasons.begin(), so.reasons.end(), [](const Reason& reason) {
        return reason.code == ReasonCode::HistoryUnknown;
    });
}

// A bottle that has done film is clear, whatever was or was not written down.
Candidate candidate(std::size_t index, const Judged& judged, const BathNeed& need, Films load)
{
    const auto& within = need.within;
    Candidate made{.judged = index,
                   .markedDissolved = knownClear(judged.batch),
                   .untested = asksForHistory(judged.assessment)};
    made.otherSolution = !within.empty() && std::find(within.begin(), within.end(),
                                                      judged.batch.solution->id) == within.end();
    if (judged.assessment.verdict == Verdict::Discard) {
        made.hindrance = Hindrance::Discard;
    } else if (judged.batch.volume < need.volume) {
        made.hindrance = Hindrance::VolumeShort;
        made.has = judged.batch.volume.value();
        made.needs = need.volume.value();
    } else if (const auto left = tooMuchFor(judged, need, load)) {
        made.hindrance = Hindrance::CapacityShort;
        made.has = left->value();
        made.needs = load.value();
    } else if (wornForOnce(judged.batch, need)) {
        made.hindrance = Hindrance::Worn;
        made.has = judged.batch.wear.value();
    }
    return made;
}

// Of two fixing baths, what counts before set and age: the more worn goes first; second, the one
// that was it before, else the least worn.
enum class Pair { None, First, Second };

double pairKey(const Candidate& c, Pair pair, const std::vector<Judged>& judged)
{
    const double wear = judged[c.judged].batch.wear.value();
    switch (pair) {
    case Pair::First:
        return -wear;
    case Pair::Second:
        return c.pairedSecond ? -1 : wear;
    case Pair::None:
        break;
    }
    return 0;
}

// Best first: of the solution wanted, can before cannot, known to be clear, vouched for, as a pair
// of baths wants it, of the set, the oldest.
void rank(std::vector<Candidate>& candidates, const std::vector<Judged>& judged, Pair pair)
{
    const auto key = [&](const Candidate& c) {
        const bool discard = c.hindrance == Hindrance::Discard;
        return std::tuple(discard, c.elsewhere, c.otherSolution, !c.can(), !c.markedDissolved,
                          c.untested, pairKey(c, pair, judged), !c.sameSet,
                          judged[c.judged].batch.mixedAt);
    };
    std::stable_sort(candidates.begin(), candidates.end(),
                     [&](const Candidate& a, const Candidate& b) { return key(a) < key(b); });
}

// A bath that the run can do without is not proposed from a bottle that cannot fill the tank.
bool proposed(const Candidate& candidate, const BathChoice& choice, const Batch& batch)
{
    return candidate.hindrance != Hindrance::Discard && !candidate.elsewhere &&
           candidate.markedDissolved && !candidate.untested && !wornForOnce(batch, choice.need) &&
           (choice.need.required || candidate.hindrance != Hindrance::VolumeShort);
}

ChoiceReason whyOf(const Candidate& taken, std::ptrdiff_t able, Pair pair)
{
    if (!taken.can()) {
        return ChoiceReason::NoneCan;
    }
    if (pair == Pair::Second && taken.pairedSecond) {
        return ChoiceReason::SecondBefore;
    }
    if (able == 1) {
        return ChoiceReason::OnlyOne;
    }
    if (pair != Pair::None) {
        return pair == Pair::First ? ChoiceReason::MoreWorn : ChoiceReason::LeastWorn;
    }
    return taken.sameSet ? ChoiceReason::SameSet : ChoiceReason::OldestThatCan;
}

void take(BathChoice& choice, const std::vector<Judged>& judged, Pair pair)
{
    const auto& all = choice.candidates;
    for (std::size_t i = 0; i < all.size() && !choice.need.chosen.empty(); ++i) {
        const bool usable = all[i].hindrance != Hindrance::Discard || choice.need.evenToDiscard;
        if (judged[all[i].judged].batch.id == choice.need.chosen && usable) {
            choice.taken = i;
            choice.why = ChoiceReason::Chosen;
        }
    }
    for (std::size_t i = 0; i < all.size() && !choice.taken; ++i) {
        if (!proposed(all[i], choice, judged[all[i].judged].batch)) {
            continue;
        }
        const auto able = std::count_if(all.begin(), all.end(), [&](const Candidate& c) {
            return c.can() && c.otherSolution == all[i].otherSolution;
        });
        choice.taken = i;
        choice.why = whyOf(all[i], able, pair);
    }
    for (std::size_t i = 0; i < all.size() && choice.taken && !choice.next; ++i) {
        if (i != *choice.taken && all[i].can() && !all[i].elsewhere &&
            all[i].otherSolution == all[*choice.taken].otherSolution) {
            choice.next = i;
        }
    }
}

// What the other baths of the run mean for one.
struct Beside {
    const Batch* set = nullptr; ///< the bottle whose set is preferred
    Pair pair = Pair::None;
    std::string elsewhere = {};   ///< of a first bath: the one chosen for the second
    const Batch* first = nullptr; ///< of a second bath: the first, which cannot be both
};

// What another solution here is replenished with is no bath, though it does the same.
bool isReplenisher(const Batch& batch, const std::vector<Judged>& judged)
{
    return std::any_of(judged.begin(), judged.end(), [&](const Judged& one) {
        return one.batch.solution->replenisher == batch.solution->id;
    });
}

BathChoice choose(const BathNeed& need, Films load, const std::vector<Judged>& judged,
                  const Beside& beside)
{
    BathChoice choice{.need = need};
    for (std::size_t i = 0; i < judged.size(); ++i) {
        const Batch& batch = judged[i].batch;
        if (!batch.inUse() || batch.solution->role != need.role ||
            (beside.first && batch.id == beside.first->id) ||
            (isReplenisher(batch, judged) && batch.id != need.chosen)) {
            continue;
        }
        Candidate made = candidate(i, judged[i], need, load);
        made.sameSet = beside.set && mixedAsSet(batch, *beside.set);
        made.elsewhere = batch.id == beside.elsewhere;
        made.pairedSecond = beside.first && goesBefore(*beside.first, batch);
        choice.candidates.push_back(made);
    }
    rank(choice.candidates, judged, beside.pair);
    take(choice, judged, beside.pair);
    return choice;
}

const Batch* takenBatch(const BathChoice* choice, const std::vector<Judged>& judged)
{
    return choice && choice->taken ? &judged[choice->candidates[*choice->taken].judged].batch
                                   : nullptr;
}

// No bottle was taken: that there is none, or what keeps the one there is from being proposed.
void addMissing(RunPlan& plan, const BathChoice& choice)
{
    const Role role = choice.need.role;
    const auto& all = choice.candidates;
    const auto held = std::find_if(all.begin(), all.end(), [](const Candidate& c) {
        return c.can() && (!c.markedDissolved || c.untested);
    });
    if (held != all.end() && held->untested) {
        plan.problems.push_back({.code = PlanProblemCode::TestFirst,
                                 .role = role,
                                 .judged = held->judged,
                                 .reason = ReasonCode::HistoryUnknown,
                                 .noBottle = choice.need.required,
                                 .second = choice.need.second});
    } else if (held != all.end()) {
        plan.problems.push_back({.code = PlanProblemCode::NotMarkedDissolved,
                                 .role = role,
                                 .judged = held->judged,
                                 .noBottle = choice.need.required,
                                 .second = choice.need.second});
    } else if (choice.need.second) {
        plan.problems.push_back(
            {.code = PlanProblemCode::NoSecondBath, .role = role, .second = true});
    } else if (choice.need.required) {
        plan.problems.push_back({.code = PlanProblemCode::NoBottle, .role = role});
    } else if (!all.empty() && all.front().hindrance == Hindrance::VolumeShort) {
        plan.problems.push_back({.code = PlanProblemCode::LeftOut,
                                 .role = role,
                                 .judged = all.front().judged,
                                 .number = all.front().needs,
                                 .limit = all.front().has});
    }
}

void addProblems(RunPlan& plan, const BathChoice& choice, const std::vector<Judged>& judged,
                 Films load)
{
    if (!choice.taken) {
        addMissing(plan, choice);
        return;
    }
    const Candidate& taken = choice.candidates[*choice.taken];
    const Judged& bottle = judged[taken.judged];
    const auto add = [&](PlanProblemCode code, double number = 0, double limit = 0) {
        plan.problems.push_back({.code = code,
                                 .role = choice.need.role,
                                 .judged = taken.judged,
                                 .number = number,
                                 .limit = limit,
                                 .second = choice.need.second});
    };
    const auto addReasons = [&](PlanProblemCode code, Verdict verdict) {
        for (const Reason& reason : bottle.assessment.reasons) {
            if (verdictOf(reason.code) == verdict) {
                add(code);
                plan.problems.back().reason = reason.code;
            }
        }
    };
    if (bottle.batch.volume < choice.need.volume) {
        add(PlanProblemCode::VolumeShort, choice.need.volume.value(), bottle.batch.volume.value());
    } else if (const auto left = tooMuchFor(bottle, choice.need, load)) {
        add(PlanProblemCode::CapacityShort, feltOf(load, choice.need.second).value(),
            left->value());
    }
    if (bottle.assessment.verdict == Verdict::Discard) {
        addReasons(PlanProblemCode::Discard, Verdict::Discard);
    }
    if (bottle.assessment.verdict == Verdict::TestFirst) {
        addReasons(PlanProblemCode::TestFirst, Verdict::TestFirst);
    }
    if (!taken.markedDissolved) {
        add(PlanProblemCode::NotMarkedDissolved);
    }
    if (wornForOnce(bottle.batch, choice.need)) {
        add(PlanProblemCode::Worn, bottle.batch.wear.value());
    }
}

} // namespace

bool proposable(const Judged& judged)
{
    return judged.assessment.verdict != Verdict::Discard && knownClear(judged.batch) &&
           !asksForHistory(judged.assessment);
}

std::string_view code(ChoiceReason reason)
{
    return kChoiceCodes[static_cast<std::size_t>(reason)];
}

bool mixedAsSet(const Batch& a, const Batch& b)
{
    return std::abs(chemistry::daysBetween(a.mixedAt, b.mixedAt).value()) <= 1;
}

Millilitres stockNeeded(Millilitres volume, double parts) { return volume / (parts + 1); }

bool PlanProblem::blocks() const
{
    return code == PlanProblemCode::NoBottle || code == PlanProblemCode::VolumeShort || noBottle;
}

const BathChoice* RunPlan::bath(BathPlace place) const
{
    const auto found = std::find_if(baths.begin(), baths.end(),
                                    [&](const BathChoice& b) { return b.need.place() == place; });
    return found == baths.end() ? nullptr : &*found;
}

bool RunPlan::blocked() const
{
    return std::any_of(problems.begin(), problems.end(),
                       [](const PlanProblem& p) { return p.blocks(); });
}

bool RunPlan::has(PlanProblemCode code) const
{
    return std::any_of(problems.begin(), problems.end(),
                       [&](const PlanProblem& p) { return p.code == code; });
}

RunPlan planRun(const PlanRequest& request, const std::vector<Judged>& judged)
{
    RunPlan plan;
    const Films load = request.load.units();
    const auto needOf = [&](BathPlace place) -> const BathNeed* {
        const auto found = std::find_if(request.needs.begin(), request.needs.end(),
                                        [&](const BathNeed& n) { return n.place() == place; });
        return found == request.needs.end() ? nullptr : &*found;
    };
    // The developer leads; only a fixer that the user insists on turns that round.
    const BathNeed* fixer = needOf(Role::Fixer);
    const BathNeed* second = needOf({Role::Fixer, true});
    std::optional<BathChoice> leading;
    if (fixer && !fixer->chosen.empty()) {
        leading = choose(*fixer, load, judged, {});
    }
    const Batch* partner = takenBatch(leading ? &*leading : nullptr, judged);
    for (const BathNeed& need : request.needs) {
        if (need.role == Role::Developer) {
            plan.baths.push_back(choose(need, load, judged, {.set = partner}));
        }
    }
    const Batch* developer = takenBatch(plan.bath(Role::Developer), judged);
    for (const BathNeed& need : request.needs) {
        if (need.role == Role::Developer) {
            continue;
        }
        Beside beside;
        if (need.second) {
            beside.pair = Pair::Second;
            beside.first = takenBatch(plan.bath(need.role), judged);
        } else if (need.role == Role::Fixer) {
            beside.set = developer;
            beside.pair = second ? Pair::First : Pair::None;
            beside.elsewhere = second ? second->chosen : std::string();
        }
        plan.baths.push_back(choose(need, load, judged, beside));
    }
    for (const BathChoice& choice : plan.baths) {
        addProblems(plan, choice, judged, load);
    }
    if (const auto due = fixer ? exchangeDue(judged) : std::nullopt) {
        plan.problems.push_back({.code = PlanProblemCode::ExchangeDue,
                                 .role = Role::Fixer,
                                 .judged = due->first,
                                 .other = due->second});
    }
    if (request.tank) {
        for (const TankFinding& finding : findings(*request.tank, request.load)) {
            plan.problems.push_back({.code = PlanProblemCode::Tank, .finding = finding});
        }
    }
    std::stable_sort(plan.problems.begin(), plan.problems.end(),
                     [](const PlanProblem& a, const PlanProblem& b) { return a.code < b.code; });
    if (plan.has(PlanProblemCode::CapacityShort) || plan.has(PlanProblemCode::Tank)) {
        plan.split = splitLoad(request, judged);
    }
    return plan;
}

} // namespace ullage::ledger
