// A batch: the sum of what happened to it.
#pragma once

#include "core/chemistry/fixing.h"
#include "core/chemistry/keeping.h"
#include "core/formulary/formulary.h"
#include "core/ledger/event.h"

#include <memory>
#include <optional>
#include <string>
#include <unordered_set>
#include <vector>

namespace ullage::ledger
{

/// UsedUp: nothing was left in the bottle.
enum class BatchEnd { None, Discarded, UsedUp };

/// One load that went through, with the wear it found.
struct LoadDone {
    std::string event; ///< its id
    chemistry::Instant at;
    chemistry::Films units;
    chemistry::FilmsPerLitre wearBefore;
    chemistry::Films felt; ///< of `units` what the bottle felt: a second bath a fifth
    bool oneShot = false;  ///< poured away, not poured back
    std::string by = {};   ///< who did it, or empty
};

/// What a bottle feels of a load: a second fixing bath a fifth.
chemistry::Films feltOf(chemistry::Films units, bool second);

/// What went from one bottle into another.
struct Filling {
    std::string event; ///< its id
    chemistry::Instant at;
    std::string other; ///< batch it came from or went into
    chemistry::Millilitres volume;
    bool into = false; ///< into this bottle
};

/// A control strip whose density was read.
struct StripDone {
    std::string event;
    chemistry::Instant at;
    chemistry::FilmsPerLitre wear;
    double density = 0;
    double factorBefore = 1;         ///< factor on the time in force when it was developed
    std::optional<bool> passed = {}; ///< what somebody said of it; empty: only noted
};

/// A look or a strip that somebody said something of, and what had spent the bottle until then.
struct StandingTrial {
    chemistry::Instant at;
    chemistry::FilmsPerLitre wear;
    chemistry::MillimolesPerLitre oxygen; ///< taken up
    double agePart = 0;                   ///< share of its life that age had spent
    bool passed = false;
};

/// A moment and the wear at it.
struct Mark {
    chemistry::Instant at;
    chemistry::FilmsPerLitre wear;
};

/// The state at a moment, for charts.
struct Snapshot {
    chemistry::Instant at;
    chemistry::Millilitres volume;
    chemistry::FilmsPerLitre wear;
    chemistry::Standing standing;
};

/// State of a batch at `asOf`. Concentrations are per litre of what is in the bottle.
struct Batch {
    std::string id;
    std::string name; ///< the id if it was given none
    std::shared_ptr<const formulary::Solution> solution;
    std::shared_ptr<const formulary::Vessel> vessel;
    std::optional<chemistry::KeepingLimits> limits; ///< empty without published keeping

    chemistry::Instant mixedAt; ///< when it was mixed, found or decanted here
    /// When its solution was mixed, from which its age counts: of a bottle found the day that was
    /// said, of a decanted one its donor's.
    chemistry::Instant madeAt;
    /// From when its published keeping time counts, in days after mixedAt: back where something
    /// older was poured in, on where replenisher was. Not rounded.
    chemistry::Days keepsFrom;
    chemistry::Instant asOf; ///< the moment of this state; frozen at endedAt
    chemistry::Millilitres mixedVolume;
    chemistry::Millilitres volume; ///< in the bottle; 0 where it was used up
    chemistry::FilmsPerLitre wear; ///< w; diluted by topping up
    chemistry::Standing standing;
    /// Share of its life that something poured in had spent by age: of a solution without keeping
    /// figures, which has no life of its own to count it by.
    double carriedAge = 0;
    chemistry::GramsPerLitre silver;
    std::optional<chemistry::Instant> silverMeasuredAt; ///< in this bottle, last; counted since
    chemistry::MilligramsPerLitre bromide;              ///< as KBr
    chemistry::Celsius temperature{chemistry::kReferenceTemperature.value};
    int openings = 0; ///< times that it was open, mixing counted in

    chemistry::Films filmsDone;                 ///< sum of the loads, one-shot ones too
    std::vector<LoadDone> loads;                ///< oldest first, as all below
    chemistry::Millilitres replenished;         ///< replenisher used so far
    std::vector<chemistry::ClearingTest> tests; ///< those of a donor too
    std::vector<Mark> testMarks;                ///< when each of `tests` was made
    std::size_t lapsedTests = 0; ///< of `tests` so many vouch no more: something was poured in
    std::vector<Mark> passes;    ///< looks and strips passed; a clearing test is judged elsewhere
    std::vector<std::optional<LookedAt>> failures; ///< what each failed look or strip was about
    /// Looks and strips of this bottle itself, none of a donor's; no precipitates, which are no
    /// matter of air.
    std::vector<StandingTrial> trials;
    std::vector<StripDone> strips;             ///< those with a density
    std::optional<double> stripFactor;         ///< accepted last, on the development time
    std::optional<chemistry::Instant> stripAt; ///< when that was
    bool contaminated = false;
    bool dissolved = false;        ///< marked so
    bool historyUnknown = false;   ///< found, or decanted from a bottle found
    bool pouredUnknown = false;    ///< something of unknown history was poured in
    bool dateKnown = true;         ///< of an unknown history: whether its mixing date is
    bool filmsKnown = true;        ///< of an unknown history: whether its films are guessed
    std::vector<Filling> fillings; ///< from other bottles and into them
    /// When a test was last asked for (TestAsked), until one is made.
    std::optional<chemistry::Instant> testAskedAt;

