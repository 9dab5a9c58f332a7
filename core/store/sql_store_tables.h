// The tables of a book as SqlStore keeps them; for its own sources only.
#pragma once

#include "core/store/action_table.h"
#include "core/store/batch_table.h"
#include "core/store/chain_growth.h"
#include "core/store/cupboard_table.h"
#include "core/store/entry_table.h"
#include "core/store/note_table.h"
#include "core/store/seen_book.h"
#include "core/store/sql_store.h"

namespace ullage::store
{

/// What stands in the file, by one connection; gone before the connection is.
struct SqlStore::Tables {
    Tables(Connection& connection, const QString& lastSeen, const QString& path)
        : growth(connection), entries(connection, growth), cupboard(connection),
          batches(connection, growth), actions(connection), notes(connection, growth),
          seen(connection, notes, entries, lastSeen, path)
    {
    }
    ChainGrowth growth;
    EntryTable entries;
    CupboardTable cupboard;
    BatchTable batches;
    ActionTable actions;
    NoteTable notes;
    SeenBook seen;
};

} // namespace ullage::store
