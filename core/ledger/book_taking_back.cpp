// Taking entries back: by name, by correcting them, and by undoing what was done last.
#include "core/ledger/book.h"

#include "core/formulary/given_anew.h"
#include "core/ledger/cupboard_check.h"
#include "core/ledger/entering.h"
#include "core/ledger/fillings.h"

#include <algorithm>

namespace ullage::ledger
{

Result<void> Book::voidEvent(const std::string& event, const std::string& why)
{
    return voidEvents({event}, why);
}

Result<void> Book::voidEvents(const std::vector<std::string>& events, const std::string& why)
{
    return events.empty() ? refuse({.code = ErrorCode::Missing, .field = "voids"})
                          : takeBack({.what = "void"}, events, {}, why);
}

Result<void> Book::correct(const std::vector<std::string>& events, std::vector<Event> instead,
                           const std::string& why, std::vector<FilmRecord> films)
{
    if (events.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "voids"});
    }
    std::string subject;
    if (!instead.empty()) {
        const auto name = instead.front().batch.empty() ? nameOfThing(instead.front())
                                                        : m_memory.nameOf(instead.front().batch);
        if (!name) {
            return tl::unexpected(name.error());
        }
        subject = *name;
    }
    for (FilmRecord& film : films) {
        if (auto fine = takeUp(film); !fine) {
            return fine;
        }
    }
    return takeBack({.what = kCorrectAction, .subject = subject}, events, std::move(instead), why,
                    std::move(films));
}

Result<void> Book::correctMark(FilmMark mark, const std::string& why)
{
    const auto film = m_store->film(mark.film);
    if (!film) {
        return tl::unexpected(film.error());
    }
    const FilmMark back{.id = m_newId(),
                        .film = mark.film,
                        .at = m_clock(),
                        .fault = {},
                        .takesBack = mark.id,
                        .note = why};
    mark.id = m_newId();
    mark.takesBack.clear();
    return transact({.what = kCorrectAction, .subject = *film ? (*film)->name : std::string()},
                    {{back, {}}, {mark, {}}});
}

// As it is called in the Cupboard; empty for what is no longer there.
Result<std::string> Book::nameOfThing(const Event& event)
{
    CupboardTouched about;
    about.add(event);
    const auto cupboard = readCupboard(*m_store);
    if (!cupboard) {
        return tl::unexpected(cupboard.error());
    }
    std::string name;
    for (const std::string& id : about.items) {
        if (const auto item = cupboard->item(id)) {
            const auto solution = formulary().solution(item->solution);
            name = item->name.empty() && solution ? solution->name : item->name;
        }
    }
    for (const std::string& id : about.containers) {
        if (const auto* can = cupboard->containers.now(id)) {
            name = can->name;
        }
    }
    return name;
}

// A line of a film gets its own id, and the place of the film's last line.
Result<void> Book::takeUp(FilmRecord& film)
{
    film.id = m_newId();
    if (film.replaces.empty()) {
        return {};
    }
    const auto lines = m_store->filmLines(film.run);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    const std::string first = film.replaces;
    const formulary::GivenAnew given(*lines);
    const auto last = given.standsFor(first);
    if (!last) {
        return refuse({.code = ErrorCode::UnknownId, .field = "replaces", .text = first});
    }
    film.replaces = (*lines)[*last].id;
    for (const std::string& id :
         film.withdrawn ? given.family(first) : std::vector<std::string>()) {
        const auto marks = m_store->marksOf(id);
        if (!marks) {
            return tl::unexpected(marks.error());
        }
        if (!standingMarks(*marks).empty()) {
            return refuse({.code = ErrorCode::Conflict,
                           .field = "film",
                           .text = film.name,
                           .allowed = "a film without marks"});
        }
    }
    return {};
}

Result<void> Book::takeBack(const Action& action, const std::vector<std::string>& events,
                            std::vector<Event> instead, const std::string& why,
                            std::vector<FilmRecord> films)
{
    std::vector<Entry> entries;
    for (const std::string& event : events) {
        entries.push_back({Event{m_newId(), {}, m_clock(), Voided{event, why}}, {}});
    }
    for (Event& event : instead) {
        event.id = m_newId();
        event.entry = 0;
        entries.push_back({std::move(event), {}});
    }
    for (FilmRecord& film : films) { // after what names their run
        entries.push_back({std::move(film), {}});
    }
    return transact(action, [&](Entering& entering, std::int64_t id) {
        return enterWhole(entering, entries, id);
    });
}

