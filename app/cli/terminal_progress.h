// Long work at a terminal: how far it has come, and Ctrl+C to stop it.
#pragma once

#include "app/cli/command_line.h"

namespace ullage::app
{

/// Shows progress on `err` where that is a terminal, on one line that is wiped at the end. From the
/// first call on, an interrupt stops the work in good order instead of ending the program; a second
/// one ends it.
decltype(Surroundings::progress) terminalProgress(QIODevice& err);

} // namespace ullage::app
