// Times of a run's steps, planned and real: a line of its own beside the films of the run.
#pragma once

#include "core/chemistry/quantities.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// A step that was begun. `kind` is a code without blanks (see run_sheet.h).
struct StepDone {
    std::string kind;
    chemistry::Seconds planned; ///< after readings of the thermometer
    chemistry::Seconds real;    ///< as it went, holds counted in
    friend bool operator==(const StepDone&, const StepDone&) = default;
};

struct RunTimes {
    std::string run;
    std::vector<StepDone> steps;
    std::optional<chemistry::Celsius> temperature;    ///< of the developer
    std::string tank;                                 ///< its name, or empty
    std::optional<chemistry::Millilitres> tankVolume; ///< 1 to 1 000 000 mL
    std::string id;                                   ///< the run, if it was given none
};

} // namespace ullage::ledger
