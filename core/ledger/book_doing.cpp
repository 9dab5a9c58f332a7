// What a person does, as entries; and the opposite of it.
#include "core/ledger/book.h"
#include "core/ledger/deed_events.h"
#include "core/ledger/fillings.h"

#include <algorithm>
#include <unordered_set>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

// A user's events that undo takes back say so; what they say is a code, worded by the application.
constexpr const char* kUndoneReason = "undone";

Event eventOf(const std::string& id, const std::string& batch, const When& when, Happening what)
{
    return {id, batch, when.at, std::move(what), when.airLeft};
}

std::vector<Entry> entriesOf(std::vector<Event> events)
{
    std::vector<Entry> entries;
    for (Event& event : events) {
        entries.push_back({std::move(event), {}});
    }
    return entries;
}

} // namespace

Result<std::string> Book::mix(const NewBatch& batch, When when)
{
    return mix(std::vector{batch}, when).map([](const std::vector<std::string>& ids) {
        return ids.front();
    });
}

Result<std::vector<std::string>> Book::mix(const std::vector<NewBatch>& batches, When when)
{
    std::vector<std::string> ids;
    std::vector<Event> events;
    std::string subject;
    for (const NewBatch& batch : batches) {
        const std::string& id = ids.emplace_back(m_newId());
        subject += (subject.empty() ? "" : ", ") + batch.name;
        const auto mixing = eventsOf(batch, id, when, m_newId);
        events.insert(events.end(), mixing.begin(), mixing.end());
    }
    if (events.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "batch"});
    }
    return transact({.what = "mix", .subject = subject}, entriesOf(std::move(events))).map([&] {
        return ids;
    });
}

Result<std::string> Book::mix(const NewBatch& batch, const formulary::Vessel& into, When when)
{
    if (auto fine = isNew({into, {}}); !fine) {
        return tl::unexpected(fine.error());
    }
    NewBatch filled = batch;
    filled.vessel = into.id;
    const std::string id = m_newId();
    std::vector<Entry> entries{{into, {}}};
    for (Event& event : eventsOf(filled, id, when, m_newId)) {
        entries.push_back({std::move(event), {}});
    }
    return transact({.what = "mix", .subject = batch.name}, entries).map([&] { return id; });
}

Result<std::string> Book::process(const FilmRun& run, Instant at)
{
    if (run.baths.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "batch"});
    }
    const std::string id = m_newId();
    std::string subject;
    for (const Bath& bath : run.baths) {
        const auto same = [&](const Bath& other) { return other.batch == bath.batch; };
        if (std::count_if(run.baths.begin(), run.baths.end(), same) > 1) {
            return refuse({.code = ErrorCode::Conflict,
                           .field = "batch",
                           .text = bath.batch,
                           .allowed = "each bottle once"});
        }
        const auto name = nameOf(bath.batch);
        if (!name) {
            return tl::unexpected(name.error());
        }
        subject += subject.empty() ? *name : ", " + *name;
    }
    for (const RunTopUp& topUp : run.topUps) {
        const auto poured = [&](const Bath& bath) {
            return bath.batch == topUp.batch && !bath.oneShot;
        };
        if (std::none_of(run.baths.begin(), run.baths.end(), poured)) {
            return refuse({.code = ErrorCode::Conflict,
                           .field = "batch",
                           .text = topUp.batch,
                           .allowed = "a bath of this run that is poured back"});
        }
    }
    std::vector<Entry> entries = entriesOf(eventsOf(run, id, at, m_newId));
    if (!run.times.steps.empty()) {
        RunTimes times = run.times;
        times.id = m_newId();
        times.run = id;
        entries.push_back({std::move(times), {}});
    }
    for (FilmRecord film : run.films) {
        film.id = m_newId();
        film.run = id;
        entries.push_back({film, {}});
    }
    return transact({.what = "run-film", .subject = subject}, entries).map([&] { return id; });
}

Result<void> Book::topUp(const std::string& batch, chemistry::Millilitres volume, When when,
                         const std::string& from, const std::string& replenisher)
{
    const auto name = nameOf(batch);
    if (!name) {
        return tl::unexpected(name.error());
    }
    return transact({.what = "top-up", .subject = *name},
                    entriesOf(topUpEvents(batch, {volume, from, replenisher}, when, m_newId)));
}

Result<void> Book::drawOff(const std::string& batch, chemistry::Millilitres volume,
                           const std::string& why, When when)
{
    return record(batch, Drawn{volume, why}, when);
}

