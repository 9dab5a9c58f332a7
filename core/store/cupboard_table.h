// What the table of entries says of the cupboard and of cans for waste, each line held against what
// was entered.
#pragma once

#include "core/ledger/store_port.h"
#include "core/store/line_proof.h"
#include "core/store/statement.h"

#include <string>
#include <vector>

namespace ullage::store
{

/// Belongs to one thread, as its connection does. What is asked of it is described in StorePort.
class CupboardTable
{
public:
    /// `connection` must outlive it.
    explicit CupboardTable(Connection& connection);

    Result<std::vector<ledger::Entry>> lines();
    Result<std::vector<ledger::Entry>> linesOfAction(std::int64_t action);
    Result<std::vector<ledger::Event>> eventsOnItem(const std::string& item);
    Result<std::vector<ledger::Event>> eventsOnItems();
    Result<std::vector<std::string>> itemsTakenFor(const std::string& batch);
    Result<std::vector<ledger::Event>> eventsOnContainer(const std::string& container);
    Result<std::vector<std::string>> itemsEnded(chemistry::Instant at);

private:
    Result<std::vector<ledger::Event>> eventsFrom(Result<Rows> rows);
    Result<std::vector<ledger::Entry>> linesFrom(Result<Rows> rows);

    LineProof m_proof;
    Statement m_lines;
    Statement m_linesOfAction;
    Statement m_onItem;
    Statement m_onItems;
    Statement m_takenFor;
    Statement m_onContainer;
    Statement m_ended;
};

} // namespace ullage::store
