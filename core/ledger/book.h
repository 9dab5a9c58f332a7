// The only door for changes. The Book checks, makes events and appends them in one transaction;
// after a refusal nothing has changed, neither here nor in the store.
#pragma once

#include "core/ledger/batch.h"
#include "core/ledger/book_memory.h"
#include "core/ledger/charges.h"
#include "core/ledger/clock.h"
#include "core/ledger/contradiction.h"
#include "core/ledger/cupboard_state.h"
#include "core/ledger/entry_check.h"
#include "core/ledger/replenish.h"
#include "core/ledger/run_times.h"
#include "core/ledger/store_port.h"
#include "core/ledger/strip_record.h"
#include "core/ledger/undo_history.h"
#include "core/ledger/verdict.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace ullage::ledger
{

class Entering;
struct Statistics;
struct StatisticsRequest;

/// What happens to a bottle's air when it is closed again, and when: shared by every request.
struct When {
    chemistry::Instant at;
    std::optional<chemistry::Millilitres> airLeft;
};

struct NewBatch {
    std::string solution;
    std::string vessel;
    chemistry::Millilitres volume;
    std::string name;
    std::string packet;
    bool historyUnknown = false;
    bool dissolved = false; ///< clear when it is entered: marked so in the same action
    std::string from = {};  ///< batch of the same solution that it is decanted from, or empty
    /// Of a bottle found, as Mixed has them.
    std::optional<chemistry::Instant> mixedOn = {};
    std::optional<chemistry::FilmsPerLitre> assumed = {};
    std::optional<chemistry::Films> filmsBefore = {};
    /// What it was made with besides a whole packet: liquids, chemicals, supplies.
    struct Take {
        std::string item;
        double amount = 0; ///< in the item's unit
    };
    std::vector<Take> takes = {};
    /// Left in its own bottle, where several are filled at once; the When's if empty.
    std::optional<chemistry::Millilitres> airLeft = {};
};

/// One bath of a run.
struct Bath {
    std::string batch;
    std::optional<chemistry::Millilitres> used; ///< all of it if empty
    chemistry::Millilitres lost;
    bool oneShot = false;
    std::optional<chemistry::Millilitres> airLeft;
    bool second = false; ///< the second of two fixing baths
};

struct FilmRun {
    Load load;
    std::vector<Bath> baths;       ///< at least one, no batch twice
    std::vector<FilmRecord> films; ///< ids and run are filled in
    /// Kept beside the films if there are steps; its id and run are filled in.
    RunTimes times;
    std::vector<RunTopUp> topUps; ///< of baths of this run, right after it
};

class Book
{
public:
    /// Reads formulary and undo history. `store` must outlive the book.
    static Result<std::unique_ptr<Book>> open(StorePort& store, Clock clock, IdMaker newId);

    // Reading ------------------------------------------------------------------------------------
    [[nodiscard]] const formulary::Formulary& formulary() const { return m_memory.formulary(); }
    [[nodiscard]] chemistry::Instant now() const { return m_clock(); }
    /// Batches as of `at`, in order of mixing; with `ended` also the discarded and used up ones.
    /// With `unread`, one whose events are not what was entered, or do not go together, stands
    /// there instead; without, it is the failure of all.
    Result<std::vector<Batch>> batches(chemistry::Instant at, bool ended = false,
                                       std::vector<Unread>* unread = nullptr);
    /// Those in use at `at`, and those of this role that ended from `from` on, in order of mixing.
    /// One that ended and is not what was entered is left out; one in use stands in `unread`, as
    /// above.
    Result<std::vector<Batch>> batchesSince(chemistry::Instant from, chemistry::Instant at,
                                            formulary::Role role,
                                            std::vector<Unread>* unread = nullptr);
    /// One batch as of `at`. UnknownId if it was not mixed by then.
    Result<Batch> batch(const std::string& id, chemistry::Instant at);
    Result<std::vector<Event>> events(const std::string& batch);
    /// What stands in the cupboard and in the cans, and the known work. `leftOut`: as of
    /// cupboardState().
    Result<CupboardState> cupboard(chemistry::Instant at, std::vector<Unread>* leftOut = nullptr);
    /// The same of the batch and of every bottle that it is connected with by filling, together in
    /// order of entry: what foldTogether() asks for.
    Result<std::vector<Event>> connectedEvents(const std::string& batch);
    /// What one batch cost until then (costs.h). UnknownId if it was not mixed by then; refuses
    /// what the store does, and what things that went into it, or a fold, refuse.
    Result<Cost> cost(const std::string& batch, chemistry::Instant at);
    /// What the book adds up to over a period (statistics_reader.h).
    Result<std::optional<Statistics>> statistics(const StatisticsRequest& request);
    /// Every strip with a density that was read in a batch of this solution, or of one that
    /// replaces it or is replaced by it, by `at`; of the `most` batches mixed last. In order of
    /// mixing.
    Result<std::vector<StripReading>> strips(const std::string& solution, chemistry::Instant at,
                                             std::size_t most = 16);
    /// Takes over what others wrote to the store; true if there was anything.
    Result<bool> refresh();

    /// Who does what is done from now on; empty for nobody in particular.
    void setPerson(std::string person) { m_person = std::move(person); }
    /// From which seat things are done from now on: one window of one machine, the same after a
    /// restart. Undo and redo are about the deeds of this seat, and those of nobody's. Empty, as it
    /// is at first, for nobody's.
    Result<void> sitAt(std::string seat);

    // Doing: each is one action, one transaction, one step of undo
    // ---------------------------------
    /// The new batch's id.
    Result<std::string> mix(const NewBatch& batch, When when);
    /// The same into a vessel that the book does not have yet (IdTaken if it does) and that is
    /// entered with it: both or neither.
    Result<std::string> mix(const NewBatch& batch, const formulary::Vessel& into, When when);
    /// Several bottles at once, as one action; their ids in that order. Those that are decanted
    /// draw from their donors in it.
    Result<std::vector<std::string>> mix(const std::vector<NewBatch>& batches, When when);
    /// The run's id. Every bath is logged or none.
    Result<std::string> process(const FilmRun& run, chemistry::Instant at);
    /// With fresh solution, or from another batch (which is drawn from in the same action), or with
    /// the replenisher of its solution.
    Result<void> topUp(const std::string& batch, chemistry::Millilitres volume, When when,
                       const std::string& from = {}, const std::string& replenisher = {});
    Result<void> drawOff(const std::string& batch, chemistry::Millilitres volume,
                         const std::string& why, When when);
    /// Of two fixing baths the first is discarded as `going` says, into a can too, and the second
    /// takes its place, on which `note` is kept.
    Result<void> exchangeBaths(const std::string& first, const Discarded& going,
                               const std::string& second, const std::string& note, When when);
    Result<void> move(const std::string& batch, const std::string& vessel, When when);
    /// Anything else that can happen to a batch (tests, looks, notes, discarding, storing …).
    Result<void> record(const std::string& batch, const Happening& what, When when);
    /// What happened to a thing of the cupboard, or a can: opened, taken from, counted, thrown
    /// away, poured in, handed over. NotSuitable for what is about a batch.
    Result<void> record(const Happening& what, chemistry::Instant at);
    /// Takes one event back, with a reason.
    Result<void> voidEvent(const std::string& event, const std::string& why);
    /// Takes several back at once, all of them or none: what is left without them must fit.
    Result<void> voidEvents(const std::vector<std::string>& events, const std::string& why);
    /// What was entered in one action with this event and is about its bottle, is the other half of
    /// a filling of it or was taken from the cupboard for its mixing, itself among them, in order
    /// of entry; without what was taken back. Of an import it is the event alone.
    Result<std::vector<Event>> enteredWith(const std::string& event);
    /// Takes events back and enters others in their place, in one action: what comes of both
    /// together must fit. Ids of `instead` are made anew. With lines of films of its runs: one that
    /// `replaces` a film, by any id that it has, gives it anew, or takes it out where it is
    /// `withdrawn`; any other adds one. Conflict for taking out a film with a mark that stands.
    Result<void> correct(const std::vector<std::string>& events, std::vector<Event> instead,
                         const std::string& why, std::vector<FilmRecord> films = {});
    /// Says what is wrong with these films, each in a mark of its own; all of them or none.
    Result<void> markFilms(const std::vector<std::string>& films, FilmFault fault,
                           const std::string& note);
    /// Takes marks back, or takes such a taking back; all of them or none.
    Result<void> takeMarksBack(const std::vector<FilmMark>& marks, const std::string& why);
    /// Takes a mark back and sets it anew as `mark` says, which has the id of the one that stands.
    Result<void> correctMark(FilmMark mark, const std::string& why);
    Result<void> add(const formulary::Solution& solution);
    Result<void> add(const formulary::Vessel& vessel);
    Result<void> add(const formulary::DevelopmentFigure& figure);
    /// A line of the cupboard (ledger::Cupboard), given anew or withdrawn too; an id is made for
    /// one without. The id.
    Result<std::string> add(CupboardLine line);
    /// Several at once, all or none; their ids in that order.
    Result<std::vector<std::string>> add(std::vector<CupboardLine> lines);

    // Undo: what the next undo or redo would be, and doing it. What is taken back already, from the
    // day book or by others, is passed over, as a whole or in part. NothingToUndo if there is none;
    // for undo with the text "others" if there are deeds of other seats.
    [[nodiscard]] std::optional<Action> undoable();
    [[nodiscard]] std::optional<Action> redoable();
    /// Whether deeds of other seats are among those that are remembered.
    [[nodiscard]] bool othersHaveDone() const { return m_history.othersHaveDone(); }
    Result<void> undo();
    Result<void> redo();

    /// Many entries with the ids they have, in one transaction: all or nothing (book_import.h).
    class Import;
    /// `settled` says how contradictions that an earlier import found are settled; lines that
    /// depend on lines left out must be among these (dependents.h). With a name it is a step of
    /// undo that the menu calls so; without one it is none.
    Result<std::unique_ptr<Import>> import(Settlement settled = {}, const std::string& name = {});

private:
    /// What fills a transaction: enters under the number of its action.
    using Filling = std::function<Result<void>(Entering& entering, std::int64_t action)>;

    Book(StorePort& store, Clock clock, IdMaker newId);
    Result<void> readAll();
    Result<void> transact(Action action, const Filling& fill);
    Result<void> transact(Action action, const std::vector<Entry>& entries);
    Result<void> enterAll(Entering& entering, const std::vector<Entry>& entries,
                          std::int64_t action) const;
    /// As enterAll(), but what is impossible in between does not matter.
    Result<void> enterWhole(Entering& entering, const std::vector<Entry>& entries,
                            std::int64_t action);
    Result<void> isNew(const Entry& entry);
    Result<void> addNew(const Entry& entry);
    Result<void> takeBack(const Action& action, const std::vector<std::string>& events,
                          std::vector<Event> instead, const std::string& why,
                          std::vector<FilmRecord> films = {});
    Result<void> takeUp(FilmRecord& film);
    Result<std::string> nameOfThing(const Event& event);
    Result<bool> isTakenFor(const Event& taken, const Event& mixing);
    Result<bool> isTakenBack(const Event& event);
    Result<std::vector<Event>> withTakenSince(const Event& mixing, std::vector<Event> with);
    Result<void> invertLast(ActionMode mode);
    void rollBack();

    StorePort* m_store;
    Clock m_clock;
    IdMaker m_newId;
    std::string m_person;
    BookMemory m_memory;
    EntryCheck m_check;
    UndoHistory m_history;
    Newest m_newest; ///< when it was last read
};

} // namespace ullage::ledger
