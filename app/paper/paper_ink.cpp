#include "app/paper/paper_ink.h"

#include "app/words/printable_text.h"

#include <QFont>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QTextBoundaryFinder>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

// The longest beginning of a word that is no wider than `width`; one letter at the least.
qsizetype fittingLetters(const QString& word, const QFontMetricsF& metrics, double width)
{
    QTextBoundaryFinder letters(QTextBoundaryFinder::Grapheme, word);
    qsizetype fits = 0;
    for (qsizetype next = letters.toNextBoundary(); next > 0; next = letters.toNextBoundary()) {
        if (fits > 0 && metrics.horizontalAdvance(word.first(next)) > width)
            break;
        fits = next;
    }
    return std::max<qsizetype>(fits, 1);
}

// As many words as there is room for; of one that alone is wider, its beginning.
QString firstOf(const QString& words, const QFontMetricsF& metrics, double most)
{
    qsizetype fits = 0;
    while (fits < words.size()) {
        const qsizetype blank = words.indexOf(u' ', fits + 1);
        const qsizetype end = blank < 0 ? words.size() : blank;
        if (metrics.horizontalAdvance(words.first(end)) > most)
            break;
        fits = end;
    }
    if (fits > 0)
        return words.first(fits);
    const QString word = words.section(u' ', 0, 0);
    return word.first(std::min(fittingLetters(word, metrics, most), word.size()));
}

} // namespace

const QString& houseFamily()
{
    static const QString family = [] {
        const QString inter = QStringLiteral("Inter");
        return QFontDatabase::families().contains(inter)
                   ? inter
                   : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
    }();
    return family;
}

QFont paperFont(const Letters& letters)
{
    QFont font(houseFamily());
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(letters.mm * kUnitsPerMillimetre))));
    font.setBold(letters.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

double textWidth(const QString& text, const Letters& letters)
{
    return QFontMetricsF(paperFont(letters)).horizontalAdvance(text) / kUnitsPerMillimetre;
}

QString seenText(const QString& typed)
{
    constexpr qsizetype kNeverCut = 1'000'000; // nothing that is typed is as long
    return printable(typed, kNeverCut);
}

QStringList wrappedLines(const QString& text, const Letters& letters, double width)
{
    const QFontMetricsF metrics(paperFont(letters));
    QString rest = seenText(text).split(u' ', Qt::SkipEmptyParts).join(u' ');
    QStringList lines;
    while (!rest.isEmpty()) {
        lines << firstOf(rest, metrics, width * kUnitsPerMillimetre);
        rest = afterLine(rest, lines.back());
    }
    return lines;
}

QString firstLine(const QString& words, const Letters& letters, double width)
{
    return firstOf(words, QFontMetricsF(paperFont(letters)), width * kUnitsPerMillimetre);
}

QString afterLine(const QString& words, const QString& line)
{
    const qsizetype next = line.size() + (words.mid(line.size(), 1) == u" " ? 1 : 0);
    return words.sliced(next);
}

void drawLine(QPainter& painter, const QPointF& baseline, const QString& text,
              const Letters& letters)
{
    painter.setFont(paperFont(letters));
    painter.drawText(units(baseline), text);
}

QRectF units(const QRectF& mm) { return {units(mm.topLeft()), mm.size() * kUnitsPerMillimetre}; }

QPointF units(const QPointF& mm) { return mm * kUnitsPerMillimetre; }

void beginPaper(QPainter& painter, const QPagedPaintDevice& device)
{
    constexpr double kMillimetresPerInch = 25.4; // exact
    const QMarginsF margins = device.pageLayout().margins(QPageLayout::Millimeter);
    const bool fullPage = device.pageLayout().mode() == QPageLayout::FullPageMode;
    painter.resetTransform();
    painter.scale(device.logicalDpiX() / kMillimetresPerInch / kUnitsPerMillimetre,
                  device.logicalDpiY() / kMillimetresPerInch / kUnitsPerMillimetre);
    if (!fullPage)
        painter.translate(-margins.left() * kUnitsPerMillimetre,
                          -margins.top() * kUnitsPerMillimetre);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::black);
    painter.setBrush(Qt::NoBrush);
}

} // namespace ullage::app
