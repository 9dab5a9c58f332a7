// Everything round the curves: where the plot lies, axes, marker, read-out. It knows the chart's
// values and pixels, and nothing of the library that draws the series.
#pragma once

#include "app/charts/chart.h"
#include "app/charts/chart_figures.h"
#include "app/charts/chart_paint.h"

#include <QRectF>
#include <QSize>

namespace ullage::app
{

/// Plain values in pixels of the view; setSpec() and resize() come before all else. Words are in
/// the default locale.
class ChartFrame
{
public:
    /// Copies it; hides the read-out.
    void setSpec(const ChartSpec& spec);
    /// Lays the plot out anew, with room for the labels of the axes.
    void resize(const QSize& size);

    [[nodiscard]] const ChartSpec& spec() const { return m_spec; }
    [[nodiscard]] const QRectF& plot() const { return m_plot; }

    [[nodiscard]] bool categories() const { return m_spec.x == ChartX::Categories; }
    /// Ends of the x axis as drawn: a number axis begins a little early.
    [[nodiscard]] double xMin() const;
    [[nodiscard]] double xMax() const;
    /// Where a value lies; outside the plot for one off the axes.
    [[nodiscard]] QPointF toPlot(double x, double y) const;

    /// Moves the read-out to x, held inside the axis; to a whole category on a category axis.
    void readAt(double x);
    /// The same at a place of the view; hides it outside the plot.
    void readAtPixel(const QPointF& at);
    void hideReadOut() { m_readAt.reset(); }
    [[nodiscard]] const std::optional<double>& readingAt() const { return m_readAt; }
    /// The read-out in words, empty while it is hidden.
    [[nodiscard]] QString readOut() const;

    /// Axes with their words; below the curves.
    void paintAxes(QPainter& painter) const;
    /// The line at the chart's own moment with its words; nothing where the chart has none.
    void paintMarker(QPainter& painter) const;
    /// On top of all; nothing while it is hidden.
    void paintReadOut(QPainter& painter) const;

private:
    void paintTitle(QPainter& painter, QRectF room) const;
    [[nodiscard]] int yTickCount() const { return m_size.height() < 150 ? 3 : 5; }
    [[nodiscard]] std::vector<ChartTick> xTicks() const;
    [[nodiscard]] std::vector<ReadOutRow> rows() const;

    ChartSpec m_spec;
    QSize m_size;
    QRectF m_plot;
    std::optional<double> m_readAt;
};

} // namespace ullage::app
