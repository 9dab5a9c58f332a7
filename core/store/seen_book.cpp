#include "core/store/seen_book.h"

#include "core/store/chain.h"
#include "core/store/damage.h"
#include "core/store/read_view.h"

namespace ullage::store
{

SeenBook::SeenBook(Connection& connection, NoteTable& notes, EntryTable& entries,
                   const QString& lastSeen, const QString& path)
    : m_connection(&connection), m_notes(&notes), m_entries(&entries), m_lastSeen(lastSeen, path)
{
}

Result<void> SeenBook::look()
{
    const auto keep = [&](const Error& error) {
        m_found.push_back(error);
        return error.code == ErrorCode::NotAsEntered ? Result<void>{} : tl::unexpected(error);
    };
    const auto id = m_notes->note(kBookIdNote);
    if (!id) {
        return keep(id.error());
    }
    m_bookId = id->value_or(QByteArray());
    // What was seen first, and only then the book, in one view: others may write meanwhile, and
    // then the book has more than was seen, never less.
    const auto seen = m_lastSeen.of(m_bookId);
    const auto view = ReadView::open(*m_connection);
    if (!view) {
        return tl::unexpected(view.error());
    }
    const auto head = LastEntries(*m_connection).read();
    if (!head) {
        return keep(head.error());
    }
    return against(seen, *head).map([&](std::optional<Error> fault) {
        if (fault) {
            m_found.push_back(std::move(*fault));
        } else if (seen != *head) {
            note(*head);
        }
    });
}

Result<std::optional<Error>> SeenBook::against(const std::optional<ChainHead>& seen,
                                               const ChainHead& head)
{
    if (!seen || *seen == head) {
        return std::nullopt;
    }
    if (seen->entry > head.entry) {
        Error fault = notAsEntered(damage::kLost);
        fault.number = static_cast<double>(head.entry);
        fault.high = static_cast<double>(seen->entry);
        return fault;
    }
    return m_entries->hashOf(seen->entry).map([&](const auto& there) -> std::optional<Error> {
        if (!there || there->hash == seen->hash) {
            return std::nullopt;
        }
        return notAsEntered(damage::kForked, seen->entry, there->type, there->id);
    });
}

Result<void> SeenBook::accept()
{
    const auto view = ReadView::open(*m_connection);
    if (!view) {
        return tl::unexpected(view.error());
    }
    return LastEntries(*m_connection).read().map([&](const ChainHead& head) {
        note(head);
        m_found.clear();
    });
}

} // namespace ullage::store
