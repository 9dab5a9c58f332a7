// A screen of a size of one's own for programs that run without one. To be called before the
// application is made.
#pragma once

#include <QByteArray>
#include <QFile>
#include <QRegularExpression>
#include <QSize>
#include <QString>

namespace ullage::app
{

/// Of "1024x700"; empty for anything else.
inline QSize sizeOf(const QString& text)
{
    const auto found = QRegularExpression(QStringLiteral("^(\\d{3,4})x(\\d{3,4})$")).match(text);
    return found.hasMatch() ? QSize(found.captured(1).toInt(), found.captured(2).toInt()) : QSize();
}

/// `folder` lives as long as the application.
inline void useOffscreen(QSize size, const QString& folder)
{
    const QString path = folder + QStringLiteral("/screen.json");
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        qFatal("no place for the description of a screen");
    file.write(QStringLiteral(R"({"screens":[{"name":"one","x":0,"y":0,"width":%1,"height":%2,)"
                              R"("logicalDpi":96,"logicalBaseDpi":96,"dpr":1}]})")
                   .arg(size.width())
                   .arg(size.height())
                   .toUtf8());
    file.close();
    qputenv("QT_QPA_PLATFORM", "offscreen:configfile=" + path.toLocal8Bit());
}

} // namespace ullage::app
