#include "core/chemistry/films.h"

#include "core/chemistry/constants.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace ullage::chemistry
{

namespace
{

constexpr double kSquareInchesInFilm = 80;
constexpr double kWidest = 1000;
constexpr double kLongest = 10'000;
constexpr double kShortestStrip = 20; // cm; what is shorter is a sheet

constexpr std::string_view kConvention =
    "counting unit: Anchell, The Darkroom Cookbook, 3rd ed. 2008, p. 108";
constexpr std::string_view kArea = "width × length, in films of 80 sq in";

// By its area, as filmsInOne() reckons it.
constexpr FilmFormat sheet(std::string_view code, double width, double length)
{
    return {code, width * length / kFilmArea.value, FormatGroup::Sheet, kArea};
}

constexpr std::array<FilmFormat, 7> kNamed{{
    {"135-36", 1, FormatGroup::Roll, kConvention},
    {"135-24", 2.0 / 3, FormatGroup::Roll, kConvention},
    {"120", 1, FormatGroup::Roll, kConvention},
    {"220", 2, FormatGroup::Roll, kConvention},
    {"4x5", 20 / kSquareInchesInFilm, FormatGroup::Sheet, kArea},
    {"5x7", 35 / kSquareInchesInFilm, FormatGroup::Sheet, kArea},
    {"8x10", 1, FormatGroup::Sheet, kArea},
}};

constexpr std::array<FilmFormat, 11> kUsual{{
    kNamed[0],
    kNamed[1],
    kNamed[2],
    kNamed[3],
    sheet("6.5x9cm", 6.5, 9),
    sheet("9x12cm", 9, 12),
    kNamed[4],
    kNamed[5],
    sheet("13x18cm", 13, 18),
    sheet("18x24cm", 18, 24),
    kNamed[6],
}};

// 16 mm before 110: what is called back from a width alone is the commoner name.
constexpr std::array<FilmStrip, 4> kStrips{{
    {"127", 4.6,
     "46 mm wide: professionalfilmscanning.com, film formats (its standard is ISO 732:1982)"},
    {"126", 3.5, "35 mm wide: professionalfilmscanning.com, film formats"},
    {"16 mm", 1.6, "its name"},
    {"110", 1.6, "16 mm wide: professionalfilmscanning.com, film formats"},
}};

// Reads a positive number at the front of `text` and takes it off.
std::optional<double> takeNumber(std::string_view& text, double most)
{
    double number = 0;
    const auto [end, failure] =
        std::from_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed);
    if (failure != std::errc() || !(number > 0) || number > most) {
        return std::nullopt;
    }
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return number;
}

} // namespace

std::span<const FilmFormat> namedFormats() { return kNamed; }

std::span<const FilmFormat> usualFormats() { return kUsual; }

std::span<const FilmStrip> filmStrips() { return kStrips; }

std::optional<FilmSize> sizeOf(std::string_view code)
{
    const auto width = takeNumber(code, kWidest);
    if (!width || code.empty() || code.front() != 'x') {
        return std::nullopt;
    }
    code.remove_prefix(1);
    const auto length = takeNumber(code, kLongest);
    if (!length || (code != "cm" && code != "in")) {
        return std::nullopt;
    }
    return FilmSize{*width, *length, code == "cm" ? SizeUnit::Centimetre : SizeUnit::Inch};
}

std::string sizeCode(const FilmSize& size)
{
    const auto number = [](double value) {
        std::array<char, 64> text{};
        const auto written =
            std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
        return std::string(text.data(), written.ptr);
    };
    return number(size.width) + "x" + number(size.length) +
           (size.unit == SizeUnit::Centimetre ? "cm" : "in");
}

bool isSize(const FilmSize& size)
{
    // Written without an exponent, a smaller number would be longer than any text that is read.
    constexpr double kLeast = 1e-3;
    return size.width >= kLeast && size.width <= kWidest && size.length >= kLeast &&
           size.length <= kLongest;
}

const FilmStrip* stripOf(const FilmSize& size)
{
    if (size.unit != SizeUnit::Centimetre || size.length < kShortestStrip) {
        return nullptr;
    }
    const auto found = std::find_if(kStrips.begin(), kStrips.end(), [&](const FilmStrip& strip) {
        return strip.width == size.width;
    });
    return found == kStrips.end() ? nullptr : &*found;
}

std::optional<Films> filmsInOne(std::string_view code)
{
    for (const FilmFormat& format : kNamed) {
        if (format.code == code) {
            return Films(format.units);
        }
    }
    const auto size = sizeOf(code);
    if (!size) {
        return std::nullopt;
    }
    const double area = size->width * size->length;
    return size->unit == SizeUnit::Centimetre ? filmsInArea(SquareCentimetres(area))
                                              : Films(area / kSquareInchesInFilm);
}

Films filmsInArea(SquareCentimetres area) { return Films(area.value() / kFilmArea.value); }

} // namespace ullage::chemistry
