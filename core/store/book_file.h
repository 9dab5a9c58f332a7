// What a file is, found out before anything is opened for writing.
#pragma once

#include "core/chemistry/result.h"

#include <QString>

namespace ullage::store
{

/// "ullg", in the header of every SQLite file that is a book.
inline constexpr qint64 kApplicationId = 0x756C6C67;

enum class FileKind {
    Missing, ///< no such file
    Empty,   ///< nothing in it yet: 0 bytes, or a database without a table
    Book,
};

struct BookFile {
    FileKind kind = FileKind::Missing;
    int version = 0; ///< of a book's schema
};

/// Looks without changing a byte of the file. NotABook for a folder, something that cannot be read,
/// a file that is not SQLite, or another program's; StoreFailed where SQLite must be asked and
/// refuses.
Result<BookFile> inspect(const QString& path);

} // namespace ullage::store
