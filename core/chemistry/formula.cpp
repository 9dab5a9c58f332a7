#include "core/chemistry/formula.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ullage::chemistry
{

namespace
{

constexpr std::array<SaltForm, 16> kForms{{
    {"sodium-sulfite", "anhydrous", 126.04},
    {"sodium-sulfite", "heptahydrate", 252.14},
    {"sodium-carbonate", "anhydrous", 105.99},
    {"sodium-carbonate", "monohydrate", 124.00},
    {"sodium-carbonate", "decahydrate", 286.14},
    {"sodium-thiosulfate", "anhydrous", 158.10},
    {"sodium-thiosulfate", "pentahydrate", 248.17},
    {"sodium-sulfate", "anhydrous", 142.04},
    {"sodium-sulfate", "decahydrate", 322.19},
    {"borax", "anhydrous", 201.22},
    {"borax", "pentahydrate", 291.29},
    {"borax", "decahydrate", 381.37},
    {"citric-acid", "anhydrous", 192.12},
    {"citric-acid", "monohydrate", 210.14},
    {"potassium-alum", "anhydrous", 258.19},
    {"potassium-alum", "dodecahydrate", 474.37},
}};

Result<double> molarMass(std::string_view salt, std::string_view form)
{
    const auto found = std::find_if(kForms.begin(), kForms.end(), [&](const SaltForm& known) {
        return known.salt == salt && known.form == form;
    });
    if (found == kForms.end()) {
        return refuse({.code = ErrorCode::UnknownKind,
                       .field = "form",
                       .text = std::string(salt) + ", " + std::string(form)});
    }
    return found->molarMass;
}

} // namespace

std::span<const SaltForm> saltForms() { return kForms; }

Result<double> hydrateFactor(std::string_view salt, std::string_view from, std::string_view to)
{
    const auto before = molarMass(salt, from);
    if (!before) {
        return before;
    }
    return molarMass(salt, to).map([&](double after) { return after / *before; });
}

Formula scaled(Formula formula, Millilitres makes)
{
    const double factor = makes / formula.makes;
    for (Ingredient& ingredient : formula.ingredients) {
        ingredient.amount *= factor;
    }
    formula.makes = makes;
    return formula;
}

double asWeighed(double amount)
{
    const double steps = std::pow(10.0, scaleDecimals(amount));
    const double rounded = std::round(amount * steps) / steps;
    return rounded > 0 ? rounded : amount;
}

Result<Formula> withForm(Formula formula, std::string_view salt, std::string_view form)
{
    for (Ingredient& ingredient : formula.ingredients) {
        if (ingredient.name != salt || ingredient.unit != AmountUnit::Gram) {
            continue;
        }
        const auto factor = hydrateFactor(salt, ingredient.form, form);
        if (!factor) {
            return tl::unexpected(factor.error());
        }
        ingredient.amount *= *factor;
        ingredient.form = form;
    }
    return formula;
}

} // namespace ullage::chemistry
