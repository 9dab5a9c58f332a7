#include "app/charts/chart_frame.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

constexpr double kAxisRoom = 24;  // below the plot
constexpr double kTitleRoom = 18; // more, for words under the axis
constexpr double kTop = 12;
constexpr double kTickWidth = 44; // of a figure under the axis, and the space beside it

} // namespace

void ChartFrame::setSpec(const ChartSpec& spec)
{
    m_spec = spec;
    m_readAt.reset();
    resize(m_size);
}

void ChartFrame::resize(const QSize& size)
{
    m_size = size;
    const QFontMetricsF metrics(Theme::font(TextRole::Axis));
    double labels = 0;
    for (const ChartTick& tick : yTicks(m_spec, yTickCount(), QLocale()))
        labels = std::max(labels, metrics.horizontalAdvance(tick.text));
    const double bottom = kAxisRoom + (m_spec.xTitle.isEmpty() ? 0 : kTitleRoom);
    const double side = categories() ? 2 : 14; // room for half of the last label
    m_plot = QRectF(QPointF(std::ceil(labels) + 12, kTop),
                    QPointF(std::max(size.width() - side, labels + 60.0),
                            std::max(size.height() - bottom, kTop + 30)));
}

double ChartFrame::xMin() const
{
    // A number axis starts a little early, so that a point at its start is drawn whole.
    if (m_spec.x == ChartX::Numbers)
        return m_spec.xMin - (m_spec.xMax - m_spec.xMin) * 0.02;
    return categories() ? -0.5 : m_spec.xMin;
}

double ChartFrame::xMax() const
{
    return categories() ? static_cast<double>(m_spec.categories.size()) - 0.5
                        : std::max(m_spec.xMax, m_spec.xMin + 1e-6);
}

QPointF ChartFrame::toPlot(double x, double y) const
{
    const double top = yTop(m_spec);
    return {m_plot.left() + (x - xMin()) / (xMax() - xMin()) * m_plot.width(),
            m_plot.bottom() - (y - m_spec.yMin) / (top - m_spec.yMin) * m_plot.height()};
}

void ChartFrame::readAt(double x)
{
    if (categories() && m_spec.categories.isEmpty())
        return;
    const double held = categories() ? std::clamp(std::round(x), 0.0, xMax() - 0.5)
                                     : std::clamp(x, m_spec.xMin, xMax());
    m_readAt = held;
}

void ChartFrame::readAtPixel(const QPointF& at)
{
    if (m_plot.adjusted(-4, -kTop, 4, 4).contains(at))
        readAt(xMin() + (at.x() - m_plot.left()) / m_plot.width() * (xMax() - xMin()));
    else
        hideReadOut();
}

QString ChartFrame::readOut() const
{
    if (!m_readAt)
        return {};
    QStringList parts{xText(m_spec, *m_readAt, QLocale())};
    for (const ReadOutRow& row : rows())
        parts << QStringLiteral("%1 %2").arg(row.name, row.value);
    return parts.join(QStringLiteral(", "));
}

std::vector<ReadOutRow> ChartFrame::rows() const
{
    std::vector<ReadOutRow> result;
    for (const ChartSeries& series : m_spec.series) {
        const QString value =
            series.inFigures ? seriesText(m_spec, series, *m_readAt, QLocale()) : QString();
        if (!value.isEmpty())
            result.push_back({series.kind, series.ink, series.name, value});
    }
    return result;
}

std::vector<ChartTick> ChartFrame::xTicks() const
{
    const double width = m_plot.width();
    const QFontMetricsF metrics(Theme::font(TextRole::Axis));
    if (m_spec.x == ChartX::Dates) {
        return dateTicks(
            xMin(), xMax(), width,
            [&](const QString& text) { return metrics.horizontalAdvance(text); }, QLocale());
    }
    if (!categories() && !m_spec.xLabels.empty()) {
        std::vector<ChartTick> ticks;
        for (const ChartLabel& label : m_spec.xLabels)
            ticks.push_back({label.at, label.text});
        return ticks;
    }
    if (!categories())
        return numberTicks(xMin(), xMax(), std::max(2, static_cast<int>(width / kTickWidth)),
                           QLocale());
    double widest = 0;
    for (const QString& text : m_spec.categories)
        widest = std::max(widest, metrics.horizontalAdvance(text));
    const double cell = width / std::max<double>(1, static_cast<double>(m_spec.categories.size()));
    int every = 1;
    for (const int step : {1, 2, 5, 10, 20, 50, 100, 200}) {
        every = step;
        if (cell * step >= widest + 6)
            break;
    }
    std::vector<ChartTick> ticks;
    for (int i = 0; i < m_spec.categories.size(); ++i) {
        if (every == 1 || (i + 1) % every == 0)
            ticks.push_back({static_cast<double>(i), m_spec.categories[i]});
    }
    return ticks;
}

