#include "core/formulary/solution.h"

#include "core/chemistry/oxygen.h"
#include "core/formulary/codes.h"
#include "core/formulary/field_check.h"
#include "core/formulary/solution_fields.h"

#include <algorithm>
#include <cctype>

namespace ullage::formulary
{

std::string_view code(Role role) { return kRoleCodes[static_cast<std::size_t>(role)]; }

std::optional<Role> roleFromCode(std::string_view code) { return fromCode<Role>(kRoleCodes, code); }

chemistry::MillimolesPerLitre saturation(const Solution& solution)
{
    return chemistry::solutionSaturation(solution.oxygenFactor);
}

namespace
{

// For a solution with a full-bottle time.
chemistry::KeepingTimes keepingTimes(const Solution& solution)
{
    const Keeping& keeping = solution.keeping;
    return {*keeping.full, keeping.half, keeping.tray, solution.role == Role::Developer};
}

} // namespace

std::optional<chemistry::KeepingLimits> keepingLimits(const Solution& solution,
                                                      const chemistry::AirConstants& constants)
{
    if (!solution.keeping.full) {
        return std::nullopt;
    }
    const auto limits =
        chemistry::calibrate(keepingTimes(solution), saturation(solution), constants);
    return limits ? std::optional(*limits) : std::nullopt;
}

std::optional<chemistry::FilmsPerLitre> capacityOf(const Solution& solution)
{
    if (solution.capacity || solution.role != Role::Fixer) {
        return solution.capacity;
    }
    return chemistry::FilmsPerLitre(solution.fixerKind == FixerKind::Alkaline
                                        ? chemistry::kFixerCapacityAlkaline.value
                                        : chemistry::kFixerCapacityAcid.value);
}

const chemistry::Constant& q10Range(const Solution& solution)
{
    const auto ascorbate = [](const std::string& chemical) {
        std::string small = chemical;
        std::transform(small.begin(), small.end(), small.begin(), [](unsigned char letter) {
            return static_cast<char>(std::tolower(letter));
        });
        return small.find("ascorb") != std::string::npos;
    };
    const auto& chemicals = solution.chemicals;
    return std::any_of(chemicals.begin(), chemicals.end(), ascorbate) ? chemistry::kQ10Ascorbate
                                                                      : chemistry::kQ10;
}

void Described<chemistry::Wear>::settle(chemistry::Wear& wear)
{
    std::stable_sort(wear.steps.begin(), wear.steps.end(),
                     [](const auto& a, const auto& b) { return a.from < b.from; });
}

Result<void> Described<chemistry::Wear>::together(const chemistry::Wear& wear)
{
    auto fine = chemistry::check(wear);
    if (!fine) {
        // The way to it is told by whoever holds the wear.
        fine.error().field.erase(0, std::string_view("wear.").size());
    }
    return fine;
}

Result<void> Described<Solution>::together(const Solution& solution)
{
    const Keeping& keeping = solution.keeping;
    if (keeping.half && !keeping.full) {
        return refuse({.code = ErrorCode::Missing, .field = "keeping.full_days"});
    }
    if (!solution.replenisher.empty() && !solution.replenishPerFilm) {
        return refuse({.code = ErrorCode::Missing, .field = "replenish_ml_per_film"});
    }
    if (!keeping.full) {
        return {};
    }
    const auto limits = chemistry::calibrate(keepingTimes(solution), saturation(solution));
    return limits ? Result<void>{} : refuse(limits.error());
}

Result<void> check(const Solution& solution) { return checkDescribed(solution); }

} // namespace ullage::formulary
