// What the Book needs of whatever keeps it. core/store implements it on SQL; tests in memory.
#pragma once

#include "core/ledger/entry.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::ledger
{

/// How an action stands to undo and redo.
enum class ActionMode {
    Done,   ///< can be undone
    Undone, ///< undid the action `of`
    Redone, ///< did again what the undo `of` took back
    Apart,  ///< neither: most imports and what goes into the formulary
};

/// What an import's action is called, whether it is a step of undo or not.
inline constexpr const char* kImportAction = "import";

/// What a correction's action is called, and its undo.
inline constexpr const char* kCorrectAction = "correct";

/// One thing the user did: what was entered in one transaction.
struct Action {
    std::int64_t id = 0; ///< given by the store, rising
    ActionMode mode = ActionMode::Done;
    std::string what;    ///< a code the application words ("mix", "run-film", "discard")
    std::string subject; ///< a batch's name, for the menu
    std::int64_t of = 0; ///< for Undone and Redone
    std::string seat;    ///< whose it is to undo (Book::sitAt); empty: anybody's
};

/// The entry that came last. Another one as soon as anything was entered, and in any other book.
struct Newest {
    std::int64_t number = 0; ///< rises with every entry; 0 in an empty book
    std::string mark;        ///< tells it from the entry of this number in another book
    friend bool operator==(const Newest&, const Newest&) = default;
};

/// Where a batch stands, so that those in use are found without folding the others.
struct BatchState {
    std::string id;
    std::string name;
    std::string solution;
    chemistry::Instant mixedAt;
    std::optional<chemistry::Instant> endedAt; ///< discarded or used up
};

/// All calls return StoreFailed, with the store's own message, when the store says no. Writing
/// calls are made only between begin() and commit() or rollback().
class StorePort
{
public:
    virtual ~StorePort() = default;

    /// Starts a transaction that no other writer can come between.
    virtual Result<void> begin() = 0;
    virtual Result<void> commit() = 0;
    virtual void rollback() = 0;

    /// Also what others wrote; in a transaction, and a copy put in the place of the book.
    virtual Result<Newest> newest() = 0;
    /// Its number.
    Result<std::int64_t> lastEntry()
    {
        return newest().map([](const Newest& entry) { return entry.number; });
    }

    virtual Result<std::int64_t> put(const Action& action) = 0;
    virtual Result<void> put(const Entry& entry, std::int64_t action) = 0;
    virtual Result<void> put(const BatchState& state) = 0;
    /// The batch's mixing was voided: it never was.
    virtual Result<void> dropBatch(const std::string& id) = 0;

    /// Whether an entry of this type and id is in the book: nothing, or whether its content is the
    /// same.
    virtual Result<std::optional<bool>> sameContent(const Entry& entry) = 0;

    /// Solutions, vessels and development times in order of entry.
    virtual Result<std::vector<Entry>> definitions() = 0;
    virtual Result<std::optional<Event>> event(const std::string& id) = 0;
    /// A batch's events in order of entry, each with its number, the voided and voiding ones too.
    virtual Result<std::vector<Event>> eventsOf(const std::string& batch) = 0;
    /// Other batches with events that say they were filled from this one or drawn into it, taken
    /// back ones too; each once.
    virtual Result<std::vector<std::string>> filledWith(const std::string& batch) = 0;
    /// Packets, chemicals, supplies, codes, known work and cans, in order of entry; also those that
    /// are used up, but none of their events.
    virtual Result<std::vector<Entry>> cupboard() = 0;
    /// Events that name this thing of the cupboard, mixings that used it as their packet among
    /// them, and events that take any of these back, at any remove; in order of entry, each with
    /// its number.
    virtual Result<std::vector<Event>> eventsOnItem(const std::string& item) = 0;
    /// The same of all things of the cupboard together.
    virtual Result<std::vector<Event>> eventsOnItems() = 0;
    /// Things that something was taken of for this batch, that taken back too; each once.
    virtual Result<std::vector<std::string>> itemsTakenFor(const std::string& batch) = 0;
    /// Likewise of a can, bottles that were discarded into it among them.
    virtual Result<std::vector<Event>> eventsOnContainer(const std::string& container) = 0;
    /// Ids of things that were thrown away, or named by a mixing as its packet, by `at`; without
    /// what was taken back. Some may be left out: those are to be folded.
    virtual Result<std::vector<std::string>> itemsEnded(chemistry::Instant at) = 0;
    virtual Result<std::vector<Event>> eventsOfAction(std::int64_t action) = 0;
    /// Lines of the cupboard that were entered in an action, in order of entry.
    virtual Result<std::vector<Entry>> cupboardOfAction(std::int64_t action) = 0;
    /// Likewise the vessels.
    virtual Result<std::vector<formulary::Vessel>> vesselsOfAction(std::int64_t action) = 0;
    /// The events entered in the same action as this one, itself among them, in order of entry;
    /// none of an import, which enters what does not belong together.
    virtual Result<std::vector<Event>> eventsWith(const std::string& event) = 0;
    virtual Result<std::optional<FilmRecord>> film(const std::string& id) = 0;
    /// Lines of a run's films in order of entry, those given anew and withdrawn too (film_lines.h).
    virtual Result<std::vector<FilmRecord>> filmLines(const std::string& run) = 0;
    virtual Result<std::vector<FilmRecord>> filmsOfAction(std::int64_t action) = 0;
    /// A film's marks in order of entry, those taken back and those that take back too.
    virtual Result<std::vector<FilmMark>> marksOf(const std::string& film) = 0;
    virtual Result<std::vector<FilmMark>> marksOfAction(std::int64_t action) = 0;
    virtual Result<std::optional<BatchState>> batch(const std::string& id) = 0;
    /// Batches mixed by `at`, in order of mixing; without `ended` only those in use then.
    virtual Result<std::vector<BatchState>> batches(chemistry::Instant at, bool ended) = 0;
    /// Mixings from `from` to `to`, both included, by time; those taken back too.
    virtual Result<std::vector<Event>> mixings(chemistry::Instant from, chemistry::Instant to) = 0;
    /// Whether an entry of this type and id is in the book.
    virtual Result<bool> has(std::string_view type, const std::string& id) = 0;
    /// Whether any event names this run.
    virtual Result<bool> hasRun(const std::string& run) = 0;
    /// The last `count` actions, oldest first.
    virtual Result<std::vector<Action>> actions(int count) = 0;
};

} // namespace ullage::ledger
