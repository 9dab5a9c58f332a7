// Known work that comes again: its next times, and how one of them falls out.
#pragma once

#include "core/cupboard/recurrence.h"
#include "core/ledger/entry.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::cupboard
{

/// The next times from `from` on, that moment counted in, `most` at most. Work whose rule is not
/// understood comes once.
std::vector<chemistry::Instant> nextTimes(const ledger::Work& work, chemistry::Instant from,
                                          std::size_t most, const WallClock& clock = {});

/// The rule with its last time at `last`, however it ended before.
std::string ruleUntil(const std::string& rule, chemistry::Instant last);

/// What is to be entered so that the work comes at all its times but `at`: the line that takes the
/// place of it comes until the time before and, where there is one, a new one from the time after
/// on. Ids are empty, to be made. Nothing if it does not come then.
std::vector<ledger::Work> withoutOnce(const ledger::Work& work, chemistry::Instant at,
                                      const WallClock& clock = {});

} // namespace ullage::cupboard
