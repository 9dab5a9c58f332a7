#include "core/ledger/batch.h"

#include "core/ledger/fillings.h"
#include "core/ledger/line_description.h"

#include <algorithm>
#include <limits>
#include <map>
#include <tuple>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

// Where an event stands among all: by time, then by order of entry, but what happens to a batch at
// the very instant of its mixing comes after the mixing.
using Turn = std::tuple<Instant, std::size_t, std::size_t>;

std::vector<Turn> turnsOf(const std::vector<Event>& entered, const std::vector<bool>& out)
{
    std::vector<std::size_t> order(entered.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = i;
    }
    const auto number = [&](std::size_t place) {
        const std::int64_t entry = entered[place].entry;
        return entry == 0 ? std::numeric_limits<std::int64_t>::max() : entry;
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return number(a) < number(b); });
    std::vector<std::size_t> rank(entered.size());
    std::map<std::string, std::size_t> mixing;
    for (std::size_t i = 0; i < order.size(); ++i) {
        rank[order[i]] = i + 1;
        const Event& event = entered[order[i]];
        if (!out[order[i]] && std::holds_alternative<Mixed>(event.what)) {
            mixing.emplace(event.batch, order[i]);
        }
    }
    std::vector<Turn> turns;
    for (std::size_t i = 0; i < entered.size(); ++i) {
        const auto mixed = mixing.find(entered[i].batch);
        const bool early = mixed != mixing.end() && mixed->second != i &&
                           entered[mixed->second].at == entered[i].at &&
                           rank[mixed->second] > rank[i];
        turns.emplace_back(entered[i].at, early ? rank[mixed->second] : rank[i],
                           early ? rank[i] : 0);
    }
    return turns;
}

} // namespace

std::optional<double> Batch::standingUsed() const
{
    return limits ? std::optional(limits->used(standing)) : std::nullopt;
}

bool Batch::extrapolates() const
{
    return limits && limits->airCounts() && chemistry::belowHalfFull(volume, vessel->capacity);
}

std::optional<Instant> Batch::spentSince() const
{
    return spentAfter ? std::optional(chemistry::addDays(mixedAt, *spentAfter)) : std::nullopt;
}

bool Batch::usedOnce() const
{
    return solution->oneShotPerFilm &&
           (loads.empty() ? !formulary::capacityOf(*solution) : loads.back().oneShot);
}

chemistry::Closed Batch::closed() const
{
    return {enclosure(*vessel), volume, saturation(*solution), temperature,
            solution->role == formulary::Role::Developer};
}

std::unordered_set<std::string> takenBack(const std::vector<Event>& entered)
{
    // Newest first: what takes a voiding back is always entered after it.
    std::unordered_set<std::string> taken;
    for (auto event = entered.rbegin(); event != entered.rend(); ++event) {
        const auto* voided = std::get_if<Voided>(&event->what);
        if (voided && !taken.contains(event->id)) {
            taken.insert(voided->voids);
        }
    }
    return taken;
}

std::vector<std::size_t> inTurn(const std::vector<Event>& entered, const std::vector<bool>& out)
{
    const auto turns = turnsOf(entered, out);
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < entered.size(); ++i) {
        if (!out[i]) {
            places.push_back(i);
        }
    }
    std::stable_sort(places.begin(), places.end(),
                     [&](std::size_t a, std::size_t b) { return turns[a] < turns[b]; });
    return places;
}

std::vector<Event> happened(std::vector<Event> entered)
{
    const auto taken = takenBack(entered);
    std::vector<bool> out(entered.size(), false);
    for (std::size_t i = 0; i < entered.size(); ++i) {
        // A packet's opening could name a batch in version 1; nothing happens to it by that.
        out[i] = subjectOf(entered[i]) != Subject::Batch || taken.contains(entered[i].id);
    }
    for (const std::size_t half : pairHalves(entered, taken).gone) {
        out[half] = true;
    }
    std::vector<Event> result;
    for (const std::size_t place : inTurn(entered, out)) {
        result.push_back(std::move(entered[place]));
    }
    return result;
}

Result<std::optional<Batch>> foldUntil(const std::vector<Event>& entered, Instant until,
                                       const formulary::Formulary& formulary,
                                       const chemistry::AirConstants& constants)
{
    Fold fold(formulary, constants);
    for (const Event& event : happened(entered)) {
        if (event.at > until) {
            break;
        }
        if (auto fine = fold.apply(event); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return fold.started() ? std::optional(fold.at(until)) : std::nullopt;
}

} // namespace ullage::ledger
