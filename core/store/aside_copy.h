// A copy of a book to be read in its place, where nothing can be written.
#pragma once

#include "core/chemistry/result.h"

#include <QString>
#include <QTemporaryDir>

#include <memory>

namespace ullage::store
{

struct AsideCopy {
    std::unique_ptr<QTemporaryDir> folder; ///< goes with whoever holds it
    QString path;
};

/// A copy of the book at `path`, with what stands in its log. Busy if this process has it open.
Result<AsideCopy> copyAside(const QString& path, int busyTimeoutMs);

} // namespace ullage::store
