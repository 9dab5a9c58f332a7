// A store in memory for tests of the Book, which can be told to fail.
#pragma once

#include "core/ledger/fillings.h"
#include "core/ledger/store_port.h"

#include <algorithm>
#include <map>
#include <set>
#include <sstream>
#include <utility>

namespace ullage::ledger
{

/// Every field of an entry as text, so that two can be compared and a store printed.
std::string printed(const Entry& entry);

class MemoryStore : public StorePort
{
public:
    /// What is in the store, for comparing before and after.
    [[nodiscard]] std::string contents() const
    {
        std::ostringstream out;
        for (const Row& row : m_now.rows) {
            out << row.action << ' ' << printed(row.entry) << '\n';
        }
        for (const Action& action : m_now.actions) {
            out << action.id << ' ' << static_cast<int>(action.mode) << ' ' << action.what << ' '
                << action.subject << ' ' << action.of << ' ' << action.seat << '\n';
        }
        for (const auto& [id, state] : m_now.batches) {
            out << id << ' ' << state.name << ' ' << state.solution << ' '
                << state.mixedAt.time_since_epoch().count() << ' '
                << (state.endedAt ? state.endedAt->time_since_epoch().count() : 0) << '\n';
        }
        return out.str();
    }
    [[nodiscard]] std::size_t entries() const { return m_now.rows.size(); }

    /// The call after `calls` more of them fails, once. Counts every call that can.
    void failAfter(int calls) { m_callsLeft = calls; }
    /// From then on every call fails, until forgetFailure().
    void failFrom(int calls)
    {
        failAfter(calls);
        m_lasting = true;
    }
    [[nodiscard]] bool failed() const { return m_failed; }
    void forgetFailure()
    {
        m_failed = m_lasting = false;
        m_callsLeft = -1;
    }
    [[nodiscard]] bool inTransaction() const { return m_before.has_value(); }

    Result<void> begin() override
    {
        if (auto fine = call(); !fine) {
            return fine;
        }
        if (m_before) {
            return failure("a transaction is open already");
        }
        m_before = m_now;
        return {};
    }
    Result<void> commit() override
    {
        if (auto fine = writing(); !fine) {
            return fine;
        }
        m_before.reset();
        return {};
    }
    void rollback() override
    {
        if (m_before) {
            m_now = std::move(*m_before);
            m_before.reset();
        }
    }

    Result<Newest> newest() override
    {
        if (auto fine = call(); !fine) {
            return tl::unexpected(fine.error());
        }
        return Newest{m_now.entriesEver,
                      m_now.rows.empty() ? std::string() : m_now.rows.back().entry.id()};
    }

    Result<std::int64_t> put(const Action& action) override
    {
        if (auto fine = writing(); !fine) {
            return tl::unexpected(fine.error());
        }
        m_now.actions.push_back(action);
        return m_now.actions.back().id = ++m_now.actionsEver;
    }
    Result<void> put(const Entry& entry, std::int64_t action) override
    {
        if (auto fine = writing(); !fine) {
            return fine;
        }
        const bool taken = std::any_of(m_now.rows.begin(), m_now.rows.end(), [&](const Row& row) {
            return row.entry.type() == entry.type() && row.entry.id() == entry.id();
        });
        if (taken) {
            return failure("id is there already: " + entry.id());
        }
        m_now.rows.push_back({++m_now.entriesEver, action, entry});
        return {};
    }
    Result<void> put(const BatchState& state) override
    {
        if (auto fine = writing(); !fine) {
            return fine;
        }
        m_now.batches[state.id] = state;
        return {};
    }
    Result<void> dropBatch(const std::string& id) override
    {
        if (auto fine = writing(); !fine) {
            return fine;
        }
        m_now.batches.erase(id);
        return {};
    }

