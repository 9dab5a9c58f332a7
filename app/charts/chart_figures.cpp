#include "app/charts/chart_figures.h"

#include "app/words/number_text.h"
#include "core/chemistry/time_units.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

namespace ullage::app
{

namespace
{

struct Charts {
    Q_DECLARE_TR_FUNCTIONS(Charts)
};

std::optional<double> between(const std::vector<QPointF>& points, double x, bool held, double end)
{
    if (points.empty() || x < points.front().x())
        return std::nullopt;
    const auto next = std::upper_bound(points.begin(), points.end(), x,
                                       [](double v, const QPointF& p) { return v < p.x(); });
    const QPointF& before = *(next - 1);
    if (held)
        return x <= std::max(end, points.back().x()) ? std::optional(before.y()) : std::nullopt;
    if (next == points.end())
        return x == before.x() ? std::optional(before.y()) : std::nullopt;
    const double share = (x - before.x()) / (next->x() - before.x());
    return before.y() + share * (next->y() - before.y());
}

double roundStep(double span, int most)
{
    if (!(span > 0)) // one value: a step that ends
        return 1;
    const double rough = span / std::max(1, most - 1);
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double step : {1.0, 2.0, 4.0, 5.0, 10.0}) {
        if (step * power >= rough * (1 - 1e-9))
            return step * power;
    }
    return 10 * power;
}

} // namespace

std::vector<QPointF> thinned(const std::vector<QPointF>& points, int most)
{
    if (static_cast<int>(points.size()) <= most || most < 4)
        return points;
    // Two points a bucket, its lowest and its highest, in their order.
    const std::size_t buckets = static_cast<std::size_t>(most - 2) / 2;
    std::vector<QPointF> result{points.front()};
    const std::size_t inner = points.size() - 2;
    for (std::size_t bucket = 0; bucket < buckets; ++bucket) {
        const auto first =
            points.begin() + 1 + static_cast<std::ptrdiff_t>(inner * bucket / buckets);
        const auto last =
            points.begin() + 1 + static_cast<std::ptrdiff_t>(inner * (bucket + 1) / buckets);
        auto [low, high] = std::minmax_element(
            first, last, [](const QPointF& a, const QPointF& b) { return a.y() < b.y(); });
        if (high < low)
            std::swap(low, high);
        result.push_back(*low);
        if (high != low)
            result.push_back(*high);
    }
    result.push_back(points.back());
    return result;
}

std::vector<QPointF> stepCorners(const std::vector<QPointF>& points, double end)
{
    std::vector<QPointF> result;
    for (const QPointF& point : points) {
        if (!result.empty() && result.back().y() != point.y())
            result.emplace_back(point.x(), result.back().y());
        result.push_back(point);
    }
    if (!result.empty() && result.back().x() < end)
        result.emplace_back(end, result.back().y());
    return result;
}

std::optional<double> valueAt(const ChartSeries& series, double x, double xEnd)
{
    if (series.kind == SeriesKind::Bars || series.kind == SeriesKind::Points ||
        series.kind == SeriesKind::Marks) {
        const auto found =
            std::find_if(series.points.begin(), series.points.end(),
                         [x](const QPointF& point) { return std::abs(point.x() - x) < 1e-6; });
        return found == series.points.end() ? std::nullopt : std::optional(found->y());
    }
    return between(series.points, x, series.kind == SeriesKind::Step, xEnd);
}

double lowerAt(const ChartSeries& series, double x)
{
    return between(series.lower, x, false, x).value_or(0);
}

double yTop(const ChartSpec& spec)
{
    if (spec.yMax)
        return *spec.yMax;
    double highest = spec.yMin;
    for (const ChartSeries& series : spec.series) {
        for (const QPointF& point : series.points) {
            if (std::isfinite(point.y()))
                highest = std::max(highest, point.y());
        }
    }
    if (highest <= spec.yMin)
        return spec.yMin + 1;
    const double step = roundStep(highest - spec.yMin, 5);
    return spec.yMin + std::ceil((highest - spec.yMin) / step - 1e-9) * step;
}

std::vector<ChartTick> yTicks(const ChartSpec& spec, int most, const QLocale& locale)
{
    const double top = yTop(spec);
    double step = roundStep(top - spec.yMin, std::max(2, most));
    if (spec.y == ChartY::Percent && spec.yMin == 0 && top == 1)
        step = most >= 5 ? 0.25 : 0.5;
    std::vector<ChartTick> ticks;
    for (int i = 0; spec.yMin + i * step <= top + step * 1e-6; ++i) {
        const double at = spec.yMin + i * step;
        QString text = numberText(at, 2, locale);
        if (spec.y == ChartY::Percent)
            text = percentText(at, locale);
        else if (spec.y == ChartY::Minutes)
            text = Charts::tr("%1 min").arg(text);
        else if (!spec.yUnit.isEmpty())
            text += QChar(0xa0) + spec.yUnit;
        ticks.push_back({at, text});
    }
    return ticks;
}

