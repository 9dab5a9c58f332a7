// One entry of the day book with all that is shown of it.
#include "core/store/day_book.h"

#include "core/ledger/cupboard_check.h"
#include "core/ledger/film_lines.h"
#include "core/store/each_row.h"
#include "core/store/film_reader.h"
#include "core/store/stored_moment.h"

#include <algorithm>
#include <map>

namespace ullage::store
{

using namespace ledger;

namespace
{

// What may be told of a row that is not what was entered: its columns say when and where.
DayEntry faultyEntry(const DayRow& row, Error fault)
{
    DayEntry entry;
    entry.key = row.key();
    entry.event = {row.id, row.batch, instantOf(row.atMs), Noted{}, {}, {}};
    entry.fault = std::move(fault);
    return entry;
}

// Whether it is the row that is faulty, not the store.
bool isOfTheRow(const Error& error)
{
    return error.code != ErrorCode::StoreFailed && error.code != ErrorCode::Cancelled;
}

TakenBack takingBack(const FilmMark& by) { return {by.id, by.at, by.note, by.by}; }

const std::string& runOf(const Event& event)
{
    static const std::string none;
    const auto* processed = std::get_if<Processed>(&event.what);
    return processed ? processed->run : none;
}

} // namespace

Result<DayEntry> DayBook::proven(const DayRow& row)
{
    auto fault = m_proof.faultOf(row.seq);
    if (!fault) {
        return tl::unexpected(fault.error());
    }
    if (*fault) {
        return refuse(std::move(**fault));
    }
    auto entry = dayEntry(row);
    if (!entry && isOfTheRow(entry.error())) {
        entry.error().entry = row.seq;
        entry.error().entryType = row.kind == "film-mark" ? "film-mark" : "event";
        entry.error().subject = row.id;
    }
    return entry;
}

// One bad line must not hide the others.
Result<DayEntry> DayBook::whole(const DayRow& row)
{
    auto entry = proven(row);
    auto fine = entry ? complete(*entry) : tl::unexpected(entry.error());
    if (fine || !isOfTheRow(fine.error())) {
        return fine.and_then([&] { return std::move(entry); });
    }
    DayEntry faulty = faultyEntry(row, std::move(fine.error()));
    const auto name = row.batch.empty() ? Result<std::string>() : nameOf(row.batch);
    faulty.name = name.value_or(row.batch);
    return faulty;
}

Result<void> DayBook::completeMark(DayEntry& entry)
{
    const auto film = m_store.film(entry.mark->film);
    if (!film) {
        return tl::unexpected(film.error());
    }
    if (*film) {
        const auto lines = m_store.filmLines((*film)->run);
        if (!lines) {
            return tl::unexpected(lines.error());
        }
        entry.films = {filmNow(*lines, entry.mark->film).film};
    }
    const auto entered = m_store.marksOf(entry.mark->film);
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    const auto taken = ledger::takenBack(*entered);
    for (const FilmMark& other : *entered) {
        if (other.takesBack == entry.mark->id && !taken.contains(other.id)) {
            entry.taken = takingBack(other);
        }
    }
    return {};
}

Result<void> DayBook::complete(DayEntry& entry)
{
    if (entry.mark) {
        return completeMark(entry);
    }
    if (!entry.event.batch.empty()) {
        auto name = nameOf(entry.event.batch);
        if (!name) {
            return tl::unexpected(name.error());
        }
        entry.name = std::move(*name);
    } else if (auto thing = thingOf(entry.event)) {
        entry.thing = std::move(*thing);
    } else {
        return tl::unexpected(thing.error());
    }
    auto taken = takenBack(entry.event.id);
    if (!taken) {
        return tl::unexpected(taken.error());
    }
    entry.taken = std::move(*taken);
    const std::string& run = runOf(entry.event);
    return run.empty() ? Result<void>{} : completeRun(entry, run);
}

namespace
{

// Whether one bath was entered in the place of the other: it stands, or was taken back later, and
// either is in the same bottle or was entered by another deed.
bool isInsteadOf(const DayBath& other, const DayBath& bath)
{
    const bool outlives = !other.taken || (bath.taken && other.taken->entry > bath.taken->entry);
    return bath.taken && outlives && (other.batch == bath.batch || other.action != bath.action);
}

// A run that was corrected is in the book twice under its one id: what was taken back gives way to
// what came in its place.
void showCorrected(DayEntry& entry, const std::vector<Event>& events)
{
    std::vector<std::string> gone;
    for (const DayBath& bath : entry.baths) {
        if (std::any_of(entry.baths.begin(), entry.baths.end(),
                        [&](const DayBath& other) { return isInsteadOf(other, bath); })) {
            gone.push_back(bath.event);
        }
    }
    const auto isGone = [&](const std::string& event) {
        return std::find(gone.begin(), gone.end(), event) != gone.end();
    };
    std::erase_if(entry.baths, [&](const DayBath& bath) { return isGone(bath.event); });
    const bool stands = std::any_of(entry.baths.begin(), entry.baths.end(),
                                    [](const DayBath& bath) { return !bath.taken; });
    if (!stands) {
        return; // it is shown where it was entered first
    }
    entry.taken.reset();
    if (!isGone(entry.event.id)) {
        return;
    }
    const auto instead = [&](const auto& suits) {
        return std::find_if(events.begin(), events.end(),
                            [&](const Event& event) { return !isGone(event.id) && suits(event); });
    };
    auto found = instead([&](const Event& event) { return event.batch == entry.event.batch; });
    if (found == events.end()) {
        found = instead([](const Event&) { return true; });
    }
    if (found != events.end()) {
        entry.event = *found;
    }
}

} // namespace

Result<void> DayBook::completeRun(DayEntry& entry, const std::string& run)
{
    std::vector<Event> events; // of its baths
    std::vector<FilmRecord> films;
    auto fine = eachRow(m_ofRun.run(run), [&](const Rows& row) -> Result<void> {
        auto one = m_proof.entry(row);
        if (!one) {
            return tl::unexpected(one.error());
        }
        if (const auto* film = std::get_if<FilmRecord>(&one->what)) {
            films.push_back(*film);
        } else if (const auto* times = std::get_if<RunTimes>(&one->what)) {
            entry.times = *times;
        } else if (const auto* event = one->event()) {
            entry.baths.push_back({event->id, row.text(LineProof::kBatch), {}, {}});
            events.push_back(*event);
        }
        return {};
    });
    if (!fine) {
        return fine;
    }
    for (FilmNow& now : filmsNow(films)) {
        auto marks = marksOf(m_store, now.ids);
        if (!marks) {
            return tl::unexpected(marks.error());
        }
        entry.films.push_back(std::move(now.film));
        entry.marks.push_back(std::move(*marks));
    }
    std::map<std::string, std::int64_t> actions;
    fine = eachRow(m_actionsOfRun.run(run), [&](const Rows& row) -> Result<void> {
        actions[row.text(0)] = row.number(1);
        return {};
    });
    if (!fine) {
        return fine;
    }
    for (DayBath& bath : entry.baths) {
        auto name = nameOf(bath.batch);
        auto bathTaken = takenBack(bath.event);
        if (!name || !bathTaken) {
            return tl::unexpected(name ? bathTaken.error() : name.error());
        }
        bath.name = std::move(*name);
        bath.taken = std::move(*bathTaken);
        bath.action = actions[bath.event];
    }
    showCorrected(entry, events);
    return {};
}

Result<std::string> DayBook::nameOf(const std::string& batch)
{
    std::string name;
    auto fine = eachRow(m_name.run(batch), [&](const Rows& row) -> Result<void> {
        name = row.text(0);
        return {};
    });
    if (!fine || !name.empty()) {
        return fine.map([&] { return name; });
    }
    // A batch whose mixing was taken back stands in no table any more.
    return eachRow(m_mixing.run(batch),
                   [&](const Rows& row) -> Result<void> {
                       const auto event = m_proof.of<Event>(row);
                       if (event) {
                           name = std::get<Mixed>(event->what).name;
                       }
                       return event.map([](const Event&) {});
                   })
        .map([&] { return name.empty() ? batch : name; });
}

// As it was when it happened: what was given anew later has a line of its own.
Result<std::optional<Entry>> DayBook::thingOf(const Event& event)
{
    CupboardTouched touched;
    touched.add(event);
    std::optional<Entry> thing;
    for (const auto* ids : {&touched.items, &touched.containers}) {
        if (ids->empty()) {
            continue;
        }
        auto fine = eachRow(m_thing.run(*ids->begin()), [&](const Rows& row) -> Result<void> {
            auto entry = m_proof.entry(row);
            if (!entry) {
                return tl::unexpected(entry.error());
            }
            thing = std::move(*entry);
            return {};
        });
        if (!fine) {
            return tl::unexpected(fine.error());
        }
    }
    return thing;
}

// As the fold has it: a voiding that was itself taken back takes nothing back.
Result<std::optional<TakenBack>> DayBook::takenBack(const std::string& event)
{
    std::vector<Event> voidings;
    auto fine = eachRow(m_voidings.run(event), [&](const Rows& row) -> Result<void> {
        auto one = m_proof.of<Event>(row);
        if (!one) {
            return tl::unexpected(one.error());
        }
        voidings.push_back(std::move(*one));
        return {};
    });
    if (!fine) {
        return tl::unexpected(fine.error());
    }
    for (const Event& voiding : voidings) {
        const auto undone = takenBack(voiding.id);
        if (!undone) {
            return undone;
        }
        if (!*undone) {
            const auto& what = std::get<Voided>(voiding.what);
            return TakenBack{voiding.id, voiding.at, what.why, voiding.by, voiding.entry};
        }
    }
    return std::nullopt;
}

} // namespace ullage::store
