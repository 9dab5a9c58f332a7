// How long the next load of film takes in a bottle, factor by factor.
//
// The one place where a developing or a fixing time is reckoned: the shelf, the dialogs, the bench,
// the command line and the charts show what stands here.
#pragma once

#include "core/chemistry/developing.h"
#include "core/ledger/batch.h"
#include "core/ledger/verdict.h"

#include <optional>
#include <span>
#include <vector>

namespace ullage::ledger
{

/// A reckoned time as it is used and shown: to five seconds, halves up; under five, to one. Here
/// and in inUseAtLeast() are the places where such a time is rounded.
chemistry::Seconds inUse(chemistry::Seconds reckoned);
/// The same where less would not do, as in fixing: up to the next five seconds; under five, to the
/// next one. A hundredth of a second over a step is taken for the step.
chemistry::Seconds inUseAtLeast(chemistry::Seconds reckoned);

/// What the bottle itself does to the film maker's time: wear × strip. `so` is the assessment of
/// `developer`.
double bottleFactor(const Batch& developer, const Assessment& so);

/// A development time as it was multiplied. Not rounded.
struct DevelopingFactors {
    chemistry::TimeAtTemperature nearest; ///< the maker's figure nearest to the reading
    chemistry::BaseTime base;             ///< for a fresh bath at the reading, with its warnings
    double temperature = 1;               ///< factor from `nearest` to `base`
    double wear = 1;
    double strip = 1;
    chemistry::Seconds time; ///< base × wear × strip
    /// Between which it may lie as well where it was carried by Q10, from what is published of such
    /// developers; base × wear × strip likewise. Empty where the maker's figures reach.
    std::optional<chemistry::CarriedRange> carried;
};

/// For the next load in this developer. Refuses no pairs (NoFigure, "base") and what baseTime()
/// refuses.
Result<DevelopingFactors> developingTime(const Batch& developer, const Assessment& so,
                                         std::span<const chemistry::TimeAtTemperature> pairs,
                                         chemistry::Celsius temperature);

/// Which clearing time a fixing time was made from.
enum class ClearingFrom {
    Tests,          ///< this bottle's
    SolutionFigure, ///< the solution's when fresh: nobody has tested the bottle
    Nowhere,        ///< none is known: the user's own fixing time stands
};

/// A fixing time as it was multiplied. Not rounded.
struct FixingFactors {
    ClearingFrom from = ClearingFrom::Nowhere;
    std::optional<chemistry::Seconds> clearing; ///< at 20 °C; empty for Nowhere
    double times = 2;                           ///< fixing ÷ clearing
    double cold = 1;                            ///< what a reading under 20 °C adds
    /// The packet's own shortest time at 20 °C, where the product fell below it and was raised.
    std::optional<chemistry::Seconds> raisedTo;
    chemistry::Seconds time; ///< in all
    int baths = 1;           ///< that it is shared by, in equal parts

    [[nodiscard]] chemistry::Seconds inEach() const { return time / baths; }
};

/// For the next load in this fixer; empty where no clearing time is known of it. `tabularGrain`: of
/// films with tabular grains.
std::optional<FixingFactors> fixingTime(const Batch& fixer, const Assessment& so,
                                        chemistry::Celsius temperature, bool tabularGrain = false);

/// Where no clearing time is known, of the bottle or because there is none: the user's own time for
/// 20 °C, and what the cold adds.
FixingFactors fixingTime(chemistry::Seconds usersTime, chemistry::Celsius temperature);

/// What each film takes in a developer, done and to come.
struct FilmFactor {
    enum class When { Done, Next, ToCome };
    When when = When::Done;
    double factor = 1; ///< on the film maker's time: wear × strip
    int film = 1;      ///< which it is in this batch, from 1
};

/// Film by film, a part of one as a whole one: those done as the loads went, each film of a load
/// alike, and those that are left. At most `most` of them, around the next: of a long life the
/// first films are left out, and half of the places at the least are kept for what was done.
std::vector<FilmFactor> filmFactors(const Batch& developer, const Assessment& so, int most);

/// Wear at which each film that is left begins and ends, the present first; films counted up, at
/// most `most`. Empty for a bottle that is not in use, is empty or has no capacity.
std::vector<chemistry::FilmsPerLitre> wearOfFilmsToCome(const Batch& batch, const Assessment& so,
                                                        int most);

/// Factor on the first film's time for the `film`th (1 or more) in this much of a fresh developer,
/// one film after the other.
double factorOfFilm(const formulary::Solution& developer, int film, chemistry::Millilitres volume);

/// Wear factor that this load met in its batch.
double factorThen(const Batch& developer, const LoadDone& load);

/// What a clearing test would say, were it in the book.
struct TestOutlook {
    chemistry::Seconds at20;      ///< the test, brought to 20 °C
    chemistry::Clearing clearing; ///< with it
    chemistry::Seconds fixing;    ///< at 20 °C, ordinary grain
};
/// For a test made now in this fixer with a piece of `film` (empty: not said); `time` above 0.
TestOutlook outlookOf(const Batch& fixer, chemistry::Seconds time, chemistry::Celsius temperature,
                      const std::string& film = {});

} // namespace ullage::ledger
