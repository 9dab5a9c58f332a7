#include "core/ledger/book.h"

#include "core/ledger/consequences.h"
#include "core/ledger/line_description.h"
#include "core/ledger/typed_text.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

constexpr int kActionsRemembered = 1000;
constexpr std::int64_t kUnread = -1; // no store's entry number

} // namespace

Book::Book(StorePort& store, Clock clock, IdMaker newId)
    : m_store(&store), m_clock(std::move(clock)), m_newId(std::move(newId)),
      m_formulary(std::make_unique<formulary::Formulary>())
{
}

Result<std::unique_ptr<Book>> Book::open(StorePort& store, Clock clock, IdMaker newId)
{
    std::unique_ptr<Book> book(new Book(store, std::move(clock), std::move(newId)));
    if (auto fine = book->readAll(); !fine) {
        return tl::unexpected(fine.error());
    }
    return book;
}

Result<void> Book::readAll()
{
    forget();
    auto formulary = std::make_unique<formulary::Formulary>();
    auto definitions = m_store->definitions();
    if (!definitions) {
        return tl::unexpected(definitions.error());
    }
    for (const Entry& entry : *definitions) {
        if (const auto* solution = std::get_if<formulary::Solution>(&entry.what)) {
            formulary->add(*solution);
        } else if (const auto* vessel = std::get_if<formulary::Vessel>(&entry.what)) {
            formulary->add(*vessel);
        } else if (const auto* figure = std::get_if<formulary::DevelopmentFigure>(&entry.what)) {
            formulary->add(*figure);
        }
    }
    auto newest = m_store->newest();
    if (!newest) {
        return tl::unexpected(newest.error());
    }
    m_formulary = std::move(formulary);
    if (auto fine = readActions(); !fine) {
        return fine;
    }
    m_newest = std::move(*newest);
    return {};
}

Result<void> Book::readActions()
{
    const auto actions = m_store->actions(kActionsRemembered);
    if (!actions) {
        return tl::unexpected(actions.error());
    }
    m_othersDid = false;
    m_undo.clear();
    m_redo.clear();
    for (const Action& action : *actions) {
        rememberAction(action);
    }
    return {};
}

Result<void> Book::sitAt(std::string seat)
{
    m_seat = std::move(seat);
    return readActions();
}

void Book::forget() { m_kept.clear(); }

Result<bool> Book::refresh()
{
    const auto newest = m_store->newest();
    if (!newest) {
        return tl::unexpected(newest.error());
    }
    if (*newest == m_newest) {
        return false;
    }
    return readAll().map([] { return true; });
}

Result<Batch> Book::batch(const std::string& id, Instant at)
{
    const auto found = kept(id);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Kept& kept = **found;
    const Fold* fold = kept.fold(id);
    if (fold && at >= fold->batch().asOf) {
        return fold->at(at);
    }
    auto folded = foldTogether(id, enteredIn(*kept.connected), at, *m_formulary);
    if (!folded) {
        return tl::unexpected(folded.error());
    }
    if (!*folded) {
        return refuse({.code = ErrorCode::UnknownId, .field = "batch", .text = id});
    }
    return std::move(**folded);
}

Result<std::vector<Batch>> Book::batches(Instant at, bool ended, std::vector<Unread>* unread)
{
    const auto states = m_store->batches(at, ended);
    if (!states) {
        return tl::unexpected(states.error());
    }
    std::vector<Batch> result;
    for (const BatchState& state : *states) {
        const bool wasKept = m_kept.contains(state.id);
        auto folded = batch(state.id, at);
        if (!folded && unread && folded.error().code != ErrorCode::StoreFailed) {
            unread->push_back(
                {state.id, state.name, state.solution, result.size(), folded.error()});
            if (unread->back().why.subject.empty()) {
                unread->back().why.subject = state.name;
            }
            continue;
        }
        if (!folded) {
            return tl::unexpected(folded.error());
        }
        if (state.endedAt && !wasKept) {
            forgetConnected(state.id); // history is long; only what is in use stays in memory
        }
        if (ended || folded->inUse()) {
            result.push_back(std::move(*folded));
        }
    }
    return result;
}

Result<std::vector<StripReading>> Book::strips(const std::string& solution, Instant at,
                                               std::size_t most)
{
    auto states = m_store->batches(at, true);
    if (!states) {
        return tl::unexpected(states.error());
    }
    const auto family = m_formulary->family(solution);
    std::erase_if(*states, [&](const BatchState& state) {
        return std::find(family.begin(), family.end(), state.solution) == family.end();
    });
    std::vector<StripReading> result;
    for (std::size_t i = states->size() - std::min(most, states->size()); i < states->size(); ++i) {
        const BatchState& state = (*states)[i];
        const bool wasKept = m_kept.contains(state.id);
        const auto folded = batch(state.id, at);
        if (!folded) {
            return tl::unexpected(folded.error());
        }
        if (state.endedAt && !wasKept) {
            forgetConnected(state.id);
        }
        for (const StripDone& strip : folded->strips) {
            result.push_back({state.id, folded->name, strip});
        }
    }
    return result;
}

