#include "app/daybook/run_films.h"

#include <algorithm>
#include <map>

namespace ullage::app
{

using ledger::FilmRecord;
using ledger::RunFilm;

namespace
{

constexpr int kMostInARow = 1000; // a row of the form counts no further

bool isNamed(const RunFilm& film)
{
    return !film.name.empty() || film.exposureIndex || !film.notes.empty();
}

bool isAlike(const RunFilm& a, const RunFilm& b)
{
    return a.format == b.format && a.name == b.name && a.exposureIndex == b.exposureIndex &&
           a.notes == b.notes;
}

// One more piece: in the row of those like it, or in a row of its own.
void addPiece(std::vector<RunFilmRow>& rows, const RunFilm& film, const FilmRecord* line,
              bool marked)
{
    const auto like = std::find_if(rows.begin(), rows.end(), [&](const RunFilmRow& row) {
        return !marked && !row.marked && row.film.count < kMostInARow && isAlike(row.film, film);
    });
    if (like != rows.end()) {
        ++like->film.count;
        if (line)
            like->lines.push_back(*line);
        return;
    }
    RunFilmRow& row = rows.emplace_back(RunFilmRow{film, {}, marked});
    row.film.count = 1;
    if (line)
        row.lines.push_back(*line);
}

bool anyLines(const std::vector<RunFilmRow>& rows)
{
    return std::any_of(rows.begin(), rows.end(),
                       [](const RunFilmRow& row) { return !row.lines.empty(); });
}

FilmRecord newLine(const RunFilm& film, const std::string& run)
{
    return {.id = {},
            .run = run,
            .format = film.format,
            .name = film.name,
            .exposureIndex = film.exposureIndex,
            .notes = film.notes};
}

FilmRecord withdrawnLine(const FilmRecord& line)
{
    FilmRecord gone = line;
    gone.replaces = line.id;
    gone.withdrawn = true;
    return gone;
}

// With what was changed in its row.
FilmRecord anewLine(const FilmRecord& line, const RunFilm& was, const RunFilm& now)
{
    FilmRecord anew = line;
    anew.replaces = line.id;
    if (now.format != was.format)
        anew.format = now.format;
    if (now.name != was.name)
        anew.name = now.name;
    if (now.exposureIndex != was.exposureIndex)
        anew.exposureIndex = now.exposureIndex;
    if (now.notes != was.notes)
        anew.notes = now.notes;
    return anew;
}

// How many of a row's films stay.
std::size_t staying(std::size_t row, const RunFilmsNow& now)
{
    for (std::size_t i = 0; i < now.films.size(); ++i) {
        if (now.origins[i] == row)
            return static_cast<std::size_t>(now.films[i].count);
    }
    return 0;
}

} // namespace

std::vector<RunFilmRow> runFilmRows(const ledger::Load& load,
                                    const std::vector<ledger::FilmTrace>& films)
{
    std::vector<std::pair<std::string, int>> left; // by format, in the load's order
    for (const ledger::FilmCount& film : load.films)
        left.emplace_back(film.format, static_cast<int>(film.count));
    const auto take = [&](const auto& suits) -> const std::string* {
        const auto found = std::find_if(left.begin(), left.end(), [&](const auto& one) {
            return one.second > 0 && suits(one.first);
        });
        if (found == left.end())
            return nullptr;
        --found->second;
        return &found->first;
    };
    std::vector<RunFilmRow> rows;
    const auto addAll = [&](bool named) {
        for (const ledger::FilmTrace& trace : films) {
            const FilmRecord& line = trace.film;
            if (line.format.empty() == named)
                continue;
            const std::string* format =
                take([&](const std::string& one) { return !named || one == line.format; });
            if (format)
                addPiece(rows, {*format, 1, line.name, line.exposureIndex, line.notes}, &line,
                         !trace.marks.empty());
        }
    };
    addAll(true);
    addAll(false); // a line need not say its format
    for (const auto& [format, count] : left) {
        for (int piece = 0; piece < count; ++piece)
            addPiece(rows, {format, 1, {}, {}, {}}, nullptr, false);
    }
    return rows;
}

std::vector<RunFilm> filmsOf(const std::vector<RunFilmRow>& rows)
{
    std::vector<RunFilm> films;
    for (const RunFilmRow& row : rows)
        films.push_back(row.film);
    return films;
}

std::vector<FilmRecord> runFilmLines(const std::vector<RunFilmRow>& rows, const RunFilmsNow& now,
                                     const std::string& run)
{
    std::vector<FilmRecord> lines;
    const bool kept = anyLines(rows);
    for (std::size_t i = 0; i < now.films.size(); ++i) {
        const RunFilm& film = now.films[i];
        auto more = static_cast<std::size_t>(film.count); // that have no line yet
        if (const auto origin = now.origins[i]) {
            const RunFilmRow& row = rows[*origin];
            const std::size_t stay = std::min(row.lines.size(), more);
            for (std::size_t j = 0; j < stay && !isAlike(film, now.was[*origin]); ++j)
                lines.push_back(anewLine(row.lines[j], now.was[*origin], film));
            more -= stay;
            // Those that never had one need none for being few or many.
            if (!isNamed(film))
                more -= std::min(more, static_cast<std::size_t>(row.film.count) - row.lines.size());
        }
        if (kept || isNamed(film))
            lines.insert(lines.end(), more, newLine(film, run));
    }
    for (std::size_t row = 0; row < rows.size(); ++row) {
        for (std::size_t j = staying(row, now); j < rows[row].lines.size(); ++j)
            lines.push_back(withdrawnLine(rows[row].lines[j]));
    }
    return lines;
}

const FilmRecord* markedAndGone(const std::vector<RunFilmRow>& rows, const RunFilmsNow& now)
{
    for (std::size_t row = 0; row < rows.size(); ++row) {
        if (rows[row].marked && staying(row, now) == 0)
            return &rows[row].lines.front();
    }
    return nullptr;
}

} // namespace ullage::app
