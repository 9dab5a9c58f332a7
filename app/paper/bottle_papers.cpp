#include "app/paper/paper_parts.h"

#include "app/words/cautions.h"
#include "app/words/event_words.h"
#include "app/words/formulary_words.h"
#include "app/words/hazards.h"
#include "app/words/moment_text.h"
#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "app/words/verdict_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

struct BottlePapers {
    Q_DECLARE_TR_FUNCTIONS(BottlePapers)
};

const QString kNoFigure = QStringLiteral("–");

QString leftOf(const ledger::Assessment& so, const PaperAbout& about)
{
    return so.filmsLeft ? filmsLeftText(*so.filmsLeft, about.wording) : kNoFigure;
}

QString discardOf(const ledger::Assessment& so, const PaperAbout& about)
{
    return so.discardBy ? paperDay(*so.discardBy, about) : kNoFigure;
}

// About five round steps from 0 to the top, and that top.
std::vector<std::pair<double, QString>> stepsTo(double& top, const QLocale& locale)
{
    const double wish = std::max(top, 1e-6) / 5;
    const double power = std::pow(10, std::floor(std::log10(wish)));
    double step = power;
    for (const double round : {2.0, 5.0, 10.0}) {
        if (step < wish)
            step = round * power;
    }
    top = std::ceil(top / step - 1e-9) * step;
    std::vector<std::pair<double, QString>> ticks;
    for (int i = 0; i * step <= top * (1 + 1e-9); ++i)
        ticks.emplace_back(i * step, numberText(i * step, 2, locale));
    return ticks;
}

// Films a litre and, where keeping figures are known, how much of its life is spent by standing.
std::vector<PaperChart> chartsOf(const ledger::Batch& batch, const PaperAbout& about)
{
    std::vector<PaperChart> charts;
    const double days = std::max(1.0, chemistry::daysBetween(batch.mixedAt, batch.asOf).value());
    const QLocale& locale = about.wording.locale;
    PaperChart films;
    films.title = BottlePapers::tr("Films per litre");
    films.xMax = days;
    const auto day = [&](chemistry::Instant at) {
        return std::max(0.0, chemistry::daysBetween(batch.mixedAt, at).value());
    };
    PaperCurve wear{BottlePapers::tr("done"), {}, false};
    for (const ledger::Snapshot& then : batch.trace)
        wear.points.emplace_back(day(then.at), then.wear.value());
    wear.points.emplace_back(days, batch.wear.value());
    double top = batch.wear.value();
    for (const QPointF& point : wear.points)
        top = std::max(top, point.y());
    films.curves.push_back(wear);
    if (const auto capacity = formulary::capacityOf(*batch.solution)) {
        top = std::max(top, capacity->value());
        films.curves.push_back({BottlePapers::tr("capacity"),
                                {{0, capacity->value()}, {days, capacity->value()}},
                                true});
    }
    films.yMax = std::max(top, 1.0);
    films.yTicks = stepsTo(films.yMax, locale);
    for (int i = 0; i <= 4; ++i) {
        const double at = days * i / 4;
        films.xTicks.emplace_back(
            at, dateText(localDate(chemistry::addDays(batch.mixedAt, chemistry::Days(at))),
                         localDate(about.now), locale));
    }
    charts.push_back(films);
    if (!batch.limits)
        return charts;
    PaperChart standing = films;
    standing.title = BottlePapers::tr("Of its life spent by age and air");
    standing.yMax = std::max(1.0, batch.standingUsed().value_or(0));
    standing.yTicks.clear();
    for (int i = 0; i <= 4; ++i)
        standing.yTicks.emplace_back(standing.yMax * i / 4,
                                     percentText(standing.yMax * i / 4, locale));
    PaperCurve spent{BottlePapers::tr("spent"), {}, false};
    for (const ledger::Snapshot& then : batch.trace)
        spent.points.emplace_back(day(then.at), batch.limits->used(then.standing));
    spent.points.emplace_back(days, batch.standingUsed().value_or(0));
    standing.curves = {spent};
    charts.push_back(standing);
    return charts;
}

} // namespace

