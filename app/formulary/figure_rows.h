// The figures of one solution in the order they are read, with their explanations.
#pragma once

#include "app/words/explanations.h"

#include <vector>

namespace ullage::app
{

struct FigureRow {
    QString label;     ///< "Capacity"
    QString value;     ///< "10 films per litre"; "not known" where there is none
    QString source;    ///< its source line, or that none is given
    bool known = true; ///< false: no value, so nothing to believe or not
    MaybeGrade grade;
    Explanation why;

    /// All of it in a sentence or two, for a screen reader.
    [[nodiscard]] QString spoken() const;
};

/// Every figure the solution has, and those that one of its role should have.
std::vector<FigureRow> figureRows(const formulary::Solution& solution, const Wording& wording);

/// What it is made of, or that nothing is said of it.
QString compositionText(const formulary::Solution& solution);

} // namespace ullage::app
