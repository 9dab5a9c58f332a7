#include "app/session/whole_file.h"

#include "core/store/file_identity.h"
#include "core/store/file_moves.h"

#include <QSaveFile>

namespace ullage::app
{

Result<void> writeWhole(const QString& file, const QByteArray& content)
{
    if (store::isOpenHere(file))
        return refuse({.code = ErrorCode::BookItself, .file = file.toStdString()});
    QSaveFile out(file);
    if (!out.open(QIODevice::WriteOnly) || out.write(content) != content.size() || !out.commit())
        return tl::unexpected(store::fileFailure(file, out.errorString()));
    return store::flushFolderOf(file);
}

} // namespace ullage::app
