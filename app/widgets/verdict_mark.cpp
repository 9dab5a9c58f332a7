#include "app/widgets/verdict_mark.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/verdict_words.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ullage::app
{

namespace
{

constexpr double kMark = 14; // the side of the shapes as drawn below

QPainterPath octagon(double radius)
{
    QPolygonF corners;
    for (int i = 0; i < 8; ++i) {
        const double angle = std::numbers::pi * (2 * i + 1) / 8;
        corners << QPointF(radius * std::cos(angle), radius * std::sin(angle));
    }
    QPainterPath path;
    path.addPolygon(corners);
    path.closeSubpath();
    return path;
}

void paintSign(QPainter& painter, const QString& sign, double baseline, double size)
{
    QFont font = Theme::font(TextRole::Strong);
    font.setPixelSize(static_cast<int>(size * 8)); // drawn at an eighth: hinting must not move it
    font.setWeight(QFont::ExtraBold);
    QPainterPath glyph;
    glyph.addText(0, 0, font, sign);
    const QRectF box = glyph.boundingRect();
    painter.save();
    painter.translate(0, baseline);
    painter.scale(0.125, 0.125);
    painter.translate(-box.center().x(), 0);
    painter.fillPath(glyph, painter.pen().color());
    painter.restore();
}

} // namespace

QColor verdictColour(VerdictLook look)
{
    switch (look) {
    case VerdictLook::Good:
        return colours().green;
    case VerdictLook::NearItsEnd:
        return colours().amber;
    case VerdictLook::TestFirst:
        return colours().blue;
    case VerdictLook::Discard:
        return colours().red;
    case VerdictLook::Resting:
        return colours().quiet;
    }
    return {};
}

void paintVerdictShape(QPainter& painter, const QRectF& rect, VerdictLook look)
{
    const double side = std::min(rect.width(), rect.height());
    const QColor sign = colours().card;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(rect.center());
    painter.scale(side / kMark, side / kMark);
    painter.setPen(Qt::NoPen);
    painter.setBrush(verdictColour(look));
    QPen stroke(sign, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    switch (look) {
    case VerdictLook::Good: {
        painter.drawEllipse(QPointF(0, 0), 7, 7);
        painter.setPen(stroke);
        painter.setBrush(Qt::NoBrush);
        const QPointF tick[]{{-3.2, 0.2}, {-0.9, 2.7}, {3.3, -2.3}};
        painter.drawPolyline(tick, 3);
        break;
    }
    case VerdictLook::NearItsEnd: {
        QPainterPath triangle;
        triangle.moveTo(0, -6.2);
        triangle.lineTo(6.9, 5.9);
        triangle.lineTo(-6.9, 5.9);
        triangle.closeSubpath();
        painter.setPen(QPen(verdictColour(look), 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPath(triangle);
        painter.setPen(stroke);
        painter.drawLine(QPointF(0, -2.2), QPointF(0, 1.6));
        painter.drawPoint(QPointF(0, 4.4));
        break;
    }
    case VerdictLook::TestFirst:
        painter.drawRoundedRect(QRectF(-7, -7, 14, 14), 3.2, 3.2);
        painter.setPen(sign);
        paintSign(painter, QStringLiteral("?"), 4.0, 11);
        break;
    case VerdictLook::Discard:
        painter.drawPath(octagon(7.5));
        painter.setPen(stroke);
        painter.drawLine(QPointF(-2.4, -2.4), QPointF(2.4, 2.4));
        painter.drawLine(QPointF(-2.4, 2.4), QPointF(2.4, -2.4));
        break;
    case VerdictLook::Resting: {
        const QPointF glass[]{{-4.6, -5.6}, {4.6, -5.6}, {0.5, 0},    {4.6, 5.6},
                              {-4.6, 5.6},  {-0.5, 0},   {-4.6, -5.6}};
        painter.setPen(QPen(verdictColour(look), 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolygon(glass, 7);
        painter.setPen(QPen(sign, 1.4, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(QPointF(-2.2, -4.2), QPointF(2.2, -4.2)); // some of it has run through
        break;
    }
    }
    painter.restore();
}

double paintMarkedText(QPainter& painter, const QRectF& rect, VerdictLook look, const QString& text)
{
    const QFontMetricsF metrics(painter.font());
    const double mark = std::round(metrics.ascent() * 1.02);
    paintVerdictShape(painter, QRectF(rect.left(), rect.center().y() - mark / 2, mark, mark), look);
    painter.setPen(verdictColour(look));
    const QRectF words = rect.adjusted(mark + kVerdictGap, 0, 0, 0);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                     oneLine(text, metrics, words.width()));
    return mark + kVerdictGap + metrics.horizontalAdvance(text);
}

double paintVerdict(QPainter& painter, const QRectF& rect, VerdictLook look)
{
    return paintMarkedText(painter, rect, look, verdictWord(look));
}

QIcon verdictIcon(VerdictLook look)
{
    QIcon icon;
    for (const int side : {16, 32, 48}) {
        QPixmap pixmap(side, side);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        const double inset = side / 16.0;
        paintVerdictShape(painter, QRectF(0, 0, side, side).adjusted(inset, inset, -inset, -inset),
                          look);
        painter.end();
        icon.addPixmap(pixmap);
    }
    return icon;
}

} // namespace ullage::app
