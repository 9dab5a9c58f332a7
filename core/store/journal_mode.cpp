#include "core/store/journal_mode.h"

#include <QDeadlineTimer>
#include <QThread>

namespace ullage::store
{

namespace
{

const QString kRollback = QStringLiteral("truncate");

Result<bool> keepsRollback(Connection& connection)
{
    const auto table = connection.number(QStringLiteral(
        "SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name = 'note'"));
    if (!table) {
        return tl::unexpected(table.error());
    }
    if (*table == 0) {
        return false;
    }
    return connection
        .number(QStringLiteral("SELECT count(*) FROM note WHERE key = %1 AND value = %2")
                    .arg(sqlQuoted(kJournalNote), sqlQuoted(kRollback)))
        .map([](std::int64_t found) { return found > 0; });
}

// Changing takes the book for itself for a moment and does not wait for it by itself.
Result<QString> changed(Connection& connection, const QString& wanted, int busyTimeoutMs)
{
    constexpr int kPauseMs = 20;
    const QDeadlineTimer deadline(busyTimeoutMs);
    while (true) {
        auto mode = connection.text(QStringLiteral("PRAGMA journal_mode = %1").arg(wanted));
        const bool othersAtIt = mode ? *mode != wanted : mode.error().code == ErrorCode::Busy;
        if (!othersAtIt || deadline.hasExpired()) {
            return mode;
        }
        QThread::msleep(kPauseMs);
    }
}

} // namespace

Result<JournalMode> useJournal(Connection& connection, Volume place, int busyTimeoutMs)
{
    const auto kept = keepsRollback(connection);
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    const bool rollback = *kept || place == Volume::Network;
    const QString wanted = rollback ? kRollback : QStringLiteral("wal");
    const auto mode = changed(connection, wanted, busyTimeoutMs);
    if (!mode) {
        return tl::unexpected(mode.error());
    }
    if (*mode != wanted) {
        return refuse({.code = ErrorCode::Busy, .text = mode->toStdString()});
    }
    return rollback ? JournalMode::Rollback : JournalMode::Log;
}

Result<void> keepJournal(Connection& connection, JournalMode mode)
{
    if (mode == JournalMode::Log) {
        return {};
    }
    const auto kept = keepsRollback(connection);
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    return *kept ? Result<void>{}
                 : connection.run(QStringLiteral("INSERT INTO note (key, value) VALUES (%1, %2) "
                                                 "ON CONFLICT (key) DO UPDATE SET value = "
                                                 "excluded.value")
                                      .arg(sqlQuoted(kJournalNote), sqlQuoted(kRollback)));
}

} // namespace ullage::store
