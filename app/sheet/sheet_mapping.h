// How a spreadsheet is to be read, as a person decided it and as a file keeps it.
#pragma once

#include "app/sheet/sheet_field.h"
#include "app/words/moment_reading.h"
#include "core/store/sheet_table.h"

#include <QByteArray>

#include <map>
#include <vector>

namespace ullage::app
{

struct SheetColumnMeans {
    QString heading; ///< as it stands in the sheet
    SheetField field = SheetField::Unused;
    friend bool operator==(const SheetColumnMeans&, const SheetColumnMeans&) = default;
};

struct SheetMapping {
    store::SheetAsked reading;
    int headingRow = 0; ///< as a spreadsheet counts, from 1; 0: the sheet has no headings
    bool decimalComma = false;
    DayOrder order = DayOrder::DayFirst;
    std::vector<SheetColumnMeans> columns; ///< in the order of the sheet's
    /// What the sheet calls a solution → what the formulary calls it.
    std::map<QString, QString> solutions;
    friend bool operator==(const SheetMapping&, const SheetMapping&) = default;
};

/// JSON: `ullage-sheet` (1), and where they are known `encoding` (IANA), `delimiter` (one
/// character), `heading_row`, `decimal` ("," or "."), `days` ("day-month-year",
/// "month-day-year", "year-month-day"), `columns` ([{`heading`, `field`}], sheet_field.h has the
/// fields' codes) and `solutions` ({sheet's name: formulary's name}).
QByteArray mappingText(const SheetMapping& mapping);

/// Refuses what is no such text: Malformed or UnknownKind, the field named.
Result<SheetMapping> readMapping(const QByteArray& text);

/// A mapping made for a sheet of the same headings, wherever they stand.
bool fitsHeadings(const SheetMapping& mapping, const QStringList& headings);

} // namespace ullage::app
