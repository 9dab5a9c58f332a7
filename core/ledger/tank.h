// A developing tank: how much it is filled with and how much film it takes at once.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"
#include "core/ledger/event.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::ledger
{

/// Room for one format. Formats share the tank: two of four places for one leave half for another.
struct TankPlaces {
    std::string format;                         ///< see chemistry/films.h
    int most = 1;                               ///< pieces at once; 1 to 100
    std::optional<chemistry::Millilitres> each; ///< solution that covers one piece; 1 to 100 000 mL
    friend bool operator==(const TankPlaces&, const TankPlaces&) = default;
};

struct Tank {
    std::string name;
    chemistry::Millilitres volume;  ///< poured in; 10 to 100 000 mL
    std::vector<TankPlaces> places; ///< nothing listed: not known, and not checked
    friend bool operator==(const Tank&, const Tank&) = default;
};

/// Refuses an empty name (Missing), a volume or places out of range (OutOfRange, NotFinite), an
/// unknown format (UnknownKind) or one listed twice (Conflict).
Result<void> check(const Tank& tank);

enum class TankFault {
    NoReel,            ///< takes no film of this format
    TooMany,           ///< number of pieces, and what fits beside the other formats
    TooLittleSolution, ///< millilitres poured, and millilitres that cover the load
};
inline constexpr std::array<std::string_view, 3> kTankFaultCodes{"no-reel", "too-many",
                                                                 "too-little-solution"};
std::string_view code(TankFault fault);

struct TankFinding {
    TankFault fault{};
    std::string format; ///< empty for TooLittleSolution
    double number = 0;  ///< pieces or mL asked for
    double limit = 0;   ///< pieces or mL the tank gives
};

/// What stands against this load in this tank; empty when it fits, or when nothing is known. Strips
/// (chemistry::filmStrips()) for which no places are listed are not looked at: what a reel takes is
/// a matter of their width.
std::vector<TankFinding> findings(const Tank& tank, const Load& load);

} // namespace ullage::ledger
