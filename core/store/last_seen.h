// How far each book had come when it was last seen, kept outside the book.
//
// A book that lost its tail, or the log beside it, is sound in itself; only something outside can
// tell that there was more. One small file a book and place, by the book's own id.
#pragma once

#include "core/store/chain.h"

#include <QString>

namespace ullage::store
{

class LastSeen
{
public:
    /// Keeps its files in `folder`, made when needed; an empty one keeps nothing. `path` is the
    /// book's.
    LastSeen(QString folder, const QString& path);

    /// What was seen of the book here; or, of a book that was moved here, where it was before. A
    /// copy of a book that still stands elsewhere is a book of its own, of which nothing is known.
    [[nodiscard]] std::optional<ChainHead> of(const QByteArray& bookId) const;

    /// Remembers. What cannot be written is left: it is an aid, and the book does not depend on it.
    void note(const QByteArray& bookId, const ChainHead& head) const;
    /// Nothing is known of the book here any more.
    void forget(const QByteArray& bookId) const;

private:
    [[nodiscard]] QString fileOf(const QByteArray& bookId) const;

    QString m_folder;
    QString m_path;
};

} // namespace ullage::store
