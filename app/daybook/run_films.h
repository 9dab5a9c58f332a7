// The films of a run that was entered as the rows of a form, and what the rows come to as lines of
// the book: a film that stays keeps its line's id and whatever nobody changed.
#pragma once

#include "core/ledger/film_trace.h"
#include "core/ledger/run_state.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::app
{

/// A row, and the films that it stands for: alike, and without marks where there are several.
struct RunFilmRow {
    ledger::RunFilm film;
    std::vector<ledger::FilmRecord> lines; ///< fewer than its count where some have none
    bool marked = false;
};

/// The load's films, as their lines tell of them where they have any. Lines beyond the load have no
/// row, and are left as they are.
std::vector<RunFilmRow> runFilmRows(const ledger::Load& load,
                                    const std::vector<ledger::FilmTrace>& films);

/// The rows as a form shows them.
std::vector<ledger::RunFilm> filmsOf(const std::vector<RunFilmRow>& rows);

/// What a form says now of rows that were entered.
struct RunFilmsNow {
    std::vector<ledger::RunFilm> was; ///< the form's films when it was filled with the rows
    std::vector<ledger::RunFilm> films;
    std::vector<std::optional<std::size_t>> origins; ///< of each the row's place, if it had one
};

/// Lines that make the one of the other, for Book::correct(). New films get a line where others of
/// the run have one, or where something is said of them besides their format.
std::vector<ledger::FilmRecord> runFilmLines(const std::vector<RunFilmRow>& rows,
                                             const RunFilmsNow& now, const std::string& run);

/// The first film with a mark that would go with its row; null for none.
const ledger::FilmRecord* markedAndGone(const std::vector<RunFilmRow>& rows,
                                        const RunFilmsNow& now);

} // namespace ullage::app
