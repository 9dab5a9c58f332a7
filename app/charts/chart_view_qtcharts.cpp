// The one file that knows Qt Charts. The library draws the series; axes, marker, read-out and
// legend are ours, because its date axis puts ticks on odd dates, its labels run into dots when the
// chart is narrow, and its legend cannot show hatching.
#include "app/charts/chart.h"
#include "app/charts/chart_frame.h"
#include "app/charts/chart_legend.h"
#include "app/charts/chart_table_dialog.h"
#include "app/charts/chart_view.h"
#include "app/widgets/hatch.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QAccessible>
#include <QAction>
#include <QAreaSeries>
#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QChartView>
#include <QGraphicsLayout>
#include <QKeyEvent>
#include <QLineSeries>
#include <QMouseEvent>
#include <QScatterSeries>
#include <QStackedBarSeries>
#include <QVBoxLayout>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

class PlotView : public QChartView
{
public:
    explicit PlotView(ChartView* owner) : QChartView(new QChart, owner), m_owner(owner)
    {
        setRenderHint(QPainter::Antialiasing);
        setFrameShape(QFrame::NoFrame);
        setFocusPolicy(Qt::StrongFocus);
        setMouseTracking(true);
        setContextMenuPolicy(Qt::ActionsContextMenu);
        setMinimumSize(200, 120);
        setCacheMode(QGraphicsView::CacheNone);
        setViewportUpdateMode(QGraphicsView::FullViewportUpdate);
        chart()->setBackgroundVisible(false);
        chart()->legend()->hide();
        chart()->layout()->setContentsMargins(0, 0, 0, 0);
        chart()->setMargins({});
        viewport()->setAutoFillBackground(false);
    }

    void setSpec(const ChartSpec& spec)
    {
        m_frame.setSpec(spec);
        rebuild();
    }

    [[nodiscard]] const ChartFrame& frame() const { return m_frame; }
    [[nodiscard]] const ChartSpec& spec() const { return m_frame.spec(); }

    void rebuild();

protected:
    void resizeEvent(QResizeEvent* event) override
    {
        QChartView::resizeEvent(event);
        place();
    }
    void drawBackground(QPainter* painter, const QRectF&) override { m_frame.paintAxes(*painter); }
    void drawForeground(QPainter* painter, const QRectF&) override
    {
        m_frame.paintMarker(*painter);
        if (hasFocus()) {
            painter->setPen(QPen(colours().focus, 2));
            painter->setBrush(Qt::NoBrush);
            painter->drawRoundedRect(QRectF(viewport()->rect()).adjusted(1, 1, -1, -1), 6, 6);
        }
        m_frame.paintReadOut(*painter);
    }
    void mouseMoveEvent(QMouseEvent* event) override
    {
        m_frame.readAtPixel(event->position());
        viewport()->update();
    }
    void leaveEvent(QEvent* event) override
    {
        hideReadOut();
        QChartView::leaveEvent(event);
    }
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override
    {
        hideReadOut();
        QChartView::focusOutEvent(event);
    }

private:
    void addLine(const ChartSeries& series);
    void addArea(const ChartSeries& series);
    void addPoints(const ChartSeries& series);
    void addBars();
    void attach(QAbstractSeries* series, QAbstractAxis* x)
    {
        chart()->addSeries(series);
        series->attachAxis(x);
        series->attachAxis(m_yAxis);
    }
    void place()
    {
        m_frame.resize(viewport()->size());
        chart()->setPlotArea(m_frame.plot());
        viewport()->update();
    }
    void readAt(double x);
    void hideReadOut()
    {
        m_frame.hideReadOut();
        viewport()->update();
    }

    ChartView* m_owner;
    ChartFrame m_frame;
    QValueAxis* m_xAxis = nullptr;
    QValueAxis* m_yAxis = nullptr;
};

