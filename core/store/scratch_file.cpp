#include "core/store/scratch_file.h"

#include "core/store/file_moves.h"

#include <QFile>

namespace ullage::store
{

ScratchFile::~ScratchFile()
{
    if (m_path.isEmpty()) {
        return;
    }
    QFile::remove(m_path);
    for (const char* log : {"-wal", "-shm", "-journal"}) {
        QFile::remove(m_path + QLatin1String(log));
    }
}

Result<ScratchFile> scratchFor(const QString& target)
{
    return newPart(target).map([](const QString& path) { return ScratchFile(path); });
}

} // namespace ullage::store
