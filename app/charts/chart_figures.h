// The arithmetic of charts: ticks on round values and round dates, thinning, reading values off.
#pragma once

#include "app/charts/chart.h"

#include <QLocale>

namespace ullage::app
{

struct ChartTick {
    double at = 0; ///< in the unit of its axis
    QString text;
};

/// More points than this are thinned before they are drawn.
inline constexpr int kMostPoints = 2000;

/// At most `most` points (4 or more; fewer thin nothing): the first, the last, and the lowest and
/// the highest of every stretch between. `points` with x rising.
std::vector<QPointF> thinned(const std::vector<QPointF>& points, int most = kMostPoints);

/// The points of a step line written out with its corners, its last value held to `end`.
std::vector<QPointF> stepCorners(const std::vector<QPointF>& points, double end);

/// The value of a series at x: held up to `xEnd` for steps, straight between points else; none
/// outside. Bars, points and marks have one only where they stand (to 1e-6).
std::optional<double> valueAt(const ChartSeries& series, double x, double xEnd);
/// The lower edge of an area there, 0 if it has none of its own.
double lowerAt(const ChartSeries& series, double x);

/// Top of the y axis: `yMax`, or the round value above the finite data, yMin + 1 if none is higher.
double yTop(const ChartSpec& spec);
/// Ticks from yMin to the top, `most` (3 or more) or fewer, on round steps, worded with their unit.
std::vector<ChartTick> yTicks(const ChartSpec& spec, int most, const QLocale& locale);

/// Ticks of a date axis on round days, weeks, months or years, so far apart that their labels have
/// room in `width` pixels; `measure` gives the width of a label.
std::vector<ChartTick> dateTicks(double from, double to, double width,
                                 const std::function<double(const QString&)>& measure,
                                 const QLocale& locale);
/// Ticks on round values from `from` to `to` (> from), about `most`.
std::vector<ChartTick> numberTicks(double from, double to, int most, const QLocale& locale);

/// A value in the words of the axis: yText, else percent, a time to five seconds, or a number to
/// one decimal with its unit.
QString valueText(const ChartSpec& spec, double value, const QLocale& locale);
/// The same of x: a day, a category, xText or a number.
QString xText(const ChartSpec& spec, double x, const QLocale& locale);
/// What a series says at x: a value, a span or what lies between; empty outside. Steps are held up
/// to the marker, or to the end of the axis.
QString seriesText(const ChartSpec& spec, const ChartSeries& series, double x,
                   const QLocale& locale);
/// The number behind those words, and its unit ("%", "min", the axis's own); empty for a span,
/// which is two.
std::optional<double> seriesNumber(const ChartSpec& spec, const ChartSeries& series, double x);
QString yUnitName(const ChartSpec& spec);

/// Every x at which some series that is in the figures has a point, rising, no two the same (to
/// 1e-6).
std::vector<double> allX(const ChartSpec& spec);

} // namespace ullage::app
