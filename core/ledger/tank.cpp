#include "core/ledger/tank.h"

#include "core/chemistry/films.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Millilitres;

std::string_view code(TankFault fault) { return kTankFaultCodes[static_cast<std::size_t>(fault)]; }

Result<void> check(const Tank& tank)
{
    if (tank.name.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "name"});
    }
    if (auto fine = checkRange("volume_ml", tank.volume.value(), 10, 100'000, "ml"); !fine) {
        return fine;
    }
    for (const TankPlaces& place : tank.places) {
        if (!chemistry::filmsInOne(place.format)) {
            return refuse(
                {.code = ErrorCode::UnknownKind, .field = "format", .text = place.format});
        }
        const auto same = [&](const TankPlaces& other) { return other.format == place.format; };
        if (std::count_if(tank.places.begin(), tank.places.end(), same) > 1) {
            return refuse({.code = ErrorCode::Conflict, .field = "format", .text = place.format});
        }
        if (auto fine = checkRange("places", place.most, 1, 100, ""); !fine) {
            return fine;
        }
        if (place.each) {
            if (auto fine = checkRange("each_ml", place.each->value(), 1, 100'000, "ml"); !fine) {
                return fine;
            }
        }
    }
    return {};
}

namespace
{

bool isStrip(const std::string& format)
{
    const auto size = chemistry::sizeOf(format);
    return size && chemistry::stripOf(*size);
}

} // namespace

std::vector<TankFinding> findings(const Tank& tank, const Load& load)
{
    std::vector<TankFinding> found;
    if (tank.places.empty()) {
        return found;
    }
    double share = 0; // of the tank's room, taken so far
    Millilitres needed;
    for (const FilmCount& film : load.films) {
        const auto place =
            std::find_if(tank.places.begin(), tank.places.end(),
                         [&](const TankPlaces& other) { return other.format == film.format; });
        if (place == tank.places.end() && isStrip(film.format)) {
            continue; // a reel set to its width takes it, if the tank has one
        }
        if (place == tank.places.end()) {
            found.push_back({TankFault::NoReel, film.format, film.count, 0});
            continue;
        }
        const double room = (1 - share) * place->most;
        if (film.count > room + chemistry::kFilmSlack) {
            found.push_back({TankFault::TooMany, film.format, film.count, std::max(0.0, room)});
        }
        share += film.count / place->most;
        needed += place->each.value_or(Millilitres(0)) * film.count;
    }
    if (needed > tank.volume + Millilitres(chemistry::kFilmSlack)) {
        found.push_back({TankFault::TooLittleSolution, {}, needed.value(), tank.volume.value()});
    }
    return found;
}

} // namespace ullage::ledger
