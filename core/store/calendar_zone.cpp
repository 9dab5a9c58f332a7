#include "core/store/calendar_zone.h"

#include <QDateTime>

#include <cstdlib>

namespace ullage::store
{

namespace
{

const QString kShown = QStringLiteral("yyyyMMdd'T'HHmmss");

QDateTime utc(chemistry::Instant at)
{
    return QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count(), Qt::UTC);
}

// "+0100", with seconds where there are any.
QByteArray offset(int seconds)
{
    const int all = std::abs(seconds);
    QByteArray text = seconds < 0 ? "-" : "+";
    for (const int part : {all / 3600, all / 60 % 60, all % 60})
        text += QByteArray::number(part).rightJustified(2, '0');
    return all % 60 == 0 ? text.left(5) : text;
}

// RFC 5545 counts the hour that it begins by the clock before it.
void observe(QByteArrayList& lines, bool daylight, const QDateTime& begin, int before, int after)
{
    const QByteArray part = daylight ? "DAYLIGHT" : "STANDARD";
    lines << "BEGIN:" + part << "DTSTART:" + begin.addSecs(before).toString(kShown).toLatin1()
          << "TZOFFSETFROM:" + offset(before) << "TZOFFSETTO:" + offset(after) << "END:" + part;
}

} // namespace

QByteArrayList zoneLines(const QTimeZone& zone, chemistry::Instant from, chemistry::Instant until)
{
    QByteArrayList lines{"BEGIN:VTIMEZONE", "TZID:" + zone.id()};
    const QDateTime first = utc(from);
    int ahead = zone.offsetFromUtc(first);
    observe(lines, zone.isDaylightTime(first), first, ahead, ahead);
    for (const auto& put : zone.transitions(first, utc(until))) {
        if (put.offsetFromUtc == ahead)
            continue;
        observe(lines, put.daylightTimeOffset != 0, put.atUtc.toUTC(), ahead, put.offsetFromUtc);
        ahead = put.offsetFromUtc;
    }
    return lines << "END:VTIMEZONE";
}

QByteArray shownBy(const QTimeZone& zone, chemistry::Instant at)
{
    return utc(at).toTimeZone(zone).toString(kShown).toLatin1();
}

} // namespace ullage::store
