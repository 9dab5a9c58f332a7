// The lines of a book, none that is not what was entered.
#pragma once

#include "core/store/connection.h"

#include <QByteArray>

#include <functional>
#include <vector>

namespace ullage::store
{

using TakeSoundLine = std::function<Result<void>(const QByteArray& line)>;

/// Every entry's line in order of entry, from one moment's view of the book, held against the
/// chain. Stops at the first refusal of `take` and returns it. A line that is not what was entered
/// is never handed out: with `faults` it is kept there, as is what is missing (the first
/// kMostFaults of them), and the rest is read; without, it is returned as the failure.
Result<void> forEachSoundLine(Connection& connection, const TakeSoundLine& take,
                              std::vector<Error>* faults = nullptr);

} // namespace ullage::store
