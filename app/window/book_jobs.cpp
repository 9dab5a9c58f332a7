#include "app/window/book_jobs.h"

#include "core/store/integrity.h"
#include "core/store/journal_writer.h"
#include "core/store/restore.h"
#include "core/store/sql_store.h"

#include <QSaveFile>

namespace ullage::app
{

namespace
{

Error fileFailure(const QString& file, const QString& message)
{
    Error error{.code = ErrorCode::FileFailed, .text = message.toStdString()};
    error.file = file.toStdString();
    return error;
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
            return tl::unexpected(fileFailure(journal, file.errorString()));
        const bool table = journal.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive);
        const auto written =
            table ? store::exportEventsCsv(**store, file) : store::exportJournal(**store, file);
        if (!written)
            return tl::unexpected(written.error());
        if (!file.commit())
            return tl::unexpected(fileFailure(journal, file.errorString()));
        return *written;
    };
}

BookJob copyJob(const QString& path, const QString& target)
{
    return [=]() -> Result<int> {
        auto store = store::SqlStore::open(path); // SQLite copies by writing
        if (!store)
            return tl::unexpected(store.error());
        return store::copyVerified((*store)->connection(), target).map([] { return 1; });
    };
}

BookJob restoreJob(const QString& backup, const QString& path, chemistry::Instant now,
                   std::shared_ptr<QString> kept)
{
    return [=]() -> Result<int> {
        auto restored = store::restore(backup, path, true, now);
        if (!restored)
            return tl::unexpected(restored.error());
        *kept = restored->kept;
        return 1;
    };
}

BookJob checkJob(const QString& path)
{
    return [=]() -> Result<int> {
        auto store = store::SqlStore::open(path, {.access = store::Access::Read});
        if (!store)
            return tl::unexpected(store.error());
        const auto checked = store::checkBook(**store);
        if (!checked)
            return tl::unexpected(checked.error());
        if (!checked->findings.empty())
            return tl::unexpected(checked->findings.front());
        return checked->batches;
    };
}

} // namespace ullage::app
