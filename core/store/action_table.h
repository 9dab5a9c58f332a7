// The table of actions: what was done in one step, and from which seat.
#pragma once

#include "core/ledger/store_port.h"
#include "core/store/statement.h"

#include <vector>

namespace ullage::store
{

/// Belongs to one thread, as its connection does. What is asked of it is described in StorePort.
class ActionTable
{
public:
    /// `connection` must outlive it.
    explicit ActionTable(const Connection& connection);

    Result<std::int64_t> put(const ledger::Action& action);
    Result<std::vector<ledger::Action>> last(int count);

private:
    Statement m_putAction;
    Statement m_actions;
};

} // namespace ullage::store
