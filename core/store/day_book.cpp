#include "core/store/day_book.h"

#include "core/store/each_row.h"
#include "core/store/journal_codec.h"

#include <algorithm>

namespace ullage::store
{

using namespace ledger;

namespace
{

constexpr int kSlice = 20'000; // some tens of milliseconds of searching

chemistry::Instant instant(std::int64_t milliseconds)
{
    return chemistry::Instant(std::chrono::milliseconds(milliseconds));
}

// A mark in the shape of an event: what rows are sorted, timed and told apart by.
Event asEvent(const FilmMark& mark)
{
    return {mark.id, {}, mark.at, Noted{mark.note}, {}, mark.by};
}

// What may be told of a row that is not what was entered: its columns say when and where.
DayEntry faultyEntry(const DayRow& row, Error fault)
{
    DayEntry entry;
    entry.key = row.key();
    entry.event = {row.id, row.batch, instant(row.atMs), Noted{}, {}, {}};
    entry.fault = std::move(fault);
    return entry;
}

// Whether it is the row that is faulty, not the store.
bool isOfTheRow(const Error& error)
{
    return error.code != ErrorCode::StoreFailed && error.code != ErrorCode::Cancelled;
}

TakenBack takingBack(const FilmMark& by) { return {by.id, by.at, by.note, by.by}; }

Result<Event> provenEvent(LineProof& proof, const Rows& row)
{
    auto entry = proof.entry(row);
    if (!entry) {
        return tl::unexpected(entry.error());
    }
    auto* event = std::get_if<Event>(&entry->what);
    if (!event) {
        return refuse(storeFailure(QStringLiteral("an event's line is no event")));
    }
    return std::move(*event);
}

} // namespace

Result<DayEntry> dayEntry(const DayRow& row)
{
    auto read = decodeStored(row.body);
    if (!read) {
        return tl::unexpected(read.error());
    }
    DayEntry entry;
    entry.key = row.key();
    if (auto* event = std::get_if<Event>(&read->what)) {
        entry.event = std::move(*event);
        entry.event.batch = row.batch;
    } else if (auto* mark = std::get_if<FilmMark>(&read->what)) {
        entry.event = asEvent(*mark);
        entry.mark = std::move(*mark);
    } else {
        return refuse(storeFailure(QStringLiteral("a row that nothing happened in")));
    }
    return entry;
}

namespace
{

const std::string& runOf(const Event& event)
{
    static const std::string none;
    const auto* processed = std::get_if<Processed>(&event.what);
    return processed ? processed->run : none;
}

} // namespace

DayBook::DayBook(SqlStore& store, SearchIndex* index)
    : m_store(store), m_index(index), m_texts(store), m_proof(store.connection()),
      m_name(store.connection(), QStringLiteral("SELECT name FROM batch WHERE id = ?")),
      m_mixing(store.connection(), LineProof::select("e.batch = ? AND e.kind = 'mixed' "
                                                     "ORDER BY e.seq DESC LIMIT 1")),
      m_voidings(store.connection(), LineProof::select("e.voids = ? ORDER BY e.seq DESC")),
      m_ofRun(store.connection(), LineProof::select("e.run = ? ORDER BY e.seq")),
      // Skips from one name to the next; there are few, whatever the number of entries.
      m_people(store.connection(),
               QStringLiteral("WITH RECURSIVE one(name) AS (SELECT min(person) FROM entry WHERE "
                              "person IS NOT NULL UNION ALL SELECT (SELECT min(person) FROM entry "
                              "WHERE person > one.name) FROM one WHERE one.name IS NOT NULL) "
                              "SELECT name FROM one WHERE name IS NOT NULL")),
      m_bottles(store.connection(),
                QStringLiteral("SELECT id, name, solution, mixed_ms, ended_ms FROM batch "
                               "ORDER BY mixed_ms DESC, id LIMIT ?")),
      m_lines(store.connection(),
              QStringLiteral("SELECT seq, body FROM entry WHERE type = ? AND id = ?"))
{
}

Result<std::optional<DayKey>> DayBook::sliceEnd(const DayFilter& filter,
                                                const std::optional<DayKey>& after)
{
    const Query query = daySliceEnd(filter, after, kSlice);
    Statement statement(m_store.connection(), query.sql);
    std::optional<DayKey> end;
    return eachRow(statement.runWith(query.values),
                   [&](const Rows& row) -> Result<void> {
                       end = DayKey{row.number(0), row.number(1)};
                       return {};
                   })
        .map([&] { return end; });
}

Result<std::vector<DayRow>> DayBook::rows(const Query& query)
{
    Statement statement(m_store.connection(), query.sql);
    std::vector<DayRow> found;
    return eachRow(statement.runWith(query.values),
                   [&](const Rows& row) -> Result<void> {
                       found.push_back(dayRow(row));
                       return {};
                   })
        .map([&] { return std::move(found); });
}

Result<DayPage> DayBook::page(const DayFilter& filter, const std::optional<DayKey>& after,
                              int limit, const Stop& stop)
{
    if (!filter.words.empty()) {
        return search(filter, after, limit, stop, [this](const DayRow& row) { return whole(row); });
    }
    DayPage page;
    const auto read = rows(dayRows(filter, after, limit));
    if (!read) {
        return saysDamaged(read.error()) ? pageAround(filter, after, limit, stop)
                                         : tl::unexpected(read.error());
    }
    for (const DayRow& row : *read) {
        auto entry = whole(row);
        if (!entry) {
            return saysDamaged(entry.error()) ? pageAround(filter, after, limit, stop)
                                              : tl::unexpected(entry.error());
        }
        page.entries.push_back(std::move(*entry));
    }
    page.more = static_cast<int>(read->size()) == limit;
    page.last = page.entries.empty() ? after : page.entries.back().key;
    return page;
}

Result<DayTotals> DayBook::count(const DayFilter& filter, const Stop& stop)
{
    if (!filter.words.empty()) {
        return countFound(filter, stop);
    }
    DayTotals totals;
    std::optional<DayKey> after;
    while (true) {
        if (stop && stop()) {
            totals.stopped = true;
            return totals;
        }
        const auto end = sliceEnd(filter, after);
        if (!end && saysDamaged(end.error())) {
            totals.damaged = true;
            return totals;
        }
        if (!end) {
            return tl::unexpected(end.error());
        }
        const Query query = dayCount(filter, after, *end);
        Statement statement(m_store.connection(), query.sql);
        auto fine = eachRow(statement.runWith(query.values), [&](const Rows& row) -> Result<void> {
            totals.entries += static_cast<int>(row.number(0));
            if (!row.isNull(1)) {
                totals.oldest = instant(row.number(1));
            }
            return {};
        });
        if (!fine && saysDamaged(fine.error())) {
            totals.damaged = true;
            return totals;
        }
        if (!fine) {
            return tl::unexpected(fine.error());
        }
        if (!*end) {
            return totals;
        }
        after = *end;
    }
}

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
        entry.films = {**film};
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

// A run that was corrected is in the book twice under its one id: what was taken back of a bottle
// gives way to what came in its place.
void showCorrected(DayEntry& entry, const std::vector<Event>& events)
{
    const auto standing = [&](const DayBath& bath) {
        return std::any_of(entry.baths.begin(), entry.baths.end(), [&](const DayBath& other) {
            return !other.taken && other.batch == bath.batch;
        });
    };
    std::vector<std::string> gone;
    for (const DayBath& bath : entry.baths) {
        if (bath.taken && standing(bath)) {
            gone.push_back(bath.event);
        }
    }
    const auto isGone = [&](const std::string& event) {
        return std::find(gone.begin(), gone.end(), event) != gone.end();
    };
    if (isGone(entry.event.id)) {
        const auto instead = std::find_if(events.begin(), events.end(), [&](const Event& event) {
            return event.batch == entry.event.batch && !isGone(event.id);
        });
        if (instead != events.end()) {
            entry.event = *instead;
        }
    }
    std::erase_if(entry.baths, [&](const DayBath& bath) { return isGone(bath.event); });
}

} // namespace

