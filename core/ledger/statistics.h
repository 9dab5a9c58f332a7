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

/// What was paid for a packet, as far as one batch used it.
struct Price {
    double amount = 0;    ///< in `currency`; not rounded
    std::string currency; ///< as entered; may be empty
};

/// Empty without a cost. Of a packet that makes more than was mixed, the batch takes its share by
/// volume; else, and where the packet does not say what it makes, all of it.
std::optional<Price> priceOf(const Packet& packet, chemistry::Millilitres mixed);

struct MonthFilms {
    std::chrono::year_month month;
    chemistry::Films films;
};

struct CostPerFilm {
    std::string solution; ///< its id
    std::string currency; ///< never converted: each is a figure of its own; may be empty
    double perFilm = 0;   ///< all that was paid ÷ all films done by those batches; not rounded
    int batches = 0;      ///< it stands on so many
};

struct SolutionStatistics {
    std::string solution;       ///< its id
    chemistry::Films films;     ///< put through it in the period, by bottles ended or in use
    int ended = 0;              ///< batches that ended in the period
    chemistry::Days meanLife;   ///< of those from mixing to the end; 0 without any
    chemistry::Films meanFilms; ///< done by those in all their life; 0 without any
};

struct Statistics {
    /// Films developed, every month of the period from the first that has any to the last one; a
    /// film is counted where it was developed, so that stop bath and fixer do not count it again.
    std::vector<MonthFilms> months;
    chemistry::Films developed;                ///< sum of the months
    std::vector<SolutionStatistics> solutions; ///< with film or an end, most films first
    std::array<int, kEndCauses> ends{};        ///< bottles ended in the period, by cause
    std::vector<CostPerFilm> costs;            ///< by solution and currency, dearest first
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

/// The month a moment falls in on the user's calendar; the core knows UTC only.
using MonthOf = std::function<std::chrono::year_month(chemistry::Instant)>;

/// Adds up a book batch by batch and keeps none of them. Used by one thread.
class StatisticsSum
{
public:
    StatisticsSum(Period period, MonthOf monthOf);

    /// Adds a batch as of its end, or as of now while it is in use; `price` of its packet, if
    /// known. A cost counts when the bottle has ended, for only then its films are known, and if it
    /// did any. Films count in the period they were put through, ends in that of the end.
    void add(const Batch& batch, const std::optional<Price>& price);
    /// Of what was added so far.
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
