// Where a bottle stands: films, standing, and the short lines under it on the shelf.
#include "app/words/verdict_words.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "core/chemistry/films.h"
#include "core/ledger/replenish.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

using ledger::ReasonCode;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Verdicts)
};

// "1 May" where the published time ends it, "about 1 May" where the model does.
QString discardDay(const ledger::Batch& batch, const ledger::Assessment& so, const Wording& wording)
{
    return so.discardBy == so.keepsUntil ? dayText(*so.discardBy, batch.asOf, wording.locale)
                                         : aboutDayText(*so.discardBy, batch.asOf, wording.locale);
}

QString untilLine(const ledger::Batch& batch, const ledger::Assessment& so, const Wording& wording)
{
    if (!so.discardBy)
        return batch.historyUnknown && !batch.dateKnown ? Words::tr("mixing date not known")
                                                        : Words::tr("no keeping time known");
    return Words::tr("until %1").arg(discardDay(batch, so, wording));
}

// Films went through it before and none since: "at least 0" would say nothing.
bool noneCounted(const ledger::Batch& batch, const ledger::Assessment& so)
{
    return so.atLeast && batch.filmsDone.value() <= 0;
}

QString filmsLine(const ledger::Batch& batch, const ledger::Assessment& so, const Wording& wording)
{
    if (so.filmsLeft)
        return Words::tr("%1 left", "films").arg(filmsLeftText(*so.filmsLeft, wording));
    if (noneCounted(batch, so))
        return Words::tr("films not known");
    return (so.atLeast ? Words::tr("at least %1 done", "films") : Words::tr("%1 done", "films"))
        .arg(filmsText(batch.filmsDone, wording));
}

ShelfLines reasonLines(const ledger::Reason& reason, const ledger::Batch& batch,
                       const ledger::Assessment& so, const Wording& wording)
{
    const auto number = [&](std::string_view name, int decimals) {
        return numberText(reason.number(name), decimals, wording.locale);
    };
    const auto seconds = [&](std::string_view name) {
        return clearingNumber(chemistry::Seconds(reason.number(name)), wording.locale);
    };
    const auto percent = [&](std::string_view name) {
        return percentText(reason.number(name), wording.locale);
    };
    switch (reason.code) {
    case ReasonCode::Contaminated:
        return {Words::tr("contaminated"), {}};
    case ReasonCode::TestFailed:
        return {Words::tr("a test failed"), {}};
    case ReasonCode::ClearingDoubled:
        return {Words::tr("clears in %1 s").arg(seconds("last_s")),
                Words::tr("%1 s when fresh").arg(seconds("fresh_s"))};
    case ReasonCode::CapacityReached:
        return {Words::tr("capacity reached"),
                Words::tr("%1 done").arg(filmsText(batch.filmsDone, wording))};
    case ReasonCode::LessThanQuarterFilm:
        return {Words::tr("no film left in it"),
                Words::tr("%1 done").arg(filmsText(batch.filmsDone, wording))};
    case ReasonCode::PastKeeping:
        return {Words::tr("past its keeping"),
                Words::tr("since %1").arg(dayText(*so.keepsUntil, batch.asOf, wording.locale))};
    case ReasonCode::SilverOverLimit:
        return {Words::tr("too much silver"),
                Words::tr("%1 g/L, limit %2").arg(number("silver", 2), number("limit", 2))};
    case ReasonCode::TurnoverOverLimit:
        return {Words::tr("replenished too often"),
                Words::tr("%1 times its volume, limit %2")
                    .arg(number("turnovers", 1), number("limit", 1))};
    case ReasonCode::StandingSpent:
        return {Words::tr("spent by standing?"), Words::tr("%1 used").arg(percent("standing"))};
    case ReasonCode::ClearingTestDue: {
        const double films = reason.number("films_since");
        const int days = static_cast<int>(std::floor(reason.number("days_since")));
        const bool byFilms = films >= ledger::kClearingTestEveryFilms.value() - 1e-9;
        return {Words::tr("clearing test due"),
                byFilms
                    ? Words::tr("%1 a litre since").arg(filmsText(chemistry::Films(films), wording))
                    : Words::tr("%Ln day(s) since", nullptr, days)};
    }
    case ReasonCode::HistoryUnknown:
        return {Words::tr("history unknown"), filmsLine(batch, so, wording)};
    case ReasonCode::TestAsked:
        return {Words::tr("test asked for"), filmsLine(batch, so, wording)};
    case ReasonCode::StandingNear:
        return {filmsLine(batch, so, wording),
                Words::tr("standing %1 used").arg(percent("standing"))};
    case ReasonCode::CapacityNear:
    case ReasonCode::FilmsFew:
    case ReasonCode::DiscardSoon:
        break;
    }
    return {filmsLine(batch, so, wording), untilLine(batch, so, wording)};
}

