#include "core/ledger/book.h"

#include "core/ledger/references.h"

namespace ullage::ledger
{

Book::Import::Import(Book& book) : m_book(&book) {}

Book::Import::~Import()
{
    if (m_open) {
        m_book->m_deferred.reset(); // or everything after it would be left to be judged later
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
    m_deferred.emplace();
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
    eachReference(entry, [&](const formulary::FieldDescription& is, const std::string& id) {
        if (is.refers == formulary::Refers::Run) {
            m_filmRuns.push_back({entry.id(), id});
        } else if (is.refers == formulary::Refers::Film) {
            m_markFilms.push_back({entry.id(), id});
        }
    });
    if (auto fine = m_book->enter(entry, m_action); !fine) {
        return fine;
    }
    ++m_added;
    return {};
}

// What no line by itself can show: a film may stand before its run, a mark before its film, a
// top-up before its source, an event before the one that makes it possible.
Result<void> Book::Import::checkWhole()
{
    for (const auto& [film, run] : m_filmRuns) {
        const auto known = m_book->m_store->hasRun(run);
        if (!known) {
            return tl::unexpected(known.error());
        }
        if (!*known) {
            m_culprit = film;
            return refuse(
                {.code = ErrorCode::UnknownId, .field = "run", .text = run, .subject = film});
        }
    }
    for (const auto& [mark, film] : m_markFilms) {
        const auto known = m_book->m_store->film(film);
        if (!known) {
            return tl::unexpected(known.error());
        }
        if (!*known) {
            m_culprit = mark;
            return refuse(
                {.code = ErrorCode::UnknownId, .field = "film", .text = film, .subject = mark});
        }
    }
    for (const std::string& id : m_book->m_deferred->batches) {
        const auto found = m_book->kept(id);
        if (!found) {
            return tl::unexpected(found.error());
        }
        if (auto fine = m_book->settle(**found, id, m_culprit); !fine) {
            return fine;
        }
    }
    for (const auto& [event, source] : m_book->m_deferred->sources) {
        if (const auto name = m_book->nameOf(source); !name) {
            Error error = name.error();
            error.field = "from";
            m_culprit = event;
            return refuse(std::move(error));
        }
    }
    return m_book->putStates();
}

Result<int> Book::Import::finish()
{
    const auto close = [&]() -> Result<void> {
        if (auto fine = checkWhole(); !fine) {
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
    m_book->m_deferred.reset();
    return m_added;
}

} // namespace ullage::ledger
