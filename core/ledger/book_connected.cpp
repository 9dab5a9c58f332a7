// Bottles that were filled from one another: what the Book keeps of them, and what it asks of a
// filling.
#include "core/ledger/book.h"
#include "core/ledger/fillings.h"

#include <algorithm>

namespace ullage::ledger
{

namespace
{

// Those whose bottles stay in memory although nothing in them is in use.
constexpr std::size_t kSmall = 1;

bool inUse(const Fold* fold) { return fold && fold->batch().inUse(); }

} // namespace

Result<Book::Kept*> Book::kept(const std::string& batch)
{
    const auto found = m_kept.find(batch);
    if (found == m_kept.end()) {
        return load(batch);
    }
    if (!found->second.connected->folds && !m_whole) {
        if (auto fine = refold(*found->second.connected); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return &found->second;
}

// One bottle's events, and which others they lead to.
Result<void> Book::read(const std::string& batch, std::vector<std::string>& next)
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

Result<Book::Kept*> Book::load(const std::string& batch)
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
void Book::forgetConnected(const std::string& batch)
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

std::vector<Event> Book::enteredIn(const Connected& connected) const
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

Result<void> Book::refold(Connected& connected)
{
    connected.folds.reset();
    FoldTogether folds(*m_formulary);
    if (auto fine = folds.applyAll(enteredIn(connected)); !fine) {
        return fine;
    }
    connected.folds = std::move(folds);
    return {};
}

Result<std::vector<Event>> Book::connectedEvents(const std::string& batch)
{
    return kept(batch).map([&](const Kept* kept) { return enteredIn(*kept->connected); });
}

// From then on the two are folded together.
Result<void> Book::connect(const Event& event)
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

// The bottle that a filling comes from: another one, of the same role and in being; what is poured
// into a bottle goes into one of the same solution if that is new.
Result<void> Book::checkDonor(const Event& event)
{
    const auto half = halfOf(event);
    if (!half || half->drawn) {
        return {};
    }
    const auto no = [&](ErrorCode code, const char* allowed) {
        return refuse({.code = code,
                       .field = half->field(),
                       .text = half->donor,
                       .allowed = allowed,
                       .subject = half->donor});
    };
    if (half->donor == event.batch) {
        return no(ErrorCode::Conflict, kOtherBottleForm);
    }
    const auto from = kept(half->donor);
    if (!from) {
        return tl::unexpected(from.error());
    }
    const Fold* donor = (*from)->fold(half->donor);
    if (!donor) {
        return no(ErrorCode::UnknownId, "");
    }
    const auto& theirs = *donor->batch().solution;
    if (const auto* mixed = std::get_if<Mixed>(&event.what)) {
        return mixed->solution == theirs.id ? Result<void>()
                                            : no(ErrorCode::Conflict, kSameSolutionForm);
    }
    const Fold* heir = m_kept[event.batch].fold(event.batch);
    return heir && heir->batch().solution->role != theirs.role
               ? no(ErrorCode::Conflict, kSameKindForm)
               : Result<void>();
}

// What goes from one bottle into another is entered on both sides or not at all.
Result<void> Book::checkPairs()
{
    for (const Event& entered : m_halves) {
        const auto found = kept(entered.batch);
        if (!found) {
            return tl::unexpected(found.error());
        }
        const auto all = enteredIn(*(*found)->connected);
        for (const std::size_t lone : pairHalves(all, takenBack(all)).lone) {
            if (all[lone].id == entered.id) {
                const auto half = halfOf(entered);
                return refuse({.code = ErrorCode::Conflict,
                               .field = half->field(),
                               .text = half->other(),
                               .allowed = kOtherHalfForm,
                               .subject = half->other()});
            }
        }
    }
    return {};
}

} // namespace ullage::ledger
