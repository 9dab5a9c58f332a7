// Which deeds can be undone and redone: those of one seat and those of nobody's, and what is left
// of each to be taken back.
#pragma once

#include "core/ledger/book_memory.h"
#include "core/ledger/clock.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// The reason of what undo takes back is a code, worded by the application.
inline constexpr const char* kUndoneReason = "undone";

/// What is left of an action, in order of entry.
struct Standing {
    std::vector<FilmMark> marks;
    std::vector<Event> events;
    /// For each of its lines of the cupboard that nobody gave anew or withdrew since, in order of
    /// entry, the line that takes its place: as it was before, or withdrawn where it was none.
    /// Without ids. Of an import also for its vessels, but for one in which a bottle of others
    /// stands by now: a vessel by itself is no deed, but a spreadsheet makes one for each bottle.
    std::vector<Entry> cupboard;
    /// The same of the lines of films that came with a correction of their run.
    std::vector<Entry> films;
    [[nodiscard]] bool empty() const { return marks.empty() && events.empty() && cupboard.empty(); }
};

class UndoHistory
{
public:
    /// Both must outlive it.
    UndoHistory(StorePort& store, BookMemory& memory);

    /// From whose seat; takes effect with read().
    void sitAt(std::string seat) { m_seat = std::move(seat); }
    [[nodiscard]] const std::string& seat() const { return m_seat; }

    /// Reads the last actions of the store.
    Result<void> read();
    /// Takes over one that was committed.
    void remember(const Action& action);

    /// What would be undone (ActionMode::Undone) or redone (Redone) next. What is taken back
    /// already is dropped on the way. Empty if there is none.
    Result<std::optional<Action>> next(ActionMode mode);
    /// The same where one that cannot be read is named all the same.
    std::optional<Action> nextNamed(ActionMode mode);
    /// Whether deeds of other seats are among those that are remembered.
    [[nodiscard]] bool othersHaveDone() const { return m_othersDid; }

    /// What was taken back meanwhile, from the day book or by others, is left out.
    Result<Standing> standing(const Action& action);

private:
    Result<std::vector<Entry>> filmsBefore(const Action& action);
    Result<std::vector<Entry>> vesselsBefore(const Action& action,
                                             const std::vector<Event>& standing);
    std::vector<Action>& of(ActionMode mode)
    {
        return mode == ActionMode::Undone ? m_undo : m_redo;
    }

    StorePort* m_store;
    BookMemory* m_memory;
    std::string m_seat;
    bool m_othersDid = false;
    std::vector<Action> m_undo;
    std::vector<Action> m_redo;
};

/// Voids everything that stands of an action, last first, at the moment `now`; its lines of the
/// cupboard and of films are given anew as they were before. Redoing an undo
/// voids its voidings: so the events stand again under their own ids, where they stood among the
/// others of their instant, and whatever named them (a later voiding, a film's run) still does.
std::vector<Entry> inverseOf(const Standing& standing, chemistry::Instant now,
                             const IdMaker& newId);

} // namespace ullage::ledger
