// Events of one batch after another, folded and held against the table of batches.
#pragma once

#include "core/formulary/formulary.h"
#include "core/ledger/store_port.h"
#include "core/store/chain_growth.h"
#include "core/store/reference_check.h"

#include <functional>
#include <string>
#include <vector>

namespace ullage::store
{

class BatchCheck
{
public:
    /// All must outlive the check. `chained`: the table of batches keeps chains.
    BatchCheck(Connection& connection, const formulary::Formulary& formulary,
               ReferenceCheck& references, bool chained, const std::function<void(Error)>& found);

    /// The next event, in order of batch and entry.
    Result<void> take(EntryRow event);
    /// After the last: what is left in the table of batches has no events.
    Result<void> end();
    [[nodiscard]] std::int64_t mixed() const { return m_mixed; }

private:
    struct Kept {
        ledger::BatchState state;
        std::optional<BatchChain> chain;
    };
    Result<void> finishBatch();
    Result<void> fold(const Kept* kept);
    Result<std::vector<ledger::Event>> withPartners();
    /// Null: goes on to the end of the table.
    Result<std::optional<Kept>> keptOf(const std::string* batch);
    Result<void> nextKept();
    void conflict(const char* field);
    [[nodiscard]] Error aboutEvent(const std::string& id, Error error) const;

    const formulary::Formulary* m_formulary;
    ReferenceCheck* m_references;
    bool m_chained;
    const std::function<void(Error)>* m_found;
    LineHasher m_hasher;
    Statement m_table;
    Statement m_filledWith;
    Statement m_eventsOf;
    std::optional<Rows> m_rows;
    std::optional<Kept> m_next; ///< of the table, in the same order
    std::string m_batch;
    std::vector<ledger::Event> m_events;
    std::vector<std::int64_t> m_numbers; ///< of those events
    BatchChain m_chain;
    bool m_whole = true; ///< every event of the batch could be read
    std::int64_t m_mixed = 0;
};

} // namespace ullage::store
