#include "core/ledger/replenish.h"

#include "core/chemistry/replenishment.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Millilitres;

std::optional<RunTopUp> topUpAfter(const Batch& batch, chemistry::Films films, Millilitres lost)
{
    const auto rate = batch.solution->replenishPerFilm;
    if (!rate || films.value() <= 0) {
        return std::nullopt;
    }
    const Millilitres there = batch.volume - lost;
    const Millilitres wanted = *rate * films.value();
    const Millilitres room = batch.vessel->capacity - there;
    const Millilitres drawn = std::max(Millilitres(0), wanted - room);
    if (drawn >= there) {
        return std::nullopt;
    }
    return RunTopUp{batch.id, wanted, drawn, {}, {}, batch.solution->replenisher};
}

std::optional<Millilitres> replenisherDue(const Batch& batch)
{
    const formulary::Solution& solution = *batch.solution;
    if (solution.replenisher.empty() || !solution.replenishPerFilm) {
        return std::nullopt;
    }
    const chemistry::Films worn = batch.wear * chemistry::litres(batch.volume);
    constexpr double kLeast = 1e-9;
    return worn.value() > kLeast ? std::optional(*solution.replenishPerFilm * worn.value())
                                 : std::nullopt;
}

double turnovers(const Batch& batch) { return batch.replenished / batch.mixedVolume; }

std::optional<chemistry::FilmsPerLitre> wearAtRest(const formulary::Solution& solution)
{
    if (solution.replenishPerFilm && !solution.replenisher.empty()) {
        return chemistry::FilmsPerLitre(0); // each film is made up for
    }
    return solution.replenishPerFilm
               ? std::optional(chemistry::steadyWear(*solution.replenishPerFilm))
               : std::nullopt;
}

bool restHolds(const formulary::Solution& solution)
{
    const auto rest = wearAtRest(solution);
    const auto capacity = formulary::capacityOf(solution);
    return rest && (!capacity || *rest < *capacity);
}

} // namespace ullage::ledger
