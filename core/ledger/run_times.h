// Times of a run's steps as the book keeps them: a note on the first bottle of the run.
//
// The journal has no field for them, and a note is what every reader of the book understands. Its
// text is made of codes and whole seconds, so that it can be read back and worded in any language:
//   run-times develop 722/735 pour-back 20/22 temperature=20.5 tank=Two%20reels run=ID
// Temperature (of the developer) and tank are there if they are known.
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
    std::optional<chemistry::Celsius> temperature; ///< to a tenth
    std::string tank;                              ///< its name, or empty
};

/// Seconds are rounded to whole ones.
std::string timesNote(const RunTimes& times);

/// Nothing for any other note.
std::optional<RunTimes> readTimesNote(const std::string& note);

} // namespace ullage::ledger
