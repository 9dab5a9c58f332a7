// Names of what stands in the formulary: roles, bottle materials, film formats.
#pragma once

#include "core/chemistry/films.h"
#include "core/formulary/solution.h"
#include "core/formulary/vessel.h"

#include <QString>

#include <string>
#include <string_view>

class QLocale;

namespace ullage::app
{

/// "Developer".
QString roleName(formulary::Role role);
/// The same of a bath of a run: of two fixing baths the second is told from the first.
QString bathName(formulary::Role role, bool second);
/// "Glass", "HDPE (stiff, milky plastic)": for choosing.
QString materialName(formulary::Material material);
/// "glass", "PET": for a line with other things in it.
QString materialShort(formulary::Material material);
/// What the wall does to a developer, for choosing a bottle: "keeps air out", "lets air through".
QString materialHint(formulary::Material material);

/// "35 mm, 36 exposures" for 135-36, "4 × 5 in sheet" for 4x5; by its size "9 × 12 cm sheet", or
/// "Film 46 mm × 61 cm" for a strip; any other text as it is. Numbers in the default locale.
QString filmFormatName(std::string_view code);
/// "135-36": the code as the trade writes it, with a true multiplication sign; by its size
/// "9×12 cm", "46 mm × 61 cm".
QString filmFormatShort(std::string_view code);
/// "127, 46 mm wide, by length", "16 mm by length": for choosing.
QString filmStripName(const chemistry::FilmStrip& strip);
/// The code of what a person typed: both of the above, "9 x 12 cm", "6,5×9cm". Whether it is a
/// format is not looked at.
std::string readFilmFormat(const QString& typed);

} // namespace ullage::app
