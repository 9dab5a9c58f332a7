#include "app/session/starter.h"

#include "core/store/journal_reader.h"

#include <QFile>

namespace ullage::app
{

Result<int> enterJournal(ledger::Book& book, store::SqlStore& store, const QString& file)
{
    QFile journal(file);
    if (!journal.open(QIODevice::ReadOnly)) {
        Error error{.code = ErrorCode::FileFailed, .text = journal.errorString().toStdString()};
        error.file = file.toStdString();
        return tl::unexpected(error);
    }
    const auto entered = store::importJournal(book, store, journal, file);
    return entered ? Result<int>(entered->added) : tl::unexpected(entered.error());
}

} // namespace ullage::app
