// A run in hand as JSON, and back. For our own file only: what cannot be read is refused whole.
#pragma once

#include "core/ledger/run_state.h"

#include <QByteArray>

namespace ullage::app
{

inline constexpr int kRunFormat = 1;

QByteArray runToJson(const ledger::RunState& state);

/// Refuses what is no JSON of ours (Malformed), a newer format (NewerBook), and a state that
/// ledger::check() refuses.
Result<ledger::RunState> runFromJson(const QByteArray& json);

} // namespace ullage::app
