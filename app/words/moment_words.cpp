// What a moment is called, and how it is shown so that it can be read again.
#include "app/words/moment_reading.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(MomentWords)
};

// As written here and as translated: the English ones are always understood.
QStringList both(const char* words, const QString& translated)
{
    QStringList all = QString::fromUtf8(words).split(u',');
    for (const QString& one : translated.split(u',')) {
        if (!one.trimmed().isEmpty() && !all.contains(one.trimmed()))
            all << one.trimmed();
    }
    return all;
}

// The locale's short form, but with the whole year: "01/06/26" can be read in three ways.
QString dateFormatOf(const QLocale& locale)
{
    QString date = locale.dateFormat(QLocale::ShortFormat);
    if (!date.contains(QLatin1String("yyyy")))
        date.replace(QLatin1String("yy"), QLatin1String("yyyy"));
    return date;
}

constexpr const char* kIsoDay = "yyyy-MM-dd";
constexpr const char* kIsoTime = "HH:mm";

// ISO 8601 has figures of its own.
QString writtenIn(const QString& format, QDate date, QTime time, const QLocale& locale)
{
    const bool iso = format.startsWith(QLatin1String(kIsoDay));
    const QDateTime shown(date, time.isValid() ? time : QTime(0, 0), Qt::UTC);
    return (iso ? QLocale::c() : locale).toString(shown, format);
}

// Whether it is read back as the same day, whatever day it is now.
bool isReadBack(const QString& text, QDate date, QTime time, const QLocale& locale)
{
    static const MomentWords kNone;
    const auto read =
        readMoment(text, chemistry::Instant(std::chrono::hours(24 * 365 * 30)), locale, kNone);
    return read.isUnderstood() && read.date == date && (!time.isValid() || read.time == time) &&
           read.timeWritten == time.isValid();
}

QString formatOf(QDate date, QTime time, const QLocale& locale)
{
    QString format = dateFormatOf(locale);
    if (time.isValid())
        format += u' ' + locale.timeFormat(QLocale::ShortFormat);
    if (isReadBack(writtenIn(format, date, time, locale), date, time, locale))
        return format;
    const QString iso = QLatin1String(kIsoDay);
    return time.isValid() ? iso + u' ' + QLatin1String(kIsoTime) : iso;
}

} // namespace

// Several words for one thing are divided by commas; a translation has as many as it needs.
MomentWords MomentWords::translated()
{
    MomentWords words;
    words.now = both("now", Words::tr("now", "typed as a moment; several words, comma between"));
    words.today = both("today", Words::tr("today", "typed; several words, comma between"));
    words.yesterday =
        both("yesterday", Words::tr("yesterday", "typed; several words, comma between"));
    words.tomorrow = both("tomorrow", Words::tr("tomorrow", "typed; several words, comma between"));
    words.dayBeforeYesterday =
        both("the day before yesterday,day before yesterday",
             Words::tr("day before yesterday", "typed; several words, comma between"));
    words.noon = both("noon", Words::tr("noon", "typed; several words, comma between"));
    words.midnight = both("midnight", Words::tr("midnight", "typed; several words, comma between"));
    words.last = both("last", Words::tr("last", "typed before a weekday; several, comma between"));
    words.fillers =
        both("at,on", Words::tr("at,on", "typed between day and time; several, comma between"));
    words.afterHour =
        both("o'clock", Words::tr("o'clock", "typed after an hour; several, comma between"));
    words.daysAgo =
        both("%1 days ago,%1 day ago,%1 d ago",
             Words::tr("%1 days ago,%1 day ago", "typed; several forms, comma between"));
    words.hoursAgo =
        both("%1 hours ago,%1 hour ago,%1 h ago",
             Words::tr("%1 hours ago,%1 hour ago", "typed; several forms, comma between"));
    words.minutesAgo =
        both("%1 minutes ago,%1 minute ago,%1 min ago",
             Words::tr("%1 minutes ago,%1 minute ago", "typed; several forms, comma between"));
    return words;
}

QString fieldText(QDate date, QTime time, const QLocale& locale)
{
    return writtenIn(formatOf(date, time, locale), date, time, locale);
}

QString fieldText(QDate date, const QLocale& locale)
{
    return writtenIn(formatOf(date, {}, locale), date, {}, locale);
}

QString figuresOf(QDate date, QTime time, const QLocale& locale)
{
    QString order;
    bool quoted = false;
    for (const QChar c : formatOf(date, time, locale)) {
        if (c == u'\'')
            quoted = !quoted;
        const QChar figure = c == u'h' || c == u'H' ? QChar(u'h') : c;
        if (!quoted && QStringLiteral("dMyhm").contains(figure) && !order.endsWith(figure))
            order += figure;
    }
    return order;
}

QString understoodDay(QDate date, const QLocale& locale)
{
    return Words::tr("%1 %2", "weekday, date")
        .arg(locale.dayName(date.dayOfWeek(), QLocale::ShortFormat), yearDateText(date, locale));
}

QString understoodText(QDate date, QTime time, const QLocale& locale)
{
    return Words::tr("%1, %2", "day, time")
        .arg(understoodDay(date, locale), locale.toString(time, QLocale::ShortFormat));
}

QString agoText(chemistry::Instant moment, chemistry::Instant now)
{
    if (moment > now)
        return Words::tr("still to come");
    const auto minutes = std::chrono::floor<std::chrono::minutes>(now - moment).count();
    if (minutes < 1)
        return Words::tr("just now");
    if (minutes < 60)
        return Words::tr("%Ln minute(s) ago", nullptr, static_cast<int>(minutes));
    const auto days = localDate(moment).daysTo(localDate(now));
    if (days < 1 || minutes < 12 * 60)
        return Words::tr("%Ln hour(s) ago", nullptr, static_cast<int>(minutes / 60));
    return Words::tr("%Ln day(s) ago", nullptr, static_cast<int>(days));
}

} // namespace ullage::app
