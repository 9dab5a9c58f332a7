// What a bottle lets in, in words.
#pragma once

#include "app/words/explanation.h"
#include "core/formulary/vessel.h"

namespace ullage::app
{

/// "0.035 mmol a day".
QString flowText(double millimolesADay, const QLocale& locale);

/// Oxygen through wall and cap of the empty bottle, and what that stands on: its own figures, else
/// the material's.
Explanation explainVessel(const formulary::Vessel& vessel, const Wording& wording);

} // namespace ullage::app