void PlotView::rebuild()
{
    chart()->removeAllSeries();
    for (QAbstractAxis* axis : chart()->axes())
        chart()->removeAxis(axis);
    m_xAxis = new QValueAxis(chart());
    m_yAxis = new QValueAxis(chart());
    m_xAxis->setRange(m_frame.xMin(), m_frame.xMax());
    m_yAxis->setRange(spec().yMin, yTop(spec()));
    chart()->addAxis(m_xAxis, Qt::AlignBottom);
    chart()->addAxis(m_yAxis, Qt::AlignLeft);
    m_xAxis->setVisible(false);
    m_yAxis->setVisible(false);
    const auto of = [this](auto... kinds) {
        std::vector<const ChartSeries*> found;
        for (const ChartSeries& series : spec().series) {
            if (((series.kind == kinds) || ...))
                found.push_back(&series);
        }
        return found;
    };
    // Areas lie below lines, lines below points.
    for (const ChartSeries* series : of(SeriesKind::Area, SeriesKind::HatchedArea))
        addArea(*series);
    if (!of(SeriesKind::Bars).empty())
        addBars();
    for (const ChartSeries* series : of(SeriesKind::Line, SeriesKind::Step, SeriesKind::Dashed))
        addLine(*series);
    for (const ChartSeries* series : of(SeriesKind::Points, SeriesKind::Marks))
        addPoints(*series);
    place();
}

void PlotView::addLine(const ChartSeries& series)
{
    auto* line = new QLineSeries;
    const auto points = series.kind == SeriesKind::Step
                            ? stepCorners(thinned(series.points, kMostPoints / 2),
                                          spec().marker.value_or(m_frame.xMax()))
                            : thinned(series.points);
    line->replace(QList<QPointF>(points.begin(), points.end()));
    QPen pen(chartColour(series.ink), 2.2, Qt::SolidLine, Qt::FlatCap,
             series.kind == SeriesKind::Step ? Qt::MiterJoin : Qt::RoundJoin);
    if (series.kind == SeriesKind::Dashed) {
        pen.setWidthF(1.9);
        pen.setDashPattern({3.2, 2.2});
    } else if (series.ink == ChartInk::Age) {
        pen.setWidthF(1.5);
    }
    line->setPen(pen);
    attach(line, m_xAxis);
}

void PlotView::addArea(const ChartSeries& series)
{
    if (series.points.empty())
        return;
    auto* upper = new QLineSeries;
    auto* lower = new QLineSeries;
    const auto top = thinned(series.points);
    upper->replace(QList<QPointF>(top.begin(), top.end()));
    if (series.lower.empty()) {
        lower->append(series.points.front().x(), spec().yMin);
        lower->append(series.points.back().x(), spec().yMin);
    } else {
        const auto bottom = thinned(series.lower);
        lower->replace(QList<QPointF>(bottom.begin(), bottom.end()));
    }
    auto* area = new QAreaSeries(upper, lower);
    upper->setParent(area);
    lower->setParent(area);
    area->setPen(Qt::NoPen);
    area->setBrush(series.kind == SeriesKind::HatchedArea
                       ? hatchBrush(chartColour(series.ink), devicePixelRatioF(), 5, 1)
                       : QBrush(chartColour(series.ink)));
    attach(area, m_xAxis);
}

void PlotView::addPoints(const ChartSeries& series)
{
    auto* dots = new QScatterSeries;
    const auto points = thinned(series.points);
    dots->replace(QList<QPointF>(points.begin(), points.end()));
    const bool mark = series.kind == SeriesKind::Marks;
    if (mark)
        dots->setMarkerShape(QScatterSeries::MarkerShapeTriangle);
    dots->setMarkerSize(mark ? 13 : 8.5);
    dots->setColor(chartColour(series.ink));
    dots->setBorderColor(colours().card);
    attach(dots, m_xAxis);
}

