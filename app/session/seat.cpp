#include "app/session/seat.h"

#include <QCryptographicHash>
#include <QDir>
#include <QUuid>

namespace ullage::app
{

namespace
{

constexpr int kMost = 64; // windows on one book

} // namespace

Seat::Seat(const QString& folder, const QString& machine, const QString& path)
{
    const QString book = QString::fromLatin1(
        QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha256).toHex().first(16));
    const bool room = QDir().mkpath(folder);
    for (int number = 1; room && number <= kMost; ++number) {
        auto file = std::make_unique<QLockFile>(
            QDir(folder).filePath(QStringLiteral("%1-%2.lock").arg(book).arg(number)));
        file->setStaleLockTime(0); // only a program that is gone makes room
        if (file->tryLock(0)) {
            m_taken = std::move(file);
            m_name = QStringLiteral("%1/%2").arg(machine).arg(number);
            return;
        }
    }
    m_name = machine + u'/' + QUuid::createUuid().toString(QUuid::WithoutBraces);
}

} // namespace ullage::app
