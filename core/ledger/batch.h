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
};

/// A control strip whose density was read.
struct StripDone {
    std::string event;
    chemistry::Instant at;
    chemistry::FilmsPerLitre wear;
    double density = 0;
    double factorBefore = 1; ///< factor on the time in force when it was developed
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

    chemistry::Instant mixedAt;
    chemistry::Instant asOf; ///< the moment of this state; frozen at endedAt
    chemistry::Millilitres mixedVolume;
    chemistry::Millilitres volume; ///< in the bottle; 0 where it was used up
    chemistry::FilmsPerLitre wear; ///< w; diluted by topping up
    chemistry::Standing standing;
    chemistry::GramsPerLitre silver;
    chemistry::MilligramsPerLitre bromide; ///< as KBr
    chemistry::Celsius temperature{chemistry::kReferenceTemperature.value};
    int openings = 0; ///< times that it was open, mixing counted in

    chemistry::Films filmsDone;  ///< sum of the loads, one-shot ones too
    std::vector<LoadDone> loads; ///< oldest first, as all below
    std::vector<chemistry::ClearingTest> tests;
    std::vector<Mark> testMarks; ///< when each of `tests` was made
    std::optional<Mark> lastClearingTest;
    std::vector<Mark> passes;          ///< tests passed (a clearing test is judged by the verdict)
    std::vector<StripDone> strips;     ///< those with a density
    std::optional<double> stripFactor; ///< accepted last, on the development time
    std::optional<chemistry::Instant> stripAt; ///< when that was
    bool contaminated = false;
    bool testFailed = false; ///< a later pass does not undo it
    bool dissolved = false;  ///< marked so
    bool historyUnknown = false;
    /// When a test was last asked for (TestAsked), until one is made.
    std::optional<chemistry::Instant> testAskedAt;

    BatchEnd end = BatchEnd::None;
    std::optional<chemistry::Instant> endedAt;
    std::optional<chemistry::Instant> spentSince; ///< when s last rose to 1, while it is ≥ 1
    std::vector<Snapshot> trace;                  ///< before and after every event, oldest first

    /// s; empty without keeping figures.
    [[nodiscard]] std::optional<double> standingUsed() const;
    /// What surrounds the solution while it stands as it is now.
    [[nodiscard]] chemistry::Closed closed() const;
    [[nodiscard]] bool inUse() const { return end == BatchEnd::None; }
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
    /// solution or vessel (UnknownId). Voided and what is not about a batch do not belong here.
    Result<void> apply(const Event& event);

    /// Whether `event` can simply follow: not before the last one applied.
    [[nodiscard]] bool follows(const Event& event) const;

    [[nodiscard]] bool started() const { return m_started; }
    /// The state at the last event.
    [[nodiscard]] const Batch& batch() const { return m_batch; }
    /// The state standing on to `time` (not before the last event); frozen if it ended.
    [[nodiscard]] Batch at(chemistry::Instant time) const;

private:
    void standUntil(Batch& batch, chemistry::Instant time) const;
    Result<void> start(const Event& event, const Mixed& mixed);
    void openBottle(const Event& event);

    const formulary::Formulary* m_formulary;
    chemistry::AirConstants m_constants;
    FoldDepth m_depth;
    Batch m_batch;
    bool m_started = false;
};

/// Ids of the events that were taken back. A voiding that was itself voided takes nothing back.
std::unordered_set<std::string> takenBack(const std::vector<Event>& entered);

/// The events that happened: sorted by time, then by order of entry; voided and voiding ones gone.
std::vector<Event> happened(std::vector<Event> entered);

/// Folds what happened up to and including `until`. `entered` in order of entry. Empty if the batch
/// was not yet mixed then. Refuses as Fold::apply() does.
Result<std::optional<Batch>> foldUntil(const std::vector<Event>& entered, chemistry::Instant until,
                                       const formulary::Formulary& formulary,
                                       const chemistry::AirConstants& constants = {});

} // namespace ullage::ledger
