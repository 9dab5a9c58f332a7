// What a book adds up to: films by month and solution, how long bottles lasted and why they ended,
// what a film cost. Computed from folded batches; nothing here reads a store.
#pragma once

#include "core/ledger/batch.h"
#include "core/ledger/entry.h"
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

/// Why a bottle ended, by the gravest reason against it at that moment.
enum class EndCause {
    Films,    ///< spent by film, or used up
    Time,     ///< spent by standing
    Test,     ///< a test failed
    Accident, ///< contaminated
    Early,    ///< nothing was against it yet
};
inline constexpr std::size_t kEndCauses = 5;

/// Empty for a batch that is in use. `batch` must be as of its end.
std::optional<EndCause> endCause(const Batch& batch, const Assessment& assessment);

/// What a batch's packet was paid for it, as far as this batch used it.
struct Price {
    double amount = 0;
    std::string currency; ///< as entered; may be empty
};

/// Empty without a cost. Of a packet that makes more than was mixed, the batch takes its share.
std::optional<Price> priceOf(const Packet& packet, chemistry::Millilitres mixed);

struct MonthFilms {
    std::chrono::year_month month;
    chemistry::Films films;
};

struct CostPerFilm {
    std::string solution;
    std::string currency;
    double perFilm = 0;
    int batches = 0; ///< it stands on so many
};

struct SolutionStatistics {
    std::string solution;       ///< its id
    chemistry::Films films;     ///< put through it in the period
    int ended = 0;              ///< batches that ended in the period
    chemistry::Days meanLife;   ///< of those; 0 without any
    chemistry::Films meanFilms; ///< done by those; 0 without any
};

struct Statistics {
    /// Films developed, every month of the period from the first that has any to the last one; a
    /// film is counted where it was developed, so that stop bath and fixer do not count it again.
    std::vector<MonthFilms> months;
    chemistry::Films developed;
    std::vector<SolutionStatistics> solutions; ///< most films first
    std::array<int, kEndCauses> ends{};        ///< bottles ended in the period, by cause
    std::vector<CostPerFilm> costs;            ///< by solution and currency, dearest first
};

struct Period {
    std::optional<chemistry::Instant> from;  ///< that moment on
    std::optional<chemistry::Instant> until; ///< before that moment
    [[nodiscard]] bool holds(chemistry::Instant at) const
    {
        return (!from || at >= *from) && (!until || at < *until);
    }
};

/// The month a moment falls in on the user's calendar.
using MonthOf = std::function<std::chrono::year_month(chemistry::Instant)>;

class StatisticsSum
{
public:
    StatisticsSum(Period period, MonthOf monthOf);

    /// Adds a batch as of its end, or as of now while it is in use; `price` of its packet, if
    /// known. A cost counts when the bottle has ended, for only then its films are known.
    void add(const Batch& batch, const std::optional<Price>& price);
    [[nodiscard]] Statistics result() const;

private:
    struct Lives {
        chemistry::Films films;
        int ended = 0;
        chemistry::Days days;
        chemistry::Films done;
    };
    struct Paid {
        double amount = 0;
        chemistry::Films films;
        int batches = 0;
    };

    Period m_period;
    MonthOf m_monthOf;
    std::map<std::chrono::year_month, chemistry::Films> m_months;
    std::map<std::string, Lives> m_lives;
    std::map<std::pair<std::string, std::string>, Paid> m_paid; ///< solution, currency
    std::array<int, kEndCauses> m_ends{};
};

} // namespace ullage::ledger