    BatchEnd end = BatchEnd::None;
    std::optional<chemistry::Instant> endedAt;
    std::int64_t endedBy = 0; ///< number of the entry that ended it; see Event::entry
    /// When s last rose to 1, while it is ≥ 1: in days after mixedAt, not rounded. Before it in a
    /// bottle that was spent when it came.
    std::optional<chemistry::Days> spentAfter;
    std::vector<Snapshot> trace; ///< before and after every event, oldest first

    /// s; empty without keeping figures.
    [[nodiscard]] std::optional<double> standingUsed() const;
    /// What surrounds the solution while it stands as it is now.
    [[nodiscard]] chemistry::Closed closed() const;
    [[nodiscard]] bool inUse() const { return end == BatchEnd::None; }
    /// A failed look or strip stands; a later pass does not undo it.
    [[nodiscard]] bool testFailed() const { return !failures.empty(); }
    /// Its own history, or that of something in it, is not known: what was counted is the least.
    [[nodiscard]] bool inDoubt() const { return historyUnknown || pouredUnknown; }
    /// Air counts, and the bottle is less full than any that keeping times are published for: what
    /// the model says of its standing is an extrapolation.
    [[nodiscard]] bool extrapolates() const;
    /// spentAfter as a moment.
    [[nodiscard]] std::optional<chemistry::Instant> spentSince() const;
    /// Poured away after use, by its last load, or else by what its solution is for.
    [[nodiscard]] bool usedOnce() const;
};

/// How much of a batch a fold reckons.
enum class FoldDepth {
    Whole,
    Volumes, ///< what is needed to refuse events and to see the end; no wear of standing, no trace
};

/// Folds events one after another. Every call either succeeds whole or leaves the state untouched.
class Fold
{
public:
    /// `formulary` must outlive the fold.
    explicit Fold(const formulary::Formulary& formulary,
                  const chemistry::AirConstants& constants = {},
                  FoldDepth depth = FoldDepth::Whole);

    /// Applies the next event by time; its fields must have passed checkFields(). Refuses what the
    /// journal says is refused: too much used or filled in (NotEnough, TooMuch), before mixing
    /// (BeforeMixing), after the end (AfterEnd), a second mixing (AlreadyMixed), an unknown
    /// solution or vessel (UnknownId), a solution that is not its replenisher (Conflict). Voided
    /// and what is not about a batch do not belong here. `donor` is the bottle that a filling comes
    /// from as it was then; without one it counts as fresh.
    Result<void> apply(const Event& event, const Batch* donor = nullptr);
    /// Lets it stand on to `time`, as at() does; what is there already, or ended, stays.
    void standTo(chemistry::Instant time);

    /// Whether `event` can simply follow: not before the last one applied.
    [[nodiscard]] bool follows(const Event& event) const;

    [[nodiscard]] bool started() const { return m_started; }
    /// The state at the last event.
    [[nodiscard]] const Batch& batch() const { return m_batch; }
    /// The state standing on to `time` (not before the last event); frozen if it ended.
    [[nodiscard]] Batch at(chemistry::Instant time) const;

private:
    void standUntil(Batch& batch, chemistry::Instant time) const;
    Result<void> start(const Event& event, const Mixed& mixed, const Batch* donor);
    void openBottle(const Event& event);

    const formulary::Formulary* m_formulary;
    chemistry::AirConstants m_constants;
    FoldDepth m_depth;
    Batch m_batch;
    bool m_started = false;
};

/// Ids of the events that were taken back by name. A voiding that was itself voided takes nothing
/// back. What goes with its other half, see fillings.h.
std::unordered_set<std::string> takenBack(const std::vector<Event>& entered);

/// Places of the events that are not `out`, by their turn: by time, then by order of entry, though
/// what happens to a batch at the very instant of its mixing comes after the mixing.
std::vector<std::size_t> inTurn(const std::vector<Event>& entered, const std::vector<bool>& out);

/// The events that happened: by their turn; voided and voiding ones gone, and halves of a filling
/// whose other half is. `entered` in order of entry; of several batches where they are filled from
/// one another.
std::vector<Event> happened(std::vector<Event> entered);

/// Folds what happened up to and including `until`. `entered` in order of entry. Empty if the batch
/// was not yet mixed then. Refuses as Fold::apply() does. For a batch by itself; what is filled
/// from other bottles goes by foldTogether().
Result<std::optional<Batch>> foldUntil(const std::vector<Event>& entered, chemistry::Instant until,
                                       const formulary::Formulary& formulary,
                                       const chemistry::AirConstants& constants = {});

} // namespace ullage::ledger
