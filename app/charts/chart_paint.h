// The parts of a chart that we paint ourselves: colours, signs, read-out.
#pragma once

#include "app/charts/chart.h"

#include <QColor>

class QPainter;

namespace ullage::app
{

/// Of the theme shown now.
QColor chartColour(ChartInk ink);

/// Width of a sign beside words.
inline constexpr int kSwatch = 18;

/// The sign of a series, as it is drawn in the chart, in a small box.
void paintSwatch(QPainter& painter, const QRectF& rect, SeriesKind kind, ChartInk ink);

/// A box with a heading and rows of sign, name and value, beside `at` and inside `bounds`.
struct ReadOutRow {
    SeriesKind kind;
    ChartInk ink;
    QString name;
    QString value;
};
void paintReadOut(QPainter& painter, const QPointF& at, const QRectF& bounds,
                  const QString& heading, const std::vector<ReadOutRow>& rows);

} // namespace ullage::app
