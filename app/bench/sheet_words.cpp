#include "app/bench/sheet_words.h"

#include "app/bench/bench_words.h"
#include "app/words/next_film.h"
#include "app/words/number_text.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct SheetWords {
    Q_DECLARE_TR_FUNCTIONS(SheetWords)
};

QStringList developingNotes(const ledger::DevelopingFactors& factors, const Wording& wording)
{
    QStringList notes{
        SheetWords::tr("Develop %1 = %2 %3 (temperature) %4 (wear) %5 (control strip)")
            .arg(timeText(factors.time, TimeStep::FiveSeconds), timeText(factors.nearest.time),
                 factorText(factors.temperature, wording.locale),
                 factorText(factors.wear, wording.locale),
                 factorText(factors.strip, wording.locale))};
    if (const QString carried = carriedSentence(factors, wording); !carried.isEmpty())
        notes << carried;
    for (const auto warning : factors.base.warnings)
        notes << (warning == chemistry::TimeWarning::Extrapolated
                      ? SheetWords::tr("The leaflet has no time for this temperature: extended by "
                                       "Q10 from the nearest.")
                      : SheetWords::tr("Outside the usual %1 to %2.")
                            .arg(shortTemperatureText(chemistry::kCoolestUsual, wording),
                                 shortTemperatureText(chemistry::kWarmestUsual, wording)));
    return notes;
}

} // namespace

QStringList timeNotes(const ledger::RunSheet& sheet, bool washRead, const Wording& wording)
{
    QStringList notes;
    for (const ledger::RunStep& step : sheet.steps) {
        if (step.source == ledger::TimeSource::ColdWash)
            notes << (washRead
                          ? SheetWords::tr("Washing takes longer in water as cold as the tap's.")
                          : SheetWords::tr("Washing takes longer in cold water; the tap is taken "
                                           "to be as cold as the reading."));
        if (step.kind == ledger::StepKind::Fix && sheet.fixing)
            notes << fixSourceText(*sheet.fixing, wording);
    }
    if (sheet.developing)
        notes << developingNotes(*sheet.developing, wording);
    return notes;
}

} // namespace ullage::app
