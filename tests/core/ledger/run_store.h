// A book in memory for tests of runs: enough of a store for one that writes and never rolls back to
// anything but the state before the transaction.
#pragma once

#include "core/ledger/book.h"

#include <algorithm>
#include <map>

namespace ullage::ledger
{

class RunStore : public StorePort
{
public:
    struct Kept {
        std::vector<std::pair<Entry, std::int64_t>> entries;
        std::vector<Action> actions;
        std::map<std::string, BatchState> batches;
    };
    Kept kept;
    bool failing = false; ///< refuses to commit

    Result<void> begin() override
    {
        m_before = kept;
        return {};
    }
    Result<void> commit() override
    {
        if (failing) {
            kept = m_before;
            return refuse({.code = ErrorCode::StoreFailed, .text = "disk full"});
        }
        return {};
    }
    void rollback() override { kept = m_before; }
    Result<Newest> newest() override
    {
        return Newest{static_cast<std::int64_t>(kept.entries.size()),
                      kept.entries.empty() ? std::string() : kept.entries.back().first.id()};
    }
    Result<std::int64_t> put(const Action& action) override
    {
        kept.actions.push_back(action);
        kept.actions.back().id = static_cast<std::int64_t>(kept.actions.size());
        return kept.actions.back().id;
    }
    Result<void> put(const Entry& entry, std::int64_t action) override
    {
        kept.entries.emplace_back(entry, action);
        return {};
    }
    Result<void> put(const BatchState& state) override
    {
        kept.batches[state.id] = state;
        return {};
    }
    Result<void> dropBatch(const std::string& id) override
    {
        kept.batches.erase(id);
        return {};
    }
    Result<std::optional<bool>> sameContent(const Entry& entry) override
    {
        for (const auto& [other, action] : kept.entries) {
            if (other.id() == entry.id() && other.type() == entry.type()) {
                return true;
            }
        }
        return std::optional<bool>{};
    }
    Result<std::vector<Entry>> definitions() override
    {
        std::vector<Entry> found;
        for (const auto& [entry, action] : kept.entries) {
            const auto type = entry.type();
            if (type == "solution" || type == "vessel" || type == "development-time") {
                found.push_back(entry);
            }
        }
        return found;
    }
    Result<std::optional<Event>> event(const std::string& id) override
    {
        for (const auto& [entry, action] : kept.entries) {
            if (entry.event() && entry.id() == id) {
                return *entry.event();
            }
        }
        return std::optional<Event>{};
    }
    Result<std::vector<Event>> eventsOf(const std::string& batch) override
    {
        return events([&](const Event& event, std::int64_t) { return event.batch == batch; });
    }
    Result<std::vector<std::string>> filledWith(const std::string&) override
    {
        return std::vector<std::string>{};
    }
    Result<std::vector<Entry>> cupboard() override { return std::vector<Entry>{}; }
    Result<std::vector<Event>> eventsOnItem(const std::string&) override
    {
        return std::vector<Event>{};
    }
    Result<std::vector<Event>> eventsOnItems() override { return std::vector<Event>{}; }
    Result<std::vector<std::string>> itemsTakenFor(const std::string&) override
    {
        return std::vector<std::string>{};
    }
    Result<std::vector<Event>> eventsOnContainer(const std::string&) override
    {
        return std::vector<Event>{};
    }
    Result<std::vector<std::string>> itemsEnded(chemistry::Instant) override
    {
        return std::vector<std::string>{};
    }
    Result<std::vector<Event>> eventsOfAction(std::int64_t action) override
    {
        return events([&](const Event&, std::int64_t of) { return of == action; });
    }
    Result<std::vector<Entry>> cupboardOfAction(std::int64_t) override
    {
        return std::vector<Entry>{};
    }
    Result<std::vector<formulary::Vessel>> vesselsOfAction(std::int64_t) override
    {
        return std::vector<formulary::Vessel>{};
    }
    Result<std::vector<Event>> eventsWith(const std::string&) override
    {
        return std::vector<Event>{};
    }
    Result<std::optional<FilmRecord>> film(const std::string& id) override
    {
        for (const FilmRecord& film : films()) {
            if (film.id == id) {
                return film;
            }
        }
        return std::optional<FilmRecord>{};
    }
    Result<std::vector<FilmRecord>> filmLines(const std::string& run) override
    {
        auto found = films();
        std::erase_if(found, [&](const FilmRecord& film) { return film.run != run; });
        return found;
    }
    Result<std::vector<FilmRecord>> filmsOfAction(std::int64_t) override
    {
        return std::vector<FilmRecord>{}; // nothing is corrected
    }
    Result<std::vector<FilmMark>> marksOf(const std::string&) override { return none; }
    Result<std::vector<FilmMark>> marksOfAction(std::int64_t) override { return none; }
    Result<std::optional<BatchState>> batch(const std::string& id) override
    {
        const auto found = kept.batches.find(id);
        return found == kept.batches.end() ? std::optional<BatchState>{} : found->second;
    }
    Result<std::vector<BatchState>> batches(chemistry::Instant at, bool ended) override
    {
        std::vector<BatchState> found;
        for (const auto& [id, state] : kept.batches) {
            if (state.mixedAt <= at && (ended || !state.endedAt || *state.endedAt > at)) {
                found.push_back(state);
            }
        }
        std::stable_sort(found.begin(), found.end(),
                         [](const auto& a, const auto& b) { return a.mixedAt < b.mixedAt; });
        return found;
    }
    Result<std::vector<Event>> mixings(chemistry::Instant, chemistry::Instant) override
    {
        return std::vector<Event>(); // only imports ask
    }
    Result<bool> has(std::string_view, const std::string&) override { return false; }
    Result<bool> hasRun(const std::string& run) override
    {
        return std::any_of(kept.entries.begin(), kept.entries.end(), [&](const auto& pair) {
            const Event* event = pair.first.event();
            const auto* done = event ? std::get_if<Processed>(&event->what) : nullptr;
            return done && done->run == run;
        });
    }
    Result<std::vector<Action>> actions(int count) override
    {
        const auto all = static_cast<std::ptrdiff_t>(kept.actions.size());
        return std::vector<Action>(kept.actions.end() - std::min<std::ptrdiff_t>(count, all),
                                   kept.actions.end());
    }

    /// The films of the book, in order of entry.
    [[nodiscard]] std::vector<FilmRecord> films() const
    {
        std::vector<FilmRecord> found;
        for (const auto& [entry, action] : kept.entries) {
            if (const auto* film = std::get_if<FilmRecord>(&entry.what)) {
                found.push_back(*film);
            }
        }
        return found;
    }

    /// The times of its last run.
    [[nodiscard]] std::optional<RunTimes> times() const
    {
        std::optional<RunTimes> found;
        for (const auto& [entry, action] : kept.entries) {
            if (const auto* times = std::get_if<RunTimes>(&entry.what)) {
                found = *times;
            }
        }
        return found;
    }

private:
    template <class Wanted>
    std::vector<Event> events(Wanted wanted)
    {
        std::vector<Event> found;
        for (const auto& [entry, action] : kept.entries) {
            if (entry.event() && wanted(*entry.event(), action)) {
                found.push_back(*entry.event());
            }
        }
        return found;
    }

    Kept m_before;
    const std::vector<FilmMark> none{}; // runs mark no film
};

} // namespace ullage::ledger
