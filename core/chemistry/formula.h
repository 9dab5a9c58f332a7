// Formulas from raw chemicals: scaled, in the order of addition, for the hydrate at hand.
//
// Simplification: a hydrate is what its label says; crystals that have lost water weigh less.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::chemistry
{

/// One form in which a salt is sold. Molar masses are computed from IUPAC atomic weights.
struct SaltForm {
    std::string_view salt; ///< "sodium-sulfite"
    std::string_view form; ///< "anhydrous", "monohydrate" …
    double molarMass;      ///< g/mol of what is weighed, for one formula unit of the salt
};

/// Every salt that can be converted, in all its forms.
std::span<const SaltForm> saltForms();

/// What to weigh of one form for a gram of another: the quotient of the molar masses. UnknownKind
/// if the salt or one of its forms is not in saltForms().
Result<double> hydrateFactor(std::string_view salt, std::string_view from, std::string_view to);

enum class AmountUnit { Gram, Millilitre };

struct Ingredient {
    std::string name;  ///< as in saltForms() where a hydrate is to be converted, else any text
    std::string form;  ///< empty where there is only one
    double amount = 0; ///< for what the formula makes; above 0
    AmountUnit unit = AmountUnit::Gram;
    friend bool operator==(const Ingredient&, const Ingredient&) = default;
};

struct Formula {
    Millilitres makes;                   ///< above 0
    std::vector<Ingredient> ingredients; ///< in the order of addition
};

/// The formula for another volume (> 0); order and forms kept, nothing rounded.
Formula scaled(Formula formula, Millilitres makes);

/// Decimals that scales show: those for small amounts a hundredth of a gram, those for large ones a
/// tenth (common practice, no source).
constexpr int scaleDecimals(double grams) { return grams < 10 ? 2 : 1; }
/// An amount (> 0) rounded to that; what would become nothing stays as it is.
double asWeighed(double amount);

/// The formula with every ingredient of this salt weighed in the form at hand; liquids stay.
/// UnknownKind as hydrateFactor().
Result<Formula> withForm(Formula formula, std::string_view salt, std::string_view form);

} // namespace ullage::chemistry
