// The legend under a chart.
#pragma once

#include "app/charts/chart.h"

#include <QWidget>

class QPainter;

namespace ullage::app
{

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
