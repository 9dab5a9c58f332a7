#include "tests/app/paper/paper_reader.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

namespace ullage::app::testing
{

namespace
{

constexpr int kPatience = 600'000; // ms: a loaded machine may render for minutes

bool isDark(QRgb colour) { return qGray(colour) < 128; }

} // namespace

QImage rendered(const QByteArray& pdf, int page, int dpi)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath("it.pdf"));
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
        return {};
    file.close();
    const QString number = QString::number(page + 1);
    QProcess renderer;
    renderer.start(QStringLiteral(ULLAGE_PDFTOPPM),
                   {"-r", QString::number(dpi), "-f", number, "-l", number, "-singlefile", "-png",
                    file.fileName(), folder.filePath("page")});
    if (!renderer.waitForFinished(kPatience) || renderer.exitCode() != 0)
        return {};
    return QImage(folder.filePath("page.png"));
}

QString decoded(const QImage& picture)
{
    const QTemporaryDir folder;
    const QString name = folder.filePath("code.png");
    if (!picture.save(name))
        return {};
    QProcess reader;
    reader.start(QStringLiteral(ULLAGE_ZBARIMG),
                 {"--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", name});
    if (!reader.waitForFinished(kPatience))
        return {};
    QString text = QString::fromUtf8(reader.readAllStandardOutput());
    if (text.endsWith(u'\n'))
        text.chop(1);
    return text;
}

QImage part(const QImage& page, const QRectF& mm, int dpi)
{
    const double dots = dpi / 25.4;
    return page.copy(QRectF(mm.topLeft() * dots, mm.size() * dots).toRect());
}

QRect darkIn(const QImage& picture)
{
    QRect dark;
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x) {
            if (isDark(picture.pixel(x, y)))
                dark |= QRect(x, y, 1, 1);
        }
    }
    return dark;
}

double toMillimetres(double pixels, int dpi) { return pixels * 25.4 / dpi; }

} // namespace ullage::app::testing