// Whole minutes to the next look, never less than are left.
QString minutesToLook(const ledger::Batch& batch, const ledger::Assessment& so,
                      const Wording& wording)
{
    const auto left = std::chrono::ceil<std::chrono::minutes>(*so.lookAt - batch.asOf);
    return wording.locale.toString(static_cast<qlonglong>(left.count()));
}

} // namespace

QString verdictWord(ledger::Verdict verdict)
{
    switch (verdict) {
    case ledger::Verdict::Good:
        return Words::tr("Good");
    case ledger::Verdict::NearItsEnd:
        return Words::tr("Near its end");
    case ledger::Verdict::TestFirst:
        return Words::tr("Test first");
    case ledger::Verdict::Resting:
        return Words::tr("Resting");
    case ledger::Verdict::Discard:
        break;
    }
    return Words::tr("Discard");
}

QString filmsSentence(const ledger::Batch& batch, const ledger::Assessment& so,
                      const Wording& wording)
{
    if (noneCounted(batch, so))
        return so.filmsLeft
                   ? Words::tr("Films: none counted in it yet; at most %1 left.")
                         .arg(filmsLeftText(*so.filmsLeft, wording))
                   : Words::tr(
                         "Films: how many it has done and how many it has left is not known.");
    if (!so.filmsLeft && so.atLeast)
        return Words::tr("Films: at least %1 done; how many it has left is not known.")
            .arg(filmsText(batch.filmsDone, wording));
    if (!so.filmsLeft)
        return Words::tr("Films: %1 done; no capacity is known for it.")
            .arg(filmsText(batch.filmsDone, wording));
    // What has done more than it can has no count to be of.
    const bool beyond = so.capacity && so.filmsLeft->value() <= 0 &&
                        batch.wear.value() > so.capacity->value() + chemistry::kFilmSlack;
    if (beyond)
        return Words::tr("Films: %1 done; %2 of %3 films per litre.")
            .arg(filmCountText(batch.filmsDone.value(), wording.locale),
                 numberText(batch.wear.value(), 1, wording.locale),
                 numberText(so.capacity->value(), 1, wording.locale));
    // What is made up for as it goes has no sum that it could be of.
    if (!batch.solution->replenisher.empty())
        return (so.atLeast ? Words::tr("Films: at least %1 done; at most %2 more without its "
                                       "replenisher.")
                           : Words::tr("Films: %1 done; %2 more without its replenisher."))
            .arg(filmCountText(batch.filmsDone.value(), wording.locale),
                 filmCountText(usableFilms(so.filmsLeft->value()), wording.locale));
    const QString used =
        (so.atLeast ? Words::tr("Films: at least %1 of %2 used", "done, done and left together")
                    : Words::tr("Films: %1 of %2 used", "done, done and left together"))
            .arg(filmCountText(batch.filmsDone.value(), wording.locale),
                 filmCountText(batch.filmsDone.value() + usableFilms(so.filmsLeft->value()),
                               wording.locale));
    // Without a load there is no pace of this user's, and a bottle to discard has no next film.
    if (!so.lastFilm || batch.loads.empty() || so.verdict == ledger::Verdict::Discard)
        return Words::tr("%1.", "a sentence").arg(used);
    const auto on = [&](chemistry::Days wait) { return chemistry::addDays(batch.asOf, wait); };
    const QStringList days =
        dayTexts({on(so.lastFilm->median), on(so.lastFilm->early), on(so.lastFilm->late)},
                 batch.asOf, wording.locale);
    return withOneStop(Words::tr("%1; last film about %2, 8 times in 10 between %3 and %4.")
                           .arg(used, days[0], days[1], days[2]));
}

