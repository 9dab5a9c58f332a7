// Dates as iCalendar (RFC 5545), for calendars that subscribe to a file.
#pragma once

#include "core/chemistry/quantities.h"

#include <QByteArray>
#include <QString>
#include <QTimeZone>

#include <optional>
#include <string>
#include <vector>

namespace ullage::store
{

struct CalendarEvent {
    std::string uid;       ///< the same for the same thing: a calendar replaces what it had
    chemistry::Instant at; ///< to the second
    bool wholeDay = false; ///< the day of `at`, without a time
    QString summary;
    QString description; ///< or empty
    std::string rule;    ///< the value of an RRULE, or empty
    std::optional<double> films;
    friend bool operator==(const CalendarEvent&, const CalendarEvent&) = default;
};

/// One calendar with an event for each, in this order. `stamp`: when it is written. Days, and the
/// times of what comes again, are those of `zone`, which is described in it then; other times are
/// written in UTC. Lines end with CR LF and are folded at 75 octets, never within a character;
/// texts are escaped.
QByteArray calendarText(const std::vector<CalendarEvent>& events, chemistry::Instant stamp,
                        const QString& name, const QTimeZone& zone = QTimeZone::utc());

/// Of how many films an event says that it is: a field of ours that others keep and pass over.
inline constexpr const char* kFilmsField = "X-ULLAGE-FILMS";

} // namespace ullage::store
