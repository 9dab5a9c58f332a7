#include "core/chemistry/replenishment.h"

#include "core/chemistry/films.h"

namespace ullage::chemistry
{

FilmsPerLitre steadyWear(Millilitres perFilm) { return Films(1) / litres(perFilm); }

Millilitres topUpFor(FilmsPerLitre wear) { return Millilitres(1000 / wear.value()); }

Millilitres topUpPerFilm(Millilitres volume, SquareCentimetres area)
{
    return volume / filmsInArea(area).value();
}

std::vector<FilmsPerLitre> wearWhileToppingUp(FilmsPerLitre start, Millilitres volume,
                                              Millilitres perFilm, int films)
{
    std::vector<FilmsPerLitre> curve;
    FilmsPerLitre wear = start;
    for (int film = 0; film < films; ++film) {
        wear += Films(1) / litres(volume);
        curve.push_back(wear);
        wear *= 1 - perFilm / volume;
    }
    return curve;
}

} // namespace ullage::chemistry
