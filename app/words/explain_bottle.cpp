// Where the figures of a bottle are from: wear, clearing, pace.
#include "app/words/explain_parts.h"
#include "app/words/explanations.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/source_words.h"
#include "core/chemistry/process_constants.h"
#include "core/ledger/replenish.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

using chemistry::Seconds;
using formulary::Figure;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Explanations)
};

QString notKnown() { return Words::tr("not known"); }

Explanation wearFactor(const ledger::Batch& batch, const ledger::Assessment& so,
                       const Wording& wording)
{
    Explanation why = explainWear(*batch.solution, wording);
    why.title = Words::tr("Wear");
    why.value = leastText(factorText(so.wearFactor, wording.locale), batch);
    why.inputs = {{Words::tr("Done before this load"), wearNow(batch, wording.locale)}};
    why.constants = {explainedWear(*batch.solution, wording)};
    why.notes.clear();
    addDoubt(batch, why);
    if (batch.solution->wear.rule != chemistry::WearRule::None)
        gradeByConstants(why);
    return why;
}

Explanation wearAtRest(const ledger::Batch& batch, const Wording& wording)
{
    Explanation why;
    why.title = Words::tr("Where wear settles");
    why.value = notKnown();
    if (const auto rest = ledger::wearAtRest(*batch.solution))
        why.value =
            Words::tr("%1 films per litre").arg(numberText(rest->value(), 1, wording.locale));
    why.equation = batch.solution->replenisher.empty()
                       ? Words::tr("Topped up after every film, a film adds as much wear as its "
                                   "top-up takes away at 1000 ÷ millilitres for a film, in films "
                                   "per litre, however large the bottle.")
                       : Words::tr("Each measure of its replenisher makes up for one film: the "
                                   "wear settles at nothing.");
    why.inputs = {{Words::tr("That is now"), wearNow(batch, wording.locale)}};
    why.constants = {explained(*batch.solution, Figure::Replenish, wording)};
    if (batch.solution->capacity)
        why.constants.push_back(explained(*batch.solution, Figure::Capacity, wording));
    gradeByConstants(why);
    return why;
}

// Nobody has tested the bottle: the solution's own figure stands, as if it were fresh.
Explanation fixingOfTheFresh(const ledger::FixingFactors& factors, const ledger::Batch& batch,
                             const Wording& wording)
{
    Explanation why;
    why.title = Words::tr("Fixing time");
    why.value = timeText(factors.time, TimeStep::AtLeastFiveSeconds);
    why.equation = Words::tr("Fixing time = 2 × clearing time of the fresh solution. It grows with "
                             "film: a clearing test makes it this bottle's own.");
    why.constants = {
        explained(*batch.solution, Figure::FreshClearing, wording),
        explained(Words::tr("Fixing ÷ clearing"), chemistry::kFixFactor, wording.locale)};
    gradeByConstants(why);
    return why;
}

