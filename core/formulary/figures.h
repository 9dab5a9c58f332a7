// The figures of a solution one by one: what each is called in the journal, its range, its source.
//
// Whatever lists, edits or explains the figures of a solution goes through this table, so that the
// bounds shown are the bounds that check() holds them to.
#pragma once

#include "core/chemistry/constants.h"
#include "core/formulary/solution.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace ullage::formulary
{

enum class Figure {
    Capacity,      ///< films a litre it does until it is spent
    KeepsFull,     ///< in a full bottle, closed
    KeepsHalf,     ///< in a half-full bottle, closed
    KeepsTray,     ///< in an open tray
    Q10,           ///< development time for 10 °C colder ÷ time
    OxygenFactor,  ///< solubility of oxygen against fresh water
    Silver,        ///< that a film leaves behind
    Bromide,       ///< that a film leaves behind, as KBr
    FreshClearing, ///< clearing time when fresh, 20 °C
    SilverLimit,   ///< silver above which the user discards it
    TabularFactor, ///< fixing ÷ clearing time for tabular grains
    Replenish,     ///< fresh solution added for each film
};

struct FigureBounds {
    Figure figure;
    std::string_view field;  ///< as the journal spells it
    std::string_view source; ///< key of its line in Solution::sources
    std::string_view shared; ///< key used where that one has no line; empty for none
    double low = 0;          ///< smallest value allowed
    double high = 0;         ///< largest value allowed
    std::string_view unit;   ///< as in Error::unit; empty for a plain ratio
    bool optional = true;    ///< false: it always has a value
};

/// In the order of Figure, which is the order they are checked in. The ranges keep slips of the pen
/// out: conventions, no source.
inline constexpr std::array<FigureBounds, 12> kFigures{{
    {Figure::Capacity, "capacity_films_per_litre", "capacity", "", 0.01, 1000, "films/L"},
    {Figure::KeepsFull, "keeping.full_days", "keeping", "", 0.01, 36525, "days"},
    {Figure::KeepsHalf, "keeping.half_days", "keeping_half", "keeping", 0.01, 36525, "days"},
    {Figure::KeepsTray, "keeping.tray_hours", "keeping_tray", "keeping", 0.01, 87600, "h"},
    {Figure::Q10, "q10", "q10", "", 1, 5, "", false},
    {Figure::OxygenFactor, "oxygen_factor", "oxygen_factor", "", 0.01, 1.5, "", false},
    {Figure::Silver, "silver_g_per_film", "silver", "", 0, 5, "g", false},
    {Figure::Bromide, "bromide_mg_per_film", "bromide", "", 0, 1000, "mg", false},
    {Figure::FreshClearing, "fresh_clearing_s", "fresh_clearing", "", 1, 7200, "s"},
    {Figure::SilverLimit, "silver_limit_g_per_litre", "silver_limit", "", 0.001, 50, "g/L"},
    {Figure::TabularFactor, "tabular_factor", "tabular_factor", "", 1, 10, ""},
    {Figure::Replenish, "replenish_ml_per_film", "replenish", "", 1, 1000, "ml"},
}};

const FigureBounds& bounds(Figure figure);

/// The value in the unit of its bounds, not rounded; empty where the solution has none.
std::optional<double> value(const Solution& solution, Figure figure);
/// Sets it, unchecked; clearing a figure that always has a value puts its default back.
void setValue(Solution& solution, Figure figure, std::optional<double> value);

/// The source line under `key`, else under `shared`, as it was entered; empty for none.
std::string sourceLine(const Solution& solution, std::string_view key,
                       std::string_view shared = {});
/// The same by the figure's own keys.
std::string sourceLine(const Solution& solution, Figure figure);

/// Whether the line names a publication: by a year, a page, a section or an edition, as a
/// leaflet or data sheet, or by an address on the net. The day of a test is no year.
bool namesPublication(std::string_view sourceLine);

/// How far a figure with this source line can be believed, from how the line begins: "common
/// practice", "from memory", "computed", "published" (in any letter case); published too where it
/// names a publication. Empty for any other line: what tells neither is not graded. A darkroom's
/// own tests ("own tests, …") are not either.
std::optional<chemistry::Grade> gradeOf(std::string_view sourceLine);

/// The less believable of two: published, computed, common practice, from memory, then none at all.
std::optional<chemistry::Grade> lesser(std::optional<chemistry::Grade> a,
                                       std::optional<chemistry::Grade> b);

} // namespace ullage::formulary
