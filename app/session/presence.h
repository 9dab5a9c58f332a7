// Who else has the open book open: other windows and commands on this machine by the system's table
// of locks, other machines by records in the book's notes.
//
// Records are kept only where the table does not tell everything: in a book that works without the
// log (a folder on a network), or where the system has no such table. Each window renews its own
// and removes it when it goes; a record that no longer changes is nobody's. Clocks of different
// machines are never compared.
#pragma once

#include "core/store/lock_table.h"
#include "core/store/sql_store.h"

#include <QString>
#include <QStringList>

#include <chrono>
#include <map>

namespace ullage::app
{

/// Used on the thread of its store. What cannot be read or written just now counts as nobody, and
/// is tried again at the next look.
class Presence
{
public:
    /// Steady time, for how long a record has not changed.
    using Steady = std::function<std::chrono::milliseconds()>;

    /// `store` outlives it. `id` names this window's record.
    Presence(store::SqlStore& store, QString id, store::LockTableReader locks, Steady steady);
    /// Removes the record.
    ~Presence();
    Presence(const Presence&) = delete;
    Presence& operator=(const Presence&) = delete;

    /// Looks, and renews the record if it is time to (kRenewal) and nobody else is writing. Whether
    /// anyone else has the book open.
    bool lookAround();
    /// Who, as far as it is known: machines by name, this one's by the program's number.
    [[nodiscard]] const QStringList& others() const { return m_others; }

    static constexpr std::chrono::seconds kRenewal{30};
    /// A record unchanged for so long is nobody's: three renewals and a bit.
    static constexpr std::chrono::seconds kPatience{100};

private:
    struct Record {
        QString text;
        std::chrono::milliseconds changed{};
    };
    void renew();
    void readRecords();

    store::SqlStore& m_store;
    QString m_key;
    store::LockTableReader m_locks;
    Steady m_steady;
    bool m_recorded = false;
    int m_beats = 0;
    std::chrono::milliseconds m_renewed{};
    std::map<QString, Record> m_records; ///< of others, as last seen
    QStringList m_others;
};

} // namespace ullage::app
