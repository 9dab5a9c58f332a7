#include "app/words/next_film.h"

#include "app/words/error_words.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "core/ledger/next_load.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(NextFilm)
};

QString warningText(chemistry::TimeWarning warning, const Wording& wording)
{
    if (warning == chemistry::TimeWarning::OutsideUsualRange)
        return Words::tr("Outside the usual %1 to %2: the result is less sure.")
            .arg(shortTemperatureText(chemistry::kCoolestUsual, wording),
                 shortTemperatureText(chemistry::kWarmestUsual, wording));
    return Words::tr("Outside the leaflet's temperatures: extended by Q10.");
}

} // namespace

QString carriedSentence(const ledger::DevelopingFactors& so, const Wording& wording)
{
    if (!so.carried)
        return {};
    const QString range =
        Words::tr("Extended from %1: %2 to %3 by what is published of such developers.")
            .arg(shortTemperatureText(so.nearest.temperature, wording),
                 timeText(so.carried->shortest, TimeStep::FiveSeconds),
                 timeText(so.carried->longest, TimeStep::FiveSeconds));
    return so.carried->fromOnePair
               ? range + u' ' + Words::tr("A second time for another temperature would be better.")
               : range;
}

NextFilm nextFilm(const ledger::Batch& batch, const ledger::Assessment& assessment,
                  std::span<const chemistry::TimeAtTemperature> pairs,
                  chemistry::Celsius temperature, const Wording& wording)
{
    const auto next = ledger::nextLoadIn({batch, assessment}, pairs, temperature);
    return nextFilm(next.judged.front(), next.developing, temperature, wording);
}

NextFilm nextFilm(const ledger::Judged& developer, const Result<ledger::DevelopingFactors>& so,
                  chemistry::Celsius temperature, const Wording& wording)
{
    const ledger::Batch& batch = developer.batch;
    const ledger::Assessment& assessment = developer.assessment;
    NextFilm next;
    const QString at = shortTemperatureText(temperature, wording);
    if (so) {
        next.rows.push_back({Words::tr("Leaflet time, %1")
                                 .arg(shortTemperatureText(so->nearest.temperature, wording)),
                             timeText(so->nearest.time)});
        next.rows.push_back(
            {Words::tr("Temperature, %1").arg(temperatureText(temperature, wording)),
             factorText(so->temperature, wording.locale)});
        next.seconds = so->time;
        next.time = timeText(so->time, TimeStep::FiveSeconds);
        next.note = Words::tr("at %1, for the next film").arg(at);
        for (const auto warning : so->base.warnings)
            next.warnings << warningText(warning, wording);
        if (const QString carried = carriedSentence(*so, wording); !carried.isEmpty())
            next.warnings << carried;
    } else if (so.error().code == ErrorCode::NoFigure) {
        next.note = Words::tr("times the leaflet time; type that in at “Log a run”");
    } else {
        next.note = Words::tr("no time can be given at %1").arg(at);
        next.warnings << errorSentence(so.error(), wording);
    }
    const QString volume = volumeText(batch.volume, wording);
    const bool noneCounted = assessment.atLeast && batch.filmsDone.value() <= 0;
    next.rows.push_back({noneCounted
                             ? Words::tr("Wear, films not known, in %1", "volume").arg(volume)
                             : (assessment.atLeast ? Words::tr("Wear, at least %1 in %2")
                                                   : Words::tr("Wear, %1 in %2"))
                                   .arg(filmsText(batch.filmsDone, wording), volume),
                         factorText(assessment.wearFactor, wording.locale)});
    next.rows.push_back({batch.stripAt
                             ? Words::tr("Control strip, %1")
                                   .arg(dayText(*batch.stripAt, batch.asOf, wording.locale))
                         : batch.strips.empty() ? Words::tr("Control strip, none yet")
                                                : Words::tr("Control strip, no factor accepted"),
                         factorText(batch.stripFactor.value_or(1), wording.locale)});
    if (next.time.isEmpty())
        next.time = factorText(ledger::bottleFactor(batch, assessment), wording.locale);
    return next;
}

NextFilm nextFixing(const ledger::Batch& batch, const ledger::Assessment& assessment,
                    chemistry::Celsius temperature, const Wording& wording)
{
    NextFilm next;
    const auto load = ledger::nextLoadIn({batch, assessment}, {}, temperature);
    const auto& so = load.fixing;
    if (!so) {
        next.note = Words::tr("Fix for twice the clearing time: test a piece of film, no test is "
                              "on record.");
        return next;
    }
    const bool tested = so->from == ledger::ClearingFrom::Tests;
    const QString at = shortTemperatureText(temperature, wording);
    next.seconds = so->time;
    next.time = timeText(so->time, TimeStep::AtLeastFiveSeconds);
    next.note = tested ? Words::tr("in the fixer at %1").arg(at)
                       : Words::tr("in the fixer at %1, as if fresh: no test is on record").arg(at);
    next.rows.push_back(
        {tested ? Words::tr("Clears now, 20 °C") : Words::tr("Clears when fresh, 20 °C"),
         clearingText(*so->clearing, wording.locale)});
    if (tested && assessment.clearing->fresh)
        next.rows.push_back({Words::tr("Cleared when fresh"),
                             clearingText(*assessment.clearing->fresh, wording.locale)});
    next.rows.push_back(
        {Words::tr("Twice the clearing time"), factorText(so->times, wording.locale)});
    if (so->raisedTo)
        next.rows.push_back(
            {Words::tr("Raised to the packet's shortest"), timeText(*so->raisedTo)});
    next.rows.push_back({Words::tr("Temperature, %1").arg(temperatureText(temperature, wording)),
                         factorText(so->cold, wording.locale)});
    if (batch.solution->tabularFactor)
        next.rows.push_back({Words::tr("With tabular grains"),
                             timeText(load.fixingTabular->time, TimeStep::AtLeastFiveSeconds)});
    return next;
}

} // namespace ullage::app
