#include "core/ledger/book_import.h"

#include <algorithm>

namespace ullage::ledger
{

namespace
{

// The store's own failures end an import; anything else is said of a line.
bool storeFailed(const Error& error)
{
    switch (error.code) {
    case ErrorCode::StoreFailed:
    case ErrorCode::Busy:
    case ErrorCode::BookMoved:
    case ErrorCode::BookDamaged:
    case ErrorCode::ReadOnly:
    case ErrorCode::NotAsEntered:
        return true;
    default:
        return false;
    }
}

} // namespace

Book::Import::Import(Book& book, Settlement settled, const std::string& name)
    : m_book(&book),
      m_settled(std::move(settled)), m_action{.mode = name.empty() ? ActionMode::Apart
                                                                   : ActionMode::Done,
                                              .what = kImportAction,
                                              .subject = name}
{
}

Book::Import::~Import()
{
    if (m_open) {
        m_book->rollBack();
    }
}

Result<std::unique_ptr<Book::Import>> Book::import(Settlement settled, const std::string& name)
{
    if (auto fine = m_store->begin(); !fine) {
        return tl::unexpected(fine.error());
    }
    std::unique_ptr<Import> import(new Import(*this, std::move(settled), name));
    if (auto fine = import->begin(); !fine) {
        return tl::unexpected(fine.error());
    }
    return import;
}

Result<void> Book::Import::begin()
{
    if (auto fine = m_book->refresh(); !fine) {
        return tl::unexpected(fine.error());
    }
    m_book->m_memory.forget(); // folds of before; what is needed is read again
    m_brought.had = m_book->m_newest.number;
    if (m_action.mode == ActionMode::Done) {
        m_action.seat = m_book->m_history.seat();
    }
    const auto action = m_book->m_store->put(m_action);
    if (!action) {
        return tl::unexpected(action.error());
    }
    m_action.id = *action;
    return takeBackOurs();
}

// What is taken back by now is passed over: it need not be done twice.
Result<void> Book::Import::takeBackOurs()
{
    for (const std::string& id : m_settled.takenBack) {
        const auto event = m_book->m_store->event(id);
        if (!event) {
            return tl::unexpected(event.error());
        }
        const auto entered =
            *event ? m_book->m_store->eventsOf((*event)->batch) : Result<std::vector<Event>>();
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        if (*event && takenBack(*entered).contains(id)) {
            continue;
        }
        Event taking{m_book->m_newId(), {}, m_book->m_clock(), Voided{id, kSettledReason}};
        taking.by = m_book->m_person;
        if (auto fine = enter({std::move(taking), {}}, 0); !fine) {
            return fine;
        }
    }
    return {};
}

void Book::Import::unreadable(Error error, int line)
{
    error.line = line;
    if (!m_settled.leftOut.contains(line)) {
        m_findings.add({.error = std::move(error)});
    }
}

Result<void> Book::Import::add(Entry entry, int line)
{
    if (m_settled.leftOut.contains(line)) {
        return {};
    }
    const auto known = m_book->m_store->sameContent(entry);
    if (!known) {
        return tl::unexpected(known.error());
    }
    if (*known) {
        return **known ? Result<void>{} : taken(entry, line);
    }
    const auto retimed = m_settled.retimed.find(line);
    return retimed != m_settled.retimed.end() && entry.event()
               ? enterRetimed(entry, line, retimed->second)
               : enter(std::move(entry), line);
}

// The id stands for something else already, here or on an earlier line.
Result<void> Book::Import::taken(const Entry& entry, int line)
{
    Contradiction contradiction{
        .error = {.code = ErrorCode::IdTaken, .field = "id", .text = entry.id(), .line = line},
        .entry = entry};
    if (entry.event()) {
        auto other = m_book->m_store->event(entry.id());
        if (!other) {
            return tl::unexpected(other.error());
        }
        if (*other) {
            contradiction.against = Entry{std::move(**other), {}};
            contradiction.againstOurs = m_findings.lineOf(entry.id()) == 0;
        }
    }
    m_findings.add(std::move(contradiction));
    return {};
}

// What happened when: theirs stays as it was written, taken back, beside one with the right time,
// so that the same journal brings nothing new the next time.
Result<void> Book::Import::enterRetimed(const Entry& entry, int line, chemistry::Instant at)
{
    Event right = *entry.event();
    right.at = at;
    right.id = m_book->m_newId();
    if (m_book->m_check.notLater(entry.event()->at)) {
        Event taking{m_book->m_newId(), {}, m_book->m_clock(), Voided{entry.id(), kRetimedReason}};
        taking.by = m_book->m_person;
        const int before = m_findings.count();
        if (auto fine = enter(entry, line); !fine || m_findings.count() > before) {
            return fine;
        }
        if (auto fine = enter({std::move(taking), {}}, line); !fine) {
            return fine;
        }
    }
    return enter({std::move(right), {}}, line);
}

Result<void> Book::Import::enter(Entry entry, int line)
{
    if (auto fine = check(entry, line); !fine) {
        if (storeFailed(fine.error())) {
            return fine;
        }
        Error error = std::move(fine.error());
        error.line = line;
        m_findings.add({.error = std::move(error), .entry = std::move(entry)});
        return {};
    }
    if (auto fine = m_book->m_store->put(entry, m_action.id); !fine) {
        return fine;
    }
    ++m_added;
    if (const Event* event = entry.event()) {
        m_findings.stands(event->id, line);
        if (!event->batch.empty()) {
            ++m_brought.batches[event->batch];
        }
        const auto root = rootOf(*m_book->m_store, *event);
        if (!root) {
            return tl::unexpected(root.error());
        }
        if (*root) {
            m_brought.cupboard.add(**root);
        }
    }
    return {};
}

// What a line by itself shows, and its order among the others.
Result<void> Book::Import::check(Entry& entry, int line)
{
    if (auto fine = ledger::check(entry); !fine) {
        return fine;
    }
    std::vector<std::pair<const formulary::FieldDescription*, std::string>> unknown;
    auto fine = m_book->m_check.references(
        entry, [&](const formulary::FieldDescription& field, const std::string& id) {
            unknown.emplace_back(&field, id);
        });
    if (!fine) {
        return fine;
    }
    if (auto* event = std::get_if<Event>(&entry.what)) {
        fine = m_book->m_check.notLater(event->at);
        if (fine && std::holds_alternative<Voided>(event->what)) {
            fine = m_book->m_check.findTaken(*event);
        }
    } else if (const auto* mark = std::get_if<FilmMark>(&entry.what)) {
        fine = m_book->m_check.mark(*mark);
    } else {
        const auto* vessel = std::get_if<formulary::Vessel>(&entry.what);
        if (vessel && vessel->withdrawn) {
            m_brought.withdrewVessel = line;
        }
        m_book->m_memory.define(entry);
    }
    if (!fine) {
        return fine;
    }
    for (auto& [field, id] : unknown) {
        if (field->refers == formulary::Refers::Batch) {
            ++m_brought.named.try_emplace(id, Brought::NamesBatch{entry, line, field, 0})
                  .first->second.count;
        } else {
            m_brought.waiting.push_back({entry, line, field, id});
        }
    }
    return {};
}

Result<void> Book::Import::judge(const GoOn& goOn)
{
    m_judged = true;
    // Of a line that is refused by itself the other half is not missing.
    m_brought.pairs = m_brought.pairs && m_findings.count() == 0;
    ImportWhole whole(*m_book->m_store, m_book->formulary(), m_book->m_check, m_brought,
                      m_findings);
    if (auto fine = whole.judge(goOn); !fine || m_brought.had == 0) {
        return fine;
    }
    return whole.likelySame(m_settled.twoBottles).map([&](std::vector<LikelySame> found) {
        m_likelySame = std::move(found);
    });
}

Result<int> Book::Import::finish()
{
    if (!m_judged) {
        if (auto fine = judge(); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    if (m_findings.count() > 0) {
        return refuse(m_findings.first().error);
    }
    auto newest = m_book->m_store->newest();
    if (!newest) {
        return tl::unexpected(newest.error());
    }
    if (auto fine = m_book->m_store->commit(); !fine) {
        return tl::unexpected(fine.error());
    }
    m_book->m_newest = std::move(*newest);
    m_book->m_memory.forget();
    m_book->m_history.remember(m_action);
    m_open = false;
    return m_added;
}

} // namespace ullage::ledger
