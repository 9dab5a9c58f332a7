// How the cells of a sheet write numbers and days, told from all of them together.
#pragma once

#include "app/sheet/sheet_mapping.h"

namespace ullage::app
{

/// What stands before decimals. Both, or `either` alone: nobody can tell.
struct SheetSigns {
    bool comma = false;
    bool point = false;
    bool either = false; ///< a number with three figures behind its only sign
};

/// Of three figures behind the sign a volume's unit tells: thousandths of a millilitre are not
/// measured, and bottles of a thousand litres are not kept.
SheetSigns signsOf(const store::SheetTable& table, const SheetMapping& mapping);

/// Which place of a day in figures is the day.
struct SheetDays {
    bool dayFirst = false;
    bool monthFirst = false;
    bool yearFirst = false;
    bool either = false; ///< a day that can be two
};

SheetDays daysOf(const store::SheetTable& table, const SheetMapping& mapping);

/// Whether the cells of a column can be what its heading says: numbers have figures, kinds of rows
/// are known ones, and a time by itself ("Time", which may be how long film was developed) is one
/// of the day where some cell says so: "7:30 PM", "19:30", "20 Uhr".
bool cellsFit(SheetField field, const QString& heading, const QStringList& cells);

} // namespace ullage::app