Explanation clearing(BottleFigure figure, const ledger::Batch& batch, const ledger::Assessment& so,
                     const Wording& wording)
{
    const QLocale& locale = wording.locale;
    Explanation why;
    const bool fixing = figure == BottleFigure::FixingTime;
    const bool doubling = figure == BottleFigure::ClearingDoubles;
    why.title = fixing     ? Words::tr("Fixing time")
                : doubling ? Words::tr("Clearing time doubles")
                           : Words::tr("Clearing time today");
    why.value = notKnown();
    if (!so.clearing) {
        if (const auto fresh = ledger::fixingTime(batch, so, chemistry::Celsius(20));
            fresh && fixing)
            return fixingOfTheFresh(*fresh, batch, wording);
        why.equation = Words::tr("It comes from clearing tests of this batch, and none is logged.");
        why.hasGrade = false;
        return why;
    }
    const chemistry::Clearing& tests = *so.clearing;
    why.inputs = {
        {Words::tr("Tests"), numberText(static_cast<double>(batch.tests.size()), 0, locale)},
        {Words::tr("Last test, at 20 °C"), clearingText(tests.last, locale)},
        {Words::tr("Fresh"), tests.fresh ? clearingText(*tests.fresh, locale) : notKnown()},
        {Words::tr("Done by now"), wearNow(batch, locale)}};
    why.constants = {explained(Words::tr("Colder bath"), chemistry::kFixDoubling, locale)};
    const QString now =
        tests.fit ? Words::tr("a straight line through the tests (least squares), read at the "
                              "films per litre done by now, but no less than the last test "
                              "carried on")
                  : Words::tr("the last test, carried on so that it doubles over the capacity; a "
                              "line needs three tests at two levels of wear");
    if (fixing) {
        const auto ordinary = ledger::fixingTime(batch, so, chemistry::Celsius(20));
        const auto tabular = ledger::fixingTime(batch, so, chemistry::Celsius(20), true);
        why.value = timeText(ordinary->time, TimeStep::AtLeastFiveSeconds);
        why.equation = Words::tr("Fixing time = 2 × clearing time; %1 × for films with tabular "
                                 "grains (%2). Clearing time = %3.")
                           .arg(numberText(tabular->times, 1, locale),
                                timeText(tabular->time, TimeStep::AtLeastFiveSeconds), now);
        if (ordinary->raisedTo)
            why.notes << Words::tr("Raised to the packet's shortest time, %1.")
                             .arg(timeText(*ordinary->raisedTo));
        why.constants.push_back(
            explained(Words::tr("Fixing ÷ clearing"), chemistry::kFixFactor, locale));
        why.constants.push_back(
            batch.solution->tabularFactor
                ? explained(*batch.solution, Figure::TabularFactor, wording)
                : explained(Words::tr("For tabular grains"), chemistry::kTabularFixFactor, locale));
    } else if (doubling) {
        why.equation =
            Words::tr("Where the straight line through the tests reaches twice the fresh "
                      "clearing time. Whether it has doubled is judged on the last test.");
        why.constants.push_back(
            explained(Words::tr("Discard at"), chemistry::kDiscardDoubling, locale));
        const auto at = [&](const std::optional<chemistry::FilmsPerLitre>& wear) {
            return wear ? numberText(wear->value(), 1, locale) : Words::tr("never");
        };
        if (tests.doubles.at)
            why.value = Words::tr("at %1 films per litre").arg(at(tests.doubles.at));
        if (tests.fit)
            why.notes << Words::tr("90 % band of the line: %1 – %2 films per litre.")
                             .arg(at(tests.doubles.low), at(tests.doubles.high));
        else
            why.notes << Words::tr("Three tests at two levels of wear are needed for a line.");
    } else {
        why.value = clearingText(tests.now, locale);
        why.equation = Words::tr("Clearing time today = %1.").arg(now);
        if (tests.fit)
            why.notes << Words::tr("90 % band: ± %1 s.")
                             .arg(numberText(tests.fit->band(batch.wear).value(), 0, locale));
    }
    gradeByConstants(why);
    return why;
}

Explanation lastFilm(const ledger::Batch& batch, const ledger::Assessment& so,
                     const Wording& wording)
{
    Explanation why;
    why.title = Words::tr("Last film");
    why.equation = Words::tr("Loads are taken to arrive at one rate, learnt from the loads of this "
                             "batch in the last 180 days and, to begin with, one load in 30 days. "
                             "The wait for the loads still to come follows from that.");
    why.hasGrade = true;
    why.grade = chemistry::Grade::Computed;
    why.inputs = {{Words::tr("Loads so far"),
                   numberText(static_cast<double>(batch.loads.size()), 0, wording.locale)},
                  {Words::tr("Mean load"), filmsText(so.meanLoad, wording)}};
    if (!so.lastFilm) {
        why.value = notKnown();
        why.notes << Words::tr("Nothing is left to do, or no capacity is known.");
        return why;
    }
    const auto on = [&](chemistry::Days wait) { return chemistry::addDays(batch.asOf, wait); };
    const QStringList days =
        dayTexts({on(so.lastFilm->median), on(so.lastFilm->early), on(so.lastFilm->late)},
                 batch.asOf, wording.locale);
    why.value = Words::tr("about %1").arg(days[0]);
    why.inputs.push_back(
        {Words::tr("Loads still to come"), numberText(so.lastFilm->loads, 0, wording.locale)});
    why.notes << withOneStop(
        Words::tr("Eight times in ten between %1 and %2.").arg(days[1], days[2]));
    if (so.lastFilm->chanceFilmsFirst)
        why.notes << Words::tr("Chance that films run out before time does: %1.")
                         .arg(percentText(*so.lastFilm->chanceFilmsFirst, wording.locale));
    why.notes << Words::tr("Seasons and courses are not counted in.")
              << Words::tr("Method: gamma prior and posterior, NIST/SEMATECH e-Handbook of "
                           "Statistical Methods, 8.4.6.");
    return why;
}

} // namespace

Explanation explain(BottleFigure figure, const ledger::Batch& batch, const ledger::Assessment& so,
                    const Wording& wording)
{
    switch (figure) {
    case BottleFigure::WearFactor:
        return wearFactor(batch, so, wording);
    case BottleFigure::FilmsLeft:
        return explainFilmsLeft(batch, so, wording);
    case BottleFigure::Silver:
    case BottleFigure::Bromide:
        return explainCarried(figure, batch, wording);
    case BottleFigure::ClearingNow:
    case BottleFigure::ClearingDoubles:
    case BottleFigure::FixingTime:
        return clearing(figure, batch, so, wording);
    case BottleFigure::LastFilm:
        return lastFilm(batch, so, wording);
    case BottleFigure::WearAtRest:
        return wearAtRest(batch, wording);
    case BottleFigure::OxygenLimit:
        return explain(ImpliedFigure::OxygenLimit, *batch.solution, wording);
    default:
        return explainStanding(figure, batch, so, wording);
    }
}