Result<std::vector<Event>> Book::events(const std::string& batch)
{
    return m_store->eventsOf(batch);
}

Result<std::string> Book::nameOf(const std::string& batch)
{
    const auto found = kept(batch);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Fold* fold = (*found)->fold(batch);
    if (!fold) {
        return refuse({.code = ErrorCode::UnknownId, .field = "batch", .text = batch});
    }
    return fold->batch().name;
}

// What was folded and defined on the way is not in the store: read it again. If even that fails,
// the next call finds the entry count unknown and reads before it does anything.
void Book::rollBack()
{
    m_store->rollback();
    m_newest = {kUnread, {}};
    (void)readAll();
}

// One transaction, whoever fills it. `fill` enters entries under the action's id.
Result<void> Book::transact(Action action, const std::function<Result<void>(std::int64_t)>& fill)
{
    if (auto fine = m_store->begin(); !fine) {
        return fine;
    }
    m_touched.clear();
    m_halves.clear();
    m_put = 0;
    action.seat = m_seat;
    const auto work = [&]() -> Result<void> {
        if (auto fine = refresh(); !fine) {
            return tl::unexpected(fine.error());
        }
        const auto id = m_store->put(action);
        if (!id) {
            return tl::unexpected(id.error());
        }
        action.id = *id;
        if (auto fine = fill(action.id); !fine) {
            return fine;
        }
        if (auto fine = checkPairs().and_then([&] { return putStates(); }); !fine) {
            return fine;
        }
        auto newest = m_store->newest();
        if (!newest) {
            return tl::unexpected(newest.error());
        }
        if (auto fine = m_store->commit(); !fine) {
            return fine;
        }
        m_newest = std::move(*newest);
        return {};
    };
    auto done = work();
    if (!done) {
        rollBack();
        return done;
    }
    rememberAction(action);
    return {};
}

Result<void> Book::transact(Action action, const std::vector<Entry>& entries)
{
    return transact(std::move(action), [&](std::int64_t id) { return enterAll(entries, id); });
}

Result<void> Book::enterAll(const std::vector<Entry>& entries, std::int64_t action)
{
    for (Entry entry : entries) {
        if (auto* event = std::get_if<Event>(&entry.what)) {
            event->by = m_person;
        } else if (auto* mark = std::get_if<FilmMark>(&entry.what)) {
            mark->by = m_person;
        }
        if (auto fine = checkTyped(entry).and_then([&] { return enter(entry, action); }); !fine) {
            return fine;
        }
    }
    return {};
}

// As enterAll(), but what is impossible in between does not matter.
Result<void> Book::enterWhole(const std::vector<Entry>& entries, std::int64_t action)
{
    m_whole = true;
    const auto fine = enterAll(entries, action);
    m_whole = false;
    return fine ? foldWhole(entries) : fine;
}

// What is refused is either new, or rests on what was taken back.
Result<void> Book::foldWhole(const std::vector<Entry>& entries)
{
    const std::set<std::string> touched = m_touched;
    for (const std::string& id : touched) {
        const auto found = m_kept.find(id);
        if (id.empty() || found == m_kept.end() || found->second.connected->folds) {
            continue;
        }
        if (refold(*found->second.connected)) {
            continue;
        }
        auto misfit = firstNotFitting(enteredIn(*found->second.connected), *m_formulary);
        if (!misfit) {
            return refold(*found->second.connected);
        }
        const auto voiding = std::find_if(entries.begin(), entries.end(), [](const Entry& entry) {
            return entry.event() && std::holds_alternative<Voided>(entry.event()->what);
        });
        if (voiding != entries.end() && misfit->event.entry <= m_newest.number) {
            misfit->error.code = ErrorCode::CannotVoid;
            misfit->error.field = "voids";
            misfit->error.text = std::get<Voided>(voiding->event()->what).voids;
        }
        return refuse(std::move(misfit->error));
    }
    for (const Entry& entry : entries) {
        const Event* event = entry.event();
        if (event && subjectOf(*event) == Subject::Batch) {
            if (auto fine = checkDonor(*event); !fine) {
                return fine;
            }
        }
    }
    return {};
}

} // namespace ullage::ledger
