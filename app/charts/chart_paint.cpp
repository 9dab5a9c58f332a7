#include "app/charts/chart_paint.h"

#include "app/widgets/hatch.h"
#include "app/widgets/theme.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

QColor chartColour(ChartInk ink)
{
    const Colours& c = colours();
    switch (ink) {
    case ChartInk::Films:
        return c.brown;
    case ChartInk::Standing:
        return c.blue;
    case ChartInk::Age:
        return c.grey;
    case ChartInk::Air:
        return c.hatch;
    case ChartInk::Fan:
        return c.fan;
    case ChartInk::Next:
        return c.honey;
    case ChartInk::ToCome:
        return c.sand;
    case ChartInk::Limit:
        return c.red;
    case ChartInk::Quiet:
        return c.quiet;
    }
    return c.ink;
}

void paintSwatch(QPainter& painter, const QRectF& rect, SeriesKind kind, ChartInk ink)
{
    const QColor colour = chartColour(ink);
    const QPointF middle = rect.center();
    const QRectF box(rect.left(), middle.y() - 5.5, rect.width(), 11);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    switch (kind) {
    case SeriesKind::Line:
    case SeriesKind::Step:
    case SeriesKind::Dashed: {
        QPen pen(colour, 3, kind == SeriesKind::Dashed ? Qt::CustomDashLine : Qt::SolidLine,
                 kind == SeriesKind::Dashed ? Qt::FlatCap : Qt::RoundCap);
        if (kind == SeriesKind::Dashed)
            pen.setDashPattern({2, 1.2});
        painter.setPen(pen);
        painter.drawLine(QPointF(rect.left() + 1.5, middle.y()),
                         QPointF(rect.right() - 1.5, middle.y()));
        break;
    }
    case SeriesKind::Area:
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawRoundedRect(box, 2, 2);
        break;
    case SeriesKind::HatchedArea:
        paintHatch(painter, box, colour, 4.5, 1);
        painter.setPen(QPen(colour, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box, 2, 2);
        break;
    case SeriesKind::Bars:
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawRoundedRect(QRectF(middle.x() - 5.5, middle.y() - 5.5, 11, 11), 2, 2);
        break;
    case SeriesKind::Points:
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawEllipse(middle, 4, 4);
        break;
    case SeriesKind::Marks:
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawPolygon(
            QPolygonF{middle + QPointF(0, -5.5), middle + QPointF(6, 5), middle + QPointF(-6, 5)});
        break;
    }
    painter.restore();
}

void paintReadOut(QPainter& painter, const QPointF& at, const QRectF& bounds,
                  const QString& heading, const std::vector<ReadOutRow>& rows)
{
    const Colours& c = colours();
    QFont bold = Theme::font(TextRole::Axis);
    bold.setWeight(QFont::DemiBold);
    const QFont plain = Theme::font(TextRole::Axis);
    const QFontMetricsF boldMetrics(bold);
    const QFontMetricsF metrics(plain);
    double names = 0;
    double values = 0;
    for (const ReadOutRow& row : rows) {
        names = std::max(names, metrics.horizontalAdvance(row.name));
        values = std::max(values, boldMetrics.horizontalAdvance(row.value));
    }
    constexpr double kPad = 8;
    constexpr double kLine = 16;
    const double width =
        std::max(boldMetrics.horizontalAdvance(heading), kSwatch + 6 + names + 12 + values) +
        2 * kPad;
    const double height = kLine * static_cast<double>(rows.size() + 1) + 2 * kPad - 4;
    double left = at.x() + 12;
    if (left + width > bounds.right())
        left = at.x() - 12 - width;
    left = std::clamp(left, bounds.left(), std::max(bounds.left(), bounds.right() - width));
    const double top = std::clamp(at.y() - height / 2, bounds.top(),
                                  std::max(bounds.top(), bounds.bottom() - height));
    const QRectF box(std::round(left), std::round(top), std::ceil(width), std::ceil(height));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QColor ground = c.card;
    ground.setAlphaF(0.96F);
    painter.setPen(QPen(c.border, 1));
    painter.setBrush(ground);
    painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
    QRectF line(box.left() + kPad, box.top() + kPad - 2, box.width() - 2 * kPad, kLine);
    painter.setFont(bold);
    painter.setPen(c.ink);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, heading);
    for (const ReadOutRow& row : rows) {
        line.translate(0, kLine);
        paintSwatch(painter, QRectF(line.left(), line.top(), kSwatch, kLine), row.kind, row.ink);
        painter.setFont(plain);
        painter.setPen(c.quiet);
        painter.drawText(line.adjusted(kSwatch + 6, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                         row.name);
        painter.setFont(bold);
        painter.setPen(c.ink);
        painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, row.value);
    }
    painter.restore();
}

} // namespace ullage::app
