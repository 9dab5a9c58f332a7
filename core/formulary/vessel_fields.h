// The line of a vessel, field by field.
#pragma once

#include "core/formulary/described.h"
#include "core/formulary/vessel.h"

namespace ullage::formulary
{

template <>
struct Described<Vessel> {
    static constexpr std::string_view type = "vessel";
    static constexpr auto fields = std::tuple(
        bound(&Vessel::id, field::text("id").required()),
        bound(&Vessel::name, field::text("name").required()),
        bound(&Vessel::capacity, field::number("capacity_ml", 1, 100'000, "ml").required()),
        bound(&Vessel::material, field::code("material", kMaterialCodes).required()),
        bound(&Vessel::squeezed, field::truth("squeezed").stated()),
        bound(&Vessel::wall, field::number("wall_mm", 0.01, 20, "mm")),
        bound(&Vessel::permeability,
              field::number("permeability", 0, 10'000, "cm³·mm/(m²·day·atm)")),
        bound(&Vessel::capLeak, field::number("cap_cm3_day", 0, 100, "cm³/day")),
        bound(&Vessel::replaces, field::id("replaces", Refers::Same)),
        bound(&Vessel::withdrawn, field::truth("withdrawn").implied()));
};

} // namespace ullage::formulary
