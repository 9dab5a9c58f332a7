#include "core/ledger/undo_history.h"

#include "core/formulary/notebook_fields.h"
#include "core/formulary/solution_fields.h"
#include "core/formulary/vessel_fields.h"
#include "core/ledger/cupboard_check.h"
#include "core/ledger/entry_fields.h"
#include "core/ledger/vessel_in_use.h"

#include <algorithm>
#include <map>
#include <set>
#include <unordered_set>

namespace ullage::ledger
{

namespace
{

constexpr int kActionsRemembered = 1000;

// Null for a type that is none of the cupboard's.
template <class T>
const Lines<T>* linesOf(const Cupboard& cupboard)
{
    if constexpr (std::is_same_v<T, Packet>) {
        return &cupboard.packets;
    } else if constexpr (std::is_same_v<T, Chemical>) {
        return &cupboard.chemicals;
    } else if constexpr (std::is_same_v<T, Supply>) {
        return &cupboard.supplies;
    } else if constexpr (std::is_same_v<T, Barcode>) {
        return &cupboard.barcodes;
    } else if constexpr (std::is_same_v<T, Work>) {
        return &cupboard.works;
    } else if constexpr (std::is_same_v<T, Container>) {
        return &cupboard.containers;
    } else {
        return nullptr;
    }
}

// But for what makes them two lines.
template <class T>
bool sayTheSame(const T& a, const T& b)
{
    return std::apply(
        [&](const auto&... field) {
            return (... && (field.is.name == "id" || field.is.name == "replaces" ||
                            a.*field.member == b.*field.member));
        },
        formulary::Described<T>::fields);
}

// What a line's chain of lines given anew has come to; null where two took the place of one.
template <class T>
const T* lastOf(const Lines<T>& lines, const T& line)
{
    const T* last = &line;
    for (std::size_t steps = 0; steps < lines.all().size(); ++steps) {
        const T* next = nullptr;
        for (const T& other : lines.all()) {
            if (other.replaces == last->id) {
                if (next) {
                    return nullptr;
                }
                next = &other;
            }
        }
        if (!next) {
            return last;
        }
        last = next;
    }
    return nullptr;
}

// The line that takes the place of `line`, or of what says the same again by now, as after undoing
// what was given anew since; empty where something else stands there.
template <class T>
std::optional<Entry> lineBefore(const Lines<T>& lines, const T& line)
{
    const T* last = lastOf(lines, line);
    if (!last || (last != &line && !sayTheSame(*last, line))) {
        return std::nullopt;
    }
    T before = line;
    before.withdrawn = line.replaces.empty();
    for (const T& other : lines.all()) {
        if (!line.replaces.empty() && other.id == line.replaces) {
            before = other;
        }
    }
    before.id.clear();
    before.replaces = last->id;
    return Entry{std::move(before), {}};
}

std::optional<Entry> lineBefore(const Cupboard& cupboard, const Entry& entry)
{
    return std::visit(
        [&](const auto& line) -> std::optional<Entry> {
            using Line = std::remove_cvref_t<decltype(line)>;
            if constexpr (requires {
                              line.withdrawn;
                              line.replaces;
                          }) {
                if (const auto* lines = linesOf<Line>(cupboard)) {
                    return lineBefore(*lines, line);
                }
            }
            return std::nullopt;
        },
        entry.what);
}

Entry withId(Entry entry, const std::string& id)
{
    std::visit([&](auto& what) { what.id = id; }, entry.what);
    return entry;
}

} // namespace

UndoHistory::UndoHistory(StorePort& store, BookMemory& memory) : m_store(&store), m_memory(&memory)
{
}

Result<void> UndoHistory::read()
{
    const auto actions = m_store->actions(kActionsRemembered);
    if (!actions) {
        return tl::unexpected(actions.error());
    }
    m_othersDid = false;
    m_undo.clear();
    m_redo.clear();
    for (const Action& action : *actions) {
        remember(action);
    }
    return {};
}

void UndoHistory::remember(const Action& action)
{
    const auto drop = [](std::vector<Action>& stack, std::int64_t id) {
        std::erase_if(stack, [&](const Action& other) { return other.id == id; });
    };
    if (!action.seat.empty() && action.seat != m_seat) {
        m_othersDid = m_othersDid || action.mode == ActionMode::Done;
        return;
    }
    switch (action.mode) {
    case ActionMode::Done:
        m_undo.push_back(action);
        m_redo.clear();
        break;
    case ActionMode::Undone:
        drop(m_undo, action.of);
        m_redo.push_back(action);
        break;
    case ActionMode::Redone:
        drop(m_redo, action.of);
        m_undo.push_back(action);
        break;
    case ActionMode::Apart:
        break;
    }
}

Result<std::optional<Action>> UndoHistory::next(ActionMode mode)
{
    std::vector<Action>& actions = of(mode);
    while (!actions.empty()) {
        const auto left = standing(actions.back());
        if (!left) {
            return tl::unexpected(left.error());
        }
        if (!left->empty()) {
            return actions.back();
        }
        actions.pop_back();
    }
    return std::nullopt;
}

std::optional<Action> UndoHistory::nextNamed(ActionMode mode)
{
    (void)next(mode);
    const std::vector<Action>& actions = of(mode);
    return actions.empty() ? std::nullopt : std::optional(actions.back());
}

Result<Standing> UndoHistory::standing(const Action& action)
{
    auto marks = m_store->marksOfAction(action.id);
    if (!marks) {
        return tl::unexpected(marks.error());
    }
    auto events = m_store->eventsOfAction(action.id);
    if (!events) {
        return tl::unexpected(events.error());
    }
    auto lines = m_store->cupboardOfAction(action.id);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    std::vector<Entry> instead;
    if (!lines->empty()) {
        const auto cupboard = readCupboard(*m_store);
        if (!cupboard) {
            return tl::unexpected(cupboard.error());
        }
        for (const Entry& line : *lines) {
            if (auto before = lineBefore(*cupboard, line)) {
                instead.push_back(std::move(*before));
            }
        }
    }
    std::map<std::string, std::unordered_set<std::string>> ofFilm;
    for (const FilmMark& mark : *marks) {
        if (!ofFilm.contains(mark.film)) {
            const auto entered = m_store->marksOf(mark.film);
            if (!entered) {
                return tl::unexpected(entered.error());
            }
            ofFilm[mark.film] = takenBack(*entered);
        }
    }
    std::map<std::string, std::unordered_set<std::string>> ofBatch;
    std::unordered_set<std::string> ofNone; // about things of the cupboard, or cans
    for (const Event& event : *events) {
        if (event.batch.empty()) {
            const auto about = eventsAbout(*m_store, event);
            if (!about) {
                return tl::unexpected(about.error());
            }
            ofNone.merge(takenBack(*about));
            continue;
        }
        if (!ofBatch.contains(event.batch)) {
            const auto batch = m_memory->kept(event.batch);
            if (!batch) {
                return tl::unexpected(batch.error());
            }
            ofBatch[event.batch] = takenBack((*batch)->entered);
        }
    }
    std::erase_if(*marks,
                  [&](const FilmMark& mark) { return ofFilm[mark.film].contains(mark.id); });
    std::erase_if(*events, [&](const Event& event) {
        return (event.batch.empty() ? ofNone : ofBatch[event.batch]).contains(event.id);
    });
    // They belong to a run: where nothing of that is left to take back, they stay.
    auto films = events->empty() ? Result<std::vector<Entry>>() : filmsBefore(action);
    if (!films) {
        return tl::unexpected(films.error());
    }
    auto vessels = vesselsBefore(action, *events);
    if (!vessels) {
        return tl::unexpected(vessels.error());
    }
    instead.insert(instead.end(), vessels->begin(), vessels->end());
    return Standing{std::move(*marks), std::move(*events), std::move(instead), std::move(*films)};
}

// Films that were entered with their run go with it by themselves.
Result<std::vector<Entry>> UndoHistory::filmsBefore(const Action& action)
{
    if (action.what != kCorrectAction) {
        return std::vector<Entry>{};
    }
    const auto entered = m_store->filmsOfAction(action.id);
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    std::map<std::string, Lines<FilmRecord>> ofRun;
    std::vector<Entry> before;
    for (const FilmRecord& film : *entered) {
        if (!ofRun.contains(film.run)) {
            const auto lines = m_store->filmLines(film.run);
            if (!lines) {
                return tl::unexpected(lines.error());
            }
            for (const FilmRecord& line : *lines) {
                ofRun[film.run].add(line);
            }
        }
        if (auto line = lineBefore(ofRun[film.run], film)) {
            before.push_back(std::move(*line));
        }
    }
    return before;
}

// `standing`: the events of the action that would be taken back with them.
Result<std::vector<Entry>> UndoHistory::vesselsBefore(const Action& action,
                                                      const std::vector<Event>& standing)
{
    if (action.what != kImportAction) {
        return std::vector<Entry>{};
    }
    const auto entered = m_store->vesselsOfAction(action.id);
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    if (entered->empty()) {
        return std::vector<Entry>{};
    }
    std::set<std::string> ours; // batches that go with it
    for (const Event& event : standing) {
        const auto root = rootOf(*m_store, event);
        if (!root) {
            return tl::unexpected(root.error());
        }
        if (*root && std::holds_alternative<Mixed>((*root)->what)) {
            ours.insert(event.batch);
        }
    }
    const auto inUse = vesselsInUse(*m_store, ours);
    if (!inUse) {
        return tl::unexpected(inUse.error());
    }
    const formulary::Formulary& formulary = m_memory->formulary();
    Lines<formulary::Vessel> lines;
    for (const auto& vessel : formulary.vessels()) {
        lines.add(*vessel);
    }
    const auto isTaken = [&](const formulary::Vessel& vessel) {
        const auto now = formulary.vesselNow(vessel.id);
        return now && std::any_of(inUse->begin(), inUse->end(), [&](const std::string& id) {
                   const auto of = formulary.vesselNow(id);
                   return of && of->id == now->id;
               });
    };
    std::vector<Entry> before;
    for (const formulary::Vessel& vessel : *entered) {
        if (isTaken(vessel)) {
            continue;
        }
        if (auto line = lineBefore(lines, vessel)) {
            before.push_back(std::move(*line));
        }
    }
    return before;
}

std::vector<Entry> inverseOf(const Standing& standing, chemistry::Instant now, const IdMaker& newId)
{
    std::vector<Entry> entries;
    for (auto mark = standing.marks.rbegin(); mark != standing.marks.rend(); ++mark) {
        entries.push_back({FilmMark{.id = newId(),
                                    .film = mark->film,
                                    .at = now,
                                    .fault = {},
                                    .takesBack = mark->id,
                                    .note = kUndoneReason},
                           {}});
    }
    for (auto event = standing.events.rbegin(); event != standing.events.rend(); ++event) {
        const Voided taken{event->id, kUndoneReason};
        entries.push_back({Event{newId(), event->batch, now, taken}, {}});
    }
    for (const auto* lines : {&standing.cupboard, &standing.films}) {
        for (auto line = lines->rbegin(); line != lines->rend(); ++line) {
            entries.push_back(withId(*line, newId()));
        }
    }
    return entries;
}

} // namespace ullage::ledger
