#include "app/cupboard/need_views.h"

#include "app/cupboard/cupboard_words.h"
#include "app/cupboard/work_words.h"
#include "app/words/error_words.h"
#include "app/words/left_out_words.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/cupboard/needs_request.h"
#include "core/cupboard/work_series.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

using chemistry::Instant;
using cupboard::Stretch;
using cupboard::StretchKind;

namespace
{

struct NeedWords {
    Q_DECLARE_TR_FUNCTIONS(CupboardNeeds)
};

struct Span {
    Instant from;
    Instant until;

    [[nodiscard]] double place(Instant at) const
    {
        const double whole = chemistry::daysBetween(from, until).value();
        return whole <= 0 ? 0
                          : std::clamp(chemistry::daysBetween(from, at).value() / whole, 0.0, 1.0);
    }
};

QString solutionName(const std::string& id, const formulary::Formulary& formulary)
{
    const auto solution = formulary.solution(id);
    return shownName(solution ? solution->name : id);
}

QString batchName(const std::string& id, const std::vector<ledger::Batch>& batches)
{
    for (const ledger::Batch& batch : batches) {
        if (batch.id == id)
            return QString::fromStdString(batch.name);
    }
    return QString::fromStdString(id);
}

NeedBar barOf(const Stretch& stretch, const NeedsSnapshot& snapshot, const Span& span,
              const Wording& wording)
{
    const Instant now = snapshot.request.now;
    const auto day = [&](Instant at) { return dayText(at, now, wording.locale); };
    NeedBar bar;
    bar.kind = stretch.kind;
    bar.from = span.place(stretch.from);
    bar.to = span.place(stretch.to);
    const QString films = filmsText(stretch.films, wording);
    switch (stretch.kind) {
    case StretchKind::Stands:
        bar.text = NeedWords::tr("%1 · %2", "bottle, films it does")
                       .arg(batchName(stretch.of, snapshot.batches), films);
        bar.shorter = {films};
        bar.spoken =
            stretch.expires
                ? NeedWords::tr("%1 stands on the shelf: %2, ends by its date on %3")
                      .arg(batchName(stretch.of, snapshot.batches), films, day(stretch.to))
                : NeedWords::tr("%1 stands on the shelf: %2, to %3")
                      .arg(batchName(stretch.of, snapshot.batches), films, day(stretch.to));
        break;
    case StretchKind::Mix:
        bar.text = NeedWords::tr("mix on %1").arg(day(stretch.from));
        bar.shorter = {day(stretch.from), NeedWords::tr("mix", "on a day")};
        bar.spoken = NeedWords::tr("Mix %1 on %2 from what is here: %3, to %4")
                         .arg(volumeText(stretch.volume, wording), day(stretch.from), films,
                              day(stretch.to));
        break;
    case StretchKind::Missing:
        bar.text = NeedWords::tr("missing: buy by %1").arg(day(stretch.from));
        bar.shorter = {NeedWords::tr("buy by %1").arg(day(stretch.from)), day(stretch.from)};
        bar.spoken = NeedWords::tr("Missing from %1 on, for %2").arg(day(stretch.from), films);
        break;
    }
    return bar;
}

// The first lane in which nothing stands by then.
void layLanes(NeedRow& row)
{
    std::vector<double> ends;
    for (NeedBar& bar : row.bars) {
        auto free = std::find_if(ends.begin(), ends.end(),
                                 [&](double end) { return end <= bar.from + 1e-9; });
        if (free == ends.end())
            free = ends.insert(ends.end(), 0);
        bar.lane = static_cast<int>(free - ends.begin());
        *free = bar.to;
    }
    row.lanes = std::max<int>(1, static_cast<int>(ends.size()));
}

StripView stripOf(const NeedsSnapshot& snapshot, const formulary::Formulary& formulary,
                  const Wording& wording)
{
    StripView strip;
    const Span span{snapshot.request.now, snapshot.request.until};
    if (!snapshot.plan) {
        strip.nothing = snapshot.plan.error().code == ErrorCode::Missing
                            ? NeedWords::tr("Some work names no developer, and none has been mixed "
                                            "yet. Edit the work and choose one.")
                            : errorSentence(snapshot.plan.error(), wording);
    } else if (snapshot.plan->solutions.empty()) {
        strip.nothing = NeedWords::tr(
            "No work is known for this time. Add what is to come: a course, an evening every "
            "second week. What to mix and buy for it, and when, is shown here.");
    }
    for (QDate day = localDate(span.from).addDays(7); instantOf(day.startOfDay()) < span.until;
         day = day.addDays(7)) {
        const Instant at = instantOf(day.startOfDay());
        strip.weeks.push_back({span.place(at), dayText(at, span.from, wording.locale)});
    }
    double besides = 0;
    for (const cupboard::PlannedWork& work : snapshot.request.work) {
        if (work.atPace) {
            besides += work.films.value();
            strip.work.push_back({span.place(work.at), work.films.value(), {}, {}, true});
            continue;
        }
        const QString name = QString::fromStdString(work.name);
        strip.work.push_back(
            {span.place(work.at), work.films.value(), name,
             NeedWords::tr("%1: %2 on %3", "work, films, day")
                 .arg(name.isEmpty() ? workName({}) : name, filmsText(work.films, wording),
                      dayText(work.at, span.from, wording.locale))});
    }
    if (besides > 0)
        strip.pace = filmsText(chemistry::Films(besides), wording);
    if (!snapshot.plan)
        return strip;
    for (const cupboard::SolutionPlan& plan : snapshot.plan->solutions) {
        NeedRow row;
        row.name = solutionName(plan.solution, formulary);
        row.detail = filmsText(plan.needed, wording);
        if (const auto solution = formulary.solution(plan.solution))
            row.role = solution->role;
        for (const Stretch& stretch : plan.stretches)
            row.bars.push_back(barOf(stretch, snapshot, span, wording));
        layLanes(row);
        strip.rows.push_back(std::move(row));
    }
    return strip;
}

QString usualPace(const cupboard::FilmPace& usual, const Wording& wording)
{
    constexpr double kDaysOfWeek = 7;
    return usual.isKnown()
               ? NeedWords::tr("what usually comes: about %1 films a week")
                     .arg(numberText(usual.filmsPerDay * kDaysOfWeek, 1, wording.locale))
               : NeedWords::tr("what usually comes: not known yet");
}

BuyView buyOf(const NeedsSnapshot& snapshot, const formulary::Formulary& formulary,
              const Wording& wording)
{
    BuyView view;
    if (!snapshot.plan)
        return view;
    const cupboard::Plan& plan = *snapshot.plan;
    for (const cupboard::ToBuy& one : plan.toBuy) {
        BuyLine line;
        line.text =
            NeedWords::tr("%1, %2 × %Ln", "solution, what a packet makes, how many", one.packets)
                .arg(solutionName(one.solution, formulary), volumeText(one.makes, wording))
                .replace(QStringLiteral(" × "),
                         QStringLiteral("\u00a0×\u00a0")); // they stay together
        line.by =
            NeedWords::tr("buy by %1").arg(dayText(one.by, snapshot.request.now, wording.locale));
        if (one.each) {
            ledger::Money cost;
            cost.add(*one.each, one.currency, one.packets);
            line.cost = moneyText(cost, wording.locale);
        }
        if (const auto film = cupboard::costOfFilm(one); !film.empty())
            line.perFilm = NeedWords::tr("%1 for each film").arg(moneyText(film, wording.locale));
        view.lines.push_back(std::move(line));
    }
    view.together = moneyText(plan.cost, wording.locale);
    if (plan.toBuy.empty() && !plan.solutions.empty())
        view.note = NeedWords::tr("Nothing: all that is needed is here.");
    else if (!plan.costKnown)
        view.note = NeedWords::tr("What has no price yet is not in the sum.");
    return view;
}

// What does not come any more is left out.
std::vector<WorkLine> workLines(const NeedsSnapshot& snapshot, const Wording& wording)
{
    const Instant now = snapshot.request.now;
    std::vector<std::pair<Instant, WorkLine>> lines;
    for (const ledger::Work& work : snapshot.works) {
        const auto next = cupboard::nextTimes(work, now, 1, wallClock());
        if (next.empty())
            continue;
        QStringList parts{workName(work), momentText(next.front(), now, wording.locale)};
        parts << (work.films ? filmsText(*work.films, wording)
                             : NeedWords::tr("number of films not given"));
        parts << ruleWords(work.rule, wording.locale)
              << ruleEndWords(work.rule, now, wording.locale);
        parts.removeAll(QString());
        lines.push_back({next.front(),
                         {QString::fromStdString(work.id), parts.join(QStringLiteral(" · ")),
                          cupboard::readRule(work.rule).has_value()}});
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<WorkLine> sorted;
    for (auto& [at, line] : lines)
        sorted.push_back(std::move(line));
    return sorted;
}

} // namespace

NeedsSnapshot needsSnapshot(std::vector<ledger::Batch> batches,
                            const formulary::Formulary& formulary,
                            const ledger::CupboardState& state, Instant now, const PlanFor& planFor)
{
    return needsSnapshot(
        cupboard::needsFrom(std::move(batches), formulary, state, now, planFor, wallClock()),
        planFor);
}

NeedsSnapshot needsSnapshot(cupboard::Needs needs, const PlanFor& planFor)
{
    auto plan = cupboard::planNeeds(needs.request);
    return {planFor,
            std::move(needs.request),
            std::move(plan),
            std::move(needs.batches),
            std::move(needs.cupboard.works),
            needs.usual,
            std::move(needs.leftOut)};
}

NeedsView needsView(const NeedsSnapshot& snapshot, const formulary::Formulary& formulary,
                    const Wording& wording)
{
    NeedsView view;
    view.strip = stripOf(snapshot, formulary, wording);
    view.buy = buyOf(snapshot, formulary, wording);
    view.usualPace = usualPace(snapshot.usual, wording);
    view.works = workLines(snapshot, wording);
    view.leftOut = leftOutText(snapshot.leftOut, wording.locale);
    if (snapshot.plan && snapshot.plan->enoughUntil)
        view.summary =
            NeedWords::tr("enough for the work until %1")
                .arg(dayText(*snapshot.plan->enoughUntil, snapshot.request.now, wording.locale));
    return view;
}

} // namespace ullage::app
