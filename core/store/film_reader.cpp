#include "core/store/film_reader.h"

#include "core/ledger/connected_events.h"
#include "core/ledger/film_lines.h"
#include "core/store/each_row.h"

#include <algorithm>
#include <map>
#include <set>

namespace ullage::store
{

using namespace ledger;

namespace
{

std::int64_t milliseconds(chemistry::Instant at) { return at.time_since_epoch().count(); }

// A run as its lines tell of it.
struct RunLines {
    std::string run;
    std::vector<FilmRecord> films;
    std::vector<Event> baths; ///< those taken back too
    std::optional<RunTimes> times;
};

// A bottle's events, and what it was before those asked for.
struct BottleThen {
    std::vector<Event> entered;
    std::map<std::string, Outlook> before;
};

Result<RunLines> readRun(LineProof& proof, Statement& ofRun, const std::string& run)
{
    RunLines lines;
    lines.run = run;
    return eachRow(ofRun.run(run),
                   [&](const Rows& row) -> Result<void> {
                       auto entry = proof.entry(row);
                       if (!entry) {
                           return tl::unexpected(entry.error());
                       }
                       if (auto* film = std::get_if<FilmRecord>(&entry->what)) {
                           lines.films.push_back(std::move(*film));
                       } else if (auto* times = std::get_if<RunTimes>(&entry->what)) {
                           lines.times = std::move(*times);
                       } else if (auto* event = std::get_if<Event>(&entry->what)) {
                           lines.baths.push_back(std::move(*event));
                       }
                       return {};
                   })
        .map([&] { return std::move(lines); });
}

std::vector<FilmTrace> newestFirst(std::vector<FilmTrace> films)
{
    std::stable_sort(films.begin(), films.end(),
                     [](const FilmTrace& a, const FilmTrace& b) { return a.at > b.at; });
    return films;
}

template <class Gone>
Result<std::vector<FilmTrace>> without(Result<std::vector<FilmTrace>> films, Gone gone)
{
    if (films) {
        std::erase_if(*films, gone);
        return newestFirst(std::move(*films));
    }
    return films;
}

bool takenBackWhole(const FilmTrace& film) { return film.baths.empty(); }

} // namespace

Result<std::vector<FilmMark>> marksOf(SqlStore& store, const std::vector<std::string>& ids)
{
    std::vector<FilmMark> all;
    for (const std::string& id : ids) {
        const auto marks = store.marksOf(id);
        if (!marks) {
            return marks;
        }
        all.insert(all.end(), marks->begin(), marks->end());
    }
    return standingMarks(all);
}

FilmReader::FilmReader(SqlStore& store, const formulary::Formulary& formulary)
    : m_store(store), m_formulary(formulary), m_proof(store.connection()),
      m_ofRun(store.connection(), LineProof::select("e.run = ? ORDER BY e.seq")),
      m_runsOfBatch(store.connection(),
                    QStringLiteral("SELECT run FROM entry WHERE batch = ? AND +kind = 'processed' "
                                   "AND run IS NOT NULL ORDER BY at_ms DESC, seq DESC")),
      m_runsBetween(store.connection(),
                    QStringLiteral("SELECT run FROM entry WHERE kind = 'processed' AND at_ms >= ? "
                                   "AND at_ms < ? AND +run IS NOT NULL "
                                   "ORDER BY at_ms DESC, seq DESC")),
      m_runsMarked(store.connection(),
                   QStringLiteral("SELECT f.run FROM entry m JOIN entry f ON f.type = 'film' AND "
                                  "f.id = m.film WHERE m.kind = 'film-mark' "
                                  "ORDER BY m.at_ms DESC, m.seq DESC"))
{
}

Result<std::vector<std::string>> FilmReader::runs(Result<Rows> rows)
{
    std::vector<std::string> found;
    std::set<std::string> seen;
    return eachRow(std::move(rows),
                   [&](const Rows& row) -> Result<void> {
                       if (seen.insert(row.text(0)).second) {
                           found.push_back(row.text(0));
                       }
                       return {};
                   })
        .map([&] { return std::move(found); });
}

Result<std::vector<FilmTrace>> FilmReader::traces(const std::vector<std::string>& runs)
{
    std::vector<RunLines> all;
    std::map<std::string, std::set<std::string>> wanted; // bottle → events
    for (const std::string& run : runs) {
        auto lines = readRun(m_proof, m_ofRun, run);
        if (!lines) {
            return tl::unexpected(lines.error());
        }
        for (const Event& bath : lines->baths) {
            wanted[bath.batch].insert(bath.id);
        }
        all.push_back(std::move(*lines));
    }
    std::map<std::string, BottleThen> bottles;
    for (const auto& [batch, events] : wanted) {
        auto entered = connectedEvents(m_store, batch);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        auto before = outlooksBefore(*entered, events, m_formulary);
        if (!before) {
            return tl::unexpected(before.error());
        }
        bottles[batch] = {std::move(*entered), std::move(*before)};
    }
    std::vector<FilmTrace> films;
    for (const RunLines& lines : all) {
        FilmTrace whole;
        whole.times = lines.times;
        for (const Event& bath : lines.baths) {
            const BottleThen& bottle = bottles[bath.batch];
            if (!whole.times) {
                whole.times = timesOfRun(bottle.entered, lines.run);
            }
            const auto before = bottle.before.find(bath.id);
            if (before == bottle.before.end()) {
                continue; // taken back
            }
            if (whole.baths.empty()) {
                whole.at = bath.at;
                whole.by = bath.by;
            }
            whole.baths.push_back({bath.id, std::get<Processed>(bath.what), before->second});
        }
        for (FilmNow& now : filmsNow(lines.films)) {
            auto marks = marksOf(m_store, now.ids);
            if (!marks) {
                return tl::unexpected(marks.error());
            }
            films.push_back(whole);
            films.back().film = std::move(now.film);
            films.back().marks = std::move(*marks);
        }
    }
    return films;
}

Result<std::optional<FilmTrace>> FilmReader::film(const std::string& id)
{
    const auto record = m_store.film(id);
    if (!record) {
        return tl::unexpected(record.error());
    }
    if (!*record) {
        return std::nullopt;
    }
    const auto lines = m_store.filmLines((*record)->run);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    auto all = traces({(*record)->run});
    if (!all) {
        return tl::unexpected(all.error());
    }
    const std::string first = filmNow(*lines, id).film.id;
    for (FilmTrace& film : *all) {
        if (film.film.id == first) {
            return std::move(film);
        }
    }
    return std::nullopt;
}

Result<std::vector<FilmTrace>> FilmReader::ofBatch(const std::string& batch)
{
    const auto found = runs(m_runsOfBatch.run(batch));
    if (!found) {
        return tl::unexpected(found.error());
    }
    return without(traces(*found), [&](const FilmTrace& film) {
        return std::none_of(film.baths.begin(), film.baths.end(),
                            [&](const FilmBath& bath) { return bath.before.batch.id == batch; });
    });
}

Result<std::vector<FilmTrace>> FilmReader::ofRun(const std::string& run) { return traces({run}); }

Result<std::vector<FilmTrace>> FilmReader::between(chemistry::Instant from,
                                                   chemistry::Instant until)
{
    const auto found = runs(m_runsBetween.run(milliseconds(from), milliseconds(until)));
    if (!found) {
        return tl::unexpected(found.error());
    }
    return without(traces(*found), takenBackWhole);
}

Result<std::vector<FilmTrace>> FilmReader::marked()
{
    const auto found = runs(m_runsMarked.run());
    if (!found) {
        return tl::unexpected(found.error());
    }
    return without(traces(*found),
                   [](const FilmTrace& film) { return film.baths.empty() || film.marks.empty(); });
}

} // namespace ullage::store
