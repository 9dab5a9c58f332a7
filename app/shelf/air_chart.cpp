// The air that reaches a solution, by the way it comes.
#include "app/shelf/shelf_charts.h"

#include "app/words/figure_words.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace ullage::app
{

namespace
{

using chemistry::Days;
using chemistry::Instant;
using chemistry::MillimolesPerLitre;
using chemistry::Routes;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ShelfCharts)
};

constexpr int kSteps = 40;
constexpr Days kLeastAhead{14};
constexpr Days kMostAhead{730};

struct Route {
    MillimolesPerLitre Routes::*amount;
    ChartInk ink;
    SeriesKind kind;
};

constexpr std::array<Route, 5> kRoutes{{
    {&Routes::pouring, ChartInk::ToCome, SeriesKind::Area},
    {&Routes::bottleAir, ChartInk::Air, SeriesKind::HatchedArea},
    {&Routes::wall, ChartInk::Standing, SeriesKind::Area},
    {&Routes::cap, ChartInk::Age, SeriesKind::Area},
    {&Routes::openVessel, ChartInk::Next, SeriesKind::Area},
}};

QString routeName(const Route& route)
{
    if (route.amount == &Routes::pouring)
        return Words::tr("poured in");
    if (route.amount == &Routes::bottleAir)
        return Words::tr("air in the bottle");
    if (route.amount == &Routes::wall)
        return Words::tr("through the wall");
    if (route.amount == &Routes::cap)
        return Words::tr("past the cap");
    return Words::tr("standing open");
}

struct Moment {
    double day;
    chemistry::Standing state;
};

// What happened at every event and between, then the bottle standing on as it is.
std::vector<Moment> moments(const ledger::Batch& batch, std::span<const ledger::Batch> past,
                            Days ahead)
{
    std::vector<std::pair<Instant, chemistry::Standing>> states;
    for (const auto& snapshot : batch.trace)
        states.emplace_back(snapshot.at, snapshot.standing);
    for (const auto& earlier : past) {
        const bool isEvent =
            std::any_of(batch.trace.begin(), batch.trace.end(),
                        [&](const auto& snapshot) { return snapshot.at == earlier.asOf; });
        if (!isEvent)
            states.emplace_back(earlier.asOf, earlier.standing);
    }
    std::stable_sort(states.begin(), states.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    if (states.empty() || states.back().first < batch.asOf)
        states.emplace_back(batch.asOf, batch.standing);
    if (batch.inUse() && batch.volume.value() > 0) {
        const auto closed = batch.closed();
        for (int i = 1; i <= kSteps; ++i) {
            const Days wait = ahead * (static_cast<double>(i) / kSteps);
            states.emplace_back(chemistry::addDays(batch.asOf, wait),
                                chemistry::stand(batch.standing, wait, closed));
        }
    }
    std::vector<Moment> result;
    for (const auto& [at, state] : states)
        result.push_back({chartDay(localTime(at)), state});
    return result;
}

} // namespace

ChartSpec airChart(const ledger::Batch& batch, const ledger::Assessment& so,
                   std::span<const ledger::Batch> past, const Wording& wording)
{
    ChartSpec spec;
    spec.title = Words::tr("Oxygen taken up, by the way it comes");
    spec.xName = Words::tr("date");
    spec.y = ChartY::Number;
    spec.yUnit = Words::tr("mmol/L");
    spec.yText = [locale = wording.locale](double amount) {
        return Words::tr("%1 mmol per litre").arg(numberText(amount, 2, locale));
    };
    Days ahead = kLeastAhead;
    if (so.discardBy)
        ahead = std::max(ahead, chemistry::daysBetween(batch.asOf, *so.discardBy) * 1.1);
    ahead = std::min(ahead, kMostAhead);
    const auto all = moments(batch, past, ahead);
    spec.xMin = all.front().day;
    spec.xMax = std::max(all.back().day, spec.xMin + 1);
    spec.marker = chartDay(localTime(batch.asOf));
    spec.markerText = batch.inUse() ? Words::tr("today") : Words::tr("ended");

    std::vector<double> below(all.size(), 0.0);
    const Route* greatest = nullptr;
    for (const Route& route : kRoutes) {
        ChartSeries series{.name = routeName(route), .kind = route.kind, .ink = route.ink};
        for (std::size_t i = 0; i < all.size(); ++i) {
            const double amount = (all[i].state.taken.*route.amount).value();
            series.lower.emplace_back(all[i].day, below[i]);
            below[i] += amount;
            series.points.emplace_back(all[i].day, below[i]);
        }
        // A way by which nothing comes has no place in the legend.
        if ((all.back().state.taken.*route.amount).value() < 0.005)
            continue;
        spec.series.push_back(series);
        if (!greatest ||
            (batch.standing.taken.*route.amount) > (batch.standing.taken.*greatest->amount))
            greatest = &route;
    }
    const QString taken = oxygenText(batch.standing.taken.total(), wording.locale);
    spec.summary =
        greatest ? Words::tr("%1 taken up by now; most of it: %2.").arg(taken, routeName(*greatest))
                 : Words::tr("%1 taken up by now.").arg(taken);
    if (batch.limits && batch.limits->airCounts()) {
        const double limit = batch.limits->oxygen.value();
        ChartSeries aged{.name = Words::tr("less what age has used"),
                         .kind = SeriesKind::Line,
                         .ink = ChartInk::Age};
        for (const Moment& moment : all) {
            const double left = 1 - moment.state.aged / batch.limits->age;
            aged.points.emplace_back(moment.day, limit * std::max(0.0, left));
        }
        spec.series.push_back({.name = Words::tr("what it can take"),
                               .kind = SeriesKind::Dashed,
                               .ink = ChartInk::Limit,
                               .points = {{spec.xMin, limit}, {spec.xMax, limit}}});
        spec.series.push_back(aged);
    }
    return spec;
}

} // namespace ullage::app
