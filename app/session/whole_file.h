// What is kept as a file of its own: printed, exported.
#pragma once

#include "core/chemistry/result.h"

#include <QByteArray>
#include <QString>

namespace ullage::app
{

/// Writes the file whole or not at all, and lasting. Refuses one that is the open book
/// (BookItself), and one that cannot be written (FileFailed). For any thread.
Result<void> writeWhole(const QString& file, const QByteArray& content);

} // namespace ullage::app
