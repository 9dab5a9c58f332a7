// A shelf of bottles that are filled from one another.
#pragma once

#include "core/ledger/fold_together.h"
#include "tests/core/ledger/ledger_kit.h"

#include <array>
#include <gtest/gtest.h>

namespace ullage::ledger
{

using chemistry::litres;
using chemistry::Millilitres;

/// Several bottles; a filling enters both of its halves.
struct Bottles : History {
    std::string happen(const std::string& batch, double days, Happening what)
    {
        const std::string id = "e" + std::to_string(entered.size());
        entered.push_back({id, batch, at(days), std::move(what), {}});
        entered.back().entry = static_cast<std::int64_t>(entered.size());
        return id;
    }
    void fresh(const std::string& batch, double days, double volume,
               const std::string& solution = "dev", const std::string& vessel = "glass")
    {
        happen(batch, days, Mixed{solution, vessel, Millilitres(volume)});
    }
    void films(const std::string& batch, double days, double count)
    {
        happen(batch, days, Processed{Load{{{"120", count}}, {}}, {}, {}, false, {}});
    }
    void pour(const std::string& from, const std::string& to, double days, double volume)
    {
        happen(from, days, Drawn{Millilitres(volume), "", to});
        happen(to, days, ToppedUp{Millilitres(volume), from});
    }
    void decant(const std::string& from, const std::string& to, double days, double volume,
                const std::string& solution = "dev", const std::string& vessel = "small")
    {
        happen(from, days, Drawn{Millilitres(volume), "", to});
        Mixed mixed{solution, vessel, Millilitres(volume)};
        mixed.from = from;
        happen(to, days, mixed);
    }
    [[nodiscard]] Batch of(const std::string& batch, double days) const
    {
        const auto folded = foldTogether(batch, entered, at(days), formulary);
        EXPECT_TRUE(folded) << folded.error().field;
        EXPECT_TRUE(folded && *folded) << batch;
        return **folded;
    }
    /// What both together hold: films, grams of silver, mg of bromide.
    [[nodiscard]] std::array<double, 3> held(const std::vector<std::string>& batches,
                                             double days) const
    {
        std::array<double, 3> sum{};
        for (const std::string& one : batches) {
            const Batch batch = of(one, days);
            const double volume = litres(batch.volume).value();
            sum[0] += batch.wear.value() * volume;
            sum[1] += batch.silver.value() * volume;
            sum[2] += batch.bromide.value() * volume;
        }
        return sum;
    }
};

} // namespace ullage::ledger
