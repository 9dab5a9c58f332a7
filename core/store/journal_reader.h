// A journal into a book: line by line, in one transaction, all or nothing.
#pragma once

#include "core/ledger/book.h"
#include "core/store/sql_store.h"

#include <QIODevice>
#include <QString>

namespace ullage::store
{

struct Imported {
    int lines = 0; ///< entries read
    int added = 0; ///< of them new to the book
};

/// Imports the journal on `device` (open for reading). Of the journal only the
/// ids of its lines and the batches it tells of are held in memory. After a refusal, which carries
/// `name` as its file and the line, the book is as it was. `store` must be the one `book` was
/// opened on.
Result<Imported> importJournal(ledger::Book& book, SqlStore& store, QIODevice& device,
                               const QString& name);

/// Where a book keeps the first line of the journal it began with.
inline constexpr const char* kHeaderNote = "journal-header";

} // namespace ullage::store
