// What a solution is: how it wears, keeps and what it takes from film, each figure with its source.
#pragma once

#include "core/chemistry/keeping.h"
#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"
#include "core/chemistry/wear.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace ullage::formulary
{

enum class Role { Developer, Stop, Fixer, WashAid, WettingAgent, Other };

/// The role as the journal writes it ("wash-aid"), and back; all codes in the order of the enum.
inline constexpr std::array<std::string_view, 6> kRoleCodes{"developer", "stop",          "fixer",
                                                            "wash-aid",  "wetting-agent", "other"};
std::string_view code(Role role);
std::optional<Role> roleFromCode(std::string_view code);

/// Published keeping times. Everything is optional; a half-full time needs a full-bottle time.
struct Keeping {
    std::optional<chemistry::Days> full;  ///< full bottle, closed
    std::optional<chemistry::Days> half;  ///< half-full bottle, closed
    std::optional<chemistry::Hours> tray; ///< open tray; shown, not used for dates
    friend bool operator==(const Keeping&, const Keeping&) = default;
};

struct Solution {
    std::string id;
    std::string name;
    Role role = Role::Other;
    std::optional<chemistry::FilmsPerLitre> capacity;
    chemistry::Wear wear;
    Keeping keeping;
    double q10 = 1.9;           ///< development time for 10 °C colder ÷ time; 1 to 5
    double oxygenFactor = 0.49; ///< solubility of oxygen against fresh water; 0.01 to 1.5
    double silverPerFilm = 0;   ///< g silver that one film leaves behind; 0 to 5
    double bromidePerFilm = 0;  ///< mg bromide as KBr from one film; 0 to 1000
    std::optional<chemistry::Seconds> freshClearing;     ///< clearing time when fresh, 20 °C
    std::optional<chemistry::GramsPerLitre> silverLimit; ///< the user's choice, off by default
    std::optional<double> tabularFactor; ///< fixing ÷ clearing time for tabular grains; 1 to 10
    /// Fresh solution added for each film to hold the wear steady; 1 to 1000 mL, or none.
    std::optional<chemistry::Millilitres> replenishPerFilm;
    std::map<std::string, std::string> sources; ///< figure's name → where it is from
    /// Id of the solution this one is the edited copy of, or empty. What is mixed already keeps the
    /// figures it was mixed by.
    std::string replaces;

    friend bool operator==(const Solution&, const Solution&) = default;
};

/// Oxygen that the solution holds in equilibrium with air at 20 °C.
chemistry::MillimolesPerLitre saturation(const Solution& solution);

/// What spends it by standing; empty without a full-bottle keeping time. The solution must have
/// passed check(), which proves that the limits exist.
std::optional<chemistry::KeepingLimits>
keepingLimits(const Solution& solution, const chemistry::AirConstants& constants = {});

/// Refuses an empty id or name, any figure out of range, and keeping times that no positive limits
/// can give; the error names the field as the journal spells it.
Result<void> check(const Solution& solution);

} // namespace ullage::formulary
