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

/// Everything the filter lets through, newest first, one row after another; how many there were.
/// `take` gives up by returning a refusal, which is handed on; `stop` is refused as Cancelled.
/// BookDamaged, StoreFailed or NotAsEntered where the book cannot be read on.
Result<int> eachDayEntry(store::SqlStore& store, const store::DayFilter& filter,
                         const store::Stop& stop,
                         const std::function<Result<void>(const store::DayEntry&)>& take);

/// Writes a file, whole or not at all: a journal for the ending .jsonl (the entries' own lines in
/// order of entry, and what took them back), else CSV (RFC 4180, UTF-8), newest first, with when,
/// what, bottles, detail, who and what was taken back in the user's words; times are on the user's
/// clock, whose zone the heading says (app/widgets/shown_table.h); text that a spreadsheet would
/// run gets an apostrophe in front (csv_cell.h). The number of rows. Refuses as eachDayEntry()
/// does, a file that is the open book (BookItself), and one that cannot be written (FileFailed).
Result<int> exportDays(store::SqlStore& store, const store::DayFilter& filter,
                       const DayWording& words, const QString& file, const store::Stop& stop);

/// A line of paper.
struct DayPrintLine {
    bool heading = false; ///< a day
    QString time;         ///< empty for a day, as detail
    QString title;        ///< of a day its heading
    QString detail;
    bool taken = false; ///< struck out
};

/// The lines to print, headings of days among them. Refuses as eachDayEntry() does.
Result<std::vector<DayPrintLine>> dayPrintLines(store::SqlStore& store,
                                                const store::DayFilter& filter,
                                                const DayWording& words, const store::Stop& stop);

/// A copy of the formulary and the units and forms of numbers, for another thread.
DayWording dayWording(const formulary::Formulary& formulary, const Wording& wording);

} // namespace ullage::app