PaperDocument shelfPaper(const std::vector<ledger::Judged>& bottles, const PaperAbout& about)
{
    std::vector<const ledger::Judged*> inOrder;
    for (const ledger::Judged& bottle : bottles)
        inOrder.push_back(&bottle);
    std::stable_sort(inOrder.begin(), inOrder.end(), [](const auto* a, const auto* b) {
        const auto end = [](const ledger::Judged& bottle) {
            return bottle.assessment.discardBy.value_or(chemistry::Instant::max());
        };
        return end(*a) < end(*b);
    });
    PaperDocument document;
    document.title = BottlePapers::tr("The shelf");
    document.under = underOf(about);
    document.letters = 4;
    PaperTable table;
    table.columns = {{BottlePapers::tr("Bottle")},       {BottlePapers::tr("Contents")},
                     {BottlePapers::tr("Volume"), true}, {BottlePapers::tr("Left"), true},
                     {BottlePapers::tr("Discard by")},   {BottlePapers::tr("State")}};
    table.none = BottlePapers::tr("No bottle is in use.");
    for (const ledger::Judged* bottle : inOrder) {
        const ledger::Batch& batch = bottle->batch;
        table.rows.push_back(
            {QString::fromStdString(batch.name), shownName(batch.solution->name),
             volumeText(batch.volume, about.wording), leftOf(bottle->assessment, about),
             discardOf(bottle->assessment, about), verdictWord(bottle->assessment.shown)});
    }
    document.blocks.emplace_back(table);
    document.blocks.emplace_back(PaperWords{Cautions::labelAndLock()});
    document.blocks.emplace_back(PaperWords{Cautions::noCleaners()});
    return document;
}

PaperDocument cardPaper(const ledger::Judged& bottle, const std::vector<ledger::Event>& events,
                        const ledger::Cost& cost, const formulary::Formulary& formulary,
                        const PaperAbout& about)
{
    const ledger::Batch& batch = bottle.batch;
    const ledger::Assessment& so = bottle.assessment;
    PaperDocument document;
    document.title = QString::fromStdString(batch.name);
    document.under = shownName(batch.solution->name) + QStringLiteral(" · ") + underOf(about);
    PaperTable facts;
    facts.columns = {{BottlePapers::tr("What")}, {BottlePapers::tr("Figure")}};
    const bool found = batch.historyUnknown && !batch.dateKnown; // and mixed nobody knows when
    facts.rows = {{found ? BottlePapers::tr("Found") : BottlePapers::tr("Mixed"),
                   paperDay(batch.madeAt, about)},
                  {BottlePapers::tr("Volume"), volumeText(batch.volume, about.wording)}};
    if (batch.vessel)
        facts.rows.push_back({BottlePapers::tr("Stands in"), shownName(batch.vessel->name)});
    facts.rows.push_back({BottlePapers::tr("Films done"),
                          filmCountText(batch.filmsDone.value(), about.wording.locale)});
    facts.rows.push_back({BottlePapers::tr("Left"), leftOf(so, about)});
    facts.rows.push_back({BottlePapers::tr("Discard by"), discardOf(so, about)});
    if (batch.inUse())
        facts.rows.push_back({BottlePapers::tr("State"), verdictWord(so.shown)});
    const Explanation paid = explainCost(cost, batch.filmsDone, about.wording);
    facts.rows.push_back({paid.title, paid.value});
    if (cost.whole && !cost.money.empty() && batch.filmsDone > chemistry::Films(0))
        facts.rows.push_back(
            {BottlePapers::tr("For each film done"),
             moneyText(cost.money.forEachOf(batch.filmsDone.value()), about.wording.locale)});
    document.blocks.emplace_back(facts);
    for (const QString& sentence : bottleSentences(batch, so, about.wording))
        document.blocks.emplace_back(PaperWords{sentence});
    document.blocks.emplace_back(PaperHeading{BottlePapers::tr("Cautions")});
    for (const QString& caution : storingCautions(batch.solution->role))
        document.blocks.emplace_back(PaperWords{caution});
    for (const QString& hazard : hazardCautions(*batch.solution, Strength::AsBought))
        document.blocks.emplace_back(PaperWords{hazard});
    for (const PaperChart& chart : chartsOf(batch, about))
        document.blocks.emplace_back(chart);
    document.blocks.emplace_back(PaperHeading{BottlePapers::tr("What happened")});
    PaperTable table;
    table.columns = {{BottlePapers::tr("When")}, {BottlePapers::tr("What")}};
    const bool named = std::any_of(events.begin(), events.end(),
                                   [](const ledger::Event& event) { return !event.by.empty(); });
    if (named)
        table.columns.push_back({BottlePapers::tr("Who")});
    table.none = BottlePapers::tr("Nothing yet.");
    for (const ledger::Event& event : events) {
        table.rows.push_back({momentText(event.at, about.now, about.wording.locale),
                              eventText(event, formulary, about.wording)});
        if (named)
            table.rows.back() << QString::fromStdString(event.by);
    }
    document.blocks.emplace_back(table);
    return document;
}

} // namespace ullage::app
