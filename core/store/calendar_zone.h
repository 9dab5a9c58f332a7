// A time zone as iCalendar describes it, for times that come again by its clock.
#pragma once

#include "core/chemistry/quantities.h"

#include <QByteArray>
#include <QByteArrayList>
#include <QTimeZone>

namespace ullage::store
{

/// The lines of a VTIMEZONE (RFC 5545, 3.6.5), without line ends: how far its clock is ahead of UTC
/// at `from`, and each time that it is put until `until`. Its TZID is the zone's own id.
QByteArrayList zoneLines(const QTimeZone& zone, chemistry::Instant from, chemistry::Instant until);

/// "20261208T190000": what its clock shows.
QByteArray shownBy(const QTimeZone& zone, chemistry::Instant at);

} // namespace ullage::store
