// What a new book begins with: common solutions and bottles, for the user to take, edit or ignore.
#pragma once

#include "core/ledger/book.h"
#include "core/store/sql_store.h"

#include <QString>

namespace ullage::app
{

/// Solutions and vessels as a journal of this program.
inline const QString kStarterFormulary = QStringLiteral(":/ullage/starter.jsonl");

/// Enters the journal `file` in one transaction and returns how many entries were new. A refusal
/// names file and line; then nothing is entered: FileFailed, or what store::importJournal()
/// refuses. `store` is the one `book` was opened on.
Result<int> enterJournal(ledger::Book& book, store::SqlStore& store, const QString& file);

} // namespace ullage::app
