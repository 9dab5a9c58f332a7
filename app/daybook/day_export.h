// The day book written out and printed: exactly what its filter lets through, all of it, whether
// it was scrolled into sight or not.
#pragma once

#include "app/daybook/day_words.h"
#include "core/store/day_book.h"

#include <QString>

#include <functional>
#include <vector>

namespace ullage::app
{

/// How rows are worded on the thread that writes them.
struct DayWording {
    formulary::Formulary formulary; ///< a copy: the book's own belongs to the window's thread
    Wording wording;
};

/// Everything the filter lets through, newest first, one row after another. `take` gives up by
/// returning a refusal.
Result<int> eachDayEntry(store::SqlStore& store, const store::DayFilter& filter,
                         const store::Stop& stop,
                         const std::function<Result<void>(const store::DayEntry&)>& take);

/// Writes a file, whole or not at all: a journal for the ending .jsonl (the entries' own lines in
/// order of entry, and what took them back), else CSV (RFC 4180, UTF-8) with the columns at, what,
/// bottles, detail, by, taken_back, newest first, times as RFC 3339; text that a spreadsheet would
/// run gets an apostrophe in front (csv_cell.h). The number of rows.
Result<int> exportDays(store::SqlStore& store, const store::DayFilter& filter,
                       const DayWording& words, const QString& file, const store::Stop& stop);

/// A line of paper.
struct DayPrintLine {
    bool heading = false; ///< a day
    QString time;
    QString title;
    QString detail;
    bool taken = false;
};

/// The lines to print, headings of days among them.
Result<std::vector<DayPrintLine>> dayPrintLines(store::SqlStore& store,
                                                const store::DayFilter& filter,
                                                const DayWording& words, const store::Stop& stop);

/// Copies of the definitions, for another thread.
DayWording dayWording(const formulary::Formulary& formulary, const Wording& wording);

} // namespace ullage::app
