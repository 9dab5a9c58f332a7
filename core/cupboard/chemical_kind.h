// Which chemical of a formula a thing in the cupboard is: by its CAS number, else by its name.
#pragma once

#include "core/chemistry/formula.h"
#include "core/ledger/entry.h"

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::cupboard
{

/// A chemical, or one form of a salt, and the number that is on its label.
struct NumberedChemical {
    std::string_view name; ///< as in chemistry::saltForms() for a salt, else in small letters
    std::string_view form; ///< empty where there is only one
    std::string_view cas;
};
/// Those that are known by number (from memory of the CAS registry; the check digits agree).
std::span<const NumberedChemical> numberedChemicals();

/// A name as it is compared: small letters, blanks for hyphens, none at the ends and no two
/// together. Letters beyond ASCII stay as they are.
std::string comparable(std::string_view name);

/// What a part of a formula is called besides its own name, as in the user's language: with its
/// form where it has one.
using NamesOfPart = std::function<std::vector<std::string>(const chemistry::Ingredient&)>;

/// Whether this can be weighed out for that part of a formula. A number decides where it is known:
/// then salt and form must be those of the part. Without, its name must be the part's or one of
/// `names`, alone, with a form behind it ("dry" for anhydrous), or with other words behind a comma
/// or a bracket; where it names no form, any will do. Nothing that is measured by volume: the
/// cupboard keeps chemicals by weight.
bool isOf(const ledger::Chemical& chemical, const chemistry::Ingredient& part,
          const NamesOfPart& names = {});

} // namespace ullage::cupboard
