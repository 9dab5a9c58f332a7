#include "core/ledger/two_baths.h"

#include <algorithm>

namespace ullage::ledger
{

using formulary::Role;

namespace
{

bool asSecond(const LoadDone& load) { return load.felt < load.units; }

bool fixerInUse(const Batch& batch) { return batch.inUse() && batch.solution->role == Role::Fixer; }

} // namespace

bool isSecondBath(const Batch& batch)
{
    return !batch.loads.empty() && asSecond(batch.loads.back());
}

bool goesBefore(const Batch& first, const Batch& second)
{
    if (isSecondBath(first) || !isSecondBath(second)) {
        return false;
    }
    return std::any_of(first.loads.begin(), first.loads.end(), [&](const LoadDone& one) {
        return !asSecond(one) &&
               std::any_of(second.loads.begin(), second.loads.end(), [&](const LoadDone& other) {
                   return asSecond(other) && other.at == one.at;
               });
    });
}

std::optional<std::size_t> secondBathAfter(const Batch& first,
                                           const std::vector<const Batch*>& batches)
{
    if (first.solution->role != Role::Fixer || isSecondBath(first)) {
        return std::nullopt;
    }
    std::optional<std::size_t> free;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        const Batch& batch = *batches[i];
        if (!fixerInUse(batch) || batch.id == first.id || !isSecondBath(batch)) {
            continue;
        }
        if (goesBefore(first, batch)) {
            return i;
        }
        const bool anothers = std::any_of(batches.begin(), batches.end(), [&](const Batch* other) {
            return fixerInUse(*other) && goesBefore(*other, batch);
        });
        if (!anothers && batch.solution->id == first.solution->id) {
            free = free.value_or(i);
        }
    }
    return free;
}

std::optional<ExchangeDue> exchangeDue(const std::vector<Judged>& judged)
{
    std::vector<const Batch*> batches;
    for (const Judged& one : judged) {
        batches.push_back(&one.batch);
    }
    for (std::size_t i = 0; i < judged.size(); ++i) {
        const auto& clearing = judged[i].assessment.clearing;
        if (!fixerInUse(*batches[i]) || !clearing || !clearing->doubled) {
            continue;
        }
        if (const auto second = secondBathAfter(*batches[i], batches)) {
            return ExchangeDue{i, *second};
        }
    }
    return std::nullopt;
}

} // namespace ullage::ledger