Result<void> Book::exchangeBaths(const std::string& first, const std::string& how,
                                 const std::string& second, const std::string& note, When when)
{
    if (first == second) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "second",
                       .text = second,
                       .allowed = kOtherBottleForm});
    }
    const auto names = nameOf(first).and_then([&](const std::string& one) {
        return nameOf(second).map([&](const std::string& other) { return one + ", " + other; });
    });
    if (!names) {
        return tl::unexpected(names.error());
    }
    return transact({.what = "exchange-baths", .subject = *names},
                    entriesOf(exchangeEvents(first, how, second, note, when, m_newId)));
}

Result<void> Book::move(const std::string& batch, const std::string& vessel, When when)
{
    return record(batch, Moved{vessel}, when);
}

Result<void> Book::record(const std::string& batch, const Happening& what, When when)
{
    const auto name = nameOf(batch);
    if (!name) {
        return tl::unexpected(name.error());
    }
    const Event event = eventOf(m_newId(), batch, when, what);
    return transact({.what = std::string(event.kind()), .subject = *name}, {{event, {}}});
}

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
                           const std::string& why)
{
    if (events.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "voids"});
    }
    std::string subject;
    if (!instead.empty()) {
        const auto name = nameOf(instead.front().batch);
        if (!name) {
            return tl::unexpected(name.error());
        }
        subject = *name;
    }
    return takeBack({.what = "correct", .subject = subject}, events, std::move(instead), why);
}

Result<void> Book::takeBack(const Action& action, const std::vector<std::string>& events,
                            std::vector<Event> instead, const std::string& why)
{
    std::vector<Entry> entries;
    for (const std::string& event : events) {
        entries.push_back({eventOf(m_newId(), {}, {m_clock(), {}}, Voided{event, why}), {}});
    }
    for (Event& event : instead) {
        event.id = m_newId();
        event.entry = 0;
        entries.push_back({std::move(event), {}});
    }
    return transact(action, [&](std::int64_t id) { return enterWhole(entries, id); });
}

// Of what a deed did to several bottles each is by itself, but for what went from one to another.
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
        const auto half = halfOf(other);
        if (other.id != event && other.batch != about.batch &&
            !(half && half->other() == about.batch)) {
            continue;
        }
        if (other.id != event && !other.batch.empty()) {
            const auto found = kept(other.batch);
            if (!found) {
                return tl::unexpected(found.error());
            }
            if (takenBack((*found)->entered).contains(other.id)) {
                continue;
            }
        }
        with.push_back(std::move(other));
    }
    return with;
}

Result<void> Book::markFilms(const std::vector<std::string>& films, FilmFault fault,
                             const std::string& note)
{
    std::vector<Entry> entries;
    for (const std::string& film : films) {
        entries.push_back(
            {FilmMark{.id = m_newId(), .film = film, .at = m_clock(), .fault = fault, .note = note},
             {}});
    }
    if (entries.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "film"});
    }
    return transact({.what = "mark-film"}, entries);
}

Result<void> Book::takeMarksBack(const std::vector<FilmMark>& marks, const std::string& why)
{
    std::vector<Entry> entries;
    for (const FilmMark& mark : marks) {
        entries.push_back({FilmMark{.id = m_newId(),
                                    .film = mark.film,
                                    .at = m_clock(),
                                    .fault = {},
                                    .takesBack = mark.id,
                                    .note = why},
                           {}});
    }
    if (entries.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "takes_back"});
    }
    return transact({.what = "unmark-film"}, entries);
}

Result<void> Book::isNew(const Entry& entry)
{
    const auto known = m_store->sameContent(entry);
    if (!known) {
        return tl::unexpected(known.error());
    }
    if (*known) {
        return refuse({.code = ErrorCode::IdTaken, .field = "id", .text = entry.id()});
    }
    return {};
}

Result<void> Book::addNew(const Entry& entry)
{
    if (auto fine = isNew(entry); !fine) {
        return fine;
    }
    return transact({.mode = ActionMode::Apart, .what = std::string(entry.type())}, {entry});
}

Result<void> Book::add(const formulary::Solution& solution) { return addNew({solution, {}}); }

Result<void> Book::add(const formulary::Vessel& vessel) { return addNew({vessel, {}}); }

Result<void> Book::add(const formulary::DevelopmentFigure& figure) { return addNew({figure, {}}); }

void Book::rememberAction(const Action& action)
{
    const auto drop = [](std::vector<Action>& stack, std::int64_t id) {
        std::erase_if(stack, [&](const Action& other) { return other.id == id; });
    };
    if (!action.seat.empty() && action.seat != m_seat) {
        m_othersDid = m_othersDid || action.mode == ActionMode::Done;
        return;
    }
    switch (action.mode) {
    case ActionMode::Done:
        m_undo.push_back(action);
        m_redo.clear();
        break;
    case ActionMode::Undone:
        drop(m_undo, action.of);
        m_redo.push_back(action);
        break;
    case ActionMode::Redone:
        drop(m_redo, action.of);
        m_undo.push_back(action);
        break;
    case ActionMode::Apart:
        break;
    }
}

