// "What is left, over time".
#include "app/shelf/shelf_charts.h"

#include "app/words/moment_text.h"
#include "app/words/verdict_words.h"
#include "core/ledger/replenish.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

namespace
{

using chemistry::Days;
using chemistry::Instant;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ShelfCharts)
};

constexpr int kFutureSteps = 40;
constexpr Days kLeastShown{14};
constexpr Days kMostShown{730};

double dayOf(Instant moment) { return chartDay(localTime(moment)); }

double leftShare(double used) { return std::clamp(1 - used, 0.0, 1.0); }

// How far the chart looks ahead: until time or film has run out, within reason.
Days ahead(const ledger::Batch& batch, const ledger::Assessment& so)
{
    Days longest = kLeastShown;
    if (so.discardBy)
        longest = std::max(longest, chemistry::daysBetween(batch.asOf, *so.discardBy) * 1.1);
    else if (so.lastFilm)
        longest = std::max(longest, so.lastFilm->late);
    return std::min(longest, kMostShown);
}

class LeftChart
{
public:
    LeftChart(const ledger::Batch& batch, const ledger::Assessment& so,
              std::span<const ledger::Batch> past)
        : m_batch(batch), m_so(so), m_past(past)
    {
    }

    void addFilms(ChartSpec& spec) const
    {
        // Of films that nobody counted or guessed there is no line: not even one at nothing.
        if (!formulary::capacityOf(*m_batch.solution) ||
            (m_batch.historyUnknown && !m_batch.filmsKnown))
            return;
        const auto left = [&](chemistry::FilmsPerLitre wear) {
            return leftShare(wear / *formulary::capacityOf(*m_batch.solution));
        };
        ChartSeries done{
            .name = Words::tr("films"), .kind = SeriesKind::Step, .ink = ChartInk::Films};
        for (const auto& snapshot : m_batch.trace) {
            const QPointF point(dayOf(snapshot.at), left(snapshot.wear));
            if (!done.points.empty() && done.points.back().x() >= point.x())
                done.points.back().setY(point.y());
            else
                done.points.push_back(point);
        }
        const QPointF now(dayOf(m_batch.asOf), left(m_batch.wear));
        if (done.points.empty() || done.points.back().x() < now.x())
            done.points.push_back(now);
        if (m_so.lastFilm && !m_batch.loads.empty() && m_batch.inUse())
            addForecast(spec, now);
        spec.series.push_back(done);
        addRest(spec, now);
    }

