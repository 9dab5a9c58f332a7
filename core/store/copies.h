// Copies of a book: how they are named, which there are, and which of them stay.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"
#include "core/store/connection.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace ullage::store
{

enum class CopyState {
    Sound,      ///< was checked when it was made, and its entries can be counted now
    Faulty,     ///< a faithful copy of a book in which something was wrong
    Unreadable, ///< no book, or damaged since
};

/// A whole book in a file that no program writes to.
struct Copy {
    QString path;
    chemistry::Instant at; ///< when it was made
    std::int64_t entries = 0;
    QString bookId; ///< of the book it is a copy of; empty where it has none
    CopyState state = CopyState::Sound;
};

/// The copies of the book at `path` in `folders`, and the ones that were put beside it before its
/// schema was changed or another was restored in its place; newest first. They are found by the
/// book's own id; where `bookId` is empty because the book is gone, by the name of its file. The
/// book itself is not touched.
std::vector<Copy> copies(const QString& path, const QString& bookId, const QStringList& folders);

/// One file looked at as a copy.
Copy readCopy(const QString& path);

/// The book's own id, kept in it as the note "book-id"; empty if it has none.
Result<QString> bookId(Connection& book);
/// The same; a book that has none is given one.
Result<QString> giveBookId(Connection& book);

/// What the name of a copy says. Copies of long ago have no id in their names.
struct CopyName {
    QString book; ///< name of the book's file, without its ending
    QString id;
    chemistry::Instant at;
    bool faulty = false;
};
QString fileName(const CopyName& name);
std::optional<CopyName> copyName(const QString& fileName);

/// Of the copies of one book those to keep as of `now`: of each of the last 7 days, 8 weeks (from
/// Monday) and 12 months that have any, in UTC, the one with the most entries, the newest if there
/// are several; and always the newest and the fullest. Those dated later than `now` are a reckoning
/// of their own, as are the faulty ones: neither pushes out another. Unreadable ones stay.
std::vector<Copy> keptCopies(std::vector<Copy> made, chemistry::Instant now);

} // namespace ullage::store
