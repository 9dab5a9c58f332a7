// Many entries with the ids they have, in one transaction: all or nothing.
//
// Lines come in any order; whether events are possible for their batch is judged on the whole, one
// batch after another, so that memory holds a few bytes a line and one batch. What does not go
// together is gathered, line by line, and refuses the whole.
#pragma once

#include "core/ledger/book.h"
#include "core/ledger/import_judge.h"

#include <cstdint>
#include <deque>

namespace ullage::ledger
{

class Book::Import
{
public:
    /// Contradictions that are kept; further ones are only counted.
    static constexpr std::size_t kMostKept = 500;
    /// Asked now and then with the number of batches judged and of all to be judged; false ends the
    /// judging with Cancelled.
    using GoOn = std::function<bool(std::size_t done, std::size_t all)>;

    Import(const Import&) = delete;
    Import& operator=(const Import&) = delete;
    ~Import(); ///< rolls back unless finished

    /// Takes what stands on `line`. An entry that is there with the same content is passed over;
    /// what contradicts is kept for contradictions(). Fails only when the store does: then the
    /// import can only be dropped.
    Result<void> add(Entry entry, int line = 0);
    /// What is filled from another bottle has to stand on both sides; as long as nobody asks, as in
    /// a journal of version 1, one side is enough.
    void askForPairs() { m_pairs = true; }
    /// A line that cannot be read, which contradicts too.
    void unreadable(Error error, int line);

    /// Judges what only the whole can show. Nothing may be added afterwards.
    Result<void> judge(const GoOn& goOn = {});
    /// Commits. The number of entries added. Judges if that was not done; refuses with the first
    /// contradiction.
    Result<int> finish();

    /// Of all that were found those on the first lines, in order of lines.
    [[nodiscard]] std::vector<Contradiction> contradictions() const;
    [[nodiscard]] int contradictionCount() const { return m_count; }
    /// Bottles that may have been entered twice, once here and once there. They refuse nothing.
    [[nodiscard]] const std::vector<LikelySame>& likelySame() const { return m_likelySame; }
    /// Entries added so far.
    [[nodiscard]] int added() const { return m_added; }

private:
    friend class Book;
    /// A line that names a film or a run which was not there yet.
    struct Waiting {
        Entry entry;
        int line;
        const formulary::FieldDescription* field;
        std::string id;
    };
    /// Lines that name another batch.
    struct NamesBatch {
        Entry first;
        int line;
        const formulary::FieldDescription* field;
        int count;
    };

    Import(Book& book, Settlement settled);
    Result<void> begin();
    Result<void> takeBackOurs();
    Result<void> enter(Entry entry, int line);
    Result<void> enterRetimed(const Entry& entry, int line, chemistry::Instant at);
    Result<void> check(Entry& entry, int line);
    void contradicts(Contradiction contradiction);
    Result<void> taken(const Entry& entry, int line);
    Result<void> judgeReferences();
    Result<void> judgeBatch(const std::string& id, int brought);
    Result<std::vector<Event>> withPartners(const std::string& id,
                                            const std::vector<Event>& entered);
    Result<void> keepState(const std::string& id, const Batch* batch);
    Result<void> judgePartners();
    Result<void> findLikelySame();
    [[nodiscard]] int lineOf(const std::string& id) const;

    Book* m_book;
    Settlement m_settled;
    std::int64_t m_action = 0;
    int m_added = 0;
    int m_count = 0;
    bool m_bookHadEntries = false;
    bool m_judged = false;
    bool m_open = true;
    bool m_pairs = false;
    std::int64_t m_had = 0;                             ///< number of the last entry before
    std::multimap<int, Contradiction> m_contradictions; ///< by line
    std::map<std::string, int> m_batches;               ///< touched → events brought
    std::set<std::string> m_newBatches;
    std::set<std::string> m_partners; ///< of batches touched, filled from them or into them
    std::set<std::string> m_unjudged; ///< batches that came to nothing, each told once
    std::deque<std::pair<std::size_t, int>> m_lines; ///< hash of an event's id → its line
    std::vector<Waiting> m_waiting;
    std::map<std::string, NamesBatch> m_named; ///< batches named by other batches' events
    std::vector<LikelySame> m_likelySame;
};

} // namespace ullage::ledger
