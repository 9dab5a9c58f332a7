// The hatching of the ullage: fine slanting strokes, the same on bottles and on charts.
#pragma once

#include <QBrush>
#include <QColor>
#include <QRectF>

class QPainter;

namespace ullage::app
{

/// Strokes across `rect`, `step` apart; set a clip for any other shape. The strokes are laid from
/// the origin of the painter, so that neighbouring pieces meet.
void paintHatch(QPainter& painter, const QRectF& rect, const QColor& stroke, double step = 7,
                double width = 1.1);

/// The same as a brush that tiles; `ratio` is the device pixel ratio of what it paints on.
QBrush hatchBrush(const QColor& stroke, double ratio, int step = 7, double width = 1.1);

} // namespace ullage::app
