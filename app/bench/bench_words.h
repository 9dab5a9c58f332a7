// The bench's codes in words: steps, agitation, where a time comes from, what to be careful with.
#pragma once

#include "app/words/units.h"
#include "core/ledger/run_sheet.h"
#include "core/ledger/run_state.h"

#include <QString>
#include <QStringList>

namespace ullage::app
{

/// "Develop in Dev 14", "Pour Fix 9 back", "Water stop, 2 changes". `bottle` may be empty.
QString stepTitle(const ledger::RunStep& step, const QString& bottle);
/// "Develop", "Pour back": the kind alone, for lists and the next button.
QString stepKindName(ledger::StepKind kind);
/// "Next: pour back"; "Finish" after the last step.
QString nextText(std::optional<ledger::StepKind> next);

/// "300 ml stock + 300 ml water, 20 °C"; of an undiluted bath "600 ml, 20 °C". Without a reading
/// its temperature is left out.
QString pourText(const ledger::Pour& pour, std::optional<chemistry::Celsius> temperature,
                 const Wording& wording);

/// "first 30 s, then 10 s every minute", "all the time", "leave it still".
QString agitationText(const ledger::Agitation& agitation);

/// "Fix time = 2 × clearing time of 3:15, from the tests of this bottle".
QString fixSourceText(const ledger::FixingFactors& factors, const Wording& wording);

/// The run's cautions with the bottles named: gloves, each bath back to its own bottle, cleaners,
/// silver; acid where an acid stop is used.
QStringList runCautions(const ledger::RunState& state);
/// One line for this step; empty for none.
QString stepCaution(const ledger::RunStep& step, const QString& bottle);

/// "2 films · 135-36, 120".
QString filmsLine(const std::vector<ledger::RunFilm>& films, const Wording& wording);
/// "Still to come after this run: 2 films, 120".
QString laterText(const std::vector<ledger::RunFilm>& films, const Wording& wording);
/// "135-36 · EI 400 · “Harbour, dawn”".
QString filmLine(const ledger::RunFilm& film, const Wording& wording);

/// The name a template goes by: the user's own, or the program's in words.
QString templateName(const ledger::RunTemplate& sheet);

/// A refusal of the bench in a sentence.
QString refusalText(const Error& error, const Wording& wording);

} // namespace ullage::app
