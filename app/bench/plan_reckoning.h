// From what the user entered to a plan, a sheet and a run that can be started.
#pragma once

#include "core/ledger/run_state.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace ullage::app
{

/// As a choice: no bottle from the shelf for this bath.
inline constexpr const char* kNoBottle = "-";

struct PlanWishes {
    std::vector<ledger::RunFilm> films;
    ledger::Tank tank;
    std::optional<chemistry::Celsius> temperature;
    std::vector<chemistry::TimeAtTemperature> pairs;
    double parts = 0; ///< developer 1+n; 0 for stock
    bool oneShot = false;
    bool tabularGrain = false;
    ledger::RunTemplate sheet; ///< with the washing chosen
    std::optional<chemistry::Celsius> washWater;
    std::map<formulary::Role, std::string> chosen; ///< batch, kNoBottle, or not there
};

struct Reckoning {
    std::vector<ledger::Judged> judged;
    ledger::RunPlan plan;
    std::optional<ledger::RunSheet> sheet;
    std::optional<Error> refusal; ///< why there is no sheet

    [[nodiscard]] const ledger::Judged* taken(formulary::Role role) const;
    /// Nothing stands against starting but what the user may decide.
    [[nodiscard]] bool canStart() const { return sheet && !plan.blocked(); }
};

Reckoning reckon(const PlanWishes& wishes, std::vector<ledger::Judged> judged);

/// The run, ready to start. Only when canStart().
ledger::RunState readyRun(const PlanWishes& wishes, const Reckoning& reckoning,
                          chemistry::Instant now);

} // namespace ullage::app
