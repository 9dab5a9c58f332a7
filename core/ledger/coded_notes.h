// Facts that books of version 1 kept as notes made of codes, taken for the kinds that replace them.
//
//   run-times develop 722/735 pour-back 20/22 temperature=20.5 tank=Two%20reels run=ID
//   test-asked thin film=ID
// Nothing writes such notes any more, and those that are there stay as they are.
#pragma once

#include "core/ledger/event.h"

#include <optional>
#include <string_view>

namespace ullage::ledger
{

/// The times of a run, seconds planned and real; nothing for any other note.
std::optional<RunTimes> timesFromNote(std::string_view note);

/// That a test was asked for; nothing for any other note.
std::optional<TestAsked> testAskedFromNote(std::string_view note);

/// What a note says: a request for a test, the times of a run with its text, or itself.
Happening meaningOf(Noted note);

} // namespace ullage::ledger
