#include "app/charts/chart_legend.h"

#include "app/charts/chart_paint.h"
#include "app/widgets/theme.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kRow = 18;
constexpr int kEntryGap = 14;

} // namespace

ChartLegend::ChartLegend(QWidget* parent) : QWidget(parent)
{
    setFont(Theme::font(TextRole::Small));
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void ChartLegend::setSeries(const std::vector<ChartSeries>& series)
{
    m_series.clear();
    for (const ChartSeries& one : series) {
        if (one.inLegend && !one.name.isEmpty())
            m_series.push_back(one);
    }
    updateGeometry();
    update();
}

int ChartLegend::layOut(int width, QPainter* painter) const
{
    const QFontMetricsF metrics(font());
    double x = 0;
    int y = 0;
    for (const ChartSeries& series : m_series) {
        const double sign = series.kind == SeriesKind::Bars ? 13 : kSwatch;
        const double entry = sign + 6 + metrics.horizontalAdvance(series.name);
        if (x > 0 && x + entry > width) {
            x = 0;
            y += kRow;
        }
        if (painter) {
            paintSwatch(*painter, QRectF(x, y, sign, kRow), series.kind, series.ink);
            painter->setPen(colours().ink);
            painter->drawText(QRectF(x + sign + 6, y, entry, kRow),
                              Qt::AlignLeft | Qt::AlignVCenter, series.name);
        }
        x += entry + kEntryGap;
    }
    return m_series.empty() ? 0 : y + kRow;
}

int ChartLegend::heightForWidth(int width) const { return layOut(width, nullptr); }

QSize ChartLegend::sizeHint() const { return {240, layOut(std::max(width(), 240), nullptr)}; }

void ChartLegend::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(font());
    layOut(width(), &painter);
}

} // namespace ullage::app
