// What a plan is asked of a book: bottles as the Shelf judges them, packets as the cupboard has
// them, and the known work of the weeks ahead.
#pragma once

#include "core/cupboard/needs.h"
#include "core/cupboard/plan_for.h"
#include "core/cupboard/recurrence.h"
#include "core/ledger/book.h"
#include "core/ledger/cupboard_state.h"

#include <vector>

namespace ullage::cupboard
{

/// Known work from `from` to `until`, each time that it comes, in order. One whose rule is not
/// understood comes once, at its first time.
std::vector<PlannedWork> knownWork(const std::vector<ledger::Work>& works, chemistry::Instant from,
                                   chemistry::Instant until, const WallClock& clock = {});

/// What planNeeds() asks for. Solutions are those of the formulary as they were given last, and
/// what was mixed or bought by an earlier version counts for them. `batches`: those in use; what
/// is to be discarded, or of unknown history, is passed over. Films go through the developer that
/// was mixed last, and through the fixer, stop bath and so on that were mixed last of their kinds.
/// The usual volume of a solution is the one it was last mixed to.
PlanRequest needsOf(const std::vector<ledger::Batch>& batches,
                    const formulary::Formulary& formulary, const ledger::CupboardState& cupboard,
                    chemistry::Instant now, chemistry::Instant until, const WallClock& clock = {});

/// The same for so many films at once, now, in place of the known work.
PlanRequest forFilms(PlanRequest request, chemistry::Films films);

/// How much film comes a day, and in what loads, by what these batches did: the mean of what is
/// believed of the rate (chemistry/pace.h) of loads into developers, times the mean load.
struct FilmPace {
    double filmsPerDay = 0;
    chemistry::Films load{1};
    int loads = 0; ///< it stands on so many
    /// Of fewer the belief is more ours than theirs: nothing is planned by it (a convention).
    [[nodiscard]] bool isKnown() const { return loads >= kLeastLoads; }
    static constexpr int kLeastLoads = 3;
};
/// `batches`: in use or ended, developers that ended within the time looked at
/// (chemistry::kPaceWindow) among them.
FilmPace filmPace(const std::vector<ledger::Batch>& batches, chemistry::Instant now);

/// The request with that film too, in loads as they usually are, of whole films.
PlanRequest withPace(PlanRequest request, const Beside& beside, const FilmPace& usual);

/// All that a plan stands on.
struct Needs {
    std::vector<ledger::Batch> batches; ///< those in use, and developers that ended lately
    ledger::CupboardState cupboard;
    FilmPace usual;
    PlanRequest request;
    /// Bottles in use that the plan does not count on, because they cannot be read, and cans of
    /// which it cannot be told how full they are; those have no solution.
    std::vector<ledger::Unread> leftOut = {};
};

Needs needsFrom(std::vector<ledger::Batch> batches, const formulary::Formulary& formulary,
                ledger::CupboardState cupboard, chemistry::Instant now, const PlanFor& planFor,
                const WallClock& clock = {});
/// The same of a book. A bottle or can that is not what was entered is left out; refuses what else
/// the book does.
Result<Needs> readNeeds(ledger::Book& book, chemistry::Instant now, const PlanFor& planFor,
                        const WallClock& clock);

} // namespace ullage::cupboard
