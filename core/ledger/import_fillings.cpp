// Fillings that were brought in: what one bottle's events alone cannot show.
#include "core/ledger/fillings.h"
#include "core/ledger/fold_together.h"
#include "core/ledger/import_judge.h"

#include <algorithm>

namespace ullage::ledger
{

namespace
{

class Fillings
{
public:
    Fillings(const std::vector<Event>& all, const formulary::Formulary& formulary)
        : m_all(&all), m_formulary(&formulary), m_folds(formulary, {}, FoldDepth::Volumes)
    {
        // An event that cannot be is told where its batch is judged; the rest goes on without it.
        for (const Event& event : happened(all)) {
            if (std::holds_alternative<Mixed>(event.what)) {
                m_mixed.emplace(event.batch, event);
            }
            (void)m_folds.apply(event);
        }
    }

    /// What is wrong with the other bottle of this filling, if anything.
    [[nodiscard]] std::optional<Error> wrong(const Event& event, const FillingHalf& half) const
    {
        if (half.donor == half.heir) {
            return error(ErrorCode::Conflict, half, kOtherBottleForm);
        }
        const Event* other = mixingOf(half.other());
        const Event* here = mixingOf(event.batch);
        if (!other) {
            return error(anyMixing(half.other()) ? ErrorCode::BeforeMixing : ErrorCode::UnknownId,
                         half);
        }
        if (here && !alike(event, *here, *other)) {
            return error(ErrorCode::Conflict, half,
                         std::holds_alternative<Mixed>(event.what) ? kSameSolutionForm
                                                                   : kSameKindForm);
        }
        if (!mixedBy(event, half, *other)) {
            return error(ErrorCode::BeforeMixing, half);
        }
        const Fold* fold = m_folds.of(half.other());
        if (fold && goneBy(event, half, fold->batch())) {
            return error(ErrorCode::AfterEnd, half);
        }
        return std::nullopt;
    }

private:
    [[nodiscard]] const Event* mixingOf(const std::string& batch) const
    {
        const auto found = m_mixed.find(batch);
        return found == m_mixed.end() ? nullptr : &found->second;
    }

    [[nodiscard]] bool anyMixing(const std::string& batch) const
    {
        return std::any_of(m_all->begin(), m_all->end(), [&](const Event& event) {
            return event.batch == batch && std::holds_alternative<Mixed>(event.what);
        });
    }

    [[nodiscard]] bool alike(const Event& event, const Event& here, const Event& there) const
    {
        const std::string& mine = std::get<Mixed>(here.what).solution;
        const std::string& theirs = std::get<Mixed>(there.what).solution;
        if (std::holds_alternative<Mixed>(event.what)) {
            return mine == theirs;
        }
        const auto one = m_formulary->solution(mine);
        const auto other = m_formulary->solution(theirs);
        return !one || !other || one->role == other->role; // unknown ones are told elsewhere
    }

    // What is drawn into may be mixed at the same instant, by an event that follows.
    static bool mixedBy(const Event& event, const FillingHalf& half, const Event& mixing)
    {
        return mixing.at < event.at ||
               (mixing.at == event.at && (half.drawn || mixing.entry < event.entry));
    }

    // The drawing of a filling never ends its donor before that filling.
    static bool goneBy(const Event& event, const FillingHalf& half, const Batch& other)
    {
        if (!other.endedAt || *other.endedAt > event.at) {
            return false;
        }
        if (*other.endedAt < event.at) {
            return true;
        }
        const bool drawnEmpty = !half.drawn && other.end == BatchEnd::UsedUp;
        return !drawnEmpty && other.endedBy < event.entry;
    }

    static Error error(ErrorCode code, const FillingHalf& half, const char* allowed = "")
    {
        return {.code = code,
                .field = half.field(),
                .text = half.other(),
                .allowed = allowed,
                .subject = half.other()};
    }

    const std::vector<Event>* m_all;
    const formulary::Formulary* m_formulary;
    FoldTogether m_folds;
    std::map<std::string, Event> m_mixed;
};

} // namespace

std::vector<Misfit> judgeFillings(const std::string& batch, const std::vector<Event>& all,
                                  std::int64_t had, bool pairs,
                                  const formulary::Formulary& formulary)
{
    const auto taken = takenBack(all);
    const Pairing pairing = pairHalves(all, taken);
    const auto isIn = [](const std::vector<std::size_t>& places, std::size_t place) {
        return std::binary_search(places.begin(), places.end(), place);
    };
    const Fillings fillings(all, formulary);
    std::vector<Misfit> misfits;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto half = halfOf(all[i]);
        if (!half || all[i].batch != batch || all[i].entry <= had || taken.contains(all[i].id) ||
            isIn(pairing.gone, i)) {
            continue;
        }
        auto error = fillings.wrong(all[i], *half);
        if (!error && pairs && isIn(pairing.lone, i)) {
            error = Error{.code = ErrorCode::Conflict,
                          .field = half->field(),
                          .text = half->other(),
                          .allowed = kOtherHalfForm,
                          .subject = half->other()};
        }
        // A batch of which there is nothing at all is told where names are looked up.
        if (error && error->code != ErrorCode::UnknownId) {
            misfits.push_back({i, std::nullopt, std::move(*error), 0});
        }
    }
    return misfits;
}

} // namespace ullage::ledger
