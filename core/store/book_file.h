// What a file is, found out before anything is opened for writing.
#pragma once

#include "core/chemistry/result.h"
#include "core/store/connection.h"

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
    int version = 0;    ///< of a book's schema
    bool alone = false; ///< missing or empty, but a log of a book stands beside it
};

/// The one name under which a book's file is opened: absolute, links followed. NotABook for an
/// empty name, a link that leads nowhere, a folder, and anything else that is no plain file.
Result<QString> bookPath(const QString& name);

/// Looks without changing a byte of the file, and through SQLite only (file_identity.h). NotABook
/// for what bookPath() refuses, something that cannot be read, a file that is not SQLite, or
/// another program's; StoreFailed where SQLite must be asked and refuses.
Result<BookFile> inspect(const QString& path);

/// Whether a log with something in it stands beside the book.
bool hasLog(const QString& path);

/// How to look at a file that stays as it is: a log beside it, which may not be its own, is left
/// there; where there is none, nothing is left behind either.
FileMode lookingMode(const QString& path);

/// Whether the files that SQLite keeps beside an open book can be made there.
bool hasRoomBeside(const QString& path);

} // namespace ullage::store
