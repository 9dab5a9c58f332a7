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
#include <vector>

namespace ullage::formulary
{

/// What it does; decides which rules and figures speak of it.
enum class Role { Developer, Stop, Fixer, WashAid, WettingAgent, Other };

/// The role as the journal writes it ("wash-aid"), and back; all codes in the order of the enum.
inline constexpr std::array<std::string_view, 6> kRoleCodes{"developer", "stop",          "fixer",
                                                            "wash-aid",  "wetting-agent", "other"};
std::string_view code(Role role);
std::optional<Role> roleFromCode(std::string_view code);

/// What a fixer is made with; its capacity by default is to go by it.
enum class FixerKind { Acid, Alkaline };
inline constexpr std::array<std::string_view, 2> kFixerKindCodes{"acid", "alkaline"};

/// How what it is mixed from comes; of a packet likewise.
enum class Form { Powder, Liquid, Crystals };
inline constexpr std::array<std::string_view, 3> kFormCodes{"powder", "liquid", "crystals"};

/// Published keeping times, each 0.01 days or hours or more; 100 years, in a tray 10, at most.
/// Everything is optional; a half-full time needs a full-bottle time.
struct Keeping {
    std::optional<chemistry::Days> full;  ///< full bottle, closed
    std::optional<chemistry::Days> half;  ///< half-full bottle, closed
    std::optional<chemistry::Hours> tray; ///< a litre in an open 8×10 in tray
    friend bool operator==(const Keeping&, const Keeping&) = default;
};

struct Solution {
    std::string id;
    std::string name;
    Role role = Role::Other;
    std::optional<chemistry::FilmsPerLitre> capacity; ///< 0.01 to 1000; empty: not known
    chemistry::Wear wear;
    Keeping keeping;
    double q10 = 1.9;           ///< development time for 10 °C colder ÷ time; 1 to 5
    double oxygenFactor = 0.49; ///< solubility of oxygen against fresh water; 0.01 to 1.5
    double silverPerFilm = 0;   ///< g silver that one film leaves behind; 0 to 5
    double bromidePerFilm = 0;  ///< mg bromide as KBr from one film; 0 to 1000
    std::optional<chemistry::Seconds> freshClearing;     ///< when fresh, 20 °C; 1 to 7200 s
    std::optional<chemistry::GramsPerLitre> silverLimit; ///< the user's choice; 0.001 to 50
    std::optional<double> tabularFactor; ///< fixing ÷ clearing time for tabular grains; 1 to 10
    /// Fresh solution added for each film to hold the wear steady; 1 to 1000 mL, or none.
    std::optional<chemistry::Millilitres> replenishPerFilm;
    std::map<std::string, std::string> sources; ///< figure's name → where it is from
    /// Id of the solution this one is the edited copy of, or empty. What is mixed already keeps the
    /// figures it was mixed by.
    std::string replaces;

    std::optional<FixerKind> fixerKind; ///< of a fixer; acid where it is not said
    /// Taken for each film when it is poured away after one use; 1 to 100 000 mL.
    std::optional<chemistry::Millilitres> oneShotPerFilm;
    std::optional<chemistry::Seconds> fixMin; ///< the packet's shortest fixing time; 1 to 7200 s
    std::string replenisher; ///< id of the solution it is topped up with, or empty; needs a rate
    std::optional<double> turnoverLimit; ///< replenisher ÷ volume first mixed; 0.01 to 1000

    /// A powder where it is not said. A liquid has nothing to dissolve: it is clear when it is
    /// mixed.
    std::optional<Form> form;
    std::vector<std::string> chemicals; ///< what it contains, at most 100; not shown

    friend bool operator==(const Solution&, const Solution&) = default;
};

/// Oxygen that the solution holds in equilibrium with air at 20 °C: fresh water's × oxygenFactor.
chemistry::MillimolesPerLitre saturation(const Solution& solution);

/// What spends it by standing; for anything but a developer age alone, unless it has a half-full
/// time. Empty without a full-bottle keeping time. The solution must have
/// passed check(), which proves that the limits exist under the usual constants; under others there
/// may be none, and it is empty too.
std::optional<chemistry::KeepingLimits>
keepingLimits(const Solution& solution, const chemistry::AirConstants& constants = {});

/// What is published of the Q10 of such a developer: kQ10Ascorbate if ascorbate or ascorbic acid is
/// among its chemicals (in English, as the journal writes them), else kQ10.
const chemistry::Constant& q10Range(const Solution& solution);

/// Films per litre it does: its own figure, else what is usual for a fixer of its kind.
std::optional<chemistry::FilmsPerLitre> capacityOf(const Solution& solution);

/// Refuses an empty id or name, a half-full time without a full-bottle one and a replenisher
/// without its rate (Missing), any figure
/// out of range (OutOfRange, NotFinite), wear as chemistry::check() does, and keeping times that no
/// positive limits can give (Conflict); the error names the field as the journal spells it. Whether
/// other solutions it names exist is the Book's business.
Result<void> check(const Solution& solution);

} // namespace ullage::formulary
