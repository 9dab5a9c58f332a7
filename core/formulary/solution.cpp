#include "core/formulary/solution.h"

#include "core/chemistry/oxygen.h"
#include "core/formulary/figures.h"

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

} // namespace

Result<void> check(const Solution& solution)
{
    if (solution.id.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "id"});
    }
    if (solution.name.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "name"});
    }
    for (const FigureBounds& figure : kFigures) {
        const auto number = value(solution, figure.figure);
        if (!number) {
            continue;
        }
        if (auto fine = checkRange(figure.field.data(), *number, figure.low, figure.high,
                                   figure.unit.data());
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
