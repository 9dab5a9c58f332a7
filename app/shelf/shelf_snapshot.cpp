#include "app/shelf/shelf_snapshot.h"

#include "app/charts/strip_chart.h"
#include "app/shelf/shelf_charts.h"
#include "app/words/air_words.h"
#include "app/words/explanations.h"
#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include "core/ledger/air_advice.h"
#include "core/ledger/fold_together.h"
#include "core/ledger/range.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <utility>

namespace ullage::app
{

namespace
{

// Enough for months; the span moves by days between one and the next sample of this size.
constexpr int kRangeSamples = 60;

std::optional<ledger::DateRange> discardRange(const BottleSnapshot& snapshot,
                                              const formulary::Formulary& formulary)
{
    const ledger::Batch& batch = snapshot.bottle.batch;
    if (!batch.inUse())
        return std::nullopt;
    return ledger::discardRange(batch.id, snapshot.events, batch.asOf, formulary,
                                {.samples = kRangeSamples})
        .value_or(std::nullopt);
}

struct Words {
    Q_DECLARE_TR_FUNCTIONS(UnreadBottle)
};

// Before all others: something is to be done.
BottleView unreadView(const UnreadBottle& bottle)
{
    constexpr double kFirst = 10;
    BottleView view;
    view.id = bottle.id;
    view.name = bottle.name;
    view.solutionName = bottle.solution;
    view.solution = SolutionLook::Other;
    view.verdict = VerdictLook::TestFirst;
    view.mark = Words::tr("Not shown");
    view.headline = Words::tr("Not as it was entered");
    view.unread = true;
    view.urgency = kFirst;
    return view;
}

SelectedBottle withoutFigures(const UnreadBottle& bottle, const QString& why,
                              const QString& instead)
{
    SelectedBottle selected;
    selected.id = bottle.id;
    selected.name = bottle.name;
    selected.nextTitle = bottle.name;
    selected.noTime = instead;
    selected.verdict = VerdictLook::TestFirst;
    selected.why = Words::tr("Not shown");
    selected.reasons = QStringList{why};
    selected.noLeft = Words::tr("Nothing can be drawn of it.");
    selected.noPerFilm = selected.noLeft;
    selected.refused = refuseAll(Words::tr("not shown"));
    selected.unread = true;
    return selected;
}

void addStrips(SelectedBottle& selected, const BottleSnapshot& snapshot, const Wording& wording)
{
    const ledger::Batch& batch = snapshot.bottle.batch;
    selected.hasStrips = batch.solution->role == formulary::Role::Developer;
    if (!selected.hasStrips)
        return;
    const auto record = ledger::stripRecord(snapshot.strips);
    if (record.readings.empty()) {
        selected.stripWords << stripsToCome();
        return;
    }
    selected.strips = stripChart(record, batch.asOf, wording);
    const auto passed = ledger::overriddenIn(record, batch.id);
    if (!passed.empty() && batch.inUse())
        selected.reasons.push_front(
            Words::tr("A control strip was passed against its limits: %1.")
                .arg(stripName(record.readings[passed.back()], batch.asOf, wording)));
    selected.stripWords = stripSentences(record, batch.id, batch.asOf, wording);
    if (const auto limits = explainStripLimits(record, wording))
        selected.figures.push_back(*limits);
}

// Under their names, which their mixings gave them.
void addFillings(SelectedBottle& selected, const BottleSnapshot& snapshot)
{
    std::map<std::string, QString> names;
    for (const ledger::Event& event : snapshot.events) {
        const auto* mixed = std::get_if<ledger::Mixed>(&event.what);
        if (mixed && !mixed->name.empty())
            names[event.batch] = QString::fromStdString(mixed->name);
    }
    const auto& fillings = snapshot.bottle.batch.fillings;
    for (auto filling = fillings.rbegin(); filling != fillings.rend(); ++filling) {
        const QString id = QString::fromStdString(filling->other);
        const auto name = names.find(filling->other);
        const FilledBottle bottle{id, name == names.end() ? id : name->second, filling->into};
        auto& all = selected.filled;
        if (std::find(all.begin(), all.end(), bottle) == all.end())
            all.push_back(bottle);
    }
}

// When the first of two fixing baths makes room for the second.
void addExchange(SelectedBottle& selected, const BottleSnapshot& snapshot, const Wording& wording)
{
    const auto& [batch, assessment] = snapshot.bottle;
    if (snapshot.secondBath.isEmpty() || !batch.inUse())
        return;
    const auto& clearing = assessment.clearing;
    const auto fresh = clearing ? clearing->fresh : batch.solution->freshClearing;
    if (clearing && clearing->doubled)
        selected.reasons.push_front(
            Words::tr("Exchange the baths: discard it, let %1 take its place, and mix a fresh one "
                      "for the second.")
                .arg(snapshot.secondBath));
    else if (fresh)
        selected.reasons << Words::tr("First of two baths: exchange it for %1 when a leader takes "
                                      "%2 to clear at 20 °C.")
                                .arg(snapshot.secondBath,
                                     clearingText(chemistry::Seconds(2 * fresh->value()),
                                                  wording.locale));
}

void addAirAdvice(SelectedBottle& selected, const BottleSnapshot& snapshot, const Wording& wording)
{
    if (!selected.air)
        return;
    const ledger::Batch& batch = snapshot.bottle.batch;
    if (const QString stored = storeSentence(batch, wording); !stored.isEmpty())
        selected.help << stored;
    selected.help << routeSentence(batch, wording);
    if (const auto advice = ledger::airAdvice(batch, snapshot.freeVessels))
        selected.help << helpSentences(*advice, batch.asOf, wording);
}

void addCost(SelectedBottle& selected, const BottleSnapshot& snapshot, const Wording& wording)
{
    if (!snapshot.cost)
        return;
    const chemistry::Films done = snapshot.bottle.batch.filmsDone;
    selected.cost = bottleCostText(*snapshot.cost, done, wording.locale);
    selected.figures.push_back(explainCost(*snapshot.cost, done, wording));
}

} // namespace

ShelfShown shelfShown(const ShelfSnapshot& shelf, const Wording& wording)
{
    ShelfShown shown;
    std::optional<chemistry::Instant> next;
    for (const ledger::Judged& bottle : shelf.bottles) {
        shown.bottles.push_back(bottleView(bottle.batch, bottle.assessment, wording));
        const auto by = bottle.assessment.discardBy;
        if (by && *by > shelf.now && (!next || *by < *next))
            next = by;
    }
    if (!shown.bottles.empty())
        shown.summary = shelfSummary(shown.bottles, next, shelf.now, wording);
    if (!shelf.unread.empty()) {
        const QString unread =
            Words::tr("%Ln bottle(s) not shown", nullptr, static_cast<int>(shelf.unread.size()));
        shown.summary =
            shown.summary.isEmpty() ? unread : shown.summary + QStringLiteral(" · ") + unread;
    }
    for (const UnreadBottle& bottle : shelf.unread)
        shown.bottles.push_back(unreadView(bottle));
    if (shelf.newest) {
        const QString behind = clockBehindText(*shelf.newest, shelf.now, wording);
        if (!behind.isEmpty())
            shown.summary = behind;
    }
    return shown;
}

SelectedBottle unreadBottle(const UnreadBottle& bottle, const QString& why)
{
    return withoutFigures(bottle, why,
                          Words::tr("Not as it was entered: not shown. What is left in it and what "
                                    "it still does cannot be told from this book; a copy from "
                                    "before the fault has all of it."));
}

SelectedBottle unreachedBottle(const UnreadBottle& bottle, const QString& why)
{
    return withoutFigures(
        bottle, why,
        Words::tr("Its entries could not be read just now, so nothing is shown of it. Choose it "
                  "again in a moment; if that does not help, check the book."));
}

std::vector<ledger::Batch> pastOf(const ledger::Batch& batch, std::vector<ledger::Event> entered,
                                  const formulary::Formulary& formulary)
{
    std::vector<ledger::Batch> past;
    ledger::FoldTogether folds(formulary);
    const auto events = ledger::happened(std::move(entered));
    auto next = events.begin();
    for (const auto moment : pastMoments(batch)) {
        for (; next != events.end() && next->at <= moment; ++next) {
            if (!folds.apply(*next))
                return past;
        }
        if (const ledger::Fold* fold = folds.of(batch.id))
            past.push_back(fold->at(moment));
    }
    return past;
}

SelectedBottle selectedBottle(const BottleSnapshot& snapshot, const formulary::Formulary& formulary,
                              const Wording& wording)
{
    const auto& [batch, assessment] = snapshot.bottle;
    SelectedBottle selected =
        selectedBottle(batch, assessment, pastOf(batch, snapshot.events, formulary), snapshot.times,
                       discardRange(snapshot, formulary), snapshot.temperature, wording);
    addFillings(selected, snapshot);
    addExchange(selected, snapshot, wording);
    addAirAdvice(selected, snapshot, wording);
    addStrips(selected, snapshot, wording);
    addCost(selected, snapshot, wording);
    return selected;
}

} // namespace ullage::app
