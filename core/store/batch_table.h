// The table of batches, which is derived: where the fold of each batch's events leaves it.
#pragma once

#include "core/ledger/store_port.h"
#include "core/store/chain_growth.h"
#include "core/store/statement.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::store
{

/// Belongs to one thread, as its connection does. What is asked of it is described in StorePort.
class BatchTable
{
public:
    /// Both must outlive it.
    BatchTable(const Connection& connection, ChainGrowth& growth);

    Result<void> put(const ledger::BatchState& state);
    Result<void> drop(const std::string& id);
    Result<std::optional<ledger::BatchState>> batch(const std::string& id);
    Result<std::vector<ledger::BatchState>> batches(chemistry::Instant at, bool ended);

    /// The columns of a row that batchStates() reads, to stand in a SELECT.
    static constexpr const char* kColumns = "id, name, solution, mixed_ms, ended_ms";

private:
    ChainGrowth* m_growth;
    Statement m_putBatch;
    Statement m_dropBatch;
    Statement m_batch;
    Statement m_batchesInUse;
    Statement m_batches;
};

/// Rows of id, name, solution, mixed_ms and ended_ms.
Result<std::vector<ledger::BatchState>> batchStates(Result<Rows> rows);

} // namespace ullage::store
