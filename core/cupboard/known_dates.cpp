#include "core/cupboard/known_dates.h"

#include "core/cupboard/recurrence.h"
#include "core/ledger/verdict.h"

namespace ullage::cupboard
{

namespace
{

KnownDate date(DateKind kind, const char* what, const std::string& of, chemistry::Instant at)
{
    KnownDate made;
    made.kind = kind;
    made.key = std::string(what) + '-' + of;
    made.of = of;
    made.at = at;
    return made;
}

} // namespace

DateKinds everyDateKind()
{
    DateKinds kinds;
    for (std::size_t i = 0; i < kDateKindCodes.size(); ++i) {
        kinds.insert(static_cast<DateKind>(i));
    }
    return kinds;
}

std::vector<KnownDate> knownDates(const std::vector<ledger::Batch>& batches, const Plan& plan,
                                  const ledger::CupboardState& cupboard)
{
    std::vector<KnownDate> found;
    for (const ledger::Batch& batch : batches) {
        const auto discardBy = batch.inUse() ? ledger::assess(batch).discardBy : std::nullopt;
        if (discardBy) {
            found.push_back(date(DateKind::DiscardBy, "discard", batch.id, *discardBy));
        }
    }
    for (const ledger::Batch& batch : batches) {
        if (batch.inUse() && batch.solution->role == formulary::Role::Fixer) {
            const auto last = batch.testMarks.empty() ? batch.madeAt : batch.testMarks.back().at;
            found.push_back(date(DateKind::TestDue, "test", batch.id,
                                 chemistry::addDays(last, ledger::kClearingTestEvery)));
        }
    }
    for (const SolutionPlan& solution : plan.solutions) {
        int number = 0;
        for (const Stretch& stretch : solution.stretches) {
            if (stretch.kind == StretchKind::Mix) {
                auto made = date(DateKind::MixBy, "mix", solution.solution, stretch.from);
                made.key += '-' + std::to_string(++number);
                found.push_back(std::move(made));
            }
        }
    }
    for (const ToBuy& toBuy : plan.toBuy) {
        auto made = date(DateKind::BuyBy, "buy", toBuy.solution, toBuy.by);
        made.packets = toBuy.packets;
        found.push_back(std::move(made));
    }
    for (const ledger::Work& work : cupboard.works) {
        auto made = date(DateKind::Work, "work", work.id, work.at);
        const auto first = cupboard.firstIds.find(work.id);
        made.key = "work-" + (first == cupboard.firstIds.end() ? work.id : first->second);
        made.films = work.films;
        if (readRule(work.rule)) {
            made.rule = work.rule;
        }
        found.push_back(std::move(made));
    }
    return found;
}

} // namespace ullage::cupboard
