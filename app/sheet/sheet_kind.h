// What a row of a spreadsheet is about.
#pragma once

#include <QString>

#include <initializer_list>
#include <optional>
#include <string>

namespace ullage::app
{

enum class RowKind { BottleRow, FilmRow, TestRow };

/// What a cell calls a row, in English or German; nothing for a word that is none of them.
std::optional<RowKind> rowKindFrom(const QString& cell);

/// Where the sheet has no format: counts as one film, as 120 does.
inline constexpr const char* kUsualSheetFormat = "135-36";

/// The film format that a cell names, as the journal spells it: "135", "35 mm, 24 exp.", "6×9 cm";
/// empty for anything else.
std::string sheetFormatFrom(const QString& cell);

/// Whether a cell says that its row adds others up: "Total", "Summe:" …
bool isTotal(const QString& cell);

/// Whether a cell says that there is nothing: empty, a dash, "n/a".
bool saysNothing(const QString& cell);

/// Whether a cell says one of these words, whatever the size of its letters and a colon or stop at
/// its end.
bool saysOneOf(const QString& cell, std::initializer_list<const char*> words);

} // namespace ullage::app
