// The cheap part of a check, made when a book is opened: is its end what was entered last, and has
// it come at least as far as when it was last seen.
#pragma once

#include "core/store/connection.h"
#include "core/store/entry_table.h"
#include "core/store/last_seen.h"
#include "core/store/note_table.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <vector>

namespace ullage::store
{

class SeenBook
{
public:
    /// `lastSeen`: folder that remembers how far each book had come (last_seen.h), or empty. All
    /// must outlive it.
    SeenBook(Connection& connection, NoteTable& notes, EntryTable& entries, const QString& lastSeen,
             const QString& path);

    /// What is wrong is kept; only a book that cannot be read fails.
    Result<void> look();
    /// Each NotAsEntered.
    [[nodiscard]] const std::vector<Error>& found() const { return m_found; }
    /// Takes the book as it is now for what was seen last: what was found is no fault any more.
    /// StoreFailed or NotAsEntered if the book is not sound in itself.
    Result<void> accept();
    /// It has come so far now.
    void note(const ChainHead& head) { m_lastSeen.note(m_bookId, head); }

private:
    Result<std::optional<Error>> against(const std::optional<ChainHead>& seen,
                                         const ChainHead& head);

    Connection* m_connection;
    NoteTable* m_notes;
    EntryTable* m_entries;
    LastSeen m_lastSeen;
    QByteArray m_bookId;
    std::vector<Error> m_found;
};

} // namespace ullage::store