// What was taken from the Cupboard for a mixing goes with it.
Result<bool> Book::isTakenFor(const Event& taken, const Event& mixing)
{
    const auto one = rootOf(*m_store, taken);
    const auto other = rootOf(*m_store, mixing);
    if (!one || !other) {
        return tl::unexpected(one ? other.error() : one.error());
    }
    const auto* what = *one ? std::get_if<Taken>(&(*one)->what) : nullptr;
    return what && *other && std::holds_alternative<Mixed>((*other)->what) &&
           what->forBatch == mixing.batch;
}

// Whether an event was taken back already.
Result<bool> Book::isTakenBack(const Event& event)
{
    if (event.batch.empty()) {
        return eventsAbout(*m_store, event).map([&](const std::vector<Event>& about) {
            return takenBack(about).contains(event.id);
        });
    }
    return m_memory.kept(event.batch).map([&](const BookMemory::Kept* kept) {
        return takenBack(kept->entered).contains(event.id);
    });
}

// Of what a deed did to several bottles, or to things of the Cupboard, each is by itself, but for
// what went from one to another.
Result<std::vector<Event>> Book::enteredWith(const std::string& event)
{
    const auto one = m_store->event(event);
    if (!one) {
        return tl::unexpected(one.error());
    }
    if (!*one) {
        return refuse({.code = ErrorCode::UnknownId, .field = "event", .text = event});
    }
    auto all = m_store->eventsWith(event);
    if (!all) {
        return all;
    }
    if (all->empty()) {
        return std::vector{**one};
    }
    const Event& about = **one;
    std::vector<Event> with;
    for (Event& other : *all) {
        if (other.id == event) {
            with.push_back(std::move(other));
            continue;
        }
        const auto half = halfOf(other);
        const bool sameBottle = !about.batch.empty() && other.batch == about.batch;
        Result<bool> goes = sameBottle || (half && half->other() == about.batch);
        if (!*goes && other.batch.empty() && !about.batch.empty()) {
            goes = isTakenFor(other, about);
        }
        const auto gone = goes && *goes ? isTakenBack(other) : Result<bool>(false);
        if (!goes || !gone) {
            return tl::unexpected(goes ? gone.error() : goes.error());
        }
        if (*goes && !*gone) {
            with.push_back(std::move(other));
        }
    }
    return std::holds_alternative<Mixed>(about.what) ? withTakenSince(about, std::move(with))
                                                     : std::move(with);
}

// And what was taken for it at that moment by a correction.
Result<std::vector<Event>> Book::withTakenSince(const Event& mixing, std::vector<Event> with)
{
    const auto items = m_store->itemsTakenFor(mixing.batch);
    if (!items) {
        return tl::unexpected(items.error());
    }
    for (const std::string& item : *items) {
        const auto events = m_store->eventsOnItem(item);
        if (!events) {
            return events;
        }
        const auto gone = takenBack(*events);
        for (const Event& event : *events) {
            const auto* taken = std::get_if<Taken>(&event.what);
            const bool there = std::any_of(
                with.begin(), with.end(), [&](const Event& other) { return other.id == event.id; });
            if (taken && taken->forBatch == mixing.batch && event.at == mixing.at && !there &&
                !gone.contains(event.id)) {
                with.push_back(event);
            }
        }
    }
    return with;
}

std::optional<Action> Book::undoable() { return m_history.nextNamed(ActionMode::Undone); }

std::optional<Action> Book::redoable() { return m_history.nextNamed(ActionMode::Redone); }

Result<void> Book::undo() { return invertLast(ActionMode::Undone); }

Result<void> Book::redo() { return invertLast(ActionMode::Redone); }

Result<void> Book::invertLast(ActionMode mode)
{
    if (auto fine = refresh(); !fine) {
        return tl::unexpected(fine.error());
    }
    while (true) {
        const auto next = m_history.next(mode);
        if (!next) {
            return tl::unexpected(next.error());
        }
        if (!*next) {
            const bool others = mode == ActionMode::Undone && othersHaveDone();
            return refuse({.code = ErrorCode::NothingToUndo, .text = others ? "others" : ""});
        }
        const Action& action = **next;
        bool gone = false;
        auto done = transact(
            {.mode = mode, .what = action.what, .subject = action.subject, .of = action.id},
            [&](Entering& entering, std::int64_t id) -> Result<void> {
                const auto left = m_history.standing(action);
                if (!left) {
                    return tl::unexpected(left.error());
                }
                gone = left->empty(); // others took it back just now
                return gone ? refuse({.code = ErrorCode::AlreadyVoided, .field = "voids"})
                            : enterWhole(entering, inverseOf(*left, now(), m_newId), id);
            });
        if (!gone) {
            return done;
        }
    }
}

} // namespace ullage::ledger
