// What the store in memory answers.
#include "core/ledger/fillings.h"
#include "tests/core/ledger/memory_store.h"

#include <algorithm>
#include <set>

namespace ullage::ledger
{

template <class Wanted>
Result<std::vector<Entry>> MemoryStore::cupboardWhere(const Wanted& wanted)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    std::vector<Entry> result;
    for (const Row& row : m_now.rows) {
        const auto type = row.entry.type();
        if (wanted(row) && (type == "packet" || type == "chemical" || type == "supply" ||
                            type == "barcode" || type == "work" || type == "container")) {
            result.push_back(row.entry);
        }
    }
    return result;
}

template <class Condition>
Result<std::vector<Event>> MemoryStore::eventsWhere(Condition condition)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    std::vector<Event> result;
    for (const Row& row : m_now.rows) {
        if (row.entry.event() && condition(row)) {
            result.push_back(*row.entry.event());
            result.back().entry = row.number;
        }
    }
    return result;
}

template <class Names>
Result<std::vector<Event>> MemoryStore::eventsAbout(Names names)
{
    std::set<std::string> about;
    return eventsWhere([&](const Row& row) {
        const Event& event = *row.entry.event();
        const auto* voided = std::get_if<Voided>(&event.what);
        const bool is = voided ? about.contains(voided->voids) : std::visit(names, event.what);
        if (is) {
            about.insert(event.id);
        }
        return is;
    });
}

template <class What, class Condition>
Result<std::vector<What>> MemoryStore::entriesWhere(Condition condition)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    std::vector<What> result;
    for (const Row& row : m_now.rows) {
        const auto* what = std::get_if<What>(&row.entry.what);
        if (what && condition(row, *what)) {
            result.push_back(*what);
        }
    }
    return result;
}

template <class Condition>
Result<bool> MemoryStore::hasWhere(Condition condition)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    return std::any_of(m_now.rows.begin(), m_now.rows.end(),
                       [&](const Row& row) { return condition(row.entry); });
}

Result<Newest> MemoryStore::newest()
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    return Newest{m_now.entriesEver,
                  m_now.rows.empty() ? std::string() : m_now.rows.back().entry.id()};
}

Result<std::optional<bool>> MemoryStore::sameContent(const Entry& entry)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    for (const Row& row : m_now.rows) {
        if (row.entry.type() == entry.type() && row.entry.id() == entry.id()) {
            // As the book's own store: by what was written, where it was. A taking back whose
            // line names no batch is kept with that of what it takes back.
            return (!entry.body.empty() && row.entry.body == entry.body) ||
                   printed(row.entry) == printed(entry);
        }
    }
    return std::nullopt;
}

Result<std::vector<Entry>> MemoryStore::definitions()
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    std::vector<Entry> result;
    for (const Row& row : m_now.rows) {
        const auto type = row.entry.type();
        if (type == "solution" || type == "vessel" || type == "development-time") {
            result.push_back(row.entry);
        }
    }
    return result;
}

Result<std::optional<Event>> MemoryStore::event(const std::string& id)
{
    auto found = eventsWhere([&](const Row& row) { return row.entry.id() == id; });
    return found.map([](std::vector<Event> events) {
        return events.empty() ? std::nullopt : std::optional(events.front());
    });
}

Result<std::vector<Event>> MemoryStore::eventsOf(const std::string& batch)
{
    return eventsWhere([&](const Row& row) { return row.entry.event()->batch == batch; });
}

Result<std::vector<std::string>> MemoryStore::filledWith(const std::string& batch)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    std::set<std::string> found;
    for (const Row& row : m_now.rows) {
        const Event* event = row.entry.event();
        const auto half = event ? halfOf(*event) : std::nullopt;
        if (half && half->other() == batch) {
            found.insert(event->batch);
        }
    }
    return std::vector<std::string>(found.begin(), found.end());
}

Result<std::vector<Entry>> MemoryStore::cupboard()
{
    return cupboardWhere([](const Row&) { return true; });
}

Result<std::vector<Entry>> MemoryStore::cupboardOfAction(std::int64_t action)
{
    return cupboardWhere([&](const Row& row) { return row.action == action; });
}

Result<std::vector<formulary::Vessel>> MemoryStore::vesselsOfAction(std::int64_t action)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    std::vector<formulary::Vessel> result;
    for (const Row& row : m_now.rows) {
        const auto* vessel = std::get_if<formulary::Vessel>(&row.entry.what);
        if (vessel && row.action == action) {
            result.push_back(*vessel);
        }
    }
    return result;
}

Result<std::vector<Event>> MemoryStore::eventsOnItem(const std::string& item)
{
    return eventsAbout([&](const auto& what) {
        if constexpr (requires { what.item; }) {
            return what.item == item;
        } else if constexpr (requires { what.packet; }) {
            return what.packet == item;
        } else {
            return false;
        }
    });
}

