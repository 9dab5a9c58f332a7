#include "core/ledger/film_lines.h"

#include "core/formulary/given_anew.h"

#include <algorithm>
#include <utility>

namespace ullage::ledger
{

namespace
{

FilmNow underFirstId(FilmRecord film, std::vector<std::string> ids)
{
    film.id = ids.front();
    film.replaces.clear();
    return {std::move(film), std::move(ids)};
}

} // namespace

std::vector<FilmNow> filmsNow(const std::vector<FilmRecord>& lines)
{
    const formulary::GivenAnew given(lines);
    std::vector<FilmNow> films;
    for (const std::size_t place : given.standing()) {
        films.push_back(underFirstId(lines[place], given.family(lines[place].id)));
    }
    return films;
}

FilmNow filmNow(const std::vector<FilmRecord>& lines, const std::string& id)
{
    const formulary::GivenAnew given(lines);
    if (const auto place = given.standsFor(id)) {
        return underFirstId(lines[*place], given.family(id));
    }
    const auto ids = given.family(id);
    FilmNow found;
    for (const FilmRecord& line : lines) {
        if (!line.withdrawn && std::find(ids.begin(), ids.end(), line.id) != ids.end()) {
            found = underFirstId(line, ids);
        }
    }
    return found;
}

} // namespace ullage::ledger
