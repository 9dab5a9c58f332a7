// What is read of the open book.
#include "app/session/session.h"

#include "core/store/day_book.h"
#include "core/store/packet_reader.h"

#include <algorithm>
#include <utility>

namespace ullage::app
{

const std::vector<Bottle>& Session::bottles()
{
    if (!m_stale || !m_book)
        return m_bottles;
    m_stale = false;
    // A bottle that is not what was entered is said, and stands apart; the others are shown.
    m_unread.clear();
    auto batches = m_book->batches(now(), false, &m_unread);
    if (m_unread.size() > std::exchange(m_unreadTold, m_unread.size()))
        emit failed(m_unread.front().why);
    if (!batches) {
        emit failed(batches.error());
        return m_bottles;
    }
    m_bottles.clear();
    for (ledger::Batch& batch : *batches) {
        auto assessment = ledger::assess(batch);
        m_bottles.push_back({std::move(batch), std::move(assessment)});
    }
    return m_bottles;
}

const std::vector<ledger::Unread>& Session::unread()
{
    (void)bottles();
    return m_unread;
}

const Bottle* Session::bottle(const QString& id)
{
    const auto& all = bottles();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Bottle& bottle) {
        return bottle.batch.id == id.toStdString();
    });
    return found == all.end() ? nullptr : &*found;
}

store::FaultNames Session::namesOf(const Error& fault) const
{
    return m_store ? store::namesFor(m_store->connection(), {&fault, 1}) : store::FaultNames{};
}

// Of the last batches of one developer alone. Asked for by a dialog as it opens; what is shown all
// the time reads them on a thread.
const std::vector<ledger::StripReading>& Session::strips(const std::string& solution)
{
    if (const auto known = m_strips.find(solution); known != m_strips.end())
        return known->second;
    auto strips = m_book->strips(solution, now());
    if (!strips)
        emit failed(strips.error());
    return m_strips[solution] = strips.value_or(std::vector<ledger::StripReading>());
}

std::vector<ledger::BatchState> Session::standingAt(chemistry::Instant at)
{
    auto states = m_store->batches(at, false);
    if (!states)
        emit failed(states.error());
    return states ? std::move(*states) : std::vector<ledger::BatchState>();
}

// Grows with the book, a short row a batch: asked for once when a batch is to be mixed, and not
// while the book is looked at.
QStringList Session::batchNames()
{
    QStringList names;
    // All there are, also where the machine's clock stands before them.
    const auto states = m_store->batches(chemistry::Instant::max(), true);
    if (!states) {
        emit failed(states.error());
        return names;
    }
    for (const auto& state : *states)
        names << QString::fromStdString(state.name);
    return names;
}

// Nothing but one look where there are no packets; else the mixings, once when a batch is to be
// mixed.
std::vector<ledger::Packet> Session::packetsAtHand()
{
    auto packets = store::packetsAtHand(*m_store, now());
    if (!packets) {
        emit failed(packets.error());
        return {};
    }
    return std::move(*packets);
}

// One row by an index, however long the book is.
std::optional<chemistry::Instant> Session::newest()
{
    const auto page = store::DayBook(*m_store).page({}, {}, 1);
    if (!page)
        emit failed(page.error());
    if (!page || page->entries.empty())
        return std::nullopt;
    return chemistry::Instant(std::chrono::milliseconds(page->entries.front().key.atMs));
}

} // namespace ullage::app
