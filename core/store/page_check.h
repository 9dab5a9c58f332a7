// How the pages of a book's file fit together.
#pragma once

#include "core/store/connection.h"
#include "core/store/progress.h"

#include <QString>

namespace ullage::store
{

/// BookDamaged, naming `path`, with the first finding if they do not. Takes about as long as
/// reading the file; Cancelled soon after `watch` says so.
Result<void> checkPages(Connection& connection, const QString& path, const Watch& watch = {});

} // namespace ullage::store
