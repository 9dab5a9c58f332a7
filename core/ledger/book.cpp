#include "core/ledger/book.h"

#include "core/ledger/cupboard_check.h"
#include "core/ledger/deed_events.h"
#include "core/ledger/entering.h"
#include "core/ledger/fillings.h"
#include "core/ledger/named_error.h"
#include "core/ledger/typed_text.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Instant;

namespace
{

constexpr std::int64_t kUnread = -1; // no store's entry number

std::vector<Entry> entriesOf(std::vector<Event> events)
{
    std::vector<Entry> entries;
    for (Event& event : events) {
        entries.push_back({std::move(event), {}});
    }
    return entries;
}

} // namespace

Book::Book(StorePort& store, Clock clock, IdMaker newId)
    : m_store(&store), m_clock(std::move(clock)), m_newId(std::move(newId)), m_memory(store),
      m_check(store, m_memory, m_clock), m_history(store, m_memory)
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
    if (auto fine = m_memory.read(); !fine) {
        return fine;
    }
    auto newest = m_store->newest();
    if (!newest) {
        return tl::unexpected(newest.error());
    }
    if (auto fine = m_history.read(); !fine) {
        return fine;
    }
    m_newest = std::move(*newest);
    return {};
}

Result<void> Book::sitAt(std::string seat)
{
    m_history.sitAt(std::move(seat));
    return m_history.read();
}

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

Result<Batch> Book::batch(const std::string& id, Instant at) { return m_memory.batch(id, at); }

Result<std::vector<Batch>> Book::batches(Instant at, bool ended, std::vector<Unread>* unread)
{
    return m_memory.batches(at, ended, unread);
}

Result<std::vector<Batch>> Book::batchesSince(Instant from, Instant at, formulary::Role role,
                                              std::vector<Unread>* unread)
{
    return m_memory.batchesSince(from, at, role, unread);
}

Result<std::vector<StripReading>> Book::strips(const std::string& solution, Instant at,
                                               std::size_t most)
{
    return m_memory.strips(solution, at, most);
}

Result<std::vector<Event>> Book::events(const std::string& batch)
{
    return m_store->eventsOf(batch);
}

Result<std::vector<Event>> Book::connectedEvents(const std::string& batch)
{
    return m_memory.connectedEvents(batch);
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
Result<void> Book::transact(Action action, const Filling& fill)
{
    if (auto fine = m_store->begin(); !fine) {
        return fine;
    }
    action.seat = m_history.seat();
    const auto work = [&]() -> Result<void> {
        if (auto fine = refresh(); !fine) {
            return tl::unexpected(fine.error());
        }
        const auto id = m_store->put(action);
        if (!id) {
            return tl::unexpected(id.error());
        }
        action.id = *id;
        Entering entering(*m_store, m_memory, m_check, m_newest.number);
        auto entered = fill(entering, action.id).and_then([&] { return entering.finish(); });
        if (!entered) {
            return entered;
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
        // A donor that is refused may be any bottle of the book, so it is looked up there.
        Error error = std::move(done.error());
        if (const auto known = m_store->eventsOf(error.subject)) {
            error = withName(std::move(error), *known);
        }
        if (const auto cupboard = readCupboard(*m_store)) {
            error = withName(std::move(error), *cupboard, formulary());
        }
        return refuse(std::move(error));
    }
    m_history.remember(action);
    return {};
}

Result<void> Book::transact(Action action, const std::vector<Entry>& entries)
{
    return transact(std::move(action), [&](Entering& entering, std::int64_t id) {
        return enterAll(entering, entries, id);
    });
}

Result<void> Book::enterAll(Entering& entering, const std::vector<Entry>& entries,
                            std::int64_t action) const
{
    for (Entry entry : entries) {
        if (auto* event = std::get_if<Event>(&entry.what)) {
            event->by = m_person;
        } else if (auto* mark = std::get_if<FilmMark>(&entry.what)) {
            mark->by = m_person;
        }
        if (auto fine = checkTyped(entry).and_then([&] { return entering.enter(entry, action); });
            !fine) {
            return fine;
        }
    }
    return {};
}

Result<void> Book::enterWhole(Entering& entering, const std::vector<Entry>& entries,
                              std::int64_t action)
{
    m_memory.foldLater(true);
    const auto fine = enterAll(entering, entries, action);
    m_memory.foldLater(false);
    return fine ? entering.foldWhole(entries) : fine;
}

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
        const auto name = m_memory.nameOf(bath.batch);
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
    const auto name = m_memory.nameOf(batch);
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

Result<void> Book::exchangeBaths(const std::string& first, const Discarded& going,
                                 const std::string& second, const std::string& note, When when)
{
    if (first == second) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "second",
                       .text = second,
                       .allowed = kOtherBottleForm});
    }
    const auto names = m_memory.nameOf(first).and_then([&](const std::string& one) {
        return m_memory.nameOf(second).map(
            [&](const std::string& other) { return one + ", " + other; });
    });
    if (!names) {
        return tl::unexpected(names.error());
    }
    return transact({.what = "exchange-baths", .subject = *names},
                    entriesOf(exchangeEvents(first, going, second, note, when, m_newId)));
}

Result<void> Book::move(const std::string& batch, const std::string& vessel, When when)
{
    return record(batch, Moved{vessel}, when);
}

Result<void> Book::record(const std::string& batch, const Happening& what, When when)
{
    const auto name = m_memory.nameOf(batch);
    if (!name) {
        return tl::unexpected(name.error());
    }
    const Event event{m_newId(), batch, when.at, what, when.airLeft};
    return transact({.what = std::string(event.kind()), .subject = *name}, {{event, {}}});
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

} // namespace ullage::ledger