std::vector<ChartTick> dateTicks(double from, double to, double width,
                                 const std::function<double(const QString&)>& measure,
                                 const QLocale& locale)
{
    constexpr double kGap = 12;
    constexpr double kMostByDay = 70; // days; a longer span is read by months
    const auto dayText = [&](QDate date) { return dateText(date, date, locale); };
    double dayWidth = 0;
    double monthWidth = 0;
    for (int month = 1; month <= 12; ++month) {
        dayWidth = std::max(dayWidth, measure(dayText(QDate(2026, month, 28))));
        monthWidth =
            std::max(monthWidth, measure(locale.standaloneMonthName(month, QLocale::ShortFormat)));
    }
    const double perDay = width / std::max(to - from, 1e-9);
    const double daysALabel = (dayWidth + kGap) / perDay;
    const double monthsALabel = (monthWidth + kGap) / perDay;
    const QDate first = chartDate(std::ceil(from));
    std::vector<ChartTick> ticks;
    const auto add = [&](QDate date, const QString& text) {
        if (const double at = chartDay(date); at >= from - 1e-9 && at <= to + 1e-9)
            ticks.push_back({at, text});
    };

    for (const int days : {1, 2, 7, 14}) {
        if (days < daysALabel || to - from > kMostByDay)
            continue;
        QDate date = first;
        if (days >= 7) // weeks begin where the locale begins them
            date = date.addDays((7 + static_cast<int>(locale.firstDayOfWeek()) - date.dayOfWeek()) %
                                7);
        for (; chartDay(date) <= to; date = date.addDays(days))
            add(date, dayText(date));
        return ticks;
    }
    for (const int months : {1, 2, 3, 6, 12, 24, 60, 120, 600}) {
        if (months * 28 < monthsALabel && months < 600)
            continue;
        const int base = (first.year() * 12 + first.month() - 1) / months * months;
        const bool years = to - from > 380;
        for (int month = base;; month += months) {
            const QDate date(month / 12, month % 12 + 1, 1);
            if (!date.isValid() || chartDay(date) > to)
                break;
            const bool january = date.month() == 1;
            add(date, (months >= 12 || (january && years))
                          ? QString::number(date.year())
                          : locale.standaloneMonthName(date.month(), QLocale::ShortFormat));
        }
        return ticks;
    }
    return ticks;
}

std::vector<ChartTick> numberTicks(double from, double to, int most, const QLocale& locale)
{
    const double step = roundStep(to - from, std::max(2, most));
    std::vector<ChartTick> ticks;
    for (double at = std::ceil(from / step - 1e-9) * step; at <= to + step * 1e-6; at += step)
        ticks.push_back({at, numberText(at, 2, locale)});
    return ticks;
}

QString valueText(const ChartSpec& spec, double value, const QLocale& locale)
{
    if (spec.yText)
        return spec.yText(value);
    switch (spec.y) {
    case ChartY::Percent:
        return percentText(value, locale);
    case ChartY::Minutes:
        return timeText(chemistry::fromMinutes(value), TimeStep::FiveSeconds);
    case ChartY::Number:
        break;
    }
    const QString text = numberText(value, 1, locale);
    return spec.yUnit.isEmpty() ? text : text + QChar(0xa0) + spec.yUnit;
}

QString xText(const ChartSpec& spec, double x, const QLocale& locale)
{
    switch (spec.x) {
    case ChartX::Dates:
        return fullDateText(chartDate(x), locale);
    case ChartX::Categories:
        return spec.categories.value(static_cast<int>(std::lround(x)));
    case ChartX::Numbers:
        break;
    }
    return spec.xText ? spec.xText(x) : numberText(x, 2, locale);
}

QString seriesText(const ChartSpec& spec, const ChartSeries& series, double x,
                   const QLocale& locale)
{
    const auto value = valueAt(series, x, spec.marker.value_or(spec.xMax));
    if (!value || !std::isfinite(*value))
        return {};
    if (series.kind != SeriesKind::Area && series.kind != SeriesKind::HatchedArea)
        return valueText(spec, *value, locale);
    const double lower = lowerAt(series, x);
    if (series.figures == AreaFigures::Between)
        return valueText(spec, *value - lower, locale);
    return Charts::tr("%1 – %2").arg(valueText(spec, lower, locale),
                                     valueText(spec, *value, locale));
}

std::optional<double> seriesNumber(const ChartSpec& spec, const ChartSeries& series, double x)
{
    const auto value = valueAt(series, x, spec.marker.value_or(spec.xMax));
    if (!value || !std::isfinite(*value))
        return std::nullopt;
    const bool area = series.kind == SeriesKind::Area || series.kind == SeriesKind::HatchedArea;
    if (area && series.figures == AreaFigures::Edges)
        return std::nullopt;
    const double shown = area ? *value - lowerAt(series, x) : *value;
    return spec.y == ChartY::Percent ? shown * 100 : shown;
}

QString yUnitName(const ChartSpec& spec)
{
    switch (spec.y) {
    case ChartY::Percent:
        return QStringLiteral("%");
    case ChartY::Minutes:
        return Charts::tr("min");
    case ChartY::Number:
        break;
    }
    return spec.yUnit;
}

std::vector<double> allX(const ChartSpec& spec)
{
    std::vector<double> all;
    for (const ChartSeries& series : spec.series) {
        if (!series.inFigures)
            continue;
        for (const QPointF& point : series.points)
            all.push_back(point.x());
    }
    std::sort(all.begin(), all.end());
    const auto same = [](double a, double b) { return std::abs(a - b) < 1e-6; };
    all.erase(std::unique(all.begin(), all.end(), same), all.end());
    return all;
}

} // namespace ullage::app
