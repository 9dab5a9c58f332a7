// The next load of film: which bottles, why these and what is next best; how long it develops and
// fixes, factor by factor; what speaks against it, what must be tested first; and what is left
// afterwards. One value, that everyone who asks is answered from.
#pragma once

#include "core/formulary/leaflet_time.h"
#include "core/ledger/film_times.h"
#include "core/ledger/load_times.h"
#include "core/ledger/run_sheet.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// As a choice: no bottle from the shelf for this bath.
inline constexpr const char* kNoBottle = "-";

/// What is wanted.
struct LoadWishes {
    Load load;
    std::optional<Tank> tank;
    std::optional<chemistry::Celsius> temperature;   ///< the thermometer's reading
    std::vector<chemistry::TimeAtTemperature> pairs; ///< the film maker's times
    /// The films by name and the notebook of their times: what each of them wants. Null: not asked.
    const formulary::Formulary* notebook = nullptr;
    std::vector<formulary::FilmWanted> films;
    double parts = 0; ///< developer 1+n; 0 for stock
    /// Developer; empty: as the bottle taken is used. Always where it is diluted.
    std::optional<bool> oneShot;
    bool tabularGrain = false;
    RunTemplate sheet; ///< with the washing chosen; no steps: no sheet is made
    std::optional<chemistry::Celsius> washWater;
    /// The baths; empty for those that the sheet's steps ask for.
    std::vector<BathNeed> needs;
    std::map<BathPlace, std::string> chosen; ///< batch, kNoBottle, or not there
    /// Solutions that a developer is proposed from; empty for any. See developersFor().
    std::vector<std::string> developers;
};

/// A bottle after this load, by what is known before it: nothing lost, nothing topped up.
struct BathAfter {
    formulary::Role role{};
    std::size_t judged = 0;
    chemistry::Millilitres volume;
    std::optional<chemistry::Films> filmsLeft; ///< never below 0; empty without a capacity
    double factor = 1;                         ///< a developer's, on the time of the load after
    bool second = false;                       ///< of two fixing baths
};

struct NextLoad {
    std::vector<Judged> judged;
    RunPlan plan;
    /// For the developer taken. Refuses a missing developer or temperature (Missing), no times
    /// (NoFigure) and what developingTime() refuses.
    Result<DevelopingFactors> developing =
        tl::unexpected(Error{.code = ErrorCode::Missing, .field = "developer"});
    /// What each named film wants in the developer taken at this temperature, and how far those
    /// times are apart. Nothing without developer and temperature.
    std::vector<FilmTimeHere> filmTimes;
    std::optional<TimesApart> apart;
    /// For the fixer taken: empty without one, without a temperature, or where no clearing time is
    /// known of it. Ordinary grain, and tabular. Shared by two baths where a second one is taken.
    std::optional<FixingFactors> fixing;
    std::optional<FixingFactors> fixingTabular;
    std::optional<RunSheet> sheet;
    std::optional<Error> refusal; ///< why there is no sheet, where one was wanted
    std::vector<BathAfter> after; ///< of the bottles taken, in the order of the baths

    /// The bottle taken for a bath; null for none.
    [[nodiscard]] const Judged* taken(BathPlace place) const;
    [[nodiscard]] const BathAfter* afterwards(BathPlace place) const;
    /// Nothing stands against starting but what the user may decide.
    [[nodiscard]] bool canStart() const { return sheet && !plan.blocked(); }
};

/// `judged` may hold any batches of the book, as of one moment. Whether the developer is poured
/// away is said in its need (plan).
NextLoad nextLoad(const LoadWishes& wishes, std::vector<Judged> judged);

/// The next load in one bottle, whatever its state and verdict: times and what speaks against it.
/// `films` in films of 80 sq in.
NextLoad nextLoadIn(const Judged& bottle, std::span<const chemistry::TimeAtTemperature> pairs,
                    chemistry::Celsius temperature, chemistry::Films films = chemistry::Films(1));

/// Solutions to propose a developer from: the one used last, with those it replaces or is replaced
/// by; but where times are known for one of the films, the one used last among those that have
/// them, else the first of them that a bottle holds. Empty where nothing has been used and nothing
/// is known.
std::vector<std::string> developersFor(const formulary::Formulary& formulary,
                                       const std::vector<Judged>& judged,
                                       const std::vector<formulary::FilmWanted>& films);

} // namespace ullage::ledger
