#include "app/bench/run_file.h"

#include "app/bench/run_codec.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#if defined(Q_OS_UNIX)
#include <fcntl.h>
#include <unistd.h>
#endif

namespace ullage::app
{

namespace
{

constexpr qint64 kMost = 4 * 1024 * 1024; // a run takes some kilobytes

tl::unexpected<Error> failed(const QString& path, const QString& why)
{
    return refuse(
        {.code = ErrorCode::StoreFailed, .text = why.toStdString(), .file = path.toStdString()});
}

// A removed or renamed file is only certain on disk once its folder is.
void syncFolder(const QString& path)
{
#if defined(Q_OS_UNIX)
    const int folder =
        ::open(QFile::encodeName(QFileInfo(path).absolutePath()).constData(), O_RDONLY | O_CLOEXEC);
    if (folder >= 0) {
        ::fsync(folder);
        ::close(folder);
    }
#else
    Q_UNUSED(path);
#endif
}

} // namespace

Result<void> RunFile::save(const ledger::RunState& state) const
{
    QSaveFile file(m_path);
    const QByteArray json = runToJson(state);
    if (!file.open(QIODevice::WriteOnly) || file.write(json) != json.size() || !file.commit())
        return failed(m_path, file.errorString());
    syncFolder(m_path);
    return {};
}

Result<std::optional<ledger::RunState>> RunFile::load() const
{
    QFile file(m_path);
    if (!file.exists())
        return std::optional<ledger::RunState>{};
    if (!file.open(QIODevice::ReadOnly))
        return failed(m_path, file.errorString());
    if (file.size() > kMost)
        return refuse({.code = ErrorCode::TooLong,
                       .high = static_cast<double>(kMost),
                       .file = m_path.toStdString()});
    auto state = runFromJson(file.readAll());
    if (!state) {
        Error error = state.error();
        error.file = m_path.toStdString();
        return refuse(std::move(error));
    }
    return std::optional(std::move(*state));
}

bool RunFile::remove() const
{
    QFile::remove(m_path);
    syncFolder(m_path);
    return !QFile::exists(m_path);
}

Result<QString> RunFile::putAside() const
{
    for (int number = 1; number < 1000; ++number) {
        const QString aside =
            QStringLiteral("%1.unreadable-%2").arg(m_path, QString::number(number));
        if (!QFile::exists(aside)) {
            QFile file(m_path);
            if (!file.rename(aside))
                return failed(m_path, file.errorString());
            return aside;
        }
    }
    return failed(m_path, QString());
}

} // namespace ullage::app
