// Tables of a whole book for a spreadsheet: what the pages show as cards and lists, in columns.
#pragma once

#include "app/widgets/shown_table.h"
#include "app/window/book_jobs.h"
#include "app/words/units.h"
#include "core/chemistry/result.h"
#include "core/cupboard/plan_for.h"
#include "core/store/sql_store.h"

#include <QString>

namespace ullage::app
{

enum class BookTable {
    Bottles,    ///< in use, as the Shelf has them
    AllBottles, ///< those that ended too
    Cupboard,
    Shopping,
    Work,
    Cans,
    Solutions,
    Months,     ///< films developed, of all time
    BySolution, ///< films, ends and lives, of all time
    Ends,       ///< why bottles ended, of all time
};
inline constexpr int kBookTables = 10;

/// As it is offered, and as the file is named.
QString bookTableName(BookTable table);

/// Reads the table as of `now`, for any thread. `planFor` is for the shopping list. Volumes are in
/// the user's unit. Refuses what the book refuses to hand out: a table is whole or there is none.
Result<ShownTable> bookTable(BookTable table, store::SqlStore& store, chemistry::Instant now,
                             const Wording& wording,
                             const cupboard::PlanFor& planFor = {.weeks = cupboard::kWeeksAhead});

/// A table of the book as CSV, whole or not at all. The number of rows.
BookJob tableJob(const QString& path, const QString& file, BookTable table, chemistry::Instant now,
                 const Wording& wording, const cupboard::PlanFor& planFor);

} // namespace ullage::app
