// A store in memory for tests of the Book, which can be told to fail.
#pragma once

#include "core/ledger/store_port.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::ledger
{

/// Every field of an entry as text, so that two can be compared and a store printed.
std::string printed(const Entry& entry);

class MemoryStore : public StorePort
{
public:
    /// What is in the store, for comparing before and after.
    [[nodiscard]] std::string contents() const;
    [[nodiscard]] std::size_t entries() const { return m_now.rows.size(); }

    /// The call after `calls` more of them fails, once. Counts every call that can.
    void failAfter(int calls) { m_callsLeft = calls; }
    /// From then on every call fails, until forgetFailure().
    void failFrom(int calls);
    [[nodiscard]] bool failed() const { return m_failed; }
    void forgetFailure();
    [[nodiscard]] bool inTransaction() const { return m_before.has_value(); }

    Result<void> begin() override;
    Result<void> commit() override;
    void rollback() override;

    Result<Newest> newest() override;

    Result<std::int64_t> put(const Action& action) override;
    Result<void> put(const Entry& entry, std::int64_t action) override;
    Result<void> put(const BatchState& state) override;
    Result<void> dropBatch(const std::string& id) override;

    Result<std::optional<bool>> sameContent(const Entry& entry) override;
    Result<std::vector<Entry>> definitions() override;
    Result<std::optional<Event>> event(const std::string& id) override;
    Result<std::vector<Event>> eventsOf(const std::string& batch) override;
    Result<std::vector<std::string>> filledWith(const std::string& batch) override;
    Result<std::vector<Entry>> cupboard() override;
    Result<std::vector<Entry>> cupboardOfAction(std::int64_t action) override;
    Result<std::vector<formulary::Vessel>> vesselsOfAction(std::int64_t action) override;
    Result<std::vector<Event>> eventsOnItem(const std::string& item) override;
    Result<std::vector<Event>> eventsOnItems() override;
    Result<std::vector<std::string>> itemsTakenFor(const std::string& batch) override;
    Result<std::vector<Event>> eventsOnContainer(const std::string& container) override;
    Result<std::vector<std::string>> itemsEnded(chemistry::Instant) override;
    Result<std::vector<Event>> eventsOfAction(std::int64_t action) override;
    Result<std::vector<Event>> eventsWith(const std::string& id) override;
    Result<std::optional<FilmRecord>> film(const std::string& id) override;
    Result<std::vector<FilmRecord>> filmLines(const std::string& run) override;
    Result<std::vector<FilmRecord>> filmsOfAction(std::int64_t action) override;
    Result<std::vector<FilmMark>> marksOf(const std::string& film) override;
    Result<std::vector<FilmMark>> marksOfAction(std::int64_t action) override;
    Result<std::optional<BatchState>> batch(const std::string& id) override;
    Result<std::vector<BatchState>> batches(chemistry::Instant at, bool ended) override;
    Result<std::vector<Event>> mixings(chemistry::Instant from, chemistry::Instant to) override;
    Result<bool> has(std::string_view type, const std::string& id) override;
    Result<bool> hasRun(const std::string& run) override;
    Result<std::vector<Action>> actions(int count) override;

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

    static tl::unexpected<Error> failure(const std::string& text);
    Result<void> call();
    Result<void> writing();
    template <class Wanted>
    Result<std::vector<Entry>> cupboardWhere(const Wanted& wanted);
    template <class Condition>
    Result<std::vector<Event>> eventsWhere(Condition condition);
    // What names the thing, and what takes that back at any remove.
    template <class Names>
    Result<std::vector<Event>> eventsAbout(Names names);
    template <class What, class Condition>
    Result<std::vector<What>> entriesWhere(Condition condition);
    template <class Condition>
    Result<bool> hasWhere(Condition condition);

    State m_now;
    std::optional<State> m_before;
    int m_callsLeft = -1;
    bool m_lasting = false;
    bool m_failed = false;
};

} // namespace ullage::ledger
