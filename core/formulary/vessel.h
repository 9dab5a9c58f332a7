// A bottle: how much it holds and what its wall and cap let through.
#pragma once

#include "core/chemistry/keeping.h"
#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace ullage::formulary
{

/// Of its wall. What each lets through and how thick it usually is stands in kWalls.
enum class Material { Glass, Pet, Hdpe, Ldpe, Pp };

inline constexpr std::array<std::string_view, 5> kMaterialCodes{"glass", "pet", "hdpe", "ldpe",
                                                                "pp"};
std::string_view code(Material material);
std::optional<Material> materialFromCode(std::string_view code);

struct Vessel {
    std::string id;
    std::string name;
    chemistry::Millilitres capacity; ///< to the brim; 1 to 100 000 mL
    Material material = Material::Glass;
    bool squeezed = false;                      ///< the user always squeezes the air out
    std::optional<chemistry::Millimetres> wall; ///< 0.01 to 20; else the material's
    std::optional<double> permeability; ///< cm³·mm/(m²·day·atm), 0 to 10 000; else the material's
    std::optional<chemistry::CubicCentimetresPerDay> capLeak; ///< 0 to 100; else kCapLeak
    /// Id of the vessel this one stands in for, or empty. What is in that one keeps its figures.
    std::string replaces;
    bool withdrawn = false; ///< stands in for `replaces` by taking it out of the book

    friend bool operator==(const Vessel&, const Vessel&) = default;
};

/// Its flows of oxygen, the material's figures where it has none of its own. `constants` move only
/// those of the material and the usual cap, never its own.
chemistry::Enclosure enclosure(const Vessel& vessel, const chemistry::AirConstants& constants = {});

/// Air above `volume`: what the user said was left, 0 in a squeezed bottle, else all the room there
/// is; never more than that room, never negative.
chemistry::Millilitres airAbove(const Vessel& vessel, chemistry::Millilitres volume,
                                std::optional<chemistry::Millilitres> left);

/// Refuses an empty id or name (Missing) and any figure out of range (OutOfRange, NotFinite); a
/// withdrawn one needs only its id and the one it replaces. Fields as the journal spells them.
Result<void> check(const Vessel& vessel);

} // namespace ullage::formulary
