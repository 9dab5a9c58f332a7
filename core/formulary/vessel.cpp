#include "core/formulary/vessel.h"

#include "core/formulary/codes.h"
#include "core/formulary/field_check.h"
#include "core/formulary/vessel_fields.h"

#include <algorithm>

namespace ullage::formulary
{

using chemistry::Millilitres;

std::string_view code(Material material)
{
    return kMaterialCodes[static_cast<std::size_t>(material)];
}

std::optional<Material> materialFromCode(std::string_view code)
{
    return fromCode<Material>(kMaterialCodes, code);
}

chemistry::Enclosure enclosure(const Vessel& vessel, const chemistry::AirConstants& constants)
{
    const chemistry::WallConstant& wall =
        chemistry::kWalls[static_cast<std::size_t>(vessel.material)];
    const double permeability =
        vessel.permeability.value_or(chemistry::at(wall.permeability, constants.permeability));
    const auto thickness = vessel.wall.value_or(chemistry::Millimetres(wall.thickness.value));
    const auto cap = vessel.capLeak.value_or(
        chemistry::CubicCentimetresPerDay(chemistry::at(chemistry::kCapLeak, constants.capLeak)));
    return chemistry::enclosure(vessel.capacity, permeability, thickness, cap);
}

Millilitres airAbove(const Vessel& vessel, Millilitres volume, std::optional<Millilitres> left)
{
    const Millilitres room = std::max(Millilitres(0), vessel.capacity - volume);
    if (left) {
        return std::min(*left, room);
    }
    return vessel.squeezed ? Millilitres(0) : room;
}

Result<void> check(const Vessel& vessel) { return checkDescribed(vessel); }

} // namespace ullage::formulary
