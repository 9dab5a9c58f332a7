// A spreadsheet's rows as lines of a journal, which then come in as any journal does.
#pragma once

#include "app/sheet/sheet_cells.h"
#include "app/sheet/sheet_known.h"
#include "app/sheet/sheet_mapping.h"

#include <QByteArray>

namespace ullage::app
{

/// A row on its way in.
struct SheetRow {
    int row = 0;
    QStringList cells; ///< those that are used and not empty
};

struct SheetComing {
    QByteArray journal;
    std::vector<int> rows; ///< rows[n - 1]: the row that line n of the journal is from; 0 for none
    std::vector<SheetRow> bottles;
    std::vector<SheetRow> films;
    std::vector<SheetRow> tests;
    std::vector<SheetRow> passedOver; ///< totals, titles and remarks between the rows, all cells
    std::vector<SheetRefusal> refused;
    /// What rows need and no column says. They are refused without it, and not one by one.
    std::vector<SheetField> noColumn;
    QStringList unknownSolutions; ///< as the sheet calls them, each once
    bool formatAssumed = false;   ///< a film without a format was taken for kUsualSheetFormat
};

/// What the mapping makes of the sheet. A row is what its kind says, else a film where their number
/// or a format is, a test where a figure or a result of one is, a film where a film's name or speed
/// is, else a bottle. A film's row that has figures of a test too is both: it cleared in the fixer,
/// and its strip was developed. Bottles go by their names: the one of that name that was mixed last
/// by the row's day, of the sheet's or the book's; a bottle without a name is called by its
/// solution, and where no column says the solution its name does. Within a day without times
/// bottles are mixed in the morning, films run at noon, tests made in the evening and bottles
/// discarded at night. Ids come from what the rows say, so that the same rows are the same lines
/// whenever they are read; what was undone since gets other ones. Empty rows are passed over, and
/// told of: sums, headings that stand again, and rows with a single cell.
SheetComing entriesOf(const store::SheetTable& table, const SheetMapping& mapping,
                      const SheetKnown& known);

} // namespace ullage::app
