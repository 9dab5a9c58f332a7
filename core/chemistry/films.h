// Counting film. One film is 80 square inches (source: kFilmArea); published capacities count so.
//
// Simplification: the whole strip of a 135-36 is 8 to 11 % more than 80 sq in; the convention is
// kept because the capacities it is compared with count that way.
#pragma once

#include "core/chemistry/quantities.h"

#include <optional>
#include <span>
#include <string_view>

namespace ullage::chemistry
{

struct FilmFormat {
    std::string_view code; ///< as the journal and the trade write it
    double units;          ///< films (80 sq in) in one piece
};

/// The formats with a name: 135-36, 135-24, 120, 220, 4x5, 5x7, 8x10.
std::span<const FilmFormat> namedFormats();

/// Films in one piece of `code`: a named format, or a sheet written with its unit, "9x12cm" or
/// "11x14in". Nothing for any other text.
std::optional<Films> filmsInOne(std::string_view code);

/// Films in an area; exact arithmetic, no rounding.
Films filmsInArea(SquareCentimetres area);

/// Slack for comparing sums of thirds with a limit.
inline constexpr double kFilmSlack = 1e-9;

} // namespace ullage::chemistry
