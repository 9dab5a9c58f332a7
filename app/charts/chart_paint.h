// The parts of a chart that we paint ourselves: colours, legend, read-out.
#pragma once

#include "app/charts/chart.h"

#include <QColor>

class QPainter;

namespace ullage::app
{

/// Of the theme shown now.
QColor chartColour(ChartInk ink);

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

/// Names and signs of the series, wrapped to the width.
class ChartLegend : public QWidget
{
    Q_OBJECT

public:
    explicit ChartLegend(QWidget* parent = nullptr);

    /// Those with a name that are in the legend.
    void setSeries(const std::vector<ChartSeries>& series);
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {120, 18}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    // Lays the entries out, painting them if there is a painter; returns the height.
    int layOut(int width, QPainter* painter) const;

    std::vector<ChartSeries> m_series;
};

} // namespace ullage::app
