#include "core/ledger/statistics.h"

#include <algorithm>

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

std::optional<Price> priceOf(const Packet& packet, chemistry::Millilitres mixed)
{
    if (!packet.cost) {
        return std::nullopt;
    }
    const double share = packet.makes ? std::min(1.0, mixed / *packet.makes) : 1;
    return Price{packet.cost->value() * share, packet.currency};
}

StatisticsSum::StatisticsSum(Period period, MonthOf monthOf)
    : m_period(period), m_monthOf(std::move(monthOf))
{
}

void StatisticsSum::add(const Batch& batch, const std::optional<Price>& price)
{
    const std::string& solution = batch.solution->id;
    const bool developer = batch.solution->role == formulary::Role::Developer;
    for (const LoadDone& load : batch.loads) {
        if (!m_period.holds(load.at)) {
            continue;
        }
        m_lives[solution].films += load.units;
        if (developer) {
            m_months[m_monthOf(load.at)] += load.units;
        }
    }
    if (!batch.endedAt || !m_period.holds(*batch.endedAt)) {
        return;
    }
    Lives& lives = m_lives[solution];
    ++lives.ended;
    lives.days += chemistry::daysBetween(batch.mixedAt, *batch.endedAt);
    lives.done += batch.filmsDone;
    if (const auto cause = endCause(batch, assess(batch))) {
        ++m_ends[static_cast<std::size_t>(*cause)];
    }
    if (price && batch.filmsDone > Films(0)) {
        Paid& paid = m_paid[{solution, price->currency}];
        paid.amount += price->amount;
        paid.films += batch.filmsDone;
        ++paid.batches;
    }
}

Statistics StatisticsSum::result() const
{
    Statistics result;
    result.ends = m_ends;
    if (!m_months.empty()) {
        const auto last = m_months.rbegin()->first;
        for (auto month = m_months.begin()->first; month <= last; month += std::chrono::months(1)) {
            const auto found = m_months.find(month);
            const Films films = found == m_months.end() ? Films(0) : found->second;
            result.months.push_back({month, films});
            result.developed += films;
        }
    }
    for (const auto& [solution, lives] : m_lives) {
        SolutionStatistics one{solution, lives.films, lives.ended, Days(0), Films(0)};
        if (lives.ended > 0) {
            one.meanLife = lives.days / lives.ended;
            one.meanFilms = lives.done / lives.ended;
        }
        result.solutions.push_back(std::move(one));
    }
    std::stable_sort(result.solutions.begin(), result.solutions.end(),
                     [](const auto& a, const auto& b) { return a.films > b.films; });
    for (const auto& [key, paid] : m_paid) {
        result.costs.push_back(
            {key.first, key.second, paid.amount / paid.films.value(), paid.batches});
    }
    std::stable_sort(result.costs.begin(), result.costs.end(),
                     [](const auto& a, const auto& b) { return a.perFilm > b.perFilm; });
    return result;
}

} // namespace ullage::ledger
