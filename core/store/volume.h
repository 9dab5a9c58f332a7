// What kind of place a folder is: whether other machines may write to the files in it.
#pragma once

#include <QString>

#include <functional>

namespace ullage::store
{

enum class Volume {
    Local,
    Network, ///< memory is not shared with whoever else has the file open, nor are all locks
};

/// By the type of the file system that `path` (which may be missing) is on. Local where the system
/// does not tell.
Volume volumeOf(const QString& path);

/// How a store finds out; tests put their own in place.
using VolumeProbe = std::function<Volume(const QString&)>;

} // namespace ullage::store
