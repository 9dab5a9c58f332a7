#include "core/chemistry/films.h"

#include "core/chemistry/constants.h"

#include <array>
#include <charconv>

namespace ullage::chemistry
{

namespace
{

constexpr std::array<FilmFormat, 7> kFormats{{
    {"135-36", 1},
    {"135-24", 2.0 / 3},
    {"120", 1},
    {"220", 2},
    {"4x5", 0.25},
    {"5x7", 35.0 / 80},
    {"8x10", 1},
}};

constexpr double kSquareInchesInFilm = 80;

// Reads a positive number at the front of `text` and takes it off.
std::optional<double> takeNumber(std::string_view& text)
{
    double number = 0;
    const auto [end, failure] =
        std::from_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed);
    if (failure != std::errc() || !(number > 0) || number > 1000) {
        return std::nullopt;
    }
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return number;
}

} // namespace

std::span<const FilmFormat> namedFormats() { return kFormats; }

std::optional<Films> filmsInOne(std::string_view code)
{
    for (const FilmFormat& format : kFormats) {
        if (format.code == code) {
            return Films(format.units);
        }
    }
    const auto width = takeNumber(code);
    if (!width || code.empty() || code.front() != 'x') {
        return std::nullopt;
    }
    code.remove_prefix(1);
    const auto length = takeNumber(code);
    if (!length) {
        return std::nullopt;
    }
    if (code == "cm") {
        return filmsInArea(SquareCentimetres(*width * *length));
    }
    if (code == "in") {
        return Films(*width * *length / kSquareInchesInFilm);
    }
    return std::nullopt;
}

Films filmsInArea(SquareCentimetres area) { return Films(area.value() / kFilmArea.value); }

} // namespace ullage::chemistry