Result<std::vector<Event>> MemoryStore::eventsOnItems()
{
    return eventsAbout([&](const auto& what) {
        if constexpr (requires { what.item; }) {
            return true;
        } else if constexpr (requires { what.packet; }) {
            return !what.packet.empty();
        } else {
            return false;
        }
    });
}

Result<std::vector<std::string>> MemoryStore::itemsTakenFor(const std::string& batch)
{
    return eventsWhere([](const Row&) { return true; }).map([&](const std::vector<Event>& events) {
        std::set<std::string> found;
        for (const Event& event : events) {
            const auto* taken = std::get_if<Taken>(&event.what);
            if (taken && taken->forBatch == batch) {
                found.insert(taken->item);
            }
        }
        return std::vector<std::string>(found.begin(), found.end());
    });
}

Result<std::vector<Event>> MemoryStore::eventsOnContainer(const std::string& container)
{
    return eventsAbout([&](const auto& what) {
        if constexpr (requires { what.container; }) {
            return what.container == container;
        } else {
            return false;
        }
    });
}

Result<std::vector<std::string>> MemoryStore::itemsEnded(chemistry::Instant)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    return std::vector<std::string>{}; // all are folded
}

Result<std::vector<Event>> MemoryStore::eventsOfAction(std::int64_t action)
{
    return eventsWhere([&](const Row& row) { return row.action == action; });
}

Result<std::vector<Event>> MemoryStore::eventsWith(const std::string& id)
{
    std::int64_t action = 0;
    for (const Row& row : m_now.rows) {
        if (row.entry.event() && row.entry.id() == id) {
            action = row.action;
        }
    }
    for (const Action& one : m_now.actions) {
        if (one.id == action && (one.mode == ActionMode::Apart || one.what == kImportAction)) {
            action = 0;
        }
    }
    return eventsWhere([&](const Row& row) { return row.action == action; });
}

Result<std::optional<FilmRecord>> MemoryStore::film(const std::string& id)
{
    return entriesWhere<FilmRecord>(
               [&](const Row&, const FilmRecord& film) { return film.id == id; })
        .map([](std::vector<FilmRecord> films) {
            return films.empty() ? std::nullopt : std::optional(films.front());
        });
}

Result<std::vector<FilmRecord>> MemoryStore::filmLines(const std::string& run)
{
    return entriesWhere<FilmRecord>(
        [&](const Row&, const FilmRecord& film) { return film.run == run; });
}

Result<std::vector<FilmRecord>> MemoryStore::filmsOfAction(std::int64_t action)
{
    return entriesWhere<FilmRecord>(
        [&](const Row& row, const FilmRecord&) { return row.action == action; });
}

Result<std::vector<FilmMark>> MemoryStore::marksOf(const std::string& film)
{
    return entriesWhere<FilmMark>(
        [&](const Row&, const FilmMark& mark) { return mark.film == film; });
}

Result<std::vector<FilmMark>> MemoryStore::marksOfAction(std::int64_t action)
{
    return entriesWhere<FilmMark>(
        [&](const Row& row, const FilmMark&) { return row.action == action; });
}

Result<std::optional<BatchState>> MemoryStore::batch(const std::string& id)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    const auto found = m_now.batches.find(id);
    return found == m_now.batches.end() ? std::nullopt : std::optional(found->second);
}

Result<std::vector<BatchState>> MemoryStore::batches(chemistry::Instant at, bool ended)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    std::vector<BatchState> result;
    for (const auto& [id, state] : m_now.batches) {
        if (state.mixedAt <= at && (ended || !state.endedAt || *state.endedAt > at)) {
            result.push_back(state);
        }
    }
    std::stable_sort(result.begin(), result.end(),
                     [](const auto& a, const auto& b) { return a.mixedAt < b.mixedAt; });
    return result;
}

Result<std::vector<Event>> MemoryStore::mixings(chemistry::Instant from, chemistry::Instant to)
{
    auto found = eventsWhere([&](const Row& row) {
        const Event& event = *row.entry.event();
        return event.kind() == "mixed" && event.at >= from && event.at <= to;
    });
    if (found) {
        std::stable_sort(found->begin(), found->end(),
                         [](const Event& a, const Event& b) { return a.at < b.at; });
    }
    return found;
}

Result<bool> MemoryStore::has(std::string_view type, const std::string& id)
{
    return hasWhere([&](const Entry& entry) { return entry.type() == type && entry.id() == id; });
}

Result<bool> MemoryStore::hasRun(const std::string& run)
{
    return hasWhere([&](const Entry& entry) {
        const auto* processed =
            entry.event() ? std::get_if<Processed>(&entry.event()->what) : nullptr;
        return processed && processed->run == run;
    });
}

Result<std::vector<Action>> MemoryStore::actions(int count)
{
    if (auto fine = call(); !fine) {
        return tl::unexpected(fine.error());
    }
    const auto& all = m_now.actions;
    const auto skip = all.size() > std::size_t(count) ? all.size() - std::size_t(count) : 0;
    return std::vector<Action>(all.begin() + std::ptrdiff_t(skip), all.end());
}

} // namespace ullage::ledger
