// A whole book as text.
#pragma once

#include "core/store/sql_store.h"

#include <QIODevice>

#include <vector>

namespace ullage::store
{

/// Writes the journal: the first line, then every entry in order of entry. The number of entries.
/// FileFailed if the device fails; what it took by then stays written. A line that is not what was
/// entered is never written: without `faults` the export ends there with NotAsEntered; with them it
/// is left out, kept there together with whatever else is missing, and the rest is written.
Result<int> exportJournal(SqlStore& store, QIODevice& device, std::vector<Error>* faults = nullptr);

/// Writes the events as CSV (RFC 4180, UTF-8, a header line), in order of entry: the columns id,
/// batch, kind, at, volume_ml, films, run, voids; empty where an event has no such thing. Text that
/// a spreadsheet would take for a formula gets an apostrophe in front (csv_cell.h). The number of
/// events. Of damage as above.
Result<int> exportEventsCsv(SqlStore& store, QIODevice& device,
                            std::vector<Error>* faults = nullptr);

} // namespace ullage::store
