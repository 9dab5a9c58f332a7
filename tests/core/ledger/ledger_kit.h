// A bottle's history for tests: solutions, vessels and events at days after a fixed start.
#pragma once

#include "core/formulary/formulary.h"
#include "core/ledger/batch.h"
#include "core/ledger/verdict.h"

#include <chrono>
#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace ullage::ledger
{

inline chemistry::Instant startOfTests()
{
    using namespace std::chrono;
    return sys_days(year(2026) / 6 / 1) + hours(10);
}

/// One batch, "b", with a formulary of a developer ("dev"), a fixer ("fixer") and bottles of 1030
/// mL in glass ("glass", "squeezed"), HDPE ("hdpe"), and a small one of 500 mL ("small").
struct History {
    formulary::Formulary formulary;
    std::vector<Event> entered;

    History()
    {
        formulary.add(developer());
        formulary.add(fixer());
        for (const auto& [id, capacity, material, squeezed] :
             {std::tuple{"glass", 1030.0, formulary::Material::Glass, false},
              {"squeezed", 1030.0, formulary::Material::Glass, true},
              {"hdpe", 1030.0, formulary::Material::Hdpe, false},
              {"small", 500.0, formulary::Material::Glass, false}}) {
            formulary.add(vessel(id, capacity, material, squeezed));
        }
    }

    static formulary::Solution developer()
    {
        formulary::Solution solution;
        solution.id = "dev";
        solution.name = "MQ borax developer";
        solution.role = formulary::Role::Developer;
        solution.capacity = chemistry::FilmsPerLitre(10);
        solution.wear = {chemistry::WearRule::PerFilm, 10, {}};
        solution.keeping = {chemistry::Days(182.625), chemistry::Days(60.875), {}};
        solution.bromidePerFilm = 50;
        return solution;
    }

    static formulary::Solution fixer()
    {
        formulary::Solution solution;
        solution.id = "fixer";
        solution.name = "Acid fixer";
        solution.role = formulary::Role::Fixer;
        solution.capacity = chemistry::FilmsPerLitre(20);
        solution.silverPerFilm = 0.15;
        solution.oxygenFactor = 0.49;
        return solution;
    }

    static formulary::Vessel vessel(const std::string& id, double capacity,
                                    formulary::Material material, bool squeezed)
    {
        formulary::Vessel result;
        result.id = result.name = id;
        result.capacity = chemistry::Millilitres(capacity);
        result.material = material;
        result.squeezed = squeezed;
        return result;
    }

    [[nodiscard]] static chemistry::Instant at(double days)
    {
        return chemistry::addDays(startOfTests(), chemistry::Days(days));
    }

    std::string add(double days, Happening what, std::optional<double> airLeft = {})
    {
        const std::string id = "e" + std::to_string(entered.size());
        const auto air = airLeft ? std::optional(chemistry::Millilitres(*airLeft)) : std::nullopt;
        entered.push_back({id, "b", at(days), std::move(what), air});
        return id;
    }

    std::string mix(const std::string& solution, double millilitres,
                    const std::string& vessel = "glass")
    {
        return add(0, Mixed{solution, vessel, chemistry::Millilitres(millilitres), {}, {}, false});
    }

    std::string run(double days, double films, std::optional<double> used = {}, double lost = 0)
    {
        const auto volume = used ? std::optional(chemistry::Millilitres(*used)) : std::nullopt;
        return add(
            days,
            Processed{Load{{{"120", films}}, {}}, volume, chemistry::Millilitres(lost), false, {}});
    }

    Result<std::optional<Batch>> fold(double days) const
    {
        return foldUntil(entered, at(days), formulary);
    }

    /// The batch then; the history must be possible.
    [[nodiscard]] Batch batchAt(chemistry::Instant time) const
    {
        auto folded = foldUntil(entered, time, formulary);
        EXPECT_TRUE(folded) << folded.error().field << " refused";
        EXPECT_TRUE(folded && *folded) << "not mixed yet";
        return **folded;
    }
    [[nodiscard]] Batch batch(double days) const { return batchAt(at(days)); }
};

} // namespace ullage::ledger
