// Figures that do not dance: digits laid out at one advance, so that a number that changes keeps
// its place. For fonts whose default figures are proportional (Qt 6.4 cannot ask for a font's own
// tabular ones).
#pragma once

#include <QRectF>
#include <QString>
#include <Qt>

class QFont;
class QPainter;

namespace ullage::app
{

/// Width of `text` with every digit as wide as the widest.
double figuresWidth(const QFont& font, const QString& text);

/// Paints one line with the painter's font and pen, aligned in `rect` (Qt::Alignment flags).
void drawFigures(QPainter& painter, const QRectF& rect, Qt::Alignment alignment,
                 const QString& text);

} // namespace ullage::app
