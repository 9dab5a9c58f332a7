// The user's calendar, for what is added up by months and days.
#pragma once

#include "core/cupboard/recurrence.h"
#include "core/ledger/statistics.h"

#include <QDate>

namespace ullage::app
{

/// Months and days of the user's clock.
ledger::Calendar localCalendar();

/// The user's clock, for what comes again.
cupboard::WallClock wallClock();

/// The first day of a month.
QDate firstOf(std::chrono::year_month month);
/// From that day on until before `until`; an invalid day leaves that end open.
ledger::Period periodOf(QDate from, QDate until);

} // namespace ullage::app
