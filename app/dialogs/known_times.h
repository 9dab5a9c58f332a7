// The notebook's times for a developer, as the fields for times offer them.
#pragma once

#include "app/dialogs/base_times_edit.h"
#include "core/formulary/formulary.h"

#include <string>
#include <vector>

namespace ullage::app
{

/// What the notebook holds for this developer, or for one that it replaced or that replaced it;
/// figures of the films named come first, and those of their exposure index before the others.
struct FilmWanted {
    std::string name;
    std::optional<double> exposureIndex;
};
std::vector<BaseTimesEdit::Known> knownTimes(const formulary::Formulary& formulary,
                                             const std::string& developer,
                                             const std::vector<FilmWanted>& films,
                                             const Wording& wording);

/// The n of "1+n" in the notebook's words, 0 for "stock"; empty where it says neither.
std::optional<int> partsOfDilution(const QString& dilution);

} // namespace ullage::app