void PlotView::addBars()
{
    auto* axis = new QBarCategoryAxis(chart());
    QStringList keys; // categories must differ for the library, labels need not
    for (qsizetype i = 0; i < spec().categories.size(); ++i)
        keys << QString::number(i);
    axis->append(keys);
    chart()->addAxis(axis, Qt::AlignBottom);
    axis->setVisible(false);
    auto* bars = new QStackedBarSeries;
    bars->setBarWidth(0.74);
    for (const ChartSeries& series : spec().series) {
        if (series.kind != SeriesKind::Bars)
            continue;
        auto* set = new QBarSet(series.name);
        QList<qreal> heights(spec().categories.size(), 0.0);
        for (const QPointF& point : series.points) {
            const auto at = static_cast<qsizetype>(std::lround(point.x()));
            if (at >= 0 && at < heights.size() && std::isfinite(point.y()))
                heights[at] = point.y();
        }
        set->append(heights);
        set->setColor(chartColour(series.ink));
        set->setBorderColor(Qt::transparent);
        bars->append(set);
    }
    attach(bars, axis);
}

void PlotView::readAt(double x)
{
    m_frame.readAt(x);
    setAccessibleDescription(m_frame.readOut());
    QAccessibleEvent event(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&event);
    viewport()->update();
}

void PlotView::keyPressEvent(QKeyEvent* event)
{
    const double first = m_frame.xMin();
    const double last = m_frame.xMax();
    constexpr int kKeySteps = 60; // from one end to the other
    const double step = m_frame.categories() ? 1 : (last - first) / kKeySteps;
    const auto& now = m_frame.readingAt();
    const double from = now.value_or(m_frame.spec().marker.value_or(first));
    switch (event->key()) {
    case Qt::Key_Left:
        readAt(now ? from - step : from);
        return;
    case Qt::Key_Right:
        readAt(now ? from + step : from);
        return;
    case Qt::Key_Home:
        readAt(first);
        return;
    case Qt::Key_End:
        readAt(last);
        return;
    case Qt::Key_T:
        m_owner->showTable();
        return;
    case Qt::Key_Escape:
        if (now) {
            hideReadOut();
            return;
        }
        break;
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

class QtChartsView : public ChartView
{
public:
    explicit QtChartsView(QWidget* parent)
        : ChartView(parent), m_plot(new PlotView(this)), m_legend(new ChartLegend(this)),
          m_table(new QAction(this))
    {
        auto* column = new QVBoxLayout(this);
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(Space::kSmall);
        column->addWidget(m_plot, 1);
        column->addWidget(m_legend);
        m_table->setShortcut(Qt::Key_T);
        m_table->setShortcutContext(Qt::WidgetShortcut);
        connect(m_table, &QAction::triggered, this, [this] { showTable(); });
        m_plot->addAction(m_table);
        retranslate();
        setFocusProxy(m_plot);
        connect(&Theme::instance(), &Theme::changed, this, [this] {
            m_plot->rebuild();
            m_legend->update();
        });
    }

    void setChart(const ChartSpec& spec) override
    {
        m_plot->setSpec(spec);
        m_legend->setSeries(spec.series);
        m_legend->setVisible(m_legend->heightForWidth(240) > 0);
        m_plot->setAccessibleName(spec.title);
        m_plot->setAccessibleDescription(spec.summary);
        setPlainToolTip(m_plot, QString());
    }

    [[nodiscard]] const ChartSpec& chart() const override { return m_plot->spec(); }
    [[nodiscard]] QString readOut() const override { return m_plot->frame().readOut(); }

    void showTable() override
    {
        auto* table = new ChartTableDialog(m_plot->spec(), this);
        table->setAttribute(Qt::WA_DeleteOnClose);
        table->open();
    }

protected:
    void changeEvent(QEvent* event) override
    {
        if (event->type() == QEvent::LanguageChange)
            retranslate();
        ChartView::changeEvent(event);
    }

private:
    void retranslate() { m_table->setText(ChartView::tr("Show as a table…")); }

    PlotView* m_plot;
    ChartLegend* m_legend;
    QAction* m_table;
};

} // namespace

ChartView* makeChartView(QWidget* parent) { return new QtChartsView(parent); }

} // namespace ullage::app
