#include "core/ledger/book_memory.h"

#include "core/ledger/fillings.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

// Those whose bottles stay in memory although nothing in them is in use.
constexpr std::size_t kSmall = 1;

bool inUse(const Fold* fold) { return fold && fold->batch().inUse(); }

// One bottle may stand aside for it, while the store still answers.
bool isTheBottles(const Error& why) { return why.code != ErrorCode::StoreFailed; }

Unread unreadOf(const BatchState& state, std::size_t place, Error why)
{
    if (why.subject.empty()) {
        why.subject = state.name;
    }
    return {state.id, state.name, state.solution, place, std::move(why)};
}

} // namespace

BookMemory::BookMemory(StorePort& store)
    : m_store(&store), m_formulary(std::make_unique<formulary::Formulary>())
{
}

Result<void> BookMemory::read()
{
    forget();
    const auto definitions = m_store->definitions();
    if (!definitions) {
        return tl::unexpected(definitions.error());
    }
    m_formulary = std::make_unique<formulary::Formulary>();
    for (const Entry& entry : *definitions) {
        define(entry);
    }
    return {};
}

void BookMemory::define(const Entry& entry)
{
    std::visit(
        [&](const auto& what) {
            if constexpr (requires { m_formulary->add(what); }) {
                m_formulary->add(what);
            }
        },
        entry.what);
}

Result<Batch> BookMemory::batch(const std::string& id, Instant at)
{
    const auto found = kept(id);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Kept& kept = **found;
    const Fold* fold = kept.fold(id);
    if (fold && at >= fold->batch().asOf) {
        return fold->at(at);
    }
    auto folded = foldTogether(id, enteredIn(*kept.connected), at, *m_formulary);
    if (!folded) {
        return tl::unexpected(folded.error());
    }
    if (!*folded) {
        return refuse({.code = ErrorCode::UnknownId, .field = "batch", .text = id});
    }
    return std::move(**folded);
}

Result<std::optional<PouredBatch>> BookMemory::then(const std::string& id, Instant at)
{
    const bool wasKept = m_kept.contains(id);
    const auto folded = batch(id, at);
    if (!folded) {
        const bool unknown = folded.error().code == ErrorCode::UnknownId;
        return unknown ? Result<std::optional<PouredBatch>>(std::nullopt)
                       : tl::unexpected(folded.error());
    }
    const PouredBatch held{folded->volume, folded->silver};
    if (!wasKept && !folded->inUse()) {
        forgetConnected(id);
    }
    return held;
}

// History is long: of what is looked at only what is in use stays in memory.
Result<Batch> BookMemory::lookedAt(const BatchState& state, Instant at)
{
    const bool wasKept = m_kept.contains(state.id);
    auto folded = batch(state.id, at);
    if (folded && state.endedAt && !wasKept) {
        forgetConnected(state.id);
    }
    return folded;
}

Result<std::vector<Batch>> BookMemory::batches(Instant at, bool ended, std::vector<Unread>* unread)
{
    const auto states = m_store->batches(at, ended);
    if (!states) {
        return tl::unexpected(states.error());
    }
    std::vector<Batch> result;
    for (const BatchState& state : *states) {
        auto folded = lookedAt(state, at);
        if (!folded && unread && isTheBottles(folded.error())) {
            unread->push_back(unreadOf(state, result.size(), folded.error()));
            continue;
        }
        if (!folded) {
            return tl::unexpected(folded.error());
        }
        if (ended || folded->inUse()) {
            result.push_back(std::move(*folded));
        }
    }
    return result;
}

Result<std::vector<Batch>> BookMemory::batchesSince(Instant from, Instant at, formulary::Role role,
                                                    std::vector<Unread>* unread)
{
    auto states = m_store->batches(at, true);
    if (!states) {
        return tl::unexpected(states.error());
    }
    const auto ended = [&](const BatchState& state) {
        return state.endedAt && *state.endedAt <= at;
    };
    std::erase_if(*states, [&](const BatchState& state) {
        const auto solution = m_formulary->solution(state.solution);
        return ended(state) && (*state.endedAt < from || !solution || solution->role != role);
    });
    std::vector<Batch> result;
    for (const BatchState& state : *states) {
        auto folded = lookedAt(state, at);
        if (!folded && isTheBottles(folded.error()) && (ended(state) || unread)) {
            if (!ended(state)) {
                unread->push_back(unreadOf(state, result.size(), folded.error()));
            }
            continue;
        }
        if (!folded) {
            return tl::unexpected(folded.error());
        }
        result.push_back(std::move(*folded));
    }
    return result;
}

Result<std::vector<StripReading>> BookMemory::strips(const std::string& solution, Instant at,
                                                     std::size_t most)
{
    auto states = m_store->batches(at, true);
    if (!states) {
        return tl::unexpected(states.error());
    }
    const auto family = m_formulary->family(solution);
    std::erase_if(*states, [&](const BatchState& state) {
        return std::find(family.begin(), family.end(), state.solution) == family.end();
    });
    std::vector<StripReading> result;
    for (std::size_t i = states->size() - std::min(most, states->size()); i < states->size(); ++i) {
        const BatchState& state = (*states)[i];
        const auto folded = lookedAt(state, at);
        if (!folded) {
            return tl::unexpected(folded.error());
        }
        for (const StripDone& strip : folded->strips) {
            result.push_back({state.id, folded->name, strip});
        }
    }
    return result;
}

