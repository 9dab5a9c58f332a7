// The core's calendar months against Qt's calendar: here, because the core's own tests know no Qt.
#include "core/chemistry/quantities.h"

#include <QDateTime>

#include <gtest/gtest.h>

using namespace ullage;

TEST(CalendarMonths, agreeWithQtsOnEveryDayOfNineYears)
{
    const QDate first(2023, 1, 1);
    const QTime time(19, 30);
    for (QDate day = first; day < first.addYears(9); day = day.addDays(1)) {
        const chemistry::Instant at{
            std::chrono::milliseconds(QDateTime(day, time, Qt::UTC).toMSecsSinceEpoch())};
        for (const int months : {1, 2, 3, 6, 11, 12, 24}) {
            const QDateTime then(day.addMonths(months), time, Qt::UTC);
            ASSERT_EQ(chemistry::addMonths(at, months).time_since_epoch().count(),
                      then.toMSecsSinceEpoch())
                << day.toString(Qt::ISODate).toStdString() << " + " << months;
        }
    }
}
