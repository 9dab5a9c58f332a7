// Charts as the program knows them: what is shown, in plain values, apart from what draws it.
//
// A page fills a ChartSpec and hands it to a ChartView made by makeChartView(). Which library draws
// is known to one file (chart_view_qtcharts.cpp) and can be changed there.
#pragma once

#include <QDateTime>
#include <QPointF>
#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <vector>

namespace ullage::app
{

enum class SeriesKind {
    Line,
    Step,        ///< each value holds until the next point
    Dashed,      ///< a line for what is still to come, or the second of two
    Area,        ///< between `points` and `lower`
    HatchedArea, ///< the same, hatched as the ullage is
    Bars,        ///< one a category, at x = 0, 1, 2 …
    Points,
    Marks, ///< points that call for a look, told apart by their shape: triangles
};

/// What a series is about; the theme gives the colour.
enum class ChartInk { Films, Standing, Age, Air, Fan, Next, ToCome, Limit, Quiet };

/// How an area is put in figures: as the two edges, or as what lies between them.
enum class AreaFigures { Edges, Between };

/// Points in the units of the axes.
struct ChartSeries {
    QString name; ///< wording of the legend and the table; never empty for one in either
    SeriesKind kind = SeriesKind::Line;
    ChartInk ink = ChartInk::Films;
    std::vector<QPointF> points; ///< x rising
    std::vector<QPointF> lower;  ///< of an area; empty for the x axis
    bool inLegend = true;
    bool inFigures = true; ///< in the read-out and the table
    AreaFigures figures = AreaFigures::Between;
};

/// Dates: chartDay(). Categories: 0, 1, 2 …
enum class ChartX { Dates, Categories, Numbers };
/// Percent: shares of 1. Minutes: values in minutes. Number: with `yUnit`.
enum class ChartY { Percent, Minutes, Number };

/// Words under the axis at a place of their own.
struct ChartLabel {
    double at = 0;
    QString text;
};

struct ChartSpec {
    QString title;   ///< accessible name, heading of the table
    QString summary; ///< one sentence that says what the chart shows
    ChartX x = ChartX::Dates;
    double xMin = 0; ///< for Dates: chartDay() of the first day shown; not used for Categories
    double xMax = 1;
    QString xName;                   ///< heading of the table's first column
    QString xTitle;                  ///< written under the axis, if anything
    QStringList categories;          ///< for Categories: what stands under each bar
    std::vector<ChartLabel> xLabels; ///< for Numbers: these in place of round values
    ChartY y = ChartY::Percent;
    double yMin = 0;
    std::optional<double> yMax;   ///< above yMin; a round value over the data if not given
    QString yUnit;                ///< for Number: written after the value
    std::optional<double> marker; ///< an upright line at this x
    QString markerText;           ///< "today"
    std::vector<ChartSeries> series;

    /// Words for a value in the read-out and the table, if the axis's own will not do.
    std::function<QString(double)> yText;
    /// The same for x on an axis of numbers.
    std::function<QString(double)> xText;
};

/// A day (and part of a day) as x of a date axis: days since 1 January 1970, by the date and time
/// that `time` shows, in whatever zone it is.
double chartDay(const QDateTime& time);
double chartDay(QDate date);
/// The day of such an x; its part of a day is dropped.
QDate chartDate(double day);

} // namespace ullage::app
