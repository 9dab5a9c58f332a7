// Names of what stands in the formulary: roles, bottle materials, film formats.
#pragma once

#include "core/formulary/solution.h"
#include "core/formulary/vessel.h"

#include <QString>
#include <string_view>

class QLocale;

namespace ullage::app
{

/// "Developer".
QString roleName(formulary::Role role);
/// "Glass", "HDPE (stiff, milky plastic)": for choosing.
QString materialName(formulary::Material material);
/// "glass", "PET": for a line with other things in it.
QString materialShort(formulary::Material material);
/// What the wall does to a developer, for choosing a bottle: "keeps air out", "lets air through".
QString materialHint(formulary::Material material);

/// "35 mm, 36 exposures" for 135-36, "4×5 in sheet" for 4x5; a sheet of its own size as "9×12 cm
/// sheet"; any other text as it is.
QString filmFormatName(std::string_view code);
/// "135-36": the code as the trade writes it, with a true multiplication sign.
QString filmFormatShort(std::string_view code);

} // namespace ullage::app
