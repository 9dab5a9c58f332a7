// What is printed, kept as a file.
#pragma once

#include "core/chemistry/result.h"

#include <QByteArray>
#include <QString>

namespace ullage::app
{

/// Writes the file whole or not at all. Refuses one that is the open book (BookItself), and one
/// that cannot be written (FileFailed).
Result<void> savePdf(const QString& file, const QByteArray& pdf);

} // namespace ullage::app
