// Names of files as people give them: without an ending they get the usual one.
#pragma once

#include <QString>

namespace ullage::app
{

inline const QString kBookEnding = QStringLiteral(".ullage");
inline const QString kJournalEnding = QStringLiteral(".jsonl");
inline const QString kTableEnding = QStringLiteral(".csv");
inline const QString kCalendarEnding = QStringLiteral(".ics");

/// `file`, and `ending` after it where it has none of its own.
QString withEnding(const QString& file, const QString& ending);

} // namespace ullage::app
