// The dates of a book as events of other calendars: what a file holds that they subscribe to.
#pragma once

#include "core/cupboard/known_dates.h"
#include "core/cupboard/plan_for.h"
#include "core/ledger/book.h"
#include "core/store/calendar_text.h"

#include <QByteArray>
#include <QLocale>

#include <vector>

namespace ullage::app
{

/// What a calendar is asked for.
struct CalendarRequest {
    chemistry::Instant now;
    cupboard::DateKinds kinds = cupboard::everyDateKind();
    cupboard::Beside beside; ///< for what is to be mixed and bought
    QLocale locale;
};

/// Refuses what the book does. Where nothing can be planned, because work has no developer, what is
/// to be mixed and bought is left out and the rest is there. So is what is about bottles that
/// cannot be read, which stand in `leftOut`. For any thread.
Result<std::vector<store::CalendarEvent>>
calendarEvents(ledger::Book& book, const CalendarRequest& request,
               std::vector<ledger::Unread>* leftOut = nullptr);

/// The file with them, as it is written now.
QByteArray calendarFile(const std::vector<store::CalendarEvent>& events, chemistry::Instant now);

} // namespace ullage::app
