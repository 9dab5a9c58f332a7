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
    Capacity,
    KeepsFull,
    KeepsHalf,
    KeepsTray,
    Q10,
    OxygenFactor,
    Silver,
    Bromide,
    FreshClearing,
    SilverLimit,
    TabularFactor,
    Replenish,
};

struct FigureBounds {
    Figure figure;
    std::string_view field;  ///< as the journal spells it
    std::string_view source; ///< key of its line in Solution::sources
    std::string_view shared; ///< key used where that one has no line; empty for none
    double low = 0;
    double high = 0;
    std::string_view unit; ///< as in Error::unit
    bool optional = true;  ///< false: it always has a value
};

/// In the order of Figure, which is the order they are checked in.
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

/// The value in the unit of its bounds; empty where the solution has none.
std::optional<double> value(const Solution& solution, Figure figure);
/// Sets it, unchecked; clearing a figure that always has a value puts its default back.
void setValue(Solution& solution, Figure figure, std::optional<double> value);

/// The source line under `key`, else under `shared`; empty for none.
std::string sourceLine(const Solution& solution, std::string_view key,
                       std::string_view shared = {});
std::string sourceLine(const Solution& solution, Figure figure);

/// How far a figure with this source line can be believed, from how the line begins: "common
/// practice", "from memory", "computed" (in any letter case), else published. Empty for no line.
std::optional<chemistry::Grade> gradeOf(std::string_view sourceLine);

/// The lesser of two: published, computed, common practice, from memory, then none at all.
std::optional<chemistry::Grade> lesser(std::optional<chemistry::Grade> a,
                                       std::optional<chemistry::Grade> b);

} // namespace ullage::formulary
