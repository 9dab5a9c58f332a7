// SQLite's own way of copying a database page by page, log and all, in one transaction of the one
// written to.
#pragma once

#include "core/store/connection.h"

namespace ullage::store
{

/// Makes the database of `to` the same as that of `from`. Who has it open elsewhere sees the old
/// content until all of the new is there; a failure leaves the old. Waits a while for other writers
/// and then says Busy.
Result<void> copyPages(Connection& from, Connection& to);

} // namespace ullage::store
