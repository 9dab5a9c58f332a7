// One row of the table of entries, read and held against its own columns.
#pragma once

#include "core/ledger/entry.h"
#include "core/store/statement.h"

#include <functional>
#include <optional>

namespace ullage::store
{

struct EntryRow {
    std::int64_t number = 0;
    QByteArray type;
    QByteArray id;
    QByteArray body;
    std::string batch; ///< empty if it is of none
    /// Empty if the line cannot be read.
    std::optional<ledger::Entry> entry;

    /// Selects what EntryRowReader reads.
    static QString select(const char* where);
    /// The error, named after this entry.
    [[nodiscard]] Error about(Error error) const;
};

class EntryRowReader
{
public:
    /// `trusted`: the lines were read strictly once and hashes vouch for them.
    explicit EntryRowReader(bool trusted) : m_trusted(trusted) {}
    /// What is wrong with the row by itself goes to `found`.
    EntryRow read(const Rows& row, const std::function<void(Error)>& found) const;

private:
    bool m_trusted;
};

} // namespace ullage::store