std::optional<Action> Book::undoable() { return next(m_undo); }

std::optional<Action> Book::redoable() { return next(m_redo); }

// One that cannot be read is named all the same: undo says why.
std::optional<Action> Book::next(std::vector<Action>& actions)
{
    (void)passOverTakenBack(actions);
    return actions.empty() ? std::nullopt : std::optional(actions.back());
}

// What was taken back meanwhile, from the day book or by others, is left out.
Result<Book::Standing> Book::standing(const Action& action)
{
    auto marks = m_store->marksOfAction(action.id);
    if (!marks) {
        return tl::unexpected(marks.error());
    }
    auto events = m_store->eventsOfAction(action.id);
    if (!events) {
        return tl::unexpected(events.error());
    }
    std::map<std::string, std::unordered_set<std::string>> ofFilm;
    for (const FilmMark& mark : *marks) {
        if (!ofFilm.contains(mark.film)) {
            const auto entered = m_store->marksOf(mark.film);
            if (!entered) {
                return tl::unexpected(entered.error());
            }
            ofFilm[mark.film] = takenBack(*entered);
        }
    }
    std::map<std::string, std::unordered_set<std::string>> ofBatch;
    for (const Event& event : *events) {
        if (!ofBatch.contains(event.batch)) {
            const auto batch = kept(event.batch);
            if (!batch) {
                return tl::unexpected(batch.error());
            }
            ofBatch[event.batch] = takenBack((*batch)->entered);
        }
    }
    std::erase_if(*marks,
                  [&](const FilmMark& mark) { return ofFilm[mark.film].contains(mark.id); });
    std::erase_if(*events,
                  [&](const Event& event) { return ofBatch[event.batch].contains(event.id); });
    return Standing{std::move(*marks), std::move(*events)};
}

// Voids everything that stands of an action, last first. Redoing an undo voids its voidings: so the
// events stand again under their own ids, where they stood among the others of their instant, and
// whatever named them (a later voiding, a film's run) still does.
std::vector<Entry> Book::inverse(const Standing& standing) const
{
    std::vector<Entry> entries;
    for (auto mark = standing.marks.rbegin(); mark != standing.marks.rend(); ++mark) {
        entries.push_back({FilmMark{.id = m_newId(),
                                    .film = mark->film,
                                    .at = m_clock(),
                                    .fault = {},
                                    .takesBack = mark->id,
                                    .note = kUndoneReason},
                           {}});
    }
    for (auto event = standing.events.rbegin(); event != standing.events.rend(); ++event) {
        const Voided taken{event->id, kUndoneReason};
        entries.push_back({eventOf(m_newId(), event->batch, {m_clock(), {}}, taken), {}});
    }
    return entries;
}

Result<void> Book::passOverTakenBack(std::vector<Action>& actions)
{
    while (!actions.empty()) {
        const auto left = standing(actions.back());
        if (!left) {
            return tl::unexpected(left.error());
        }
        if (!left->empty()) {
            break;
        }
        actions.pop_back();
    }
    return {};
}

Result<void> Book::invertLast(std::vector<Action>& actions, ActionMode mode)
{
    if (auto fine = refresh(); !fine) {
        return tl::unexpected(fine.error());
    }
    while (true) {
        if (auto fine = passOverTakenBack(actions); !fine) {
            return fine;
        }
        if (actions.empty()) {
            const bool others = mode == ActionMode::Undone && m_othersDid;
            return refuse({.code = ErrorCode::NothingToUndo, .text = others ? "others" : ""});
        }
        const Action action = actions.back();
        bool gone = false;
        auto done = transact(
            {.mode = mode, .what = action.what, .subject = action.subject, .of = action.id},
            [&](std::int64_t id) -> Result<void> {
                const auto left = standing(action);
                if (!left) {
                    return tl::unexpected(left.error());
                }
                gone = left->empty(); // others took it back just now
                return gone ? refuse({.code = ErrorCode::AlreadyVoided, .field = "voids"})
                            : enterWhole(inverse(*left), id);
            });
        if (!gone) {
            return done;
        }
    }
}

Result<void> Book::undo() { return invertLast(m_undo, ActionMode::Undone); }

Result<void> Book::redo() { return invertLast(m_redo, ActionMode::Redone); }

} // namespace ullage::ledger
