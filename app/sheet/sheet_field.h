// What a column of a spreadsheet can be.
#pragma once

#include <QString>

#include <array>
#include <optional>
#include <string_view>

namespace ullage::app
{

enum class SheetField {
    Unused,
    Kind,       ///< of the row: bottle, film, test
    BottleName, ///< its name; of a film the developer's bottle, of a test the bottle that was
                ///< tested
    Fixer,      ///< name of the fixer's bottle
    Solution,
    Vessel,
    Capacity,
    Volume,
    Date,      ///< when it was mixed, run or tested
    TimeOfDay, ///< of that day, where it has a column of its own
    FilmsBefore,
    Discarded, ///< a day
    Films,
    Format,
    Film,
    ExposureIndex,
    Seconds, ///< to clear
    Temperature,
    Density,
    Factor,
    Passed,
    Notes,
    By,
};
inline constexpr std::size_t kSheetFields = 23;

/// As the journal spells it, where it is a field of it; as a mapping's file spells it.
inline constexpr std::array<std::string_view, kSheetFields> kSheetFieldCodes{
    "unused",    "kind", "batch",       "fixer",         "solution",  "vessel", "capacity_ml",
    "volume_ml", "at",   "time_of_day", "films_before",  "discarded", "films",  "format",
    "name",      "ei",   "seconds",     "temperature_c", "density",   "factor", "passed",
    "text",      "by"};

std::string_view sheetCode(SheetField field);
std::optional<SheetField> sheetFieldFromCode(std::string_view code);

/// For choosing: "Clearing time", "not used".
QString sheetFieldName(SheetField field);

} // namespace ullage::app
