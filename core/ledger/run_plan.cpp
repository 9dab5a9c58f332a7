#include "core/ledger/run_plan.h"

#include "core/chemistry/films.h"
#include "core/ledger/run_split.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

using chemistry::Films;
using chemistry::Millilitres;
using formulary::Role;

bool knownClear(const Batch& batch) { return batch.dissolved || !batch.loads.empty(); }

namespace
{

// A bottle that has done film is clear, whatever was or was not written down.
Candidate candidate(std::size_t index, const Judged& judged, const BathNeed& need, Films load)
{
    Candidate made{.judged = index, .markedDissolved = knownClear(judged.batch)};
    const auto left = filmsItCanDo(judged, need);
    if (judged.assessment.verdict == Verdict::Discard) {
        made.hindrance = Hindrance::Discard;
    } else if (judged.batch.volume < need.volume) {
        made.hindrance = Hindrance::VolumeShort;
        made.has = judged.batch.volume.value();
        made.needs = need.volume.value();
    } else if (left && load > *left + Films(chemistry::kFilmSlack)) {
        made.hindrance = Hindrance::CapacityShort;
        made.has = left->value();
        made.needs = load.value();
    }
    return made;
}

// Best first: can before cannot, known to be clear, of the set, then the oldest.
void rank(std::vector<Candidate>& candidates, const std::vector<Judged>& judged)
{
    const auto key = [&](const Candidate& c) {
        const bool discard = c.hindrance == Hindrance::Discard;
        return std::tuple(discard, !c.can(), !c.markedDissolved, !c.sameSet,
                          judged[c.judged].batch.mixedAt);
    };
    std::stable_sort(candidates.begin(), candidates.end(),
                     [&](const Candidate& a, const Candidate& b) { return key(a) < key(b); });
}

void take(BathChoice& choice, const std::vector<Judged>& judged)
{
    const auto& all = choice.candidates;
    const auto usable = [](const Candidate& c) { return c.hindrance != Hindrance::Discard; };
    // A bath that the run can do without is not proposed from a bottle that cannot fill the tank.
    const auto proposed = [&](const Candidate& c) {
        return usable(c) && (choice.need.required || c.hindrance != Hindrance::VolumeShort);
    };
    const auto able = std::count_if(all.begin(), all.end(), [](const auto& c) { return c.can(); });
    for (std::size_t i = 0; i < all.size() && !choice.need.chosen.empty(); ++i) {
        if (judged[all[i].judged].batch.id == choice.need.chosen && usable(all[i])) {
            choice.taken = i;
            choice.why = ChoiceReason::Chosen;
        }
    }
    if (!choice.taken && !all.empty() && proposed(all.front())) {
        choice.taken = 0;
        choice.why = !all.front().can()    ? ChoiceReason::NoneCan
                     : able == 1           ? ChoiceReason::OnlyOne
                     : all.front().sameSet ? ChoiceReason::SameSet
                                           : ChoiceReason::OldestThatCan;
    }
    for (std::size_t i = 0; i < all.size() && choice.taken && !choice.next; ++i) {
        if (i != *choice.taken && all[i].can()) {
            choice.next = i;
        }
    }
}

BathChoice choose(const BathNeed& need, Films load, const std::vector<Judged>& judged,
                  const Batch* partner)
{
    BathChoice choice{.need = need};
    for (std::size_t i = 0; i < judged.size(); ++i) {
        const Batch& batch = judged[i].batch;
        if (batch.inUse() && batch.solution->role == need.role) {
            choice.candidates.push_back(candidate(i, judged[i], need, load));
            choice.candidates.back().sameSet = partner && mixedAsSet(batch, *partner);
        }
    }
    rank(choice.candidates, judged);
    take(choice, judged);
    return choice;
}

const Batch* takenBatch(const BathChoice* choice, const std::vector<Judged>& judged)
{
    return choice && choice->taken ? &judged[choice->candidates[*choice->taken].judged].batch
                                   : nullptr;
}

void addProblems(RunPlan& plan, const BathChoice& choice, const std::vector<Judged>& judged)
{
    const Role role = choice.need.role;
    if (!choice.taken) {
        if (choice.need.required) {
            plan.problems.push_back({.code = PlanProblemCode::NoBottle, .role = role});
        } else if (!choice.candidates.empty() &&
                   choice.candidates.front().hindrance == Hindrance::VolumeShort) {
            const Candidate& tooLittle = choice.candidates.front();
            plan.problems.push_back({.code = PlanProblemCode::LeftOut,
                                     .role = role,
                                     .judged = tooLittle.judged,
                                     .number = tooLittle.needs,
                                     .limit = tooLittle.has});
        }
        return;
    }
    const Candidate& taken = choice.candidates[*choice.taken];
    const auto add = [&](PlanProblemCode code, double number = 0, double limit = 0) {
        plan.problems.push_back(
            {.code = code, .role = role, .judged = taken.judged, .number = number, .limit = limit});
    };
    if (taken.hindrance == Hindrance::VolumeShort) {
        add(PlanProblemCode::VolumeShort, taken.needs, taken.has);
    } else if (taken.hindrance == Hindrance::CapacityShort) {
        add(PlanProblemCode::CapacityShort, taken.needs, taken.has);
    }
    if (judged[taken.judged].assessment.verdict == Verdict::TestFirst) {
        for (const Reason& reason : judged[taken.judged].assessment.reasons) {
            if (verdictOf(reason.code) == Verdict::TestFirst) {
                add(PlanProblemCode::TestFirst);
                plan.problems.back().reason = reason.code;
            }
        }
    }
    if (!taken.markedDissolved) {
        add(PlanProblemCode::NotMarkedDissolved);
    }
}

} // namespace

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
    return code == PlanProblemCode::NoBottle || code == PlanProblemCode::VolumeShort;
}

const BathChoice* RunPlan::bath(Role role) const
{
    const auto found = std::find_if(baths.begin(), baths.end(),
                                    [&](const BathChoice& b) { return b.need.role == role; });
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
    const auto byRole = [&](Role role) -> const BathNeed* {
        const auto found = std::find_if(request.needs.begin(), request.needs.end(),
                                        [&](const BathNeed& n) { return n.role == role; });
        return found == request.needs.end() ? nullptr : &*found;
    };
    // The developer leads; only a fixer that the user insists on turns that round.
    const BathNeed* fixer = byRole(Role::Fixer);
    std::optional<BathChoice> leading;
    if (fixer && !fixer->chosen.empty()) {
        leading = choose(*fixer, load, judged, nullptr);
    }
    const Batch* partner = takenBatch(leading ? &*leading : nullptr, judged);
    for (const BathNeed& need : request.needs) {
        if (need.role == Role::Developer) {
            plan.baths.push_back(choose(need, load, judged, partner));
        }
    }
    const Batch* developer = takenBatch(plan.bath(Role::Developer), judged);
    for (const BathNeed& need : request.needs) {
        if (need.role != Role::Developer) {
            plan.baths.push_back(
                choose(need, load, judged, need.role == Role::Fixer ? developer : nullptr));
        }
    }
    for (const BathChoice& choice : plan.baths) {
        addProblems(plan, choice, judged);
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
