#include "core/store/calendar_text.h"

#include "core/store/calendar_zone.h"

#include <QDateTime>

#include <algorithm>

namespace ullage::store
{

namespace
{

// Whoever subscribes reads again long before.
constexpr std::chrono::days kZoneAhead{5 * 366};

QDateTime utc(chemistry::Instant at)
{
    return QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count(), Qt::UTC);
}

QByteArray moment(chemistry::Instant at)
{
    return utc(at).toString(QStringLiteral("yyyyMMdd'T'HHmmss'Z'")).toLatin1();
}

// RFC 5545, 3.3.11. Other control characters have no place in a text.
QByteArray escaped(const QString& text)
{
    QString safe;
    QString lines = text;
    lines.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
    for (const QChar c : std::as_const(lines)) {
        if (c == u'\n' || c == u'\r') {
            safe += QStringLiteral("\\n");
        } else if (c == u'\\' || c == u';' || c == u',') {
            safe += QLatin1Char('\\') + QString(c);
        } else if (c >= u' ' && c != QChar(0x7f)) {
            safe += c;
        } else if (c == u'\t') {
            safe += u' ';
        }
    }
    return safe.toUtf8();
}

// RFC 5545, 3.1: no line of more than 75 octets, the blank that goes on with one counted in.
QByteArray folded(const QByteArray& line)
{
    constexpr qsizetype kMost = 75;
    const auto within = [](char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; };
    QByteArray text;
    qsizetype at = 0;
    qsizetype room = kMost;
    while (line.size() - at > room) {
        qsizetype end = at + room;
        while (end > at + 1 && within(line[end])) {
            --end;
        }
        text += line.mid(at, end - at) + "\r\n ";
        at = end;
        room = kMost - 1;
    }
    return text + line.mid(at) + "\r\n";
}

// The earliest time that is to be written by the zone's clock; none if nothing is.
std::optional<chemistry::Instant> firstByClock(const std::vector<CalendarEvent>& events,
                                               const QTimeZone& zone)
{
    std::optional<chemistry::Instant> first;
    for (const CalendarEvent& event : events) {
        if (zone != QTimeZone::utc() && !event.wholeDay && !event.rule.empty()) {
            first = std::min(first.value_or(event.at), event.at);
        }
    }
    return first;
}

} // namespace

QByteArray calendarText(const std::vector<CalendarEvent>& events, chemistry::Instant stamp,
                        const QString& name, const QTimeZone& zone)
{
    const auto first = firstByClock(events, zone);
    QByteArray text;
    const auto line = [&](const QByteArray& content) { text += folded(content); };
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Ullage//Ullage//EN");
    line("CALSCALE:GREGORIAN");
    line("NAME:" + escaped(name)); // RFC 7986
    if (first) {
        for (const QByteArray& one :
             zoneLines(zone, *first, std::max(*first, stamp) + kZoneAhead)) {
            line(one);
        }
    }
    for (const CalendarEvent& event : events) {
        line("BEGIN:VEVENT");
        line("UID:" + escaped(QString::fromStdString(event.uid)));
        line("DTSTAMP:" + moment(stamp));
        if (event.wholeDay) {
            line("DTSTART;VALUE=DATE:" + shownBy(zone, event.at).left(8));
        } else if (first && !event.rule.empty()) {
            line("DTSTART;TZID=" + zone.id() + ':' + shownBy(zone, event.at));
        } else {
            line("DTSTART:" + moment(event.at));
        }
        if (!event.rule.empty()) {
            line("RRULE:" + QByteArray::fromStdString(event.rule));
        }
        line("SUMMARY:" + escaped(event.summary));
        if (!event.description.isEmpty()) {
            line("DESCRIPTION:" + escaped(event.description));
        }
        if (event.films) {
            line(QByteArray(kFilmsField) + ':' + QByteArray::number(*event.films, 'g', 17));
        }
        line("TRANSP:TRANSPARENT"); // nobody is busy by it
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    return text;
}

} // namespace ullage::store
