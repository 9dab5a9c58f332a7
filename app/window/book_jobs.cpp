#include "app/window/book_jobs.h"

#include "core/store/backup.h"
#include "core/store/file_moves.h"
#include "core/store/journal_writer.h"
#include "core/store/restore.h"
#include "core/store/sql_store.h"

#include <QSaveFile>

namespace ullage::app
{

namespace
{

Result<store::BookCheck> checked(const QString& path, const QString& lastSeen,
                                 const store::Watch& watch)
{
    auto store = store::SqlStore::open(path, {.access = store::Access::Read, .lastSeen = lastSeen});
    if (!store)
        return tl::unexpected(store.error());
    return store::checkBook(**store, watch);
}

} // namespace

BookJob exportJob(const QString& path, const QString& journal)
{
    return [=]() -> Result<int> {
        auto store = store::SqlStore::open(path, {.access = store::Access::Read});
        if (!store)
            return tl::unexpected(store.error());
        QSaveFile file(journal);
        if (!file.open(QIODevice::WriteOnly))
            return tl::unexpected(store::fileFailure(journal, file.errorString()));
        const bool table = journal.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive);
        const auto written =
            table ? store::exportEventsCsv(**store, file) : store::exportJournal(**store, file);
        if (!written)
            return tl::unexpected(written.error());
        if (!file.commit())
            return tl::unexpected(store::fileFailure(journal, file.errorString()));
        if (const auto lasting = store::flushFolderOf(journal); !lasting)
            return tl::unexpected(lasting.error());
        return *written;
    };
}

BookJob copyJob(const QString& path, const QString& target, chemistry::Instant now,
                std::shared_ptr<std::optional<Error>> fault)
{
    return [=]() -> Result<int> {
        const auto made = store::copyTo(path, target, now);
        if (!made)
            return tl::unexpected(made.error());
        *fault = made->fault;
        return 1;
    };
}

BookJob restoreJob(const QString& copy, const QString& path, chemistry::Instant now,
                   std::shared_ptr<store::Restored> done, const QString& lastSeen)
{
    return [=]() -> Result<int> {
        auto restored = store::restore(copy, path, true, now, {}, lastSeen);
        if (!restored)
            return tl::unexpected(restored.error());
        *done = *restored;
        return static_cast<int>(done->entries);
    };
}

BookJob salvageJob(const QString& damaged, const QString& fresh, const QStringList& folders,
                   chemistry::Instant now, std::shared_ptr<store::Salvaged> done)
{
    return [=]() -> Result<int> {
        const auto copies = store::copies(damaged, store::readCopy(damaged).bookId, folders);
        auto salvaged = store::salvage(damaged, fresh, copies, now);
        if (!salvaged)
            return tl::unexpected(salvaged.error());
        *done = std::move(*salvaged);
        return static_cast<int>(done->entries);
    };
}

BookJob checkJob(const QString& path, const QString& lastSeen,
                 std::shared_ptr<store::BookCheck> done)
{
    return [=]() -> Result<int> {
        auto check = checked(path, lastSeen, {});
        if (!check)
            return tl::unexpected(check.error());
        *done = std::move(*check);
        return static_cast<int>(done->batches);
    };
}

Result<void> checkWhole(const QString& path, const QString& lastSeen, const store::Watch& watch)
{
    const auto check = checked(path, lastSeen, watch);
    if (!check)
        return tl::unexpected(check.error());
    return check->findings.empty() ? Result<void>{} : tl::unexpected(check->findings.front());
}

} // namespace ullage::app
