#include "core/ledger/consequences.h"

#include "core/ledger/fold_together.h"
#include "core/ledger/named_error.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

constexpr chemistry::Days kFuture{1}; // clocks differ; the journal allows a day

// Everything must fit, also what lies after `now`.
Result<std::optional<Outlook>> outlook(const std::string& id, const std::vector<Event>& entered,
                                       Instant now, const formulary::Formulary& formulary)
{
    FoldTogether whole(formulary);
    if (auto fine = whole.applyAll(entered); !fine) {
        return tl::unexpected(fine.error());
    }
    auto batch = foldTogether(id, entered, now, formulary);
    if (!batch) {
        return tl::unexpected(batch.error());
    }
    if (!*batch) {
        return std::nullopt;
    }
    Assessment so = assess(**batch);
    return Outlook{std::move(**batch), std::move(so)};
}

Result<void> checkExtra(const std::vector<Event>& extra, Instant now)
{
    for (const Event& event : extra) {
        if (auto fine = checkFields(event); !fine) {
            return fine;
        }
        const auto ahead = chemistry::daysBetween(now, event.at);
        if (ahead > kFuture) {
            return refuse({.code = ErrorCode::InFuture,
                           .field = "at",
                           .number = ahead.value(),
                           .high = kFuture.value(),
                           .unit = "days"});
        }
    }
    return {};
}

} // namespace

Result<Consequences> consequencesOf(const std::string& batch, const std::vector<Event>& entered,
                                    const std::vector<Event>& extra, Instant now,
                                    const formulary::Formulary& formulary)
{
    if (auto fine = checkExtra(extra, now); !fine) {
        return tl::unexpected(fine.error());
    }
    auto before = outlook(batch, entered, now, formulary);
    if (!before) {
        return tl::unexpected(before.error());
    }
    std::vector<Event> all = entered;
    all.insert(all.end(), extra.begin(), extra.end());
    auto after = outlook(batch, all, now, formulary);
    if (!after) {
        Error error = withName(after.error(), all);
        const auto taking = std::find_if(extra.begin(), extra.end(), [](const Event& event) {
            return std::holds_alternative<Voided>(event.what);
        });
        const auto misfit = firstNotFitting(all, formulary);
        const bool isNew =
            misfit && std::any_of(extra.begin(), extra.end(),
                                  [&](const Event& event) { return event.id == misfit->event.id; });
        if (taking != extra.end() && !isNew) {
            error.code = ErrorCode::CannotVoid;
            error.field = "voids";
            error.text = std::get<Voided>(taking->what).voids;
        }
        return refuse(std::move(error));
    }
    return Consequences{std::move(*before), std::move(*after)};
}

std::optional<DoesNotFit> firstNotFitting(const std::vector<Event>& entered,
                                          const formulary::Formulary& formulary)
{
    FoldTogether folds(formulary);
    for (const Event& event : happened(entered)) {
        if (auto fine = folds.apply(event); !fine) {
            return DoesNotFit{event, fine.error()};
        }
    }
    return std::nullopt;
}

} // namespace ullage::ledger
