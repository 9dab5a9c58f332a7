// Why figures of the formulary are refused, in words.
#pragma once

#include "app/words/units.h"
#include "core/chemistry/result.h"

#include <QString>

namespace ullage::app
{

/// One sentence: errorSentence(), and words of its own for figures that contradict each other
/// (Conflict of keeping times, and of times at one temperature).
QString formularyProblem(const Error& error, const Wording& wording);

} // namespace ullage::app