std::vector<Explanation> explainAll(const ledger::Batch& batch, const ledger::Assessment& so,
                                    const Wording& wording)
{
    std::vector<BottleFigure> figures{BottleFigure::FilmsLeft};
    const formulary::Solution& solution = *batch.solution;
    if (solution.wear.rule != chemistry::WearRule::None)
        figures.push_back(BottleFigure::WearFactor);
    if (solution.replenishPerFilm)
        figures.push_back(BottleFigure::WearAtRest);
    if (so.standingUsed)
        figures.insert(figures.end(), {BottleFigure::StandingUsed, BottleFigure::AgePart,
                                       BottleFigure::AirPart, BottleFigure::OxygenLimit,
                                       BottleFigure::KeepsUntil, BottleFigure::DiscardBy});
    if (so.clearing)
        figures.insert(figures.end(), {BottleFigure::ClearingNow, BottleFigure::FixingTime,
                                       BottleFigure::ClearingDoubles});
    if (solution.silverPerFilm > 0)
        figures.push_back(BottleFigure::Silver);
    if (solution.bromidePerFilm > 0)
        figures.push_back(BottleFigure::Bromide);
    if (so.lastFilm)
        figures.push_back(BottleFigure::LastFilm);
    std::vector<Explanation> all;
    for (const BottleFigure figure : figures)
        all.push_back(explain(figure, batch, so, wording));
    return all;
}

Explanation explainTime(const DevelopmentParts& parts, const ledger::Batch& batch,
                        const Wording& wording)
{
    Explanation why;
    why.title = Words::tr("Development time");
    why.value = timeText(parts.so.time, TimeStep::FiveSeconds);
    why.equation = Words::tr(
        "Time = leaflet time at this temperature × wear × control strip. Between two entered times "
        "a straight line in the logarithm of time; outside them extended by Q10 from the nearest.");
    why.inputs = {{Words::tr("Leaflet time, %1").arg(temperatureText(parts.temperature, wording)),
                   timeText(parts.so.base.time)},
                  {Words::tr("Wear, %1").arg(wearNow(batch, wording.locale)),
                   factorText(parts.so.wear, wording.locale)},
                  {Words::tr("Control strip"), factorText(parts.so.strip, wording.locale)}};
    const MaybeGrade entered = formulary::gradeOf(parts.source.toStdString());
    for (const chemistry::TimeAtTemperature& pair : parts.pairs)
        why.constants.push_back(
            {Words::tr("Entered, %1").arg(shortTemperatureText(pair.temperature, wording)),
             timeText(pair.time),
             {},
             sourceOnly(parts.source.toStdString()),
             entered});
    const auto has = [&](chemistry::TimeWarning warning) {
        return std::find(parts.so.base.warnings.begin(), parts.so.base.warnings.end(), warning) !=
               parts.so.base.warnings.end();
    };
    if (has(chemistry::TimeWarning::Extrapolated)) {
        why.constants.push_back(explained(*batch.solution, Figure::Q10, wording));
        why.notes << Words::tr("Outside the entered times: extended by Q10.");
    }
    if (const auto& carried = parts.so.carried) {
        why.notes << Words::tr("By what is published of such developers it may be %1 to %2.")
                         .arg(timeText(carried->shortest, TimeStep::FiveSeconds),
                              timeText(carried->longest, TimeStep::FiveSeconds));
        if (carried->fromOnePair)
            why.notes << Words::tr("A second time for another temperature would be better.");
    }
    if (has(chemistry::TimeWarning::OutsideUsualRange))
        why.notes << Words::tr("Outside %1 to %2, where times are seldom tried.")
                         .arg(shortTemperatureText(chemistry::kCoolestUsual, wording),
                              shortTemperatureText(chemistry::kWarmestUsual, wording));
    if (batch.solution->wear.rule != chemistry::WearRule::None)
        why.constants.push_back(explainedWear(*batch.solution, wording));
    if (parts.so.strip != 1) {
        why.constants.push_back(explained(Words::tr("Power of time by which density grows"),
                                          chemistry::kStripResponse, wording.locale));
        why.notes << Words::tr("The control strip's factor was accepted or entered by hand.");
    }
    gradeByConstants(why);
    return why;
}

} // namespace ullage::app
