// What shows a chart. Which library draws it is known to chart_view_qtcharts.cpp alone.
#pragma once

#include "app/charts/chart.h"

#include <QWidget>

namespace ullage::app
{

/// Shows one chart with its legend. The keyboard reads it: Left and Right move a read-out, Home
/// and End jump, Escape hides it, T opens the table of the same figures.
class ChartView : public QWidget
{
    Q_OBJECT

public:
    using QWidget::QWidget;

    /// Copies it; hides the read-out.
    virtual void setChart(const ChartSpec& spec) = 0;
    [[nodiscard]] virtual const ChartSpec& chart() const = 0;
    /// The words of the read-out, empty while it is hidden.
    [[nodiscard]] virtual QString readOut() const = 0;
    /// Opens the table in a window of its own.
    virtual void showTable() = 0;
};

/// An empty one, owned by `parent`.
ChartView* makeChartView(QWidget* parent = nullptr);

} // namespace ullage::app
