#include "core/ledger/book.h"

namespace ullage::ledger
{

Book::Import::Import(Book& book) : m_book(&book) {}

Book::Import::~Import()
{
    if (m_open) {
        m_book->rollBack();
    }
}

Result<std::unique_ptr<Book::Import>> Book::import()
{
    if (auto fine = m_store->begin(); !fine) {
        return tl::unexpected(fine.error());
    }
    std::unique_ptr<Import> import(new Import(*this));
    m_touched.clear();
    if (auto fine = refresh(); !fine) {
        return tl::unexpected(fine.error());
    }
    const auto action = m_store->put(Action{.mode = ActionMode::Apart, .what = "import"});
    if (!action) {
        return tl::unexpected(action.error());
    }
    import->m_action = *action;
    return import;
}

Result<void> Book::Import::add(const Entry& entry)
{
    const auto known = m_book->m_store->sameContent(entry);
    if (!known) {
        return tl::unexpected(known.error());
    }
    if (*known) {
        return **known ? Result<void>{}
                       : refuse({.code = ErrorCode::IdTaken, .field = "id", .text = entry.id()});
    }
    if (const auto* film = std::get_if<FilmRecord>(&entry.what)) {
        m_filmRuns.push_back({film->id, film->run});
    }
    if (auto fine = m_book->enter(entry, m_action); !fine) {
        return fine;
    }
    ++m_added;
    return {};
}

Result<int> Book::Import::finish()
{
    const auto close = [&]() -> Result<void> {
        // A film may stand before the event that names its run, so this can be known only now.
        for (const auto& [film, run] : m_filmRuns) {
            const auto known = m_book->m_store->hasRun(run);
            if (!known) {
                return tl::unexpected(known.error());
            }
            if (!*known) {
                return refuse(
                    {.code = ErrorCode::UnknownId, .field = "run", .text = run, .subject = film});
            }
        }
        if (auto fine = m_book->putStates(); !fine) {
            return fine;
        }
        const auto last = m_book->m_store->lastEntry();
        if (!last) {
            return tl::unexpected(last.error());
        }
        if (auto fine = m_book->m_store->commit(); !fine) {
            return fine;
        }
        m_book->m_lastEntry = *last;
        return {};
    };
    if (auto fine = close(); !fine) {
        return tl::unexpected(fine.error());
    }
    m_open = false;
    return m_added;
}

} // namespace ullage::ledger
