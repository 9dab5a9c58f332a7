// Dates as iCalendar, for calendars that subscribe to the file.
#include "app/calendar/book_calendar.h"
#include "app/cli/command_line.h"
#include "app/cli/result_file.h"

namespace ullage::app
{

int calendarCommand(const Call& call)
{
    if (!call.takes({}, 1)) {
        return kWrongUsage;
    }
    const QString name = call.arguments().operands.front();
    if (const auto refused = refusedName(call, name, QStringLiteral(".ics"))) {
        return *refused;
    }
    int code = kDone;
    const auto open = call.open(store::Access::Read, code);
    if (!open) {
        return code;
    }
    const CalendarRequest request{.now = call.around().clock()};
    std::vector<ledger::Unread> leftOut;
    const auto events = calendarEvents(*open->book, request, &leftOut);
    if (!events) {
        return call.refused(events.error());
    }
    call.tellDamage(leftOut, *open->store);
    return deliver(call, name, calendarFile(*events, request.now));
}

} // namespace ullage::app