namespace
{

QString withUntil(const QString& sentence, const ledger::Batch& batch, const ledger::Assessment& so,
                  const Wording& wording, const QString& until)
{
    if (!so.discardBy || *so.discardBy <= batch.asOf)
        return sentence;
    return withOneStop(
        Words::tr("%1 Keeps until %2.", "sentence, date")
            .arg(sentence, until.isEmpty() ? discardDay(batch, so, wording) : until));
}

// Of what air does nothing to.
QString ageSentence(const ledger::Batch& batch, const ledger::Assessment& so,
                    const Wording& wording, const QString& until)
{
    const QString share = percentText(*so.standingUsed, wording.locale);
    const bool dateKnown = !batch.historyUnknown || batch.dateKnown;
    const QString used = *so.standingUsed > 1 ? Words::tr("Age: past the end (%1 used).").arg(share)
                         : dateKnown          ? Words::tr("Age: %1 used.").arg(share)
                                     : Words::tr("Age: at least %1 used since it was found; when "
                                                 "it was mixed is not known.")
                                           .arg(share);
    return withUntil(used, batch, so, wording, until);
}

} // namespace

QString standingSentence(const ledger::Batch& batch, const ledger::Assessment& so,
                         const Wording& wording, const QString& until)
{
    if (!so.standingUsed)
        return Words::tr("Age and air: no keeping time is known for it.");
    if (!batch.limits || !batch.limits->airCounts()) // then it has no part in it
        return ageSentence(batch, so, wording, until);
    const QString parts = Words::tr("(age %1, air %2)")
                              .arg(percentText(*so.agePart, wording.locale),
                                   percentText(*so.airPart, wording.locale));
    const QString share = percentText(*so.standingUsed, wording.locale);
    const bool dateKnown = !batch.historyUnknown || batch.dateKnown;
    QString used = *so.standingUsed > 1 ? Words::tr("Age and air: past the end %1.").arg(parts)
                   : dateKnown
                       ? Words::tr("Age and air: %1 used %2.").arg(share, parts)
                       : Words::tr("Age and air: at least %1 used since it was found %2; when "
                                   "it was mixed is not known.")
                             .arg(share, parts);
    used = withUntil(used, batch, so, wording, until);
    const QString doubt = extrapolationSentence(batch);
    return doubt.isEmpty() ? used : used + u' ' + doubt;
}

QString extrapolationSentence(const ledger::Batch& batch)
{
    return batch.inUse() && batch.extrapolates()
               ? Words::tr("Less than half full: how long it keeps is extrapolated.")
               : QString();
}

QString restSentence(const formulary::Solution& solution, const Wording& wording)
{
    const auto rest = ledger::wearAtRest(solution);
    if (!rest)
        return {};
    const QString rate = volumeText(*solution.replenishPerFilm, wording);
    if (!solution.replenisher.empty())
        return Words::tr("Replenished with %1 a film, every film is made up for.").arg(rate);
    const QString wear = numberText(rest->value(), 1, wording.locale);
    if (ledger::restHolds(solution))
        return Words::tr("Topped up with %1 a film, its wear settles at %2 films per litre.")
            .arg(rate, wear);
    return Words::tr("Topped up with %1 a film, its wear would settle at %2 films per litre, "
                     "beyond the %3 it can do: that only delays its end.")
        .arg(rate, wear, numberText(formulary::capacityOf(solution)->value(), 1, wording.locale));
}

