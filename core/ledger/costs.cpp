#include "core/ledger/costs.h"

#include "core/ledger/batch.h"
#include "core/ledger/fillings.h"
#include "core/ledger/fold_together.h"

#include <algorithm>
#include <numeric>
#include <unordered_set>

namespace ullage::ledger
{

using chemistry::Instant;
using chemistry::Millilitres;

namespace
{

// What is in the books of one bottle.
struct Account {
    Money got;      ///< from the cupboard and from other bottles
    Money passedOn; ///< into other bottles
    Money inside;   ///< of what it got, what is still in the bottle: measures what is poured
    bool whole = true;
    std::size_t next = 0; ///< of its charges

    void take(const Cost& cost)
    {
        got += cost.money;
        inside += cost.money;
        whole = whole && cost.whole;
    }
    /// Part of what is in it goes into another.
    void pourInto(Account& heir, double part)
    {
        const Money poured = inside.share(part);
        inside -= poured;
        passedOn += poured;
        heir.take({poured, whole});
    }
};

// Filled with what comes from no other bottle.
bool isFilling(const Event& event)
{
    const auto* mixed = std::get_if<Mixed>(&event.what);
    const auto* filled = std::get_if<ToppedUp>(&event.what);
    return (mixed && mixed->from.empty()) || (filled && filled->from.empty());
}

class CostFold
{
public:
    CostFold(const std::vector<Event>& entered, const Charges& charges,
             const formulary::Formulary& formulary)
        : m_charges(&charges), m_folds(formulary, {}, FoldDepth::Volumes)
    {
        for (const std::size_t place : pairHalves(entered, takenBack(entered)).lone) {
            m_lone.insert(entered[place].id);
        }
    }

    Result<void> apply(const std::vector<Event>& events, Instant until)
    {
        for (const Event& event : events) {
            if (isFilling(event)) {
                m_fillings[event.batch].push_back(&event);
            }
        }
        for (const Event& event : events) {
            if (event.at > until) {
                break;
            }
            if (auto fine = apply(event); !fine) {
                return fine;
            }
        }
        for (auto& [batch, account] : m_accounts) {
            takeCharges(batch, until);
        }
        return {};
    }

    [[nodiscard]] std::map<std::string, Cost> costs() const
    {
        std::map<std::string, Cost> found;
        for (const auto& [batch, account] : m_accounts) {
            if (!m_folds.of(batch)) {
                continue;
            }
            Cost cost{account.got, account.whole};
            cost.money -= account.passedOn;
            found.emplace(batch, std::move(cost));
        }
        return found;
    }

private:
    Result<void> apply(const Event& event)
    {
        Account& account = m_accounts[event.batch];
        const double before = volumeOf(event.batch);
        if (m_folds.of(event.batch)) {
            takeCharges(event.batch, event.at);
        }
        const auto half = halfOf(event);
        const bool lone = half && m_lone.contains(event.id);
        const bool pours = half && half->drawn && !lone;
        if (pours) {
            pour(event.batch, half->heir, half->volume);
        } else if (half && !half->drawn && !m_folds.of(half->donor)) {
            account.whole = false;
        } else if (half && !half->drawn && lone) {
            takeCharges(half->donor, event.at);
            pour(half->donor, event.batch, half->volume);
        }
        if (auto fine = m_folds.apply(event); !fine) {
            return fine;
        }
        account.whole = account.whole && hasSource(event);
        const double after = volumeOf(event.batch);
        if (!pours && after < before) {
            account.inside = account.inside.share(after / before, Money::Rounding::Fine);
        }
        takeCharges(event.batch, event.at);
        return {};
    }

    void pour(const std::string& from, const std::string& into, Millilitres volume)
    {
        const double there = volumeOf(from);
        if (there > 0) {
            Account& donor = m_accounts[from];
            donor.pourInto(m_accounts[into], std::min(1.0, volume.value() / there));
        }
    }

    // What was taken for it, or names it, before it is filled again is what it was filled with.
    [[nodiscard]] bool hasSource(const Event& event) const
    {
        if (!isFilling(event)) {
            return true;
        }
        const auto* mixed = std::get_if<Mixed>(&event.what);
        if (mixed && mixed->historyUnknown) {
            return false;
        }
        const auto found = m_charges->find(event.batch);
        if (found == m_charges->end()) {
            return false;
        }
        if (mixed && !mixed->packet.empty()) {
            return std::any_of(found->second.begin(), found->second.end(),
                               [&](const Charge& charge) { return charge.event == event.id; });
        }
        const auto& fillings = m_fillings.at(event.batch);
        const auto next = std::find_if(fillings.begin(), fillings.end(),
                                       [&](const Event* one) { return one->at > event.at; });
        const Instant from = mixed ? Instant::min() : event.at;
        const Instant to = next == fillings.end() ? Instant::max() : (*next)->at;
        return std::any_of(found->second.begin(), found->second.end(), [&](const Charge& charge) {
            return charge.at >= from && charge.at < to;
        });
    }

    void takeCharges(const std::string& batch, Instant until)
    {
        const auto found = m_charges->find(batch);
        if (found == m_charges->end() || !m_folds.of(batch)) {
            return;
        }
        Account& account = m_accounts[batch];
        const auto& charges = found->second;
        for (; account.next < charges.size() && charges[account.next].at <= until; ++account.next) {
            account.take(charges[account.next].cost);
        }
    }

    [[nodiscard]] double volumeOf(const std::string& batch) const
    {
        const Fold* fold = m_folds.of(batch);
        return fold ? fold->batch().volume.value() : 0;
    }

    const Charges* m_charges;
    FoldTogether m_folds;
    std::unordered_set<std::string> m_lone; ///< halves of fillings without their other half
    std::map<std::string, Account> m_accounts;
    std::map<std::string, std::vector<const Event*>> m_fillings; ///< by time
};

} // namespace

Result<std::map<std::string, Cost>> costsOf(const std::vector<Event>& entered, Instant until,
                                            const Charges& charges,
                                            const formulary::Formulary& formulary)
{
    CostFold fold(entered, charges, formulary);
    const auto events = happened(entered);
    if (auto fine = fold.apply(events, until); !fine) {
        return tl::unexpected(fine.error());
    }
    return fold.costs();
}

std::vector<Cost> costByFilms(const Cost& cost, const std::vector<double>& films)
{
    std::vector<Cost> parts(films.size() + 1, Cost{{}, cost.whole});
    if (std::accumulate(films.begin(), films.end(), 0.0) <= 0) {
        parts.back() = cost;
        return parts;
    }
    const auto money = cost.money.split(films);
    for (std::size_t i = 0; i < films.size(); ++i) {
        parts[i].money = money[i];
    }
    return parts;
}

Cost costOfFilm(const Cost& cost, chemistry::Films film, chemistry::Films done)
{
    if (film <= chemistry::Films(0) || done <= chemistry::Films(0)) {
        return {{}, cost.whole};
    }
    return {cost.money.forEachOf(done / film), cost.whole};
}

} // namespace ullage::ledger
