// What a book adds up to: films by month and solution, how long bottles lasted and why they ended,
// what they, and a film, cost. Computed from folded batches; nothing here reads a store.
#pragma once

#include "core/ledger/batch.h"
#include "core/ledger/charges.h"
#include "core/ledger/verdict.h"

#include <array>
#include <chrono>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// Why a bottle ended, by the gravest reason against it at that moment. A test that is due or was
/// asked for, and an unknown history, are no reasons here.
enum class EndCause {
    Films,    ///< capacity, silver or film left speak against it, or it was used up
    Time,     ///< standing or the published keeping time does
    Test,     ///< one failed, or the clearing time has doubled
    Accident, ///< contaminated
    Early,    ///< discarded with nothing against it yet
};
inline constexpr std::size_t kEndCauses = 5;

/// Empty for a batch that is in use. `batch` must be as of its end, `assessment` that of it.
std::optional<EndCause> endCause(const Batch& batch, const Assessment& assessment);

/// What a month of the user's calendar adds up to.
struct MonthSum {
    std::chrono::year_month month;
    chemistry::Films films; ///< developed
    int mixed = 0;          ///< bottles
    int ended = 0;          ///< bottles
    Cost cost;              ///< of those that ended
    Money bought;           ///< for what was bought, used or not
    int unpriced = 0;       ///< things bought of which no price is known
};

struct CostPerFilm {
    std::string solution; ///< its id
    std::string currency; ///< never converted: each is a figure of its own; may be empty
    Decimal perFilm;      ///< all that was paid ÷ all films done by those batches; rounded
    int batches = 0;      ///< it stands on so many
};

struct SolutionStatistics {
    std::string solution;       ///< its id
    chemistry::Films films;     ///< put through it in the period, by bottles ended or in use
    int ended = 0;              ///< batches that ended in the period
    chemistry::Days meanLife;   ///< of those from mixing to the end; 0 without any
    chemistry::Films meanFilms; ///< done by those in all their life; 0 without any
    Cost cost;                  ///< of those
};

struct PersonSum {
    std::string person;     ///< as entered; empty: nobody was named
    chemistry::Films films; ///< developed in the period
    Cost cost;              ///< of bottles that ended in it, by the films put through them
};

/// One bottle, for lists.
struct BottleSum {
    std::string batch;
    std::string name;
    std::string solution; ///< its id
    chemistry::Instant mixedAt;
    std::optional<chemistry::Instant> endedAt;
    chemistry::Millilitres mixedVolume;
    chemistry::Films films; ///< done in all its life so far
    Cost cost;              ///< so far
};

struct Statistics {
    /// Every month of the period from the first that has anything to the last one; a film is
    /// counted where it was developed, so that stop bath and fixer do not count it again.
    std::vector<MonthSum> months;
    chemistry::Films developed;                ///< sum of the months, as the five below it
    int mixed = 0;                             ///< bottles
    int ended = 0;                             ///< bottles
    Cost cost;                                 ///< of bottles that ended in the period
    Money bought;                              ///< in the period
    int unpriced = 0;                          ///< things bought without a price
    std::vector<SolutionStatistics> solutions; ///< with film or an end, most films first
    std::array<int, kEndCauses> ends{};        ///< bottles ended in the period, by cause
    /// By solution and currency, dearest first; without bottles of which not all is known.
    std::vector<CostPerFilm> costs;
    int costUnknown = 0; ///< bottles left out there that ended in the period and did film
    /// Who developed film, or whose film bottles that ended did; most films first, nobody last.
    std::vector<PersonSum> people;
    Cost withoutFilm; ///< of bottles that ended without having done any, in the cost of no person
    /// In use at the moment asked for, and mixed before the period's end: their costs count once
    /// they end.
    int inUse = 0;
    Cost inUseCost;        ///< so far
    int boughtUndated = 0; ///< things with a price and no day: in no month and no period
    std::vector<BottleSum> mixedBottles; ///< by time; empty unless asked for, as the next
    std::vector<BottleSum> endedBottles;
};

/// Half open; both ends empty for all time.
struct Period {
    std::optional<chemistry::Instant> from;  ///< that moment on
    std::optional<chemistry::Instant> until; ///< before that moment
    [[nodiscard]] bool holds(chemistry::Instant at) const
    {
        return (!from || at >= *from) && (!until || at < *until);
    }
    bool operator==(const Period&) const = default;
};

/// The user's calendar; the core knows UTC only.
struct Calendar {
    /// The month a moment falls in.
    std::function<std::chrono::year_month(chemistry::Instant)> monthOf;
    /// When a day begins.
    std::function<chemistry::Instant(std::chrono::year_month_day)> startOf;
};

/// Adds up a book batch by batch, and keeps none of them unless `bottles` asks for their lists.
/// Used by one thread.
class StatisticsSum
{
public:
    StatisticsSum(Period period, Calendar calendar, bool bottles = false);

    /// Adds a batch as of its end, or as of now while it is in use, with what it cost until then. A
    /// cost counts when the bottle has ended, whole and once: only then its films are known, by
    /// which it is shared among persons. Films count in the period they were put through, ends in
    /// that of the end.
    void add(const Batch& batch, const Cost& cost);
    /// Adds what was bought, whether it was used or not.
    void add(const Purchase& purchase);
    /// Of what was added so far.
    [[nodiscard]] Statistics result() const;

private:
    struct Lives {
        chemistry::Films films;
        int ended = 0;
        chemistry::Days days;
        chemistry::Films done;
        Cost cost;
    };
    struct Paid {
        Money money;
        chemistry::Films films;
        int batches = 0;
    };
    struct Person {
        chemistry::Films films;
        Cost cost;
    };

    MonthSum& month(chemistry::Instant at);
    void addEnd(const Batch& batch, const Cost& cost);
    void shareCost(const Batch& batch, const Cost& cost);

    Period m_period;
    Calendar m_calendar;
    bool m_bottles;
    Statistics m_sums; ///< what is added up at once
    std::map<std::chrono::year_month, MonthSum> m_months;
    std::map<std::string, Lives> m_lives;
    std::map<std::pair<std::string, std::string>, Paid> m_paid; ///< solution, currency
    std::map<std::string, Person> m_people;
};

} // namespace ullage::ledger
