// A refusal in one sentence: which field, which value, and what is allowed.
#pragma once

#include "app/words/units.h"
#include "core/chemistry/result.h"

#include <QString>

namespace ullage::app
{

/// "Volume used: 1200 ml is more than the 980 ml in Dev 14. Allowed: 0 to 980 ml." Fields by their
/// names in the window, quantities in the user's units and locale.
/// `about` is what people know the entry by that it is about, where that is known (fault_words.h).
QString errorSentence(const Error& error, const Wording& wording, const QString& about = {});

/// For the command line: "party.jsonl:12: used_ml: …" with fields and units as the journal spells
/// them and numbers unrounded with a decimal point.
QString errorLine(const Error& error, const QString& about = {});

} // namespace ullage::app
