// What a bottle lets in, in words.
#pragma once

#include "app/words/explanation.h"
#include "core/formulary/vessel.h"

namespace ullage::app
{

/// "0.035 mmol a day", to three significant figures.
QString flowText(double millimolesADay, const QLocale& locale);

/// Oxygen through wall and cap of the empty bottle, and what that stands on: its own figures, else
/// the material's and the usual cap. The air shut in comes on top and is only spoken of.
Explanation explainVessel(const formulary::Vessel& vessel, const Wording& wording);

} // namespace ullage::app
