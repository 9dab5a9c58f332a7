#include "core/ledger/import_judge.h"

#include "core/ledger/line_description.h"

#include <algorithm>
#include <unordered_set>

namespace ullage::ledger
{

namespace
{

// Of how many events it is tried whether the rest would go without them: enough for every bottle
// that people keep, and a bound for a journal made to be slow.
constexpr int kMostTried = 64;
constexpr std::size_t kMostExplained = 200; // misfits of one batch

struct Stop {
    std::size_t event; ///< place of the one that did not fit
    Error error;
};

class Judging
{
public:
    Judging(const std::vector<Event>& entered, std::size_t had,
            const formulary::Formulary& formulary, const std::set<std::string>& gone)
        : m_entered(&entered), m_had(had), m_formulary(&formulary), m_gone(&gone),
          m_out(entered.size(), false)
    {
    }

    BatchJudgement judged()
    {
        takingsBack();
        if (!mixed()) {
            neverMixed({.code = ErrorCode::UnknownId,
                        .field = "batch",
                        .text = m_entered->front().batch,
                        .subject = m_entered->front().batch});
            return std::move(m_result);
        }
        while (!fold()) {
        }
        return std::move(m_result);
    }

private:
    [[nodiscard]] bool brought(std::size_t place) const { return place >= m_had; }
    [[nodiscard]] bool isMixing(std::size_t place) const
    {
        return std::holds_alternative<Mixed>((*m_entered)[place].what);
    }

    void unfit(std::size_t place, Error error, std::optional<std::size_t> against = {})
    {
        m_out[place] = true;
        m_result.misfits.push_back({place, against, std::move(error), 0});
    }

    // An event that was taken back already; both books may have done it.
    void takingsBack()
    {
        std::unordered_set<std::string> named;
        for (std::size_t i = 0; i < m_entered->size(); ++i) {
            const auto* voided = std::get_if<Voided>(&(*m_entered)[i].what);
            if (!voided || named.insert(voided->voids).second || !brought(i)) {
                continue;
            }
            std::vector<Event> before;
            std::optional<std::size_t> other;
            for (std::size_t j = 0; j < i; ++j) {
                if (m_out[j]) {
                    continue;
                }
                before.push_back((*m_entered)[j]);
                const auto* earlier = std::get_if<Voided>(&before.back().what);
                if (earlier && earlier->voids == voided->voids) {
                    other = j;
                }
            }
            if (takenBack(before).contains(voided->voids)) {
                unfit(i,
                      {.code = ErrorCode::AlreadyVoided, .field = "voids", .text = voided->voids},
                      other);
            }
        }
    }

    [[nodiscard]] bool mixed() const
    {
        for (std::size_t i = 0; i < m_entered->size(); ++i) {
            if (!m_out[i] && isMixing(i)) {
                return true;
            }
        }
        return false;
    }

    // Nothing can be said of any event: the first stands for all.
    void neverMixed(Error error)
    {
        int others = -1;
        std::optional<std::size_t> first;
        for (std::size_t i = m_had; i < m_entered->size(); ++i) {
            if (!m_out[i]) {
                ++others;
                first = first.value_or(i);
            }
        }
        if (first) {
            unfit(*first, std::move(error));
            m_result.misfits.back().waiting = others;
        }
    }

    // Places of the events that happened but for those left `out`, by time and order of entry.
    [[nodiscard]] std::vector<std::size_t> live(const std::vector<bool>& out) const
    {
        std::unordered_set<std::string> voided;
        for (std::size_t i = m_entered->size(); i-- > 0;) {
            const Event& event = (*m_entered)[i];
            const auto* taking = std::get_if<Voided>(&event.what);
            if (taking && !out[i] && !voided.contains(event.id)) {
                voided.insert(taking->voids);
            }
        }
        auto left = out;
        for (std::size_t i = 0; i < m_entered->size(); ++i) {
            const Event& event = (*m_entered)[i];
            left[i] = out[i] || subjectOf(event) != Subject::Batch || voided.contains(event.id) ||
                      m_gone->contains(event.id);
        }
        return inTurn(*m_entered, left);
    }

    // Folds what is not unfit. A brought event that does not fit is passed over; where one of ours
    // no longer fits, a brought one goes and all begins anew: false then.
    bool fold()
    {
        Fold fold(*m_formulary, {}, FoldDepth::Volumes);
        for (const std::size_t place : live(m_out)) {
            const auto fine = fold.apply((*m_entered)[place]);
            if (fine) {
                continue;
            }
            if (!brought(place)) {
                return ourOwn({place, fine.error()});
            }
            if (isMixing(place) && fine.error().code != ErrorCode::AlreadyMixed && lastMixing()) {
                onlyMixing({place, fine.error()});
                return true;
            }
            unfit(place, fine.error(), against({place, fine.error()}));
        }
        if (fold.started()) {
            m_result.state = fold.batch();
        }
        return true;
    }

