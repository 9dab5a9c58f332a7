// The films of a run, of which some may have been given anew or taken out of it since
// (formulary/given_anew.h). A film keeps the id that it was first entered under: marks and whatever
// else names it name that.
#pragma once

#include "core/ledger/entry.h"

#include <string>
#include <vector>

namespace ullage::ledger
{

/// A film as its last line has it, under its first id and without `replaces`.
struct FilmNow {
    FilmRecord film;
    std::vector<std::string> ids; ///< of all its lines, in order of entry
};

/// Those in the run, in the order in which they first came. `lines` are all of the run's, in order
/// of entry.
std::vector<FilmNow> filmsNow(const std::vector<FilmRecord>& lines);

/// One film by the id of any of its lines, also one that was taken out: then as it was last.
/// Without ids for one that is not among them.
FilmNow filmNow(const std::vector<FilmRecord>& lines, const std::string& id);

} // namespace ullage::ledger
