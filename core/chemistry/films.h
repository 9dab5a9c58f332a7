// Counting film. One film is 80 square inches (source: kFilmArea); published capacities count so.
//
// Simplification: the whole strip of a 135-36 is 8 to 11 % more than 80 sq in; the convention is
// kept because the capacities it is compared with count that way.
#pragma once

#include "core/chemistry/quantities.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace ullage::chemistry
{

/// How a format is found in a list.
enum class FormatGroup { Roll, Sheet };

struct FilmFormat {
    std::string_view code; ///< as the journal and the trade write it
    double units;          ///< films (80 sq in) in one piece
    FormatGroup group;
    std::string_view source; ///< of `units`
};

/// The formats with a name: 135-36, 135-24, 120, 220, 4x5, 5x7, 8x10.
std::span<const FilmFormat> namedFormats();

/// Those, and the sheets usual where sizes are metric, which go by their size: 6.5x9cm, 9x12cm,
/// 13x18cm, 18x24cm. Rolls first, sheets by area.
std::span<const FilmFormat> usualFormats();

/// Film that comes in one width and any length: it goes by its size, as "4.6x61cm".
struct FilmStrip {
    std::string_view name; ///< as the trade has it: "127", "16 mm"
    double width;          ///< cm
    std::string_view source;
};

/// 127, 126, 110 and 16 mm. Several may have one width.
std::span<const FilmStrip> filmStrips();

/// Unit of a size written out.
enum class SizeUnit { Centimetre, Inch };

/// A piece by its size.
struct FilmSize {
    double width = 0;  ///< above 0, at most 1000, in its unit
    double length = 0; ///< above 0, at most 10 000 (a reel of 16 mm is 3048 cm), in its unit
    SizeUnit unit = SizeUnit::Centimetre;
    friend bool operator==(const FilmSize&, const FilmSize&) = default;
};

/// Reads "9x12cm" or "11x14in"; nothing for any other text, the named sheets among it.
std::optional<FilmSize> sizeOf(std::string_view code);
/// Writes it as sizeOf() reads it, exactly. The size is within its bounds.
std::string sizeCode(const FilmSize& size);
/// Whether sizeOf() reads what sizeCode() writes of it.
bool isSize(const FilmSize& size);
/// The strip this wide, the first of them; null for a size that is none: in inches, of no strip's
/// width, or shorter than a strip is (20 cm).
const FilmStrip* stripOf(const FilmSize& size);

/// Films in one piece of `code`: a named format, or one by its size with the unit, "9x12cm" or
/// "11x14in". Nothing for any other text.
std::optional<Films> filmsInOne(std::string_view code);

/// Films in an area; exact arithmetic, no rounding.
Films filmsInArea(SquareCentimetres area);

/// Slack for comparing sums of thirds with a limit.
inline constexpr double kFilmSlack = 1e-9;

} // namespace ullage::chemistry
