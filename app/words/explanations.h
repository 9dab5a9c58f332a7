// "Where from?": how every figure on the screen comes about, from this bottle's own values.
#pragma once

#include "app/words/explanation.h"
#include "core/ledger/next_load.h"
#include "core/ledger/strip_record.h"
#include "core/ledger/verdict.h"

#include <optional>

namespace ullage::app
{

/// The figures of a bottle that can be asked about.
enum class BottleFigure {
    WearFactor,
    FilmsLeft,
    StandingUsed,
    AgePart,
    AirPart,
    OxygenLimit,
    KeepsUntil,
    DiscardBy,
    ClearingNow,
    ClearingDoubles,
    FixingTime,
    Silver,
    Bromide,
    LastFilm,
    WearAtRest,
};

/// `so` is the assessment of `batch`. A figure that the batch has not says why not.
Explanation explain(BottleFigure figure, const ledger::Batch& batch, const ledger::Assessment& so,
                    const Wording& wording);

/// All figures that this bottle has, in the order they are read.
std::vector<Explanation> explainAll(const ledger::Batch& batch, const ledger::Assessment& so,
                                    const Wording& wording);

/// The parts of a development time as they were multiplied.
struct DevelopmentParts {
    std::vector<chemistry::TimeAtTemperature> pairs; ///< what was entered
    QString source;                                  ///< where from, as entered; may be empty
    chemistry::Celsius temperature;
    ledger::DevelopingFactors so; ///< at that temperature
};

/// The time of the next load; its factors are in the inputs, the entered times in the constants.
Explanation explainTime(const DevelopmentParts& parts, const ledger::Batch& batch,
                        const Wording& wording);

/// The limits that the next control strip is judged by; empty while there are too few strips.
std::optional<Explanation> explainStripLimits(const ledger::StripRecord& record,
                                              const Wording& wording);

/// The figures that a solution's own figures imply.
enum class ImpliedFigure { OxygenLimit, AgeAlone, TrayByModel, Saturation };

QString impliedName(ImpliedFigure figure);
/// Empty where the solution has no keeping time to work it out from.
QString impliedText(ImpliedFigure figure, const formulary::Solution& solution,
                    const Wording& wording);
/// One line under the value: what it was worked out from.
QString impliedSource(ImpliedFigure figure, const formulary::Solution& solution,
                      const Wording& wording);

Explanation explain(ImpliedFigure figure, const formulary::Solution& solution,
                    const Wording& wording);
/// What an entered figure is used for, and its source.
Explanation explain(formulary::Figure figure, const formulary::Solution& solution,
                    const Wording& wording);
Explanation explainWear(const formulary::Solution& solution, const Wording& wording);

} // namespace ullage::app