Result<std::string> BookMemory::nameOf(const std::string& batch)
{
    const auto found = kept(batch);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Fold* fold = (*found)->fold(batch);
    if (!fold) {
        return refuse({.code = ErrorCode::UnknownId, .field = "batch", .text = batch});
    }
    return fold->batch().name;
}

const BookMemory::Kept* BookMemory::known(const std::string& batch) const
{
    const auto found = m_kept.find(batch);
    return found == m_kept.end() ? nullptr : &found->second;
}

Result<BookMemory::Kept*> BookMemory::kept(const std::string& batch)
{
    const auto found = m_kept.find(batch);
    if (found == m_kept.end()) {
        return load(batch);
    }
    if (!found->second.connected->folds && !m_later) {
        if (auto fine = refold(*found->second.connected); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return &found->second;
}

// One bottle's events, and which others they lead to.
Result<void> BookMemory::read(const std::string& batch, std::vector<std::string>& next)
{
    auto entered = m_store->eventsOf(batch);
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    for (const Event& event : *entered) {
        if (const auto half = halfOf(event)) {
            next.push_back(half->other());
        }
    }
    const auto others = m_store->filledWith(batch);
    if (!others) {
        return tl::unexpected(others.error());
    }
    next.insert(next.end(), others->begin(), others->end());
    m_kept[batch] = {std::move(*entered), nullptr};
    return {};
}

Result<BookMemory::Kept*> BookMemory::load(const std::string& batch)
{
    const auto connected = std::make_shared<Connected>();
    std::vector<std::string> next{batch};
    const auto giveUp = [&](Error error) {
        for (const std::string& id : connected->batches) {
            m_kept.erase(id);
        }
        m_kept.erase(batch);
        return refuse(std::move(error));
    };
    while (!next.empty()) {
        const std::string id = std::move(next.back());
        next.pop_back();
        if (!connected->batches.insert(id).second) {
            continue;
        }
        if (const auto known = m_kept.find(id); known != m_kept.end()) {
            // Loaded before it was connected with this one.
            for (const std::string& other : known->second.connected->batches) {
                next.push_back(other);
            }
        } else if (auto fine = read(id, next); !fine) {
            m_kept.erase(id);
            return giveUp(fine.error());
        }
        m_kept[id].connected = connected;
    }
    if (auto fine = refold(*connected); !fine) {
        return giveUp(fine.error());
    }
    return &m_kept[batch];
}

// A bottle goes with all that it is connected with, or none does.
void BookMemory::forgetConnected(const std::string& batch)
{
    const auto found = m_kept.find(batch);
    if (found == m_kept.end()) {
        return;
    }
    const auto connected = found->second.connected;
    const bool used =
        connected->batches.size() > kSmall &&
        std::any_of(connected->batches.begin(), connected->batches.end(),
                    [&](const std::string& id) { return inUse(m_kept[id].fold(id)); });
    if (used) {
        return;
    }
    for (const std::string& id : connected->batches) {
        m_kept.erase(id);
    }
}

std::vector<Event> BookMemory::enteredIn(const Connected& connected) const
{
    std::vector<Event> all;
    for (const std::string& id : connected.batches) {
        const auto found = m_kept.find(id);
        if (found != m_kept.end()) {
            all.insert(all.end(), found->second.entered.begin(), found->second.entered.end());
        }
    }
    if (connected.batches.size() > 1) {
        std::stable_sort(all.begin(), all.end(),
                         [](const Event& a, const Event& b) { return a.entry < b.entry; });
    }
    return all;
}

Result<void> BookMemory::refold(Connected& connected)
{
    connected.folds.reset();
    FoldTogether folds(*m_formulary);
    if (auto fine = folds.applyAll(enteredIn(connected)); !fine) {
        return fine;
    }
    connected.folds = std::move(folds);
    return {};
}

Result<std::vector<Event>> BookMemory::connectedEvents(const std::string& batch)
{
    return kept(batch).map([&](const Kept* kept) { return enteredIn(*kept->connected); });
}

// From then on the two are folded together.
Result<void> BookMemory::connect(const Event& event)
{
    const auto half = halfOf(event);
    if (!half || half->other() == event.batch) {
        return {};
    }
    const auto other = kept(half->other());
    if (!other) {
        return tl::unexpected(other.error());
    }
    const auto mine = m_kept[event.batch].connected;
    const auto theirs = (*other)->connected;
    if (mine == theirs) {
        return {};
    }
    for (const std::string& id : theirs->batches) {
        mine->batches.insert(id);
        m_kept[id].connected = mine;
    }
    mine->folds.reset();
    return {};
}

} // namespace ullage::ledger
