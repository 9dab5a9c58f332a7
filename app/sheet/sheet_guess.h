// What a spreadsheet seems to say: where its headings stand, what its columns are, how it writes
// numbers and days.
#pragma once

#include "app/sheet/sheet_mapping.h"

namespace ullage::app
{

/// What nothing in the sheet tells: it must be asked.
struct SheetOpen {
    bool encoding = false;
    bool delimiter = false;
    bool decimal = false;
    bool days = false;

    [[nodiscard]] bool any() const { return encoding || delimiter || decimal || days; }
};

struct SheetGuess {
    SheetMapping mapping; ///< `reading` is what the table was read with
    SheetOpen open;
};

/// Headings are the row, of the first thirty, with most words that a heading is known by; an empty
/// one there takes the word above it, where cells were merged; a unit goes behind that, and so does
/// a word that means something only with it. A
/// column is what its heading says as far as its cells fit that. A comma or a point is a decimal
/// sign where anything but three figures follows, or its unit tells; days go by the first place
/// that is above 12, or by points between the figures, which put the day first.
SheetGuess guessMapping(const store::SheetTable& table);

/// The headings in `row` (from 1) with those of merged cells above; as many as the sheet has
/// columns. Without a row: empty ones.
QStringList headingsOf(const store::SheetTable& table, int row);

/// The same questions where the columns were decided by somebody: decimal sign and order of days
/// as in guessMapping().
SheetOpen stillOpen(const store::SheetTable& table, const SheetMapping& mapping);

} // namespace ullage::app
