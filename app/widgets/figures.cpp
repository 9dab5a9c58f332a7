#include "app/widgets/figures.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

double digitAdvance(const QFontMetricsF& metrics)
{
    double widest = 0;
    for (char digit = '0'; digit <= '9'; ++digit)
        widest = std::max(widest, metrics.horizontalAdvance(QLatin1Char(digit)));
    return widest;
}

// Calls `place` with each piece of the text (one digit, or a run without digits), its left edge and
// its width, and returns the width of the whole.
template <class Place>
double layOut(const QFontMetricsF& metrics, const QString& text, Place place)
{
    const double cell = digitAdvance(metrics);
    double x = 0;
    for (qsizetype i = 0; i < text.size();) {
        const bool digit = text[i].isDigit();
        qsizetype end = i + 1;
        while (!digit && end < text.size() && !text[end].isDigit())
            ++end;
        const QString piece = text.mid(i, end - i);
        const double own = metrics.horizontalAdvance(piece);
        const double width = digit ? cell : own;
        place(piece, x + (width - own) / 2);
        x += width;
        i = end;
    }
    return x;
}

} // namespace

double figuresWidth(const QFont& font, const QString& text)
{
    return layOut(QFontMetricsF(font), text, [](const QString&, double) {});
}

void drawFigures(QPainter& painter, const QRectF& rect, Qt::Alignment alignment,
                 const QString& text)
{
    const QFontMetricsF metrics(painter.font());
    const double width = layOut(metrics, text, [](const QString&, double) {});
    double left = rect.left();
    if (alignment & Qt::AlignRight)
        left = rect.right() - width;
    else if (alignment & Qt::AlignHCenter)
        left = rect.center().x() - width / 2;
    double baseline = rect.top() + metrics.ascent();
    if (alignment & Qt::AlignVCenter)
        baseline = rect.center().y() + (metrics.ascent() - metrics.descent()) / 2;
    else if (alignment & Qt::AlignBottom)
        baseline = rect.bottom() - metrics.descent();
    layOut(metrics, text, [&](const QString& piece, double x) {
        painter.drawText(QPointF(left + x, baseline), piece);
    });
}

} // namespace ullage::app
