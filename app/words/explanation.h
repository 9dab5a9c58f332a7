// The answer to "Where from?" of one figure, in finished words.
#pragma once

#include "app/words/figure_words.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace ullage::app
{

/// Something of this bottle that went into the figure.
struct ExplainedInput {
    QString name;  ///< "Films done"
    QString value; ///< "7 films"
};

/// A figure that is the same for every bottle.
struct ExplainedConstant {
    QString name;
    QString value;  ///< with its unit
    QString range;  ///< "1 – 3"; empty where the source gives none
    QString source; ///< the source line; empty for none
    MaybeGrade grade;
};

struct Explanation {
    QString title; ///< "Oxygen it can take"
    QString value; ///< "12.8 mmol per litre"; "not known" where it cannot be had
    QString equation;
    std::vector<ExplainedInput> inputs;
    std::vector<ExplainedConstant> constants;
    QStringList notes;    ///< what it cannot tell, one sentence each
    bool hasGrade = true; ///< false for what is simply counted
    MaybeGrade grade;     ///< the least of all that it stands on

    /// All of it in lines of plain text, as the clipboard and a screen reader get it.
    [[nodiscard]] QStringList lines() const;
};

/// Name, value, unit, range and source of a constant of the model.
ExplainedConstant explained(const QString& name, const chemistry::Constant& constant,
                            const QLocale& locale);
/// A figure of a solution with its source line.
ExplainedConstant explained(const formulary::Solution& solution, formulary::Figure figure,
                            const Wording& wording);
/// The solution's rule of wear with its source line.
ExplainedConstant explainedWear(const formulary::Solution& solution, const Wording& wording);

/// Lowers the grade to the least of the constants; `computed` because it was worked out at all.
void gradeByConstants(Explanation& explanation);

} // namespace ullage::app
