#include "app/words/moment_text.h"

#include "app/words/number_text.h"
#include "core/chemistry/keeping.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

} // namespace

QDateTime localTime(chemistry::Instant moment)
{
    return QDateTime::fromMSecsSinceEpoch(moment.time_since_epoch().count());
}

QDate localDate(chemistry::Instant moment) { return localTime(moment).date(); }

chemistry::Instant instantOf(const QDateTime& local)
{
    return chemistry::Instant(std::chrono::milliseconds(local.toMSecsSinceEpoch()));
}

QString dayText(chemistry::Instant moment, chemistry::Instant now, const QLocale& locale)
{
    return dateText(localDate(moment), localDate(now), locale);
}

QString aboutDayText(chemistry::Instant moment, chemistry::Instant now, const QLocale& locale)
{
    return aboutDateText(localDate(moment), localDate(now), locale);
}

QString momentText(chemistry::Instant moment, chemistry::Instant now, const QLocale& locale)
{
    return Words::tr("%1, %2", "date, time of day")
        .arg(dayText(moment, now, locale),
             locale.toString(localTime(moment).time(), QLocale::ShortFormat));
}

QString keepingText(chemistry::Days time, const QLocale& locale)
{
    if (const auto months = chemistry::wholeMonths(time); months && *months > 0)
        return Words::tr("%Ln month(s)", nullptr, *months);
    if (time.value() >= 2 || std::abs(time.value() - 1) < 1e-6)
        return Words::tr("%Ln day(s)", nullptr, static_cast<int>(std::lround(time.value())));
    return Words::tr("%1 hours").arg(numberText(time.value() * 24, 0, locale));
}

} // namespace ullage::app
