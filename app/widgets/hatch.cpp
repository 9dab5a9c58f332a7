#include "app/widgets/hatch.h"

#include <QPainter>
#include <QPixmap>

#include <cmath>

namespace ullage::app
{

void paintHatch(QPainter& painter, const QRectF& rect, const QColor& stroke, double step,
                double width)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(rect, Qt::IntersectClip);
    painter.setPen(QPen(stroke, width));
    const double pitch = step * std::sqrt(2.0); // along x, for strokes `step` apart at 45°
    const double first = std::floor((rect.left() + rect.top()) / pitch) * pitch;
    for (double sum = first; sum <= rect.right() + rect.bottom(); sum += pitch)
        painter.drawLine(QPointF(sum - rect.top(), rect.top()),
                         QPointF(sum - rect.bottom(), rect.bottom()));
    painter.restore();
}

QBrush hatchBrush(const QColor& stroke, double ratio, int step, double width)
{
    const int side = step * 2; // two strokes a tile keep the corners whole
    QPixmap tile(static_cast<int>(std::ceil(side * ratio)),
                 static_cast<int>(std::ceil(side * ratio)));
    tile.setDevicePixelRatio(ratio);
    tile.fill(Qt::transparent);
    QPainter painter(&tile);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(stroke, width));
    for (int sum = 0; sum <= 2 * side; sum += step)
        painter.drawLine(QPointF(sum + 2, -2), QPointF(sum - side - 2, side + 2));
    return QBrush(tile);
}

} // namespace ullage::app
