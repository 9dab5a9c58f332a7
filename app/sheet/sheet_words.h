// What a spreadsheet's reading leaves open or refuses, in words.
#pragma once

#include "app/sheet/sheet_entries.h"
#include "app/sheet/sheet_guess.h"

#include <QStringList>

namespace ullage::app
{

/// Whether a file is read as a spreadsheet, by how its name ends: .csv, .tsv or .txt.
bool isSheetName(const QString& name);

/// A sentence for each question that nothing in the sheet answers.
QStringList openQuestions(const SheetOpen& open);
/// "pencil.csv:12: volume_ml: … (column “Volume”)", for the command line.
QString refusalLine(const SheetRefusal& refusal, const QString& file);
/// "Read as windows-1252, with semicolons between cells …", then a line for each column.
QStringList understoodLines(const SheetMapping& mapping);
/// Headings of columns that say something and are not used; empty where all are.
QString unusedText(const SheetMapping& mapping, const store::SheetTable& table);
/// What no column says and rows need; empty where all is there.
QString noColumnText(const SheetComing& coming);
/// What stands behind file and row in the command line's lines: "pencil.csv:12: …".
QString placed(const QString& file, int row, const QString& what);
/// Why a row whose ids the book has with other content is refused.
QString cameInOtherwise();
/// "3 bottles, 12 rows of film, 2 tests"; what there is none of is left out.
QString comingText(const SheetComing& coming);

} // namespace ullage::app
