#include "core/store/batch_check.h"

#include "core/ledger/batch.h"
#include "core/ledger/fillings.h"
#include "core/store/each_row.h"
#include "core/store/journal_codec.h"
#include "core/store/stored_moment.h"

#include <algorithm>
#include <set>

namespace ullage::store
{

using namespace ledger;

namespace
{

bool agrees(const BatchState& state, const Batch& batch)
{
    return state.name == batch.name && state.solution == batch.solution->id &&
           state.mixedAt == batch.mixedAt && state.endedAt == batch.endedAt;
}

} // namespace

BatchCheck::BatchCheck(Connection& connection, const formulary::Formulary& formulary,
                       ReferenceCheck& references, bool chained,
                       const std::function<void(Error)>& found)
    : m_formulary(&formulary), m_references(&references), m_chained(chained), m_found(&found),
      m_table(connection, QStringLiteral("SELECT id, name, solution, mixed_ms, ended_ms, entries, "
                                         "hash FROM batch ORDER BY id")),
      m_filledWith(connection, QStringLiteral("SELECT batch FROM entry WHERE from_batch = ? AND "
                                              "batch IS NOT NULL UNION SELECT batch FROM entry "
                                              "WHERE to_batch = ? AND batch IS NOT NULL")),
      m_eventsOf(connection, QStringLiteral("SELECT CAST(body AS BLOB), batch, seq FROM entry "
                                            "WHERE batch = ? ORDER BY seq"))
{
}

Result<void> BatchCheck::take(EntryRow event)
{
    if (m_chain.entries > 0 && event.batch != m_batch) {
        if (auto fine = finishBatch(); !fine) {
            return fine;
        }
    }
    m_batch = event.batch;
    m_chain = {m_chain.entries + 1, m_hasher.next(m_chain.hash, event.type, event.id, event.body)};
    auto* happened = event.entry ? std::get_if<Event>(&event.entry->what) : nullptr;
    if (!happened) {
        m_whole = false;
        return {};
    }
    if (auto fine = checkFields(*happened); !fine) {
        (*m_found)(event.about(fine.error()));
    }
    if (auto fine = m_references->check(event); !fine) {
        return fine;
    }
    happened->batch = event.batch;
    happened->entry = event.number;
    m_events.push_back(std::move(*happened));
    m_numbers.push_back(event.number);
    return {};
}

Result<void> BatchCheck::finishBatch()
{
    const auto kept = keptOf(&m_batch);
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    if (auto fine = fold(*kept ? &**kept : nullptr); !fine) {
        return fine;
    }
    if (*kept && m_chained && (*kept)->chain != m_chain) {
        Error error = notAsEntered(damage::kBatch);
        error.subject = m_batch;
        (*m_found)(std::move(error));
    }
    m_events.clear();
    m_numbers.clear();
    m_chain = {};
    m_whole = true;
    return {};
}

// Its events and those of the bottles it was filled from or drawn into; those that cannot be read
// are told where their own batch is looked at.
Result<std::vector<Event>> BatchCheck::withPartners()
{
    std::set<std::string> partners;
    for (const Event& event : m_events) {
        if (const auto half = halfOf(event)) {
            partners.insert(half->other());
        }
    }
    auto fine = eachRow(m_filledWith.run(m_batch, m_batch), [&](const Rows& row) -> Result<void> {
        partners.insert(row.text(0));
        return {};
    });
    std::vector<Event> all = m_events;
    partners.erase(m_batch);
    for (const std::string& other : partners) {
        if (!fine) {
            break;
        }
        fine = eachRow(m_eventsOf.run(other), [&](const Rows& row) -> Result<void> {
            auto entry = decodeStored(row.blob(0));
            auto* event = entry ? std::get_if<Event>(&entry->what) : nullptr;
            if (event) {
                event->batch = row.text(1);
                event->entry = row.number(2);
                all.push_back(std::move(*event));
            }
            return {};
        });
    }
    if (!fine) {
        return tl::unexpected(fine.error());
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Event& a, const Event& b) { return a.entry < b.entry; });
    return all;
}

// A batch with an event that cannot be read is not folded without it.
Result<void> BatchCheck::fold(const Kept* kept)
{
    if (!m_whole) {
        return {};
    }
    const auto all = withPartners();
    if (!all) {
        return tl::unexpected(all.error());
    }
    auto live = happened(*all);
    std::erase_if(live, [&](const Event& event) { return event.batch != m_batch; });
    m_mixed += live.empty() ? 0 : 1;
    Fold fold(*m_formulary);
    for (const Event& event : live) {
        if (auto fine = fold.apply(event); !fine) {
            (*m_found)(aboutEvent(event.id, fine.error()));
            return {};
        }
    }
    if (live.empty() ? kept != nullptr : !kept || !agrees(kept->state, fold.batch())) {
        conflict("batch");
    }
    return {};
}

void BatchCheck::conflict(const char* field)
{
    (*m_found)({.code = ErrorCode::Conflict, .field = field, .text = m_batch, .subject = m_batch});
}

Error BatchCheck::aboutEvent(const std::string& id, Error error) const
{
    for (std::size_t i = 0; i < m_events.size(); ++i) {
        if (m_events[i].id == id) {
            error.entry = m_numbers[i];
        }
    }
    error.entryType = "event";
    error.subject = id;
    return error;
}

// Both are read in the same order: a row that is passed over has no events.
Result<std::optional<BatchCheck::Kept>> BatchCheck::keptOf(const std::string* batch)
{
    if (!m_rows) {
        auto rows = m_table.run();
        if (!rows) {
            return tl::unexpected(rows.error());
        }
        m_rows.emplace(std::move(*rows));
        if (auto fine = nextKept(); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    while (m_next && (!batch || m_next->state.id < *batch)) {
        const std::string& id = m_next->state.id;
        (*m_found)({.code = ErrorCode::UnknownId, .field = "batch", .text = id, .subject = id});
        if (auto fine = nextKept(); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    if (!m_next || m_next->state.id != *batch) {
        return std::nullopt;
    }
    std::optional<Kept> kept = std::move(m_next);
    if (auto fine = nextKept(); !fine) {
        return tl::unexpected(fine.error());
    }
    return kept;
}

Result<void> BatchCheck::nextKept()
{
    return m_rows->next().map([&](bool more) {
        m_next.reset();
        if (!more) {
            return;
        }
        Kept kept{{m_rows->text(0), m_rows->text(1), m_rows->text(2), instantOf(m_rows->number(3)),
                   std::nullopt},
                  std::nullopt};
        if (!m_rows->isNull(4)) {
            kept.state.endedAt = instantOf(m_rows->number(4));
        }
        if (const auto hash = digestFromBytes(m_rows->blob(6)); hash && !m_rows->isNull(5)) {
            kept.chain = BatchChain{m_rows->number(5), *hash};
        }
        m_next = std::move(kept);
    });
}

Result<void> BatchCheck::end()
{
    if (m_chain.entries > 0) {
        if (auto fine = finishBatch(); !fine) {
            return fine;
        }
    }
    return keptOf(nullptr).map([](const auto&) {});
}

} // namespace ullage::store