void ChartFrame::paintAxes(QPainter& painter) const
{
    const QRectF& plot = m_plot;
    const QFont font = Theme::font(TextRole::Axis);
    const QFontMetricsF metrics(font);
    painter.setFont(font);
    for (const ChartTick& tick : yTicks(m_spec, yTickCount(), QLocale())) {
        const double y = std::round(toPlot(0, tick.at).y()) + 0.5;
        painter.setPen(QPen(colours().hairline, 1));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
        painter.setPen(colours().quiet);
        painter.drawText(QRectF(0, y - 9, plot.left() - 8, 18), Qt::AlignRight | Qt::AlignVCenter,
                         tick.text);
    }
    double free = -1e9; // right edge of the last label, so that none run together
    for (const ChartTick& tick : xTicks()) {
        const double half = metrics.horizontalAdvance(tick.text) / 2;
        const double x =
            std::clamp(toPlot(tick.at, 0).x(), half, std::max(half, m_size.width() - half));
        if (x - half < free + 4)
            continue;
        free = x + half;
        painter.drawText(QRectF(x - half - 2, plot.bottom() + 6, 2 * half + 4, 18), Qt::AlignCenter,
                         tick.text);
    }
    if (!m_spec.xTitle.isEmpty())
        paintTitle(painter, QRectF(plot.left(), plot.bottom() + 22, plot.width(), 18));
}

// Under the plot, or over all the width; where that is too little, what follows a comma goes first.
void ChartFrame::paintTitle(QPainter& painter, QRectF room) const
{
    const QFontMetricsF metrics(painter.font());
    QString title = m_spec.xTitle;
    if (metrics.horizontalAdvance(title) > room.width())
        room = QRectF(0, room.top(), m_size.width(), room.height());
    if (metrics.horizontalAdvance(title) > room.width())
        title = title.section(QStringLiteral(", "), 0, 0);
    painter.drawText(room, Qt::AlignCenter, oneLine(title, metrics, room.width()));
}

void ChartFrame::paintMarker(QPainter& painter) const
{
    if (!m_spec.marker || *m_spec.marker < xMin() || *m_spec.marker > xMax())
        return;
    const Colours& c = colours();
    const double x = std::round(toPlot(*m_spec.marker, 0).x()) + 0.5;
    painter.setPen(QPen(c.ink, 1.2));
    painter.drawLine(QPointF(x, m_plot.top() - 6), QPointF(x, m_plot.bottom()));
    QFont font = Theme::font(TextRole::Axis);
    font.setWeight(QFont::DemiBold);
    painter.setFont(font);
    const double width = QFontMetricsF(font).horizontalAdvance(m_spec.markerText);
    const bool right = x + 6 + width < m_size.width();
    const QRectF words(right ? x + 6 : x - 6 - width, m_plot.top() - 10, width + 1, 16);
    QColor ground = c.card; // the line at the top must not run through the word
    ground.setAlphaF(0.85F);
    painter.fillRect(words.adjusted(-2, 1, 2, -1), ground);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, m_spec.markerText);
}

void ChartFrame::paintReadOut(QPainter& painter) const
{
    const Colours& c = colours();
    const QRectF& plot = m_plot;
    if (!m_readAt)
        return;
    const double x = toPlot(*m_readAt, 0).x();
    if (!categories()) {
        painter.setPen(QPen(c.quiet, 1, Qt::DotLine));
        painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
    }
    for (const ChartSeries& series : m_spec.series) {
        if (series.kind == SeriesKind::Bars || series.kind == SeriesKind::Area ||
            series.kind == SeriesKind::HatchedArea || !series.inFigures)
            continue;
        const auto value = valueAt(series, *m_readAt, m_spec.marker.value_or(xMax()));
        if (!value || *value > yTop(m_spec) || *value < m_spec.yMin)
            continue;
        painter.setPen(QPen(c.card, 1.5));
        painter.setBrush(chartColour(series.ink));
        painter.drawEllipse(toPlot(*m_readAt, *value), 4, 4);
    }
    ullage::app::paintReadOut(painter, QPointF(x, plot.center().y()),
                              QRectF(QPointF(0, 0), QSizeF(m_size)).adjusted(2, 2, -2, -2),
                              xText(m_spec, *m_readAt, QLocale()), rows());
}

} // namespace ullage::app