    Result<std::optional<bool>> sameContent(const Entry& entry) override
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
    Result<std::vector<Entry>> definitions() override
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
    Result<std::optional<Event>> event(const std::string& id) override
    {
        auto found = eventsWhere([&](const Row& row) { return row.entry.id() == id; });
        return found.map([](std::vector<Event> events) {
            return events.empty() ? std::nullopt : std::optional(events.front());
        });
    }
    Result<std::vector<Event>> eventsOf(const std::string& batch) override
    {
        return eventsWhere([&](const Row& row) { return row.entry.event()->batch == batch; });
    }
    Result<std::vector<std::string>> filledWith(const std::string& batch) override
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
    Result<std::vector<Entry>> cupboard() override
    {
        return cupboardWhere([](const Row&) { return true; });
    }
    Result<std::vector<Entry>> cupboardOfAction(std::int64_t action) override
    {
        return cupboardWhere([&](const Row& row) { return row.action == action; });
    }
    template <class Wanted>
    Result<std::vector<Entry>> cupboardWhere(const Wanted& wanted)
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
    Result<std::vector<Event>> eventsOnItem(const std::string& item) override
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
    Result<std::vector<Event>> eventsOnItems() override
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
    Result<std::vector<std::string>> itemsTakenFor(const std::string& batch) override
    {
        return eventsWhere([](const Row&) { return true; })
            .map([&](const std::vector<Event>& events) {
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
    Result<std::vector<Event>> eventsOnContainer(const std::string& container) override
    {
        return eventsAbout([&](const auto& what) {
            if constexpr (requires { what.container; }) {
                return what.container == container;
            } else {
                return false;
            }
        });
    }
    Result<std::vector<std::string>> itemsEnded(chemistry::Instant) override
    {
        if (auto fine = call(); !fine) {
            return tl::unexpected(fine.error());
        }
        return std::vector<std::string>{}; // all are folded
    }
    Result<std::vector<Event>> eventsOfAction(std::int64_t action) override
    {
        return eventsWhere([&](const Row& row) { return row.action == action; });
    }
    Result<std::vector<Event>> eventsWith(const std::string& id) override
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
    Result<std::optional<FilmRecord>> film(const std::string& id) override
    {
        return entriesWhere<FilmRecord>(
                   [&](const Row&, const FilmRecord& film) { return film.id == id; })
            .map([](std::vector<FilmRecord> films) {
                return films.empty() ? std::nullopt : std::optional(films.front());
            });
    }
    Result<std::vector<FilmMark>> marksOf(const std::string& film) override
    {
        return entriesWhere<FilmMark>(
            [&](const Row&, const FilmMark& mark) { return mark.film == film; });
    }
    Result<std::vector<FilmMark>> marksOfAction(std::int64_t action) override
    {
        return entriesWhere<FilmMark>(
            [&](const Row& row, const FilmMark&) { return row.action == action; });
    }
    Result<std::optional<BatchState>> batch(const std::string& id) override
    {
        if (auto fine = call(); !fine) {
            return tl::unexpected(fine.error());
        }
        const auto found = m_now.batches.find(id);
        return found == m_now.batches.end() ? std::nullopt : std::optional(found->second);
    }
    Result<std::vector<BatchState>> batches(chemistry::Instant at, bool ended) override
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
    Result<std::vector<Event>> mixings(chemistry::Instant from, chemistry::Instant to) override
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
    Result<bool> has(std::string_view type, const std::string& id) override
    {
        return hasWhere(
            [&](const Entry& entry) { return entry.type() == type && entry.id() == id; });
    }
    Result<bool> hasRun(const std::string& run) override
    {
        return hasWhere([&](const Entry& entry) {
            const auto* processed =
                entry.event() ? std::get_if<Processed>(&entry.event()->what) : nullptr;
            return processed && processed->run == run;
        });
    }
    Result<std::vector<Action>> actions(int count) override
    {
        if (auto fine = call(); !fine) {
            return tl::unexpected(fine.error());
        }
        const auto& all = m_now.actions;
        const auto skip = all.size() > std::size_t(count) ? all.size() - std::size_t(count) : 0;
        return std::vector<Action>(all.begin() + std::ptrdiff_t(skip), all.end());
    }

private:
    struct Row {
        std::int64_t number;
        std::int64_t action;
        Entry entry;
    };
    struct State {
        std::vector<Row> rows;
        std::vector<Action> actions;
        std::map<std::string, BatchState> batches;
        std::int64_t entriesEver = 0;
        std::int64_t actionsEver = 0;
    };

    static tl::unexpected<Error> failure(const std::string& text)
    {
        return refuse({.code = ErrorCode::StoreFailed, .text = text});
    }
    Result<void> call()
    {
        if (m_callsLeft == 0) {
            m_callsLeft = m_lasting ? 0 : -1;
            m_failed = true;
            return failure("told to fail");
        }
        if (m_callsLeft > 0) {
            --m_callsLeft;
        }
        return {};
    }
    Result<void> writing()
    {
        if (!m_before) {
            return failure("not in a transaction");
        }
        return call();
    }
    template <class Condition>
    Result<std::vector<Event>> eventsWhere(Condition condition)
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
    // What names the thing, and what takes that back at any remove.
    template <class Names>
    Result<std::vector<Event>> eventsAbout(Names names)
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
    Result<std::vector<What>> entriesWhere(Condition condition)
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
    Result<bool> hasWhere(Condition condition)
    {
        if (auto fine = call(); !fine) {
            return tl::unexpected(fine.error());
        }
        return std::any_of(m_now.rows.begin(), m_now.rows.end(),
                           [&](const Row& row) { return condition(row.entry); });
    }

    State m_now;
    std::optional<State> m_before;
    int m_callsLeft = -1;
    bool m_lasting = false;
    bool m_failed = false;
};

} // namespace ullage::ledger
