// Names and values of a solution's figures, and how far they can be believed.
#pragma once

#include "app/words/units.h"
#include "core/formulary/figures.h"

#include <QString>

#include <optional>

namespace ullage::app
{

using MaybeGrade = std::optional<chemistry::Grade>;

/// "published", "computed", "common practice", "from memory", "not graded".
QString gradeName(MaybeGrade grade);
/// A sentence that says what it means.
QString gradeMeaning(MaybeGrade grade);

/// "Capacity", "Keeps, full bottle".
QString figureName(formulary::Figure figure);
QString wearName();
/// The value with its unit ("10 films per litre", "6 months"); empty where the solution has none.
QString figureText(const formulary::Solution& solution, formulary::Figure figure,
                   const Wording& wording);
/// A bare value of that figure in the user's words and units, as figureText() writes it.
QString figureText(formulary::Figure figure, double value, const Wording& wording);
/// "+ 10 % per film, on the first time", "the same for every film".
QString wearText(const chemistry::Wear& wear, const Wording& wording);

/// "12.8 mmol per litre".
QString oxygenText(chemistry::MillimolesPerLitre oxygen, const QLocale& locale);
/// To three significant figures, so that 0.0512 and 10 560 both read well.
QString plainNumber(double value, const QLocale& locale);

} // namespace ullage::app
