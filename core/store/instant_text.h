// Moments and dates as the journal writes them: RFC 3339.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <QString>

#include <optional>
#include <string>

namespace ullage::store
{

/// A date and time with a zone, "2026-06-01T10:00:00Z" or "2026-06-01T12:00:00.25+02:00"; digits
/// after the millisecond are dropped. Nothing for another form, a date or time that does not exist
/// (a leap second among them), or a year outside 1900 to 2200.
std::optional<chemistry::Instant> instantFromText(const QString& text);

/// In UTC with a Z; milliseconds only where they are not zero.
QString instantText(chemistry::Instant at);

/// "2026-06-01", in UTC.
QString dateText(chemistry::Instant at);

/// The midnight (UTC) a date begins with; nothing unless it is YYYY-MM-DD and exists, 1900 to 2200.
std::optional<chemistry::Instant> dateFromText(const QString& text);

/// What instantFromText() takes, as an error shows it.
inline constexpr const char* kInstantForm =
    "RFC 3339 with a zone, 1900 to 2200, such as 2026-06-01T10:00:00Z";
inline constexpr const char* kDateForm = "a date, 1900 to 2200, such as 2026-06-01";

} // namespace ullage::store
