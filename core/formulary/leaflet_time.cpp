#include "core/formulary/leaflet_time.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <map>

namespace ullage::formulary
{

namespace
{

bool fitsDilution(const Solution* developer, const DevelopmentFigure& figure, double parts)
{
    const std::string dilution = bareName(figure.dilution);
    if (parts == 0 && developer && !dilution.empty() &&
        bareName(developer->name).ends_with(dilution)) {
        return true;
    }
    return partsOfDilution(dilution) == parts;
}

} // namespace

std::string bareName(std::string_view text)
{
    std::string result;
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        if (!std::isspace(byte)) {
            result.push_back(static_cast<char>(std::tolower(byte)));
        }
    }
    return result;
}

bool sameFilm(std::string_view a, std::string_view b) { return bareName(a) == bareName(b); }

std::optional<double> partsOfDilution(std::string_view dilution)
{
    const std::string text = bareName(dilution);
    if (text.empty() || text == "stock") {
        return 0;
    }
    if (!text.starts_with("1+")) {
        return std::nullopt;
    }
    double parts = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data() + 2, end, parts);
    const bool fine = read.ec == std::errc() && read.ptr == end && parts >= 0 && parts < 1000;
    return fine ? std::optional(parts) : std::nullopt;
}

std::vector<FilmTime> filmTimes(const Formulary& formulary, const TimeFor& wanted)
{
    const auto family = formulary.family(wanted.developer);
    const auto developer = formulary.solution(wanted.developer);
    const auto current = formulary.notebook().current();
    std::vector<FilmTime> times;
    for (const FilmWanted& film : wanted.films) {
        const bool again = std::any_of(times.begin(), times.end(), [&](const FilmTime& one) {
            return sameFilm(one.film.name, film.name) &&
                   one.film.exposureIndex == film.exposureIndex;
        });
        if (film.name.empty() || again) {
            continue;
        }
        FilmTime made{film, nullptr};
        for (const auto& figure : current) {
            const bool fits =
                sameFilm(figure->film, film.name) &&
                std::find(family.begin(), family.end(), figure->developer) != family.end() &&
                fitsDilution(developer.get(), *figure, wanted.parts) &&
                (!figure->exposureIndex || figure->exposureIndex == film.exposureIndex);
            // One for just this exposure index stands above one that names none.
            if (fits && (!made.figure || figure->exposureIndex || !made.figure->exposureIndex)) {
                made.figure = figure;
            }
        }
        times.push_back(std::move(made));
    }
    return times;
}

std::shared_ptr<const DevelopmentFigure> exactTime(const Formulary& formulary,
                                                   const TimeFor& wanted)
{
    const auto times = filmTimes(formulary, wanted);
    const bool one = std::all_of(times.begin(), times.end(), [&](const FilmTime& time) {
        return time.figure && time.figure->times == times.front().figure->times;
    });
    return !times.empty() && one ? times.front().figure : nullptr;
}

bool stillFor(const TimeFor& before, const TimeFor& now)
{
    const bool otherDeveloper = !before.developer.empty() && before.developer != now.developer;
    if (otherDeveloper || before.parts != now.parts) {
        return false;
    }
    for (std::size_t i = 0; i < std::max(before.films.size(), now.films.size()); ++i) {
        const FilmWanted was = i < before.films.size() ? before.films[i] : FilmWanted();
        const FilmWanted is = i < now.films.size() ? now.films[i] : FilmWanted();
        const bool other = !was.name.empty() && !sameFilm(was.name, is.name);
        if (other || (was.exposureIndex && was.exposureIndex != is.exposureIndex)) {
            return false;
        }
    }
    return true;
}

std::vector<std::string> developersWithTimes(const Formulary& formulary,
                                             const std::vector<FilmWanted>& films)
{
    std::vector<std::string> developers;
    for (const auto& figure : formulary.notebook().current()) {
        const bool wanted = std::any_of(films.begin(), films.end(), [&](const FilmWanted& film) {
            return !film.name.empty() && sameFilm(film.name, figure->film);
        });
        if (wanted && std::find(developers.begin(), developers.end(), figure->developer) ==
                          developers.end()) {
            developers.push_back(figure->developer);
        }
    }
    return developers;
}

std::vector<std::string> filmsWithTimes(const Formulary& formulary)
{
    std::map<std::string, std::string> names;
    for (const auto& figure : formulary.notebook().current()) {
        names[bareName(figure->film)] = figure->film;
    }
    std::vector<std::string> all;
    for (auto& [key, name] : names) {
        all.push_back(std::move(name));
    }
    return all;
}

} // namespace ullage::formulary
