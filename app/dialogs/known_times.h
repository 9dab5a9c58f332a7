// The notebook's times for a developer, as the fields for times offer them.
#pragma once

#include "app/dialogs/base_times_edit.h"
#include "core/formulary/leaflet_time.h"

#include <string>
#include <vector>

namespace ullage::app
{

/// What the notebook holds for this developer, or for one that it replaced or that replaced it;
/// figures of the films named come first, and those of their exposure index before the others.
std::vector<BaseTimesEdit::Known> knownTimes(const formulary::Formulary& formulary,
                                             const std::string& developer,
                                             const std::vector<formulary::FilmWanted>& films,
                                             const Wording& wording);

/// "Quay 400 · EI 400 · 1+1 · MQ borax developer": what a time is for, beside the time. A film that
/// is not named is called so.
QString timeForText(const formulary::TimeFor& what, const formulary::Formulary& formulary,
                    const Wording& wording);
/// "1+1", "stock".
QString dilutionText(double parts, const Wording& wording);

} // namespace ullage::app
