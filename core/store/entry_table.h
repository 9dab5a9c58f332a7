// The table of entries: what is appended to it, and what is found there, each line held against
// what was entered.
#pragma once

#include "core/ledger/store_port.h"
#include "core/store/chain_growth.h"
#include "core/store/line_proof.h"
#include "core/store/statement.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::store
{

/// Belongs to one thread, as its connection does. What is asked of it is described in StorePort.
class EntryTable
{
public:
    /// Both must outlive it.
    EntryTable(Connection& connection, ChainGrowth& growth);

    Result<void> put(const ledger::Entry& entry, std::int64_t action);

    Result<ledger::Newest> newest();
    Result<std::optional<bool>> sameContent(const ledger::Entry& entry);
    Result<std::vector<ledger::Entry>> definitions();
    /// Of the definitions, when they were read last, those that are not what was entered.
    [[nodiscard]] const std::vector<Error>& unread() const { return m_unread; }
    Result<std::optional<ledger::Event>> event(const std::string& id);
    Result<std::vector<ledger::Event>> eventsOf(const std::string& batch);
    Result<std::vector<ledger::Event>> eventsOfAction(std::int64_t action);
    Result<std::vector<ledger::Event>> eventsWith(const std::string& event);
    Result<std::vector<ledger::Event>> mixings(chemistry::Instant from, chemistry::Instant to);
    Result<std::vector<std::string>> filledWith(const std::string& batch);
    Result<std::optional<ledger::FilmRecord>> film(const std::string& id);
    Result<std::vector<ledger::FilmRecord>> filmLines(const std::string& run);
    Result<std::vector<ledger::FilmRecord>> filmsOfAction(std::int64_t action);
    Result<std::vector<ledger::FilmMark>> marksOf(const std::string& film);
    Result<std::vector<ledger::FilmMark>> marksOfAction(std::int64_t action);
    Result<std::vector<formulary::Vessel>> vesselsOfAction(std::int64_t action);
    Result<bool> has(std::string_view type, const std::string& id);
    Result<bool> hasRun(const std::string& run);
    /// Whether there are fillings that stand on one side only.
    Result<bool> hasUnpaired();
    /// An entry's type, id and hash; empty if there is no such entry.
    struct Hashed {
        QByteArray type;
        QByteArray id;
        std::optional<Digest> hash;
    };
    Result<std::optional<Hashed>> hashOf(std::int64_t entry);

private:
    bool hasLost(const std::string& batch);
    Error whatChanged(const std::string& batch, const std::vector<std::int64_t>& entries);
    template <class What>
    Result<std::vector<What>> entriesFrom(Result<Rows> rows);

    Connection* m_connection;
    ChainGrowth* m_growth;
    LineProof m_proof;
    std::vector<Error> m_unread;
    Statement m_newest;
    Statement m_putEntry;
    Statement m_bodyOf;
    Statement m_definitions;
    Statement m_hashOf;
    Statement m_event;
    Statement m_eventsOf;
    Statement m_batchEntries;
    Statement m_filledWith;
    Statement m_unpaired;
    Statement m_eventsOfAction;
    Statement m_eventsWith;
    Statement m_film;
    Statement m_filmLines;
    Statement m_filmsOfAction;
    Statement m_marksOf;
    Statement m_marksOfAction;
    Statement m_vesselsOfAction;
    Statement m_mixings;
    Statement m_has;
    Statement m_hasRun;
};

} // namespace ullage::store
