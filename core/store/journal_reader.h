// A journal into a book: line by line, in one transaction, all or nothing.
#pragma once

#include "core/ledger/book_import.h"
#include "core/store/progress.h"
#include "core/store/sql_store.h"

#include <QIODevice>
#include <QString>

#include <map>

namespace ullage::store
{

struct Imported {
    int lines = 0; ///< entries read
    int added = 0; ///< of them new to the book
};

struct ImportOptions {
    QString name; ///< the journal's, for errors
    ledger::Settlement settled;
    bool trial = false; ///< only says what would come in: the book stays as it is
    /// What the undo menu calls it; empty: it is no step of undo.
    QString undoAs = {};
    bool sameRefuse = false; ///< a bottle that looks like one of the book's keeps all from entering
    Watch watch = {};        ///< told thousandths
};

/// What an import did, or would do.
struct ImportOutcome {
    int lines = 0;   ///< entries read
    int added = 0;   ///< of them new to the book
    int leftOut = 0; ///< lines left out, those that depend on others included
    bool entered = false;
    std::map<std::string_view, int> coming;            ///< new lines by kind (events) or type
    std::vector<ledger::Contradiction> contradictions; ///< those on the first lines, in their order
    int contradictionCount = 0;                        ///< of all
    std::vector<ledger::LikelySame> likelySame;
};

/// Reads the journal on `device` (open for reading; if lines are left out, not sequential) and
/// enters it if nothing in it contradicts, else leaves the book as it was and says what does. Of
/// the journal a few bytes a line are held in memory. Refuses a file that is no journal of a
/// version this program knows, a file that cannot be read, and what the store refuses. `store` must
/// be the one `book` was opened on.
Result<ImportOutcome> readJournal(ledger::Book& book, SqlStore& store, QIODevice& device,
                                  const ImportOptions& options);

/// The same, refusing with the contradiction on the first line there is.
Result<Imported> importJournal(ledger::Book& book, SqlStore& store, QIODevice& device,
                               const QString& name);

/// Where a book keeps the first line of the journal it began with.
inline constexpr const char* kHeaderNote = "journal-header";

} // namespace ullage::store
