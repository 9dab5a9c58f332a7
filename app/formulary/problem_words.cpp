#include "app/formulary/problem_words.h"

#include "app/words/error_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FormularyProblems)
};

// What the keeping model and the notebook refuse of figures that are each in range.
QString conflictSentence(const Error& error)
{
    if (error.code != ErrorCode::Conflict)
        return {};
    if (error.field == "keeping.half_days")
        return Words::tr("Keeps, half full: it must be shorter than the full-bottle time, and no "
                         "shorter than the air of a half-full bottle can explain.");
    if (error.field == "keeping.full_days")
        return Words::tr("Keeps, full bottle: so long that the leak of the cap alone would spend "
                         "it before.");
    if (error.field == "base")
        return Words::tr("Times: two are entered for one temperature.");
    return {};
}

} // namespace

QString formularyProblem(const Error& error, const Wording& wording)
{
    const QString own = conflictSentence(error);
    return own.isEmpty() ? errorSentence(error, wording) : own;
}

} // namespace ullage::app
