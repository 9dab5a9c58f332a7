// The bottle selected: its next time factor by factor, its sentences and charts.
#include "app/shelf/shelf_charts.h"
#include "app/shelf/shelf_views.h"
#include "app/words/air_words.h"
#include "app/words/explanations.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "app/words/source_words.h"
#include "app/words/verdict_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ShelfViews)
};

RefusedActions refusedOf(const ledger::Batch& batch, const ledger::Assessment& assessment)
{
    RefusedActions refused;
    if (batch.dissolved)
        refused[BottleAction::Dissolved] = Words::tr("it is clear");
    if (batch.solution->role != formulary::Role::Fixer) { // nothing else gathers silver
        refused[BottleAction::Measured] = Words::tr("fixers only");
        refused[BottleAction::ExchangeBaths] = Words::tr("fixers only");
    }
    if (batch.contaminated)
        refused[BottleAction::Contaminated] = Words::tr("marked already");
    if (assessment.verdict == ledger::Verdict::Discard)
        refused[BottleAction::OneMore] = Words::tr("it is to be discarded");
    return refused;
}

// The date with its span, where the constants' ranges move it by months.
QString keepsUntil(const std::optional<ledger::DateRange>& range, const ledger::Batch& batch,
                   const Wording& wording)
{
    if (!range)
        return {};
    const QString span = discardSpanText(*range, batch.asOf, wording.locale);
    return span == aboutDayText(range->value, batch.asOf, wording.locale) ? QString() : span;
}

// The time is one film's from the notebook: say whose it is. Its source stands under "Where from?".
void nameFilm(SelectedBottle& selected, const KnownTimes& times, chemistry::Celsius temperature,
              const Wording& wording)
{
    const QString at = shortTemperatureText(temperature, wording);
    if (!times.lastUsed)
        selected.nextDetail =
            Words::tr("at %1, for %2 as in Times", "temperature, film").arg(at, times.film);
    else if (!times.film.isEmpty())
        selected.nextDetail =
            Words::tr("at %1, undiluted, for %2 as in the last run", "temperature, film")
                .arg(at, times.film);
    else
        selected.nextDetail =
            Words::tr("at %1, undiluted, by the time last typed in: its film was not named")
                .arg(at);
}

// No film is to go through it any more: its time is told to whoever uses it all the same, but never
// as what comes next.
void playDown(SelectedBottle& selected)
{
    if (selected.nextTime.isEmpty())
        return;
    selected.noTime = Words::tr("Not for film any more. Used all the same: %1 %2", "time, of what")
                          .arg(selected.nextTime, selected.nextDetail);
    selected.nextTime.clear();
    selected.nextDetail.clear();
}

} // namespace

KnownTimes notebookTimes(const formulary::Formulary& formulary,
                         const formulary::Solution& developer)
{
    const auto plain = [](const std::string& text) {
        return QString::fromStdString(text).remove(u' ').toCaseFolded();
    };
    const auto family = formulary.family(developer.id);
    const QString name = plain(developer.name);
    for (const auto& figure : formulary.notebook().current()) {
        const QString dilution = plain(figure->dilution);
        const bool asItIs =
            dilution.isEmpty() || dilution == QLatin1String("stock") || name.endsWith(dilution);
        if (asItIs && std::find(family.begin(), family.end(), figure->developer) != family.end())
            return {figure->times, QString::fromStdString(figure->film),
                    QString::fromStdString(figure->source), false};
    }
    return {};
}

SelectedBottle selectedBottle(const ledger::Batch& batch, const ledger::Assessment& assessment,
                              std::span<const ledger::Batch> past, const KnownTimes& times,
                              const std::optional<ledger::DateRange>& range,
                              chemistry::Celsius temperature, const Wording& wording)
{
    SelectedBottle selected;
    const std::span<const chemistry::TimeAtTemperature> pairs(times.pairs);
    const auto role = batch.solution->role;
    const bool developer = role == formulary::Role::Developer;
    selected.id = QString::fromStdString(batch.id);
    selected.name = QString::fromStdString(batch.name);
    selected.nextTitle = Words::tr("%1, %2 · next film", "bottle, solution")
                             .arg(selected.name, shownName(batch.solution->name));
    if (developer || role == formulary::Role::Fixer) {
        const NextFilm next = developer ? nextFilm(batch, assessment, pairs, temperature, wording)
                                        : nextFixing(batch, assessment, temperature, wording);
        selected.nextTime = next.time;
        (next.time.isEmpty() ? selected.noTime : selected.nextDetail) = next.note;
        selected.factors = next.rows;
        if (developer && (times.lastUsed || !times.film.isEmpty()) && next.seconds)
            nameFilm(selected, times, temperature, wording);
    } else {
        selected.noTime = Words::tr("It has no time of its own: use it as its packet says.");
    }
    if (assessment.shown == ledger::Verdict::Discard)
        playDown(selected);
    selected.verdict = assessment.shown;
    selected.why = Words::tr("Why: %1").arg(verdictWord(assessment.shown));
    selected.reasons =
        bottleSentences(batch, assessment, wording, keepsUntil(range, batch, wording));
    // A narrow card must not end a line between a number and its unit.
    static const QRegularExpression unit(
        QStringLiteral("(?<=\\d) (?=(%|s\\b|°C|°F|ml|g\\b|L\\b|l\\b))"));
    selected.reasons.replaceInStrings(unit, QStringLiteral("\u00a0"));
    if (const QString first = firstSentence(assessment, wording);
        !first.isEmpty() && !selected.reasons.isEmpty() && selected.reasons.back() == first) {
        selected.closing = first;
        selected.reasons.removeLast();
    }
    if (batch.limits || assessment.capacity)
        selected.left = whatIsLeftChart(batch, assessment, past, wording);
    else
        selected.noLeft = Words::tr("It has neither a capacity nor a keeping time to draw.");
    if (batch.limits && batch.limits->airCounts())
        selected.air = airChart(batch, assessment, past, wording);
    selected.figures = explainAll(batch, assessment, wording);
    if (const auto so = ledger::developingTime(batch, assessment, pairs, temperature);
        developer && so)
        selected.figures.insert(
            selected.figures.begin(),
            explainTime({times.pairs, times.source, temperature, *so}, batch, wording));
    selected.perFilmTitle = role == formulary::Role::Fixer ? Words::tr("Clearing time")
                                                           : Words::tr("Time for each film");
    const ChartSpec chart = developer
                                ? filmTimesChart(batch, assessment, pairs, temperature, wording)
                                : clearingChart(batch, assessment, wording);
    if (!chart.series.empty() && (developer || assessment.clearing))
        selected.perFilm = chart;
    else if (role == formulary::Role::Fixer)
        selected.noPerFilm = Words::tr("Its clearing tests will be drawn here.");
    else
        selected.noPerFilm =
            !developer ? Words::tr("Its time does not grow with film.")
            : assessment.capacity
                ? Words::tr("How much film it has done is not known: no times can be drawn.")
                : Words::tr("It has no capacity to count films by.");
    selected.refused = refusedOf(batch, assessment);
    return selected;
}

} // namespace ullage::app
