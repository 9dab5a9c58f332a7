#include "core/formulary/solution.h"

#include "core/chemistry/oxygen.h"

#include <algorithm>

namespace ullage::formulary
{

std::string_view code(Role role) { return kRoleCodes[static_cast<std::size_t>(role)]; }

std::optional<Role> roleFromCode(std::string_view code)
{
    const auto found = std::find(kRoleCodes.begin(), kRoleCodes.end(), code);
    if (found == kRoleCodes.end()) {
        return std::nullopt;
    }
    return static_cast<Role>(found - kRoleCodes.begin());
}

chemistry::MillimolesPerLitre saturation(const Solution& solution)
{
    return chemistry::solutionSaturation(solution.oxygenFactor);
}

std::optional<chemistry::KeepingLimits> keepingLimits(const Solution& solution,
                                                      const chemistry::AirConstants& constants)
{
    if (!solution.keeping.full) {
        return std::nullopt;
    }
    const auto limits = chemistry::calibrate({*solution.keeping.full, solution.keeping.half},
                                             saturation(solution), constants);
    return limits ? std::optional(*limits) : std::nullopt;
}

namespace
{

struct Ranged {
    const char* field;
    std::optional<double> value;
    double low;
    double high;
    const char* unit;
};

Result<void> checkKeeping(const Solution& solution)
{
    const Keeping& keeping = solution.keeping;
    if (keeping.half && !keeping.full) {
        return refuse({.code = ErrorCode::Missing, .field = "keeping.full_days"});
    }
    if (!keeping.full) {
        return {};
    }
    const auto limits = chemistry::calibrate({*keeping.full, keeping.half}, saturation(solution));
    return limits ? Result<void>{} : refuse(limits.error());
}

template <class Q>
std::optional<double> plain(const std::optional<Q>& quantity)
{
    return quantity ? std::optional(quantity->value()) : std::nullopt;
}

} // namespace

Result<void> check(const Solution& solution)
{
    if (solution.id.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "id"});
    }
    if (solution.name.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "name"});
    }
    const Ranged figures[] = {
        {"capacity_films_per_litre", plain(solution.capacity), 0.01, 1000, "films/L"},
        {"keeping.full_days", plain(solution.keeping.full), 0.01, 36525, "days"},
        {"keeping.half_days", plain(solution.keeping.half), 0.01, 36525, "days"},
        {"keeping.tray_hours", plain(solution.keeping.tray), 0.01, 87600, "h"},
        {"q10", solution.q10, 1, 5, ""},
        {"oxygen_factor", solution.oxygenFactor, 0.01, 1.5, ""},
        {"silver_g_per_film", solution.silverPerFilm, 0, 5, "g"},
        {"bromide_mg_per_film", solution.bromidePerFilm, 0, 1000, "mg"},
        {"fresh_clearing_s", plain(solution.freshClearing), 1, 7200, "s"},
        {"silver_limit_g_per_litre", plain(solution.silverLimit), 0.001, 50, "g/L"},
        {"tabular_factor", solution.tabularFactor, 1, 10, ""},
        {"replenish_ml_per_film", plain(solution.replenishPerFilm), 1, 1000, "ml"},
    };
    for (const Ranged& figure : figures) {
        if (!figure.value) {
            continue;
        }
        if (auto fine =
                checkRange(figure.field, *figure.value, figure.low, figure.high, figure.unit);
            !fine) {
            return fine;
        }
    }
    if (auto fine = chemistry::check(solution.wear); !fine) {
        return fine;
    }
    return checkKeeping(solution);
}

} // namespace ullage::formulary
