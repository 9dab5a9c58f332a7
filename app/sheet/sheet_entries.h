// A spreadsheet's rows as lines of a journal, which then come in as any journal does.
#pragma once

#include "app/sheet/sheet_known.h"
#include "app/sheet/sheet_mapping.h"

#include <QByteArray>

namespace ullage::app
{

/// Why a row cannot come in.
struct SheetRefusal {
    int row = 0;    ///< as a spreadsheet counts them, from 1
    QString column; ///< its heading; empty where it is about the whole row
    QString value;  ///< as it stands in the cell
    Error error;
};

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
    std::vector<SheetRefusal> refused;
    std::vector<int> sums;        ///< rows that only add others up: left out
    QStringList unknownSolutions; ///< as the sheet calls them, each once
    bool formatAssumed = false;   ///< a film without a format was taken for kUsualSheetFormat
};

/// Where the sheet has no format: counts as one film, as 120 does.
inline constexpr const char* kUsualSheetFormat = "135-36";

/// What the mapping makes of the sheet. A row is what its kind says, else a test where a figure or
/// a result of one is there, a film where a number, a format or a film's name is, else a bottle.
/// Bottles go by their names: the one of that name that was mixed last by the row's day, of the
/// sheet's or the book's. Within a day without times bottles are mixed in the morning, films run at
/// noon, tests made in the evening and bottles discarded at night. Ids come from what the rows say,
/// so that the same rows are the same lines whenever they are read; what was undone since gets
/// other ones. Empty rows are passed over, and so is a row without bottle and day that says it is a
/// sum.
SheetComing entriesOf(const store::SheetTable& table, const SheetMapping& mapping,
                      const SheetKnown& known);

} // namespace ullage::app
