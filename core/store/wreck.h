// What can still be read of a damaged book.
//
// The file itself is never written: its pages are brought over into a file of our own, and read
// there entry by entry around whatever cannot be read.
#pragma once

#include "core/ledger/entry.h"
#include "core/store/connection.h"
#include "core/store/digest.h"

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace ullage::store
{

/// A row of table entry that reads back as what its columns say and, where the entry before it can
/// be read, as what was entered.
struct StoredEntry {
    std::int64_t number = 0; ///< in order of entry, from 1
    std::int64_t action = 0;
    ledger::Entry entry;
};

struct StoredAction {
    std::int64_t id = 0;
    std::int64_t mode = 0;
    std::string what;
    std::string subject;
    std::optional<std::int64_t> of;
    std::optional<std::string> seat;
};

class Rows;

class Wreck
{
public:
    /// Brings the pages of the book at `path`, log included, into the file `scratch`, which is
    /// empty and ours, and opens that. What is wrong with the file as a whole if not even its first
    /// page can be read.
    static Result<std::unique_ptr<Wreck>> open(const QString& path, const QString& scratch);

    /// Number of the last entry that anything in the file still tells of.
    [[nodiscard]] std::int64_t last() const { return m_last; }

    /// Goes through the numbers from 1 to last() in order: what stands there, or nothing where
    /// there is no such row or it cannot be read.
    Result<void>
    forEach(const std::function<Result<void>(std::int64_t number, StoredEntry* found)>& take);
    /// One entry, if it can be read.
    std::optional<StoredEntry> entry(std::int64_t number);
    /// What the indexes still say about entries whose rows are lost: number → type and id.
    struct Name {
        QByteArray type;
        QByteArray id;
        friend bool operator==(const Name&, const Name&) = default;
    };
    /// What the row itself says, if it can be read; the rest of it is not looked at.
    std::optional<Name> nameOf(std::int64_t number);
    const std::map<std::int64_t, Name>& named(const std::vector<std::int64_t>& numbers);

    std::optional<StoredAction> action(std::int64_t id);
    /// Every note that can be read.
    std::vector<std::pair<QByteArray, QByteArray>> notes();

private:
    explicit Wreck(std::unique_ptr<Connection> file);
    void findLast();
    struct Link;
    [[nodiscard]] QString columns() const;
    bool fits(const Rows& row, Link& before);
    [[nodiscard]] bool wasChanged(std::int64_t number);

    std::unique_ptr<Connection> m_file;
    bool m_chained = false; ///< entries have hashes
    bool m_seated = false;  ///< actions have seats
    LineHasher m_hasher;
    QString m_index; ///< the one over type and id
    std::int64_t m_last = 0;
    std::map<std::int64_t, Name> m_named;
};

} // namespace ullage::store