Result<void> DayBook::completeRun(DayEntry& entry, const std::string& run)
{
    std::vector<Event> events; // of its baths
    auto fine = eachRow(m_ofRun.run(run), [&](const Rows& row) -> Result<void> {
        auto one = m_proof.entry(row);
        if (!one) {
            return tl::unexpected(one.error());
        }
        if (const auto* film = std::get_if<FilmRecord>(&one->what)) {
            entry.films.push_back(*film);
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
    for (const FilmRecord& film : entry.films) {
        const auto entered = m_store.marksOf(film.id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        entry.marks.push_back(standingMarks(*entered));
    }
    bool all = true;
    for (DayBath& bath : entry.baths) {
        auto name = nameOf(bath.batch);
        auto bathTaken = takenBack(bath.event);
        if (!name || !bathTaken) {
            return tl::unexpected(name ? bathTaken.error() : name.error());
        }
        bath.name = std::move(*name);
        bath.taken = std::move(*bathTaken);
        all = all && bath.taken.has_value();
    }
    if (!all) {
        showCorrected(entry, events);
        entry.taken.reset();
    }
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
                       const auto event = provenEvent(m_proof, row);
                       if (event) {
                           name = std::get<Mixed>(event->what).name;
                       }
                       return event.map([](const Event&) {});
                   })
        .map([&] { return name.empty() ? batch : name; });
}

// As the fold has it: a voiding that was itself taken back takes nothing back.
Result<std::optional<TakenBack>> DayBook::takenBack(const std::string& event)
{
    std::vector<Event> voidings;
    auto fine = eachRow(m_voidings.run(event), [&](const Rows& row) -> Result<void> {
        auto one = provenEvent(m_proof, row);
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
            return TakenBack{voiding.id, voiding.at, what.why, voiding.by};
        }
    }
    return std::nullopt;
}

} // namespace ullage::store
