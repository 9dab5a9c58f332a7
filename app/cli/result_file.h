// Where a command's result goes: a file of the name given, or standard output.
#pragma once

#include "app/cli/command_line.h"

#include <optional>

namespace ullage::app
{

/// Refuses a name without that ending (".pdf"), but "-", and the book itself under whatever name:
/// the exit code then, and it has been told.
std::optional<int> refusedName(const Call& call, const QString& name, const QString& ending);

/// Writes the bytes whole or not at all; "-" is standard output. The exit code.
int deliver(const Call& call, const QString& name, const QByteArray& bytes);

} // namespace ullage::app