    // Whether no more than one mixing is left.
    [[nodiscard]] bool lastMixing() const
    {
        int mixings = 0;
        for (std::size_t i = 0; i < m_entered->size(); ++i) {
            mixings += !m_out[i] && isMixing(i) ? 1 : 0;
        }
        return mixings < 2;
    }

    // One of ours does not fit since something was brought: what was brought is at fault. True if
    // nothing more can be said.
    bool ourOwn(const Stop& stop)
    {
        const auto culprit = cause(stop.event, true);
        if (!culprit) {
            neverMixed(stop.error); // what was there does not go together by itself
            return true;
        }
        Error error = stop.error;
        if (std::holds_alternative<Voided>((*m_entered)[*culprit].what)) {
            error.code = ErrorCode::CannotVoid;
            error.field = "voids";
        }
        unfit(*culprit, std::move(error), stop.event);
        return false;
    }

    // Whether the fold gets past `place` without `other`.
    [[nodiscard]] bool goesWithout(std::size_t place, std::size_t other) const
    {
        auto out = m_out;
        out[other] = true;
        Fold fold(*m_formulary, {}, FoldDepth::Volumes);
        for (const std::size_t next : live(out)) {
            const bool fine = fold.apply((*m_entered)[next]).has_value();
            if (next == place || !fine) {
                return fine && next == place;
            }
        }
        return false;
    }

    // The latest of our (or of the brought) events without which the one at `place` would fit. For
    // want of one, the latest brought event; a taking back counts as later than all.
    [[nodiscard]] std::optional<std::size_t> cause(std::size_t place, bool amongBrought) const
    {
        std::vector<std::size_t> candidates;
        for (std::size_t i = m_entered->size(); i-- > m_had && amongBrought;) {
            if (!m_out[i] && std::holds_alternative<Voided>((*m_entered)[i].what)) {
                candidates.push_back(i);
            }
        }
        const auto places = live(m_out);
        const auto end = std::find(places.begin(), places.end(), place);
        for (auto next = std::make_reverse_iterator(end); next != places.rend(); ++next) {
            if (brought(*next) == amongBrought && (amongBrought || !isMixing(*next))) {
                candidates.push_back(*next);
            }
        }
        int tried = 0;
        for (const std::size_t candidate : candidates) {
            if (++tried > kMostTried || m_result.misfits.size() > kMostExplained) {
                break;
            }
            if (goesWithout(place, candidate)) {
                return candidate;
            }
        }
        return amongBrought && !candidates.empty() ? std::optional(candidates.front())
                                                   : std::nullopt;
    }

    // The only mixing cannot be: what happened to its batch waits for it.
    void onlyMixing(const Stop& stop)
    {
        unfit(stop.event, stop.error);
        m_result.misfits.back().waiting = static_cast<int>(
            std::count(m_out.begin() + static_cast<std::ptrdiff_t>(m_had), m_out.end(), false));
    }

    [[nodiscard]] std::optional<std::size_t> against(const Stop& stop) const
    {
        switch (stop.error.code) {
        case ErrorCode::AlreadyMixed:
        case ErrorCode::BeforeMixing:
            for (const std::size_t place : live(m_out)) {
                if (isMixing(place)) {
                    return place;
                }
            }
            return std::nullopt;
        case ErrorCode::AfterEnd:
        case ErrorCode::NotEnough:
        case ErrorCode::TooMuch: {
            if (const auto ours = cause(stop.event, false)) {
                return ours;
            }
            const auto theirs = cause(stop.event, true);
            return theirs && goesWithout(stop.event, *theirs) ? theirs : std::nullopt;
        }
        default:
            return std::nullopt;
        }
    }

    const std::vector<Event>* m_entered;
    std::size_t m_had;
    const formulary::Formulary* m_formulary;
    const std::set<std::string>* m_gone;
    std::vector<bool> m_out; ///< unfit so far
    BatchJudgement m_result;
};

} // namespace

BatchJudgement judgeBrought(const std::vector<Event>& entered, std::size_t had,
                            const formulary::Formulary& formulary,
                            const std::set<std::string>& gone)
{
    return Judging(entered, had, formulary, gone).judged();
}

} // namespace ullage::ledger