    void addStanding(ChartSpec& spec) const
    {
        if (!m_batch.limits)
            return;
        ChartSeries air{.name = Words::tr("air's share"),
                        .kind = SeriesKind::HatchedArea,
                        .ink = ChartInk::Air};
        ChartSeries age{
            .name = Words::tr("age alone"), .kind = SeriesKind::Line, .ink = ChartInk::Age};
        const bool airCounts = m_batch.limits->airCounts(); // else age alone is all of it
        ChartSeries stood{.name = airCounts ? Words::tr("standing")
                                            : Words::tr("age", "a line of a chart"),
                          .kind = SeriesKind::Line,
                          .ink = ChartInk::Standing};
        ChartSeries stands{.name = Words::tr("standing, to come"),
                           .kind = SeriesKind::Dashed,
                           .ink = ChartInk::Standing,
                           .inLegend = false};
        const auto add = [&](Instant at, const chemistry::Standing& state, ChartSeries& line) {
            const double day = dayOf(at);
            const double used = leftShare(m_batch.limits->used(state));
            const double aged = leftShare(state.aged / m_batch.limits->age);
            line.points.emplace_back(day, used);
            age.points.emplace_back(day, aged);
            air.points.emplace_back(day, aged);
            air.lower.emplace_back(day, used);
        };
        for (const auto& [at, state] : pastStates())
            add(at, state, stood);
        stands.points.push_back(stood.points.back());
        if (m_batch.inUse()) {
            const Days step = ahead(m_batch, m_so) / kFutureSteps;
            const auto closed = m_batch.closed();
            for (int i = 1; i <= kFutureSteps; ++i)
                add(chemistry::addDays(m_batch.asOf, step * i),
                    chemistry::stand(m_batch.standing, step * i, closed), stands);
        }
        spec.series.insert(spec.series.end(), {stood, stands});
        if (airCounts)
            spec.series.insert(spec.series.end(), {age, air});
    }

private:
    // The samples and every jump at an event (pouring, topping up), in order of time.
    [[nodiscard]] std::vector<std::pair<Instant, chemistry::Standing>> pastStates() const
    {
        std::vector<std::pair<Instant, chemistry::Standing>> states;
        for (const auto& snapshot : m_batch.trace)
            states.emplace_back(snapshot.at, snapshot.standing);
        const auto isEvent = [&](Instant at) {
            return std::any_of(m_batch.trace.begin(), m_batch.trace.end(),
                               [&](const auto& snapshot) { return snapshot.at == at; });
        };
        for (const auto& batch : m_past) {
            if (!isEvent(batch.asOf))
                states.emplace_back(batch.asOf, batch.standing);
        }
        std::stable_sort(states.begin(), states.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        if (states.empty() || states.back().first < m_batch.asOf)
            states.emplace_back(m_batch.asOf, m_batch.standing);
        return states;
    }

    // Where topping up leads, if it leads to rest within the capacity.
    void addRest(ChartSpec& spec, QPointF now) const
    {
        const auto& solution = *m_batch.solution;
        if (!m_batch.inUse() || !ledger::restHolds(solution))
            return;
        const auto capacity = formulary::capacityOf(solution);
        if (!capacity)
            return;
        const double share = leftShare(*ledger::wearAtRest(solution) / *capacity);
        spec.series.push_back({.name = Words::tr("films settle here, topped up"),
                               .kind = SeriesKind::Dashed,
                               .ink = ChartInk::Quiet,
                               .points = {{now.x(), share}, {spec.xMax, share}}});
    }

    void addForecast(ChartSpec& spec, QPointF now) const
    {
        const auto at = [&](Days wait) { return QPointF(now.x() + wait.value(), 0); };
        const auto& last = *m_so.lastFilm;
        spec.series.push_back({.name = Words::tr("8 times in 10 at your pace"),
                               .kind = SeriesKind::Area,
                               .ink = ChartInk::Fan,
                               .points = {now, at(last.late)},
                               .lower = {now, at(last.early), at(last.late)},
                               .inLegend = false,
                               .inFigures = false});
        spec.series.push_back({.name = Words::tr("films, at your pace"),
                               .kind = SeriesKind::Dashed,
                               .ink = ChartInk::Films,
                               .points = {now, at(last.median)},
                               .inLegend = false});
    }

    const ledger::Batch& m_batch;
    const ledger::Assessment& m_so;
    std::span<const ledger::Batch> m_past;
};

} // namespace

std::vector<chemistry::Instant> pastMoments(const ledger::Batch& batch, int count)
{
    std::vector<Instant> moments;
    const auto span = batch.asOf - batch.mixedAt;
    for (int i = 0; i < count; ++i)
        moments.push_back(batch.mixedAt + span * i / std::max(1, count - 1));
    return moments;
}

ChartSpec whatIsLeftChart(const ledger::Batch& batch, const ledger::Assessment& so,
                          std::span<const ledger::Batch> past, const Wording& wording)
{
    ChartSpec spec;
    spec.title = Words::tr("What is left, over time");
    spec.xName = Words::tr("date");
    spec.xMin = dayOf(batch.mixedAt);
    spec.xMax = dayOf(chemistry::addDays(batch.asOf, ahead(batch, so)));
    spec.yMax = 1;
    spec.marker = dayOf(batch.asOf);
    spec.markerText = batch.inUse() ? Words::tr("today") : Words::tr("ended");
    QStringList said{filmsSentence(batch, so, wording), standingSentence(batch, so, wording)};
    spec.summary = said.join(u' ');
    const LeftChart chart(batch, so, past);
    chart.addFilms(spec);
    chart.addStanding(spec);
    return spec;
}

} // namespace ullage::app
