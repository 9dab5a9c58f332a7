#include "app/words/local_calendar.h"

#include "app/words/moment_text.h"

namespace ullage::app
{

namespace
{

chemistry::Instant startOf(QDate day) { return instantOf(day.startOfDay()); }

} // namespace

ledger::Calendar localCalendar()
{
    return {[](chemistry::Instant at) {
                const QDate date = localDate(at);
                return std::chrono::year(date.year()) /
                       std::chrono::month(static_cast<unsigned>(date.month()));
            },
            [](std::chrono::year_month_day day) {
                return startOf(
                    firstOf(day.year() / day.month())
                        .addDays(static_cast<int>(static_cast<unsigned>(day.day())) - 1));
            }};
}

cupboard::WallClock wallClock()
{
    return {[](chemistry::Instant at) {
                const QDateTime local = localTime(at);
                return instantOf(QDateTime(local.date(), local.time(), Qt::UTC));
            },
            [](chemistry::Instant shown) {
                const QDateTime utc =
                    QDateTime::fromMSecsSinceEpoch(shown.time_since_epoch().count(), Qt::UTC);
                return instantOf(QDateTime(utc.date(), utc.time()));
            }};
}

QDate firstOf(std::chrono::year_month month)
{
    return {static_cast<int>(month.year()), static_cast<int>(static_cast<unsigned>(month.month())),
            1};
}

ledger::Period periodOf(QDate from, QDate until)
{
    ledger::Period period;
    if (from.isValid())
        period.from = startOf(from);
    if (until.isValid())
        period.until = startOf(until);
    return period;
}

} // namespace ullage::app
