// The user's time zone, for a while.
#pragma once

#include <QByteArray>
#include <QtGlobal>

#include <ctime>

namespace ullage::app
{

/// Puts a zone in force until it goes; the zone before is put back.
class InZone
{
public:
    explicit InZone(const char* zone) : m_before(qgetenv("TZ")) { set(zone); }
    ~InZone() { set(m_before); }
    InZone(const InZone&) = delete;
    InZone& operator=(const InZone&) = delete;

private:
    static void set(const QByteArray& zone)
    {
        if (zone.isEmpty())
            qunsetenv("TZ");
        else
            qputenv("TZ", zone);
        tzset();
    }
    QByteArray m_before;
};

} // namespace ullage::app
