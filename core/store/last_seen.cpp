#include "core/store/last_seen.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUuid>

#include <atomic>
#include <filesystem>

namespace ullage::store
{

namespace
{

struct Seen {
    ChainHead head;
    QString path;
};

// Two lines: the head, and where the book stood.
std::optional<Seen> readSeen(const QString& name)
{
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
        return std::nullopt;
    }
    const QByteArray text = file.readAll();
    const qsizetype end = text.indexOf('\n');
    const auto head = headFromText(text.left(std::max<qsizetype>(end, 0)));
    if (!head) {
        return std::nullopt;
    }
    return Seen{*head, QString::fromUtf8(text.mid(end + 1)).chopped(text.endsWith('\n') ? 1 : 0)};
}

bool isId(const QByteArray& bookId)
{
    return !QUuid::fromString(QString::fromLatin1(bookId)).isNull() && !bookId.contains('/');
}

} // namespace

LastSeen::LastSeen(QString folder, const QString& path)
    : m_folder(std::move(folder)), m_path(QFileInfo(path).canonicalFilePath())
{
}

QString LastSeen::fileOf(const QByteArray& bookId) const
{
    constexpr qsizetype kDigits = 16;
    const QByteArray place =
        QCryptographicHash::hash(m_path.toUtf8(), QCryptographicHash::Sha256).toHex().left(kDigits);
    return QDir(m_folder).filePath(QString::fromLatin1(bookId + '-' + place));
}

std::optional<ChainHead> LastSeen::of(const QByteArray& bookId) const
{
    if (m_folder.isEmpty() || !isId(bookId)) {
        return std::nullopt;
    }
    if (const auto here = readSeen(fileOf(bookId))) {
        return here->head;
    }
    std::optional<ChainHead> before;
    const QDir folder(m_folder);
    const auto names = folder.entryList({QString::fromLatin1(bookId) + QLatin1String("-*")});
    for (const QString& name : names) {
        const auto there = readSeen(folder.filePath(name));
        if (there && QFileInfo::exists(there->path)) {
            return std::nullopt;
        }
        if (there && (!before || there->head.entry > before->entry)) {
            before = there->head;
        }
    }
    return before;
}

void LastSeen::forget(const QByteArray& bookId) const
{
    if (!m_folder.isEmpty() && isId(bookId)) {
        QFile::remove(fileOf(bookId));
    }
}

// Written beside and moved over, so that it is never half a file. It is not synced: what a power
// cut takes of it is only the knowledge of the last few entries.
void LastSeen::note(const QByteArray& bookId, const ChainHead& head) const
{
    if (m_folder.isEmpty() || !isId(bookId) || !QDir().mkpath(m_folder)) {
        return;
    }
    static std::atomic<int> count{0};
    const QString name = fileOf(bookId);
    const QString part = QStringLiteral("%1.part-%2-%3")
                             .arg(name)
                             .arg(QCoreApplication::applicationPid())
                             .arg(++count);
    const QByteArray text = headText(head) + '\n' + m_path.toUtf8() + '\n';
    QFile file(part);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(text) == text.size();
    file.close();
    std::error_code failure;
    if (written && file.error() == QFileDevice::NoError) {
        std::filesystem::rename(part.toStdString(), name.toStdString(), failure);
    }
    if (!written || failure) {
        QFile::remove(part);
    }
}

} // namespace ullage::store
