// Many entries with the ids they have, in one transaction: all or nothing.
//
// Lines come in any order; whether events are possible for their batch is judged on the whole, one
// batch after another, so that memory holds a few bytes a line and one batch. What does not go
// together is gathered, line by line, and refuses the whole.
#pragma once

#include "core/ledger/book.h"
#include "core/ledger/import_whole.h"

#include <cstdint>

namespace ullage::ledger
{

class Book::Import
{
public:
    static constexpr std::size_t kMostKept = ImportFindings::kMostKept;
    using GoOn = ImportWhole::GoOn;

    Import(const Import&) = delete;
    Import& operator=(const Import&) = delete;
    ~Import(); ///< rolls back unless finished

    /// Takes what stands on `line`. An entry that is there with the same content is passed over;
    /// what contradicts is kept for contradictions(). Fails only when the store does: then the
    /// import can only be dropped.
    Result<void> add(Entry entry, int line = 0);
    /// What is filled from another bottle has to stand on both sides; as long as nobody asks, as in
    /// a journal of version 1, one side is enough.
    void askForPairs() { m_brought.pairs = true; }
    /// A line that cannot be read, which contradicts too.
    void unreadable(Error error, int line);

    /// Judges what only the whole can show. Nothing may be added afterwards.
    Result<void> judge(const GoOn& goOn = {});
    /// Commits. The number of entries added. Judges if that was not done; refuses with the first
    /// contradiction.
    Result<int> finish();

    /// Of all that were found those on the first lines, in order of lines.
    [[nodiscard]] std::vector<Contradiction> contradictions() const { return m_findings.all(); }
    [[nodiscard]] int contradictionCount() const { return m_findings.count(); }
    /// Bottles that may have been entered twice, once here and once there. They refuse nothing.
    [[nodiscard]] const std::vector<LikelySame>& likelySame() const { return m_likelySame; }
    /// Entries added so far.
    [[nodiscard]] int added() const { return m_added; }

private:
    friend class Book;
    Import(Book& book, Settlement settled, const std::string& name);
    Result<void> begin();
    Result<void> takeBackOurs();
    Result<void> enter(Entry entry, int line);
    Result<void> enterRetimed(const Entry& entry, int line, chemistry::Instant at);
    Result<void> check(Entry& entry, int line);
    Result<void> taken(const Entry& entry, int line);

    Book* m_book;
    Settlement m_settled;
    Action m_action;
    int m_added = 0;
    bool m_judged = false;
    bool m_open = true;
    Brought m_brought;
    ImportFindings m_findings;
    std::vector<LikelySame> m_likelySame;
};

} // namespace ullage::ledger
