// A film and everything it went through: bottles as they were when it came, times planned and real,
// marks. Nothing of it is stored with the film; it is folded from what happened to the bottles.
#pragma once

#include "core/ledger/consequences.h"
#include "core/ledger/entry.h"
#include "core/ledger/film_mark.h"
#include "core/ledger/run_times.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// A bath of a film's run, and the bottle as it was just before.
struct FilmBath {
    std::string event; ///< id of the processing
    Processed load;
    Outlook before;
};

struct FilmTrace {
    FilmRecord film;
    chemistry::Instant at;         ///< when its run was logged; without baths the epoch
    std::string by;                ///< who ran it, or empty
    std::vector<FilmBath> baths;   ///< in order of entry; empty when the run was taken back
    std::optional<RunTimes> times; ///< of its run, where they are known
    std::vector<FilmMark> marks;   ///< those that stand, in order of entry

    /// The first of that role; null for none.
    [[nodiscard]] const FilmBath* bath(formulary::Role role) const;
};

/// The bottle just before each of these events of it, by the event's id, all from one fold. Events
/// that were taken back are left out. `entered` are the events of the bottle and of all it is
/// connected with by filling, in order of entry. Refuses as Fold::apply() does.
Result<std::map<std::string, Outlook>> outlooksBefore(const std::vector<Event>& entered,
                                                      const std::set<std::string>& events,
                                                      const formulary::Formulary& formulary);

/// The times of a run from before they had a line of their own, from the notes of its bottle; empty
/// if none stands.
std::optional<RunTimes> timesOfRun(const std::vector<Event>& entered, const std::string& run);

} // namespace ullage::ledger
