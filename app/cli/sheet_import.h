// A spreadsheet of pencil records into the book.
#pragma once

#include "app/cli/command_line.h"

#include <QIODevice>

namespace ullage::app
{

/// All of it or nothing, or with --try only what would come in; by --mapping, else by what the
/// sheet itself says as far as that is certain. Tells what is refused, row by row. The exit code.
int importSheet(const Call& call, const OpenBook& open, QIODevice& sheet, const QString& name);

} // namespace ullage::app