QString replenishedSentence(const ledger::Batch& batch, const Wording& wording)
{
    const formulary::Solution& solution = *batch.solution;
    if (solution.replenisher.empty() || !solution.replenishPerFilm)
        return {};
    const chemistry::Films credit(batch.replenished / *solution.replenishPerFilm);
    QString text = Words::tr("Replenished with %1 so far, %2 times its volume: that makes up for "
                             "%3.",
                             "volume, turnovers, films")
                       .arg(volumeText(batch.replenished, wording),
                            numberText(ledger::turnovers(batch), 1, wording.locale),
                            filmsText(credit, wording));
    if (solution.turnoverLimit)
        text += u' ' + Words::tr("Its limit is %1 times.")
                           .arg(numberText(*solution.turnoverLimit, 1, wording.locale));
    if (const auto due = ledger::replenisherDue(batch))
        text += u' ' +
                Words::tr("%1 is due now.", "volume of replenisher").arg(volumeText(*due, wording));
    return text;
}

QString firstSentence(const ledger::Assessment& so, const Wording& wording)
{
    if (!so.lastFilm || !so.lastFilm->chanceFilmsFirst)
        return {};
    const double chance = *so.lastFilm->chanceFilmsFirst;
    constexpr double kSure = 0.9;
    if (chance >= kSure)
        return Words::tr("Films run out first.");
    if (chance <= 1 - kSure)
        return Words::tr("Time runs out first.");
    if (chance >= 0.5)
        return Words::tr("Films probably run out first (%1).")
            .arg(percentText(chance, wording.locale));
    return Words::tr("Time probably runs out first (%1).")
        .arg(percentText(1 - chance, wording.locale));
}

QString restingSentence(const ledger::Batch& batch, const ledger::Assessment& so,
                        const Wording& wording)
{
    if (so.verdict == ledger::Verdict::Discard || ledger::knownClear(batch))
        return {};
    if (so.lookAt)
        return Words::tr("It rests until it is clear: shake it and look again in %1 min. Until "
                         "then no run is planned with it.")
            .arg(minutesToLook(batch, so, wording));
    return Words::tr("Nobody has marked it as dissolved yet: look whether it is clear. "
                     "Until then no run is planned with it.");
}

QStringList bottleSentences(const ledger::Batch& batch, const ledger::Assessment& so,
                            const Wording& wording, const QString& until)
{
    if (batch.end == ledger::BatchEnd::Discarded)
        return {Words::tr("Discarded on %1.")
                    .arg(fullDateText(localDate(*batch.endedAt), wording.locale))};
    if (batch.end == ledger::BatchEnd::UsedUp)
        return {Words::tr("Used up on %1.")
                    .arg(fullDateText(localDate(*batch.endedAt), wording.locale))};
    QStringList sentences;
    if (const QString resting = restingSentence(batch, so, wording); !resting.isEmpty())
        sentences << resting;
    for (const ledger::Reason& reason : forReading(so.reasons))
        sentences << reasonSentence(reason, batch, so, wording);
    sentences << filmsSentence(batch, so, wording) << standingSentence(batch, so, wording, until);
    if (const QString used = replenishedSentence(batch, wording); !used.isEmpty())
        sentences << used;
    else if (const QString rest = restSentence(*batch.solution, wording); !rest.isEmpty())
        sentences << rest;
    if (so.verdict != ledger::Verdict::Discard && !batch.loads.empty()) {
        if (const QString first = firstSentence(so, wording); !first.isEmpty())
            sentences << first;
    }
    for (QString& sentence : sentences)
        sentence = withOneStop(sentence);
    return sentences;
}

ShelfLines shelfLines(const ledger::Batch& batch, const ledger::Assessment& so,
                      const Wording& wording)
{
    if (batch.end == ledger::BatchEnd::Discarded)
        return {Words::tr("discarded"), dayText(*batch.endedAt, batch.asOf, wording.locale)};
    if (batch.end == ledger::BatchEnd::UsedUp)
        return {Words::tr("used up"), dayText(*batch.endedAt, batch.asOf, wording.locale)};
    if (so.shown == ledger::Verdict::Resting)
        return {Words::tr("not clear yet"),
                so.lookAt ? Words::tr("look again in %1 min").arg(minutesToLook(batch, so, wording))
                          : filmsLine(batch, so, wording)};
    const auto reasons = forReading(so.reasons);
    if (!reasons.empty())
        return reasonLines(reasons.front(), batch, so, wording);
    return {filmsLine(batch, so, wording), untilLine(batch, so, wording)};
}

} // namespace ullage::app
