// How a book is opened.
#pragma once

#include "core/store/connection.h"
#include "core/store/schema_steps.h"
#include "core/store/volume.h"

#include <QString>

#include <vector>

namespace ullage::store
{

enum class Access {
    Read,   ///< nothing is changed, but for bringing an older schema up to date; where that cannot
            ///< be (read-only media), it is done to a copy that goes with the store
    Write,  ///< the book must be there
    Create, ///< made empty if there is none
};

struct StoreOptions {
    Access access = Access::Write;
    int busyTimeoutMs = 5000; ///< how long to wait for another writer
    std::vector<SchemaStep> steps = schemaSteps();
    VolumeProbe volume = volumeOf; ///< whether the book is on a network
    /// Folder that remembers how far each book had come (last_seen.h); empty: nothing is kept.
    QString lastSeen;
};

/// How the file at `path` is opened for this access.
FileMode fileMode(const QString& path, Access access);

} // namespace ullage::store
