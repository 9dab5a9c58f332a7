// What SqlStore appends.
#include "core/store/chain_growth.h"
#include "core/store/event_columns.h"
#include "core/store/journal_codec.h"
#include "core/store/sql_statements.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

std::int64_t milliseconds(chemistry::Instant at) { return at.time_since_epoch().count(); }

} // namespace

Result<std::int64_t> SqlStore::put(const Action& action)
{
    const std::optional<std::int64_t> of = action.of == 0 ? std::nullopt : std::optional(action.of);
    const auto seat = action.seat.empty() ? std::nullopt : std::optional(action.seat);
    const auto rows = m_statements->putAction.run(static_cast<int>(action.mode), action.what,
                                                  action.subject, of, seat);
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    return m_statements->putAction.lastId();
}

Result<void> SqlStore::put(const Entry& entry, std::int64_t action)
{
    const EventColumns columns = eventColumns(entry);
    const std::string type(entry.type());
    const QByteArray body = encode(entry);
    const auto hash = m_growth->next(type, entry.id(), body, columns.batch);
    if (!hash) {
        return tl::unexpected(hash.error());
    }
    return m_statements->putEntry
        .run(type, entry.id(), action, columns.batch, columns.kind, columns.atMs, columns.volume,
             columns.films, columns.run, columns.voids, columns.person, columns.film,
             columns.fromBatch, columns.toBatch, columns.item, columns.container, body, *hash)
        .map([&](const Rows&) { m_growth->entered(m_statements->putEntry.lastId()); });
}

Result<void> SqlStore::put(const BatchState& state)
{
    const auto ended = state.endedAt ? std::optional(milliseconds(*state.endedAt)) : std::nullopt;
    const auto chain = m_growth->settled(state.id);
    if (!chain) {
        return tl::unexpected(chain.error());
    }
    return m_statements->putBatch
        .run(state.id, state.name, state.solution, milliseconds(state.mixedAt), ended,
             chain->entries, chain->hash)
        .map([](const Rows&) {});
}

Result<void> SqlStore::dropBatch(const std::string& id)
{
    m_growth->dropped(id);
    return m_statements->dropBatch.run(id).map([](const Rows&) {});
}

} // namespace ullage::store
