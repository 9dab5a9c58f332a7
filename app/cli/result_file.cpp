#include "app/cli/result_file.h"

#include "core/store/file_moves.h"

#include <QCoreApplication>
#include <QSaveFile>

namespace ullage::app
{

namespace
{

struct ResultWords {
    Q_DECLARE_TR_FUNCTIONS(CommandLine)
};

const QString kStandardOutput = QStringLiteral("-");

Error resultFailure(const QString& name, const QString& message)
{
    return {.code = ErrorCode::FileFailed,
            .field = "FILE",
            .text = (name + QStringLiteral(": ") + message).toStdString()};
}

} // namespace

std::optional<int> refusedName(const Call& call, const QString& name, const QString& ending)
{
    if (name != kStandardOutput && !name.endsWith(ending, Qt::CaseInsensitive))
        return call.wrongUsage(ResultWords::tr("“%1” does not end in %2.").arg(name, ending));
    if (const auto fine = call.isNotTheBook(name); !fine)
        return call.refused(fine.error());
    return std::nullopt;
}

int deliver(const Call& call, const QString& name, const QByteArray& bytes)
{
    if (name == kStandardOutput) {
        call.print(bytes);
        return kDone;
    }
    QSaveFile file(name); // somebody may read it meanwhile
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return call.refused(resultFailure(name, file.errorString()));
    if (const auto lasting = store::flushFolderOf(name); !lasting)
        return call.refused(lasting.error());
    return kDone;
}

} // namespace ullage::app
