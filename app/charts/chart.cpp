#include "app/charts/chart.h"

#include <cmath>

namespace ullage::app
{

double chartDay(const QDateTime& time)
{
    const QDate date = time.date();
    return chartDay(date) + time.time().msecsSinceStartOfDay() / 86'400'000.0;
}

double chartDay(QDate date) { return static_cast<double>(QDate(1970, 1, 1).daysTo(date)); }

QDate chartDate(double day)
{
    return QDate(1970, 1, 1).addDays(static_cast<qint64>(std::floor(day)));
}

} // namespace ullage::app
