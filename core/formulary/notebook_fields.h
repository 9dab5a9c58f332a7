// The line of a development time, field by field.
#pragma once

#include "core/formulary/described.h"
#include "core/formulary/notebook.h"

namespace ullage::formulary
{

template <>
struct Described<chemistry::TimeAtTemperature> {
    using Pair = chemistry::TimeAtTemperature;
    static constexpr auto fields = std::tuple(
        bound(&Pair::temperature, field::number("temperature_c", chemistry::kCoolestBase.value(),
                                                chemistry::kWarmestBase.value(), "°C")
                                      .required()),
        bound(&Pair::time, field::number("seconds", chemistry::kShortestBase.value(),
                                         chemistry::kLongestBase.value(), "s")
                               .required()));
};

template <>
struct Described<DevelopmentFigure> {
    static constexpr std::string_view type = "development-time";
    static constexpr auto fields = std::tuple(
        bound(&DevelopmentFigure::id, field::text("id").required()),
        bound(&DevelopmentFigure::film, field::text("film").required()),
        bound(&DevelopmentFigure::developer, field::id("developer", Refers::Solution).required()),
        bound(&DevelopmentFigure::dilution, field::text("dilution")),
        bound(&DevelopmentFigure::exposureIndex, field::number("ei", 0.1, 1'000'000, "")),
        bound(
            &DevelopmentFigure::times,
            field::objects("times", kFieldsOf<chemistry::TimeAtTemperature>).atMost(20).required()),
        bound(&DevelopmentFigure::source, field::source("source")),
        bound(&DevelopmentFigure::notes, field::prose("notes")),
        bound(&DevelopmentFigure::replaces, field::id("replaces", Refers::Same)),
        bound(&DevelopmentFigure::withdrawn, field::truth("withdrawn").implied()));
    /// Conflict for two times at one temperature.
    static Result<void> together(const DevelopmentFigure& figure);
};

} // namespace ullage::formulary
