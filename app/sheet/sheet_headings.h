// What the headings of a stranger's spreadsheet say, in English or German whatever language is
// spoken.
#pragma once

#include "app/sheet/sheet_field.h"

#include <QString>

#include <optional>

namespace ullage::app
{

/// What a heading means by its words: "Angesetzt am", "Volume (ml)", "ISO". Nothing for a heading
/// that is none of them, and for a cell with figures in it, which is no heading.
std::optional<SheetField> sheetFieldFromHeading(const QString& heading);

/// The same without words that say nothing by themselves: "Flasche Nr.", "Number of rolls", "Date
/// mixed". Asked where the heading as it stands means nothing.
std::optional<SheetField> sheetFieldFromLooseHeading(const QString& heading);

/// Whether it says "size" of nobody knows what: of a bottle, or a film's. It is taken for a volume
/// unless the cells say otherwise.
bool isSizeOfSomething(const QString& heading);

/// The unit that a heading names for its numbers ("Volume (l)", "Menge in ml"), as readQuantity()
/// understands it behind a number; empty where it names none.
QString unitInHeading(const QString& heading);
/// Whether it names a unit and nothing else, as below a merged cell: "(l)", "in ml".
bool isUnitAlone(const QString& heading);

} // namespace ullage::app
