#include "core/store/batch_table.h"

#include "core/store/each_row.h"
#include "core/store/stored_moment.h"

namespace ullage::store
{

using namespace ledger;

BatchTable::BatchTable(const Connection& connection, ChainGrowth& growth)
    : m_growth(&growth),
      m_putBatch(
          connection,
          QStringLiteral(
              "INSERT INTO batch (id, name, solution, mixed_ms, ended_ms, entries, hash) "
              "VALUES (?, ?, ?, ?, ?, ?, ?) "
              "ON CONFLICT (id) DO UPDATE SET name = excluded.name, solution = excluded.solution, "
              "mixed_ms = excluded.mixed_ms, ended_ms = excluded.ended_ms, "
              "entries = excluded.entries, hash = excluded.hash")),
      m_dropBatch(connection, QStringLiteral("DELETE FROM batch WHERE id = ?")),
      m_batch(
          connection,
          QStringLiteral("SELECT id, name, solution, mixed_ms, ended_ms FROM batch WHERE id = ?")),
      // Mixed at one moment: in the order in which the mixings were entered.
      m_batchesInUse(
          connection,
          QStringLiteral(
              "SELECT id, name, solution, mixed_ms, ended_ms FROM batch "
              "WHERE mixed_ms <= ?1 AND (ended_ms IS NULL OR ended_ms > ?2) ORDER BY mixed_ms, "
              "(SELECT max(seq) FROM entry WHERE entry.batch = batch.id AND kind = 'mixed')")),
      m_batches(connection,
                QStringLiteral(
                    "SELECT id, name, solution, mixed_ms, ended_ms FROM batch "
                    "WHERE mixed_ms <= ? ORDER BY mixed_ms, "
                    "(SELECT max(seq) FROM entry WHERE entry.batch = batch.id AND kind = 'mixed')"))
{
}

Result<void> BatchTable::put(const BatchState& state)
{
    const auto ended = state.endedAt ? std::optional(millisecondsOf(*state.endedAt)) : std::nullopt;
    const auto chain = m_growth->settled(state.id);
    if (!chain) {
        return tl::unexpected(chain.error());
    }
    return m_putBatch
        .run(state.id, state.name, state.solution, millisecondsOf(state.mixedAt), ended,
             chain->entries, chain->hash)
        .map([](const Rows&) {});
}

Result<void> BatchTable::drop(const std::string& id)
{
    m_growth->dropped(id);
    return m_dropBatch.run(id).map([](const Rows&) {});
}

Result<std::optional<BatchState>> BatchTable::batch(const std::string& id)
{
    auto found = batchStates(m_batch.run(id));
    if (!found) {
        return tl::unexpected(found.error());
    }
    return found->empty() ? std::nullopt : std::optional(std::move(found->front()));
}

Result<std::vector<BatchState>> BatchTable::batches(chemistry::Instant at, bool ended)
{
    const std::int64_t moment = millisecondsOf(at);
    return batchStates(ended ? m_batches.run(moment) : m_batchesInUse.run(moment, moment));
}

Result<std::vector<BatchState>> batchStates(Result<Rows> rows)
{
    return madeOfRows(std::move(rows), [](const Rows& row) -> Result<BatchState> {
        BatchState state{row.text(0), row.text(1), row.text(2), instantOf(row.number(3)),
                         std::nullopt};
        if (!row.isNull(4)) {
            state.endedAt = instantOf(row.number(4));
        }
        return state;
    });
}

} // namespace ullage::store
