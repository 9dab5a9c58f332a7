// What a solution is made of, read from its composition line: "metol 2, sodium sulfite 100,
// borax 2 g per litre; from memory of published formulas".
#pragma once

#include "core/chemistry/formula.h"

#include <optional>
#include <string_view>

namespace ullage::formulary
{

/// The formula for a litre, in the order of the line, nothing rounded: what stands before the first
/// semicolon, parts parted by a comma and a blank, each a name and an amount with a point or a
/// comma, in grams or with "ml". A word of saltForms() after a salt's name is its form; without one
/// it is the usual form (usualForm()). None for a line of another kind: prose, a part without an
/// amount, an amount not above 0.
std::optional<chemistry::Formula> readComposition(std::string_view line);

/// The form that formulas mean when they name none: anhydrous sulfite, carbonate and sulfate,
/// crystals of thiosulfate, borax, alum and citric acid (common practice, no source). `salt` as in
/// saltForms(); empty for any other text.
std::string_view usualForm(std::string_view salt);

} // namespace ullage::formulary
