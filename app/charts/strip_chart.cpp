#include "app/charts/strip_chart.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(StripChart)
};

// The last season is what matters; more would not be told apart.
constexpr std::size_t kMostShown = 30;
constexpr double kStep = 0.05; // the axis begins and ends on these densities

} // namespace

static QString howFar(const ledger::StripRecord& record, std::size_t at)
{
    const auto& reading = record.readings[at].strip;
    if (record.marks[at] == chemistry::ControlMark::OneSide)
        return reading.density > record.judgedBy[at]->centre
                   ? Words::tr("one of eight or more in a row above the centre")
                   : Words::tr("one of eight or more in a row below the centre");
    return reading.density > record.judgedBy[at]->upper ? Words::tr("above the limits")
                                                        : Words::tr("below the limits");
}

QString densityText(double density, const QLocale& locale)
{
    return locale.toString(density, 'f', 2);
}

QString stripName(const ledger::StripReading& reading, chemistry::Instant now,
                  const Wording& wording)
{
    return Words::tr("%1, %2, %3", "density, date, bottle")
        .arg(densityText(reading.strip.density, wording.locale),
             dayText(reading.strip.at, now, wording.locale),
             QString::fromStdString(reading.batchName));
}

ChartSpec stripChart(const ledger::StripRecord& record, chemistry::Instant now,
                     const Wording& wording)
{
    ChartSpec spec;
    spec.title = Words::tr("Control strips");
    spec.x = ChartX::Categories;
    spec.xName = Words::tr("control strip");
    spec.xTitle = Words::tr("control strips of this developer, oldest first");
    spec.y = ChartY::Number;
    spec.yText = [locale = wording.locale](double density) { return densityText(density, locale); };
    ChartSeries line{.name = Words::tr("density"),
                     .kind = SeriesKind::Line,
                     .ink = ChartInk::Quiet,
                     .inLegend = false,
                     .inFigures = false};
    ChartSeries within{
        .name = Words::tr("within"), .kind = SeriesKind::Points, .ink = ChartInk::Films};
    ChartSeries out{
        .name = Words::tr("out of control"), .kind = SeriesKind::Marks, .ink = ChartInk::Limit};
    ChartSeries centre{
        .name = Words::tr("centre"), .kind = SeriesKind::Line, .ink = ChartInk::Standing};
    ChartSeries upper{
        .name = Words::tr("limits"), .kind = SeriesKind::Dashed, .ink = ChartInk::Limit};
    ChartSeries lower{.name = Words::tr("lower limit"),
                      .kind = SeriesKind::Dashed,
                      .ink = ChartInk::Limit,
                      .inLegend = false};
    const std::size_t count = record.readings.size();
    double low = 10;
    double high = 0;
    for (std::size_t i = count - std::min(count, kMostShown); i < count; ++i) {
        const auto& strip = record.readings[i].strip;
        const double x = static_cast<double>(spec.categories.size());
        spec.categories << dayText(strip.at, now, wording.locale);
        const QPointF point(x, strip.density);
        line.points.push_back(point);
        (record.marks[i] == chemistry::ControlMark::Within ? within : out).points.push_back(point);
        low = std::min(low, strip.density);
        high = std::max(high, strip.density);
        if (const auto& chart = record.judgedBy[i]) {
            centre.points.emplace_back(x, chart->centre);
            upper.points.emplace_back(x, chart->upper);
            lower.points.emplace_back(x, chart->lower);
            low = std::min(low, chart->lower);
            high = std::max(high, chart->upper);
        }
    }
    if (count == 0)
        return spec;
    spec.yMin = std::max(0.0, std::floor(low / kStep - 0.2) * kStep);
    spec.yMax = std::ceil(high / kStep + 0.2) * kStep;
    for (const ChartSeries& series : {line, centre, upper, lower, within, out}) {
        if (!series.points.empty())
            spec.series.push_back(series);
    }
    spec.summary = stripSentences(record, record.readings.back().batch, now, wording).join(u' ');
    return spec;
}

QStringList stripSentences(const ledger::StripRecord& record, const std::string& batch,
                           chemistry::Instant now, const Wording& wording)
{
    QStringList sentences;
    const int count = static_cast<int>(record.readings.size());
    if (!record.next) {
        sentences << Words::tr("%Ln control strip(s) so far; limits are drawn from the fifth on.",
                               nullptr, count);
    } else {
        const auto marked = record.outOfControl();
        if (marked.empty())
            sentences << Words::tr("All %Ln control strips are within the limits.", nullptr, count);
        else
            sentences << Words::tr("%Ln of %1 control strips is (are) out of control:", nullptr,
                                   static_cast<int>(marked.size()))
                             .arg(wording.locale.toString(count));
        constexpr std::size_t kMostListed = 3;
        for (std::size_t i = marked.size() - std::min(marked.size(), kMostListed);
             i < marked.size(); ++i)
            sentences.back() +=
                (sentences.back().endsWith(u':') ? QStringLiteral(" ") : QStringLiteral("; ")) +
                Words::tr("%1, %2", "strip, how it is out of control")
                    .arg(stripName(record.readings[marked[i]], now, wording),
                         howFar(record, marked[i]));
        if (!marked.empty())
            sentences.back() += u'.';
    }
    if (const auto passed = ledger::overriddenIn(record, batch); !passed.empty())
        sentences << Words::tr("%Ln control strip(s) beyond the limits was (were) passed by hand, "
                               "the last of them %1.",
                               nullptr, static_cast<int>(passed.size()))
                         .arg(stripName(record.readings[passed.back()], now, wording));
    if (const auto reference = ledger::referenceStrip(record, batch))
        sentences << withOneStop(Words::tr("Reference, read fresh: %1.")
                                     .arg(stripName(record.readings[*reference], now, wording)));
    else
        sentences << Words::tr(
            "No reference yet: read a control strip while the developer is fresh.");
    return sentences;
}

QString stripsToCome()
{
    return Words::tr("Develop a control strip in it as you would the next film, read its density, "
                     "and enter it with “Test”. Begin while the developer is fresh: the later ones "
                     "are compared with that one.");
}

} // namespace ullage::app
