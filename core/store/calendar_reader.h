// Events of an iCalendar file (RFC 5545), to be taken for known work.
#pragma once

#include "core/chemistry/result.h"
#include "core/store/calendar_text.h"

#include <QByteArray>

#include <vector>

namespace ullage::store
{

/// The events in order, by start, rule, summary, description and films; what else they say is
/// passed over, and so are other parts of a calendar. A time with a zone's name is taken by that
/// zone, one without a zone, and the beginning of a whole day, by that of this computer.
/// Refuses, with the line, what is no calendar or ends within (Malformed `VCALENDAR`), an event
/// without UID or start (Missing), a start that is none or in a zone that is not known (Malformed
/// `DTSTART`), and dates that come or stay away one by one (NotSuitable: RDATE, EXDATE,
/// RECURRENCE-ID, EXRULE), as nothing of ours says so. With `leftOut`, what is wrong with one event
/// leaves out that event: the refusal stands there, its subject is what the event is called.
Result<std::vector<CalendarEvent>> readCalendar(const QByteArray& text,
                                                std::vector<Error>* leftOut = nullptr);

} // namespace ullage::store
