// The cache file of a search index: its name, its tables, and whether it belongs to a book.
#pragma once

#include "core/store/connection.h"
#include "core/store/sql_store.h"

#include <memory>
#include <optional>

namespace ullage::store
{

/// Entries of the index that stand under one oldest and newest moment.
inline constexpr std::int64_t kSearchBlock = 4096;

/// A name for the book's index that no other book has, without its ending: the book's own id and
/// where it lies, so that two copies of one book do not take each other's index away.
QString searchName(SqlStore& book);
/// The file of that name with the highest number, or the first.
QString searchFile(const QString& folder, const QString& name);
/// The name that follows.
QString nextSearchFile(const QString& file);
enum class SearchFileState {
    Fine,
    Newer, ///< a newer program's: not to be touched
    Bad,   ///< damaged, or something else
    Busy,
    Out, ///< cannot be opened or written here
};

/// Opens the file; with `make`, its tables are made where there are none.
SearchFileState openSearchFile(const QString& file, bool make, std::unique_ptr<Connection>& into);

/// What a failure of such a file says.
bool saysSearchFileIsBad(const Error& error);
bool saysSearchFileIsBusy(const Error& error);

/// What tells a book's entry, and all before it, from any other, so that a book that took another
/// course is noticed: its hash. Empty if there is no such entry.
Result<QString> searchMark(SqlStore& book, std::int64_t seq);

} // namespace ullage::store
