// The line of a solution, field by field. Figures have their ranges from figures.h, which also
// says where each is from.
#pragma once

#include "core/formulary/described.h"
#include "core/formulary/figures.h"
#include "core/formulary/solution.h"

namespace ullage::formulary
{

inline constexpr std::array<std::string_view, 4> kWearRuleCodes{"none", "per-film", "compound",
                                                                "steps"};

namespace field
{

/// A figure of a solution, in the range of kFigures, under the name it has in its own object.
constexpr FieldDescription figure(std::string_view name, Figure which)
{
    const FigureBounds& range = kFigures[static_cast<std::size_t>(which)];
    return number(name, range.low, range.high, range.unit);
}

} // namespace field

template <>
struct Described<chemistry::WearStep> {
    static constexpr auto fields = std::tuple(
        bound(&chemistry::WearStep::from,
              field::number("from_films_per_litre", 0, chemistry::kMostWear.value(), "films/L")
                  .required()),
        bound(&chemistry::WearStep::factor,
              field::number("factor", chemistry::kLeastWearFactor, chemistry::kMostWearFactor, "")
                  .required()));
};

template <>
struct Described<chemistry::Wear> {
    using Wear = chemistry::Wear;
    using Rule = chemistry::WearRule;
    static constexpr auto fields = std::tuple(
        bound(&Wear::rule, field::code("rule", kWearRuleCodes).required()),
        bound(&Wear::percent,
              field::number("percent", 0, chemistry::kMostWearPercent, "%").required()),
        bound(&Wear::steps, field::objects("steps", kFieldsOf<chemistry::WearStep>).required()));
    static constexpr bool belongs(const Wear& wear, std::string_view field)
    {
        return field == "rule" ||
               (field == "percent" &&
                (wear.rule == Rule::PerFilm || wear.rule == Rule::Compound)) ||
               (field == "steps" && wear.rule == Rule::Steps);
    }
    /// The rule asks for the highest step reached, in whatever order they are written.
    static void settle(Wear& wear);
    /// Refuses as chemistry::check(Wear), fields without "wear." before them.
    static Result<void> together(const Wear& wear);
};

template <>
struct Described<Keeping> {
    static constexpr auto fields =
        std::tuple(bound(&Keeping::full, field::figure("full_days", Figure::KeepsFull)),
                   bound(&Keeping::half, field::figure("half_days", Figure::KeepsHalf)),
                   bound(&Keeping::tray, field::figure("tray_hours", Figure::KeepsTray)));
};

template <>
struct Described<Solution> {
    static constexpr std::string_view type = "solution";
    static constexpr auto fields = std::tuple(
        bound(&Solution::id, field::text("id").required()),
        bound(&Solution::name, field::text("name").required()),
        bound(&Solution::role, field::code("role", kRoleCodes).required()),
        bound(&Solution::capacity, field::figure("capacity_films_per_litre", Figure::Capacity)),
        bound(&Solution::wear, field::object("wear", kFieldsOf<chemistry::Wear>).stated()),
        bound(&Solution::keeping, field::object("keeping", kFieldsOf<Keeping>).implied()),
        bound(&Solution::q10, field::figure("q10", Figure::Q10).stated(1.9)),
        bound(&Solution::oxygenFactor,
              field::figure("oxygen_factor", Figure::OxygenFactor).stated(0.49)),
        bound(&Solution::silverPerFilm,
              field::figure("silver_g_per_film", Figure::Silver).stated()),
        bound(&Solution::bromidePerFilm,
              field::figure("bromide_mg_per_film", Figure::Bromide).stated()),
        bound(&Solution::freshClearing, field::figure("fresh_clearing_s", Figure::FreshClearing)),
        bound(&Solution::silverLimit,
              field::figure("silver_limit_g_per_litre", Figure::SilverLimit)),
        bound(&Solution::tabularFactor, field::figure("tabular_factor", Figure::TabularFactor)),
        bound(&Solution::replenishPerFilm,
              field::figure("replenish_ml_per_film", Figure::Replenish)),
        bound(&Solution::fixerKind, field::code("fixer_kind", kFixerKindCodes).means("acid")),
        bound(&Solution::oneShotPerFilm, field::number("one_shot_ml_per_film", 1, 100'000, "ml")),
        bound(&Solution::fixMin, field::number("fix_min_s", 1, 7200, "s")),
        bound(&Solution::replenisher, field::id("replenisher", Refers::Solution)),
        bound(&Solution::turnoverLimit, field::number("turnover_limit", 0.01, 1000, "")),
        bound(&Solution::form, field::code("form", kFormCodes).means("powder")),
        // Kept: cautions are the same whatever it says, so leaving it aside misleads nobody.
        bound(&Solution::chemicals, field::texts("chemicals").atMost(100)),
        bound(&Solution::replaces, field::id("replaces", Refers::Same)),
        bound(&Solution::sources, field::sources("sources").implied()));
    /// Missing for a half-full time alone and for a replenisher without its rate, Conflict for
    /// times that no positive limits give.
    static Result<void> together(const Solution& solution);
};

} // namespace ullage::formulary
