// The figures of one solution in the order they are read, with their explanations.
#pragma once

#include "app/words/explanations.h"

#include <vector>

namespace ullage::app
{

struct FigureRow {
    QString label;     ///< "Capacity"
    QString value;     ///< "10 films per litre"; "not known" or the like where there is none
    QString source;    ///< its source line, or that none is given
    bool known = true; ///< false: no value, so nothing to believe or not
    MaybeGrade grade;  ///< empty where its source does not tell
    Explanation why;

    /// All of it in a sentence or two, for a screen reader.
    [[nodiscard]] QString spoken() const;
};

/// Every figure the solution has, and those that one of its role should have; figures they imply
/// stand after those they come from. Silver and bromide of 0, and Q10, are left out where the role
/// does not ask for them.
std::vector<FigureRow> figureRows(const formulary::Solution& solution, const Wording& wording);

/// What it is made of, as entered, or that nothing is said of it.
QString compositionText(const formulary::Solution& solution);

} // namespace ullage::app
