#include "core/ledger/film_trace.h"

#include "core/ledger/fold_together.h"

#include <algorithm>

namespace ullage::ledger
{

const FilmBath* FilmTrace::bath(formulary::Role role) const
{
    const auto found = std::find_if(baths.begin(), baths.end(), [&](const FilmBath& bath) {
        return bath.before.batch.solution->role == role;
    });
    return found == baths.end() ? nullptr : &*found;
}

Result<std::map<std::string, Outlook>> outlooksBefore(const std::vector<Event>& entered,
                                                      const std::set<std::string>& events,
                                                      const formulary::Formulary& formulary)
{
    std::map<std::string, Outlook> found;
    FoldTogether folds(formulary);
    for (const Event& event : happened(entered)) {
        const Fold* fold = events.contains(event.id) ? folds.of(event.batch) : nullptr;
        if (fold) {
            Batch batch = fold->at(event.at);
            Assessment assessment = assess(batch);
            found.emplace(event.id, Outlook{std::move(batch), std::move(assessment)});
        }
        if (auto fine = folds.apply(event); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return found;
}

std::optional<RunTimes> timesOfRun(const std::vector<Event>& entered, const std::string& run)
{
    const auto taken = takenBack(entered);
    for (const Event& event : entered) {
        const auto* note = std::get_if<Noted>(&event.what);
        if (note && note->times && note->times->run == run && !taken.contains(event.id)) {
            return note->times;
        }
    }
    return std::nullopt;
}

} // namespace ullage::ledger
