#include "core/ledger/statistics.h"

#include "core/ledger/costs.h"
#include "core/ledger/cupboard_state.h"

#include <algorithm>
#include <functional>

namespace ullage::ledger
{

using chemistry::Days;
using chemistry::Films;

namespace
{

std::optional<EndCause> causeOf(ReasonCode code)
{
    switch (code) {
    case ReasonCode::Contaminated:
        return EndCause::Accident;
    case ReasonCode::TestFailed:
    case ReasonCode::ClearingDoubled:
        return EndCause::Test;
    case ReasonCode::CapacityReached:
    case ReasonCode::LessThanQuarterFilm:
    case ReasonCode::SilverOverLimit:
    case ReasonCode::TurnoverOverLimit:
    case ReasonCode::CapacityNear:
    case ReasonCode::FilmsFew:
        return EndCause::Films;
    case ReasonCode::PastKeeping:
    case ReasonCode::StandingSpent:
    case ReasonCode::StandingNear:
    case ReasonCode::DiscardSoon:
        return EndCause::Time;
    case ReasonCode::ClearingTestDue:
    case ReasonCode::HistoryUnknown:
    case ReasonCode::TestAsked:
        break;
    }
    return std::nullopt;
}

} // namespace

std::optional<EndCause> endCause(const Batch& batch, const Assessment& assessment)
{
    if (batch.inUse()) {
        return std::nullopt;
    }
    for (const Reason& reason : assessment.reasons) {
        if (const auto cause = causeOf(reason.code)) {
            return cause;
        }
    }
    return batch.end == BatchEnd::UsedUp ? EndCause::Films : EndCause::Early;
}

StatisticsSum::StatisticsSum(Period period, Calendar calendar, bool bottles)
    : m_period(period), m_calendar(std::move(calendar)), m_bottles(bottles)
{
}

MonthSum& StatisticsSum::month(chemistry::Instant at)
{
    const auto month = m_calendar.monthOf(at);
    MonthSum& sum = m_months[month];
    sum.month = month;
    return sum;
}

void StatisticsSum::add(const Batch& batch, const Cost& cost)
{
    const bool developer = batch.solution->role == formulary::Role::Developer;
    for (const LoadDone& load : batch.loads) {
        if (!m_period.holds(load.at)) {
            continue;
        }
        m_lives[batch.solution->id].films += load.units;
        if (developer) {
            month(load.at).films += load.units;
            m_people[load.by].films += load.units;
        }
    }
    const BottleSum bottle{batch.id,      batch.name,        batch.solution->id, batch.mixedAt,
                           batch.endedAt, batch.mixedVolume, batch.filmsDone,    cost};
    if (m_period.holds(batch.mixedAt)) {
        ++month(batch.mixedAt).mixed;
        if (m_bottles) {
            m_sums.mixedBottles.push_back(bottle);
        }
    }
    if (batch.inUse()) {
        if (!m_period.until || batch.mixedAt < *m_period.until) {
            ++m_sums.inUse;
            m_sums.inUseCost += cost;
        }
    } else if (batch.endedAt && m_period.holds(*batch.endedAt)) {
        addEnd(batch, cost);
        if (m_bottles) {
            m_sums.endedBottles.push_back(bottle);
        }
    }
}

void StatisticsSum::addEnd(const Batch& batch, const Cost& cost)
{
    MonthSum& sum = month(*batch.endedAt);
    ++sum.ended;
    sum.cost += cost;
    Lives& lives = m_lives[batch.solution->id];
    ++lives.ended;
    lives.days += chemistry::daysBetween(batch.mixedAt, *batch.endedAt);
    lives.done += batch.filmsDone;
    lives.cost += cost;
    if (const auto cause = endCause(batch, assess(batch))) {
        ++m_sums.ends[static_cast<std::size_t>(*cause)];
    }
    shareCost(batch, cost);
    if (batch.filmsDone <= Films(0)) {
        return;
    }
    if (!cost.whole) {
        ++m_sums.costUnknown;
        return;
    }
    for (const auto& [currency, amount] : cost.money.sums()) {
        Paid& paid = m_paid[{batch.solution->id, currency}];
        paid.money.add(amount, currency);
        paid.films += batch.filmsDone;
        ++paid.batches;
    }
}

void StatisticsSum::shareCost(const Batch& batch, const Cost& cost)
{
    std::vector<double> films;
    Films rest = batch.filmsDone;
    for (const LoadDone& load : batch.loads) {
        films.push_back(load.units.value());
        rest -= load.units;
    }
    // Done before the book, by nobody knows whom.
    constexpr double kNothing = 1e-9;
    films.push_back(rest.value() > kNothing ? rest.value() : 0);
    const auto parts = costByFilms(cost, films);
    for (std::size_t i = 0; i < films.size(); ++i) {
        if (films[i] > 0) {
            m_people[i < batch.loads.size() ? batch.loads[i].by : std::string()].cost += parts[i];
        }
    }
    if (batch.filmsDone <= Films(0)) {
        m_sums.withoutFilm += cost;
    }
}

void StatisticsSum::add(const Purchase& purchase)
{
    const auto end = endOfDay(purchase.bought);
    if (!end) {
        m_sums.boughtUndated += purchase.price ? 1 : 0;
        return;
    }
    const auto day = m_calendar.startOf(
        std::chrono::year_month_day(std::chrono::floor<std::chrono::days>(*end)));
    if (!m_period.holds(day)) {
        return;
    }
    MonthSum& sum = month(day);
    if (purchase.price) {
        sum.bought.add(*purchase.price, purchase.currency);
    } else {
        ++sum.unpriced;
    }
}

Statistics StatisticsSum::result() const
{
    Statistics result = m_sums;
    if (!m_months.empty()) {
        const auto last = m_months.rbegin()->first;
        for (auto month = m_months.begin()->first; month <= last; month += std::chrono::months(1)) {
            const auto found = m_months.find(month);
            MonthSum sum = found == m_months.end() ? MonthSum() : found->second;
            sum.month = month;
            result.developed += sum.films;
            result.mixed += sum.mixed;
            result.ended += sum.ended;
            result.cost += sum.cost;
            result.bought += sum.bought;
            result.unpriced += sum.unpriced;
            result.months.push_back(std::move(sum));
        }
    }
    for (const auto& [solution, lives] : m_lives) {
        SolutionStatistics one{solution, lives.films, lives.ended, Days(0), Films(0), lives.cost};
        if (lives.ended > 0) {
            one.meanLife = lives.days / lives.ended;
            one.meanFilms = lives.done / lives.ended;
        }
        result.solutions.push_back(std::move(one));
    }
    std::stable_sort(result.solutions.begin(), result.solutions.end(),
                     [](const auto& a, const auto& b) { return a.films > b.films; });
    for (const auto& [key, paid] : m_paid) {
        const auto each = paid.money.forEachOf(paid.films.value()).sums();
        result.costs.push_back({key.first, key.second, each.at(key.second), paid.batches});
    }
    std::stable_sort(result.costs.begin(), result.costs.end(), [](const auto& a, const auto& b) {
        return a.perFilm.value() > b.perFilm.value();
    });
    for (const auto& [person, sum] : m_people) {
        result.people.push_back({person, sum.films, sum.cost});
    }
    std::stable_sort(result.people.begin(), result.people.end(), [](const auto& a, const auto& b) {
        return a.person.empty() != b.person.empty() ? b.person.empty() : a.films > b.films;
    });
    const auto byTime = [](auto moment) {
        return [moment](const BottleSum& a, const BottleSum& b) {
            return std::invoke(moment, a) < std::invoke(moment, b);
        };
    };
    std::stable_sort(result.mixedBottles.begin(), result.mixedBottles.end(),
                     byTime(&BottleSum::mixedAt));
    std::stable_sort(result.endedBottles.begin(), result.endedBottles.end(),
                     byTime(&BottleSum::endedAt));
    return result;
}

} // namespace ullage::ledger
