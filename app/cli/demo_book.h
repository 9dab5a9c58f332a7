// The demo: a year of invented work that ends today.
#pragma once

#include "core/chemistry/result.h"
#include "core/ledger/book.h"

#include <QByteArray>
#include <QString>

namespace ullage::app
{

/// The demo's journal with every moment and date moved by whole days, so that the day its first
/// line names as "anchor" becomes the day of `now` (UTC), and with what its people wrote in the
/// language that is installed. NotABook if the resource is broken.
Result<QByteArray> demoJournal(chemistry::Instant now);

/// Makes the demo's book in `folder` (which must exist) and returns its file.
Result<QString> createDemoBook(const QString& folder, const ledger::Clock& clock);

} // namespace ullage::app
