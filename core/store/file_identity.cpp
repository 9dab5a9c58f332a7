#include "core/store/file_identity.h"

#include <QFileInfo>

#include <mutex>
#include <set>

#ifdef Q_OS_UNIX
#include <QFile>

#include <sys/stat.h>
#endif

namespace ullage::store
{

namespace
{

// Connections are opened on many threads; a table of the process, as the locks it stands for are.
struct OpenFiles {
    std::mutex mutex;
    std::multiset<FileIdentity> files;
};

OpenFiles& openFiles()
{
    static OpenFiles files;
    return files;
}

} // namespace

std::optional<FileIdentity> identityOf(const QString& path)
{
#ifdef Q_OS_UNIX
    struct stat found {
    };
    if (::stat(QFile::encodeName(path).constData(), &found) == 0) {
        return FileIdentity{found.st_dev, found.st_ino};
    }
#else
    Q_UNUSED(path)
#endif
    return std::nullopt;
}

bool isOpenHere(const QString& path)
{
    QString book = QFileInfo(path).canonicalFilePath();
    for (const char* beside : {"-wal", "-shm", "-journal"}) {
        if (book.endsWith(QLatin1String(beside))) {
            book.chop(static_cast<qsizetype>(qstrlen(beside)));
        }
    }
    const auto file = identityOf(book);
    OpenFiles& open = openFiles();
    const std::scoped_lock lock(open.mutex);
    return file && open.files.contains(*file);
}

OpenHere::OpenHere(std::optional<FileIdentity> file) : m_file(file)
{
    if (m_file) {
        OpenFiles& open = openFiles();
        const std::scoped_lock lock(open.mutex);
        open.files.insert(*m_file);
    }
}

OpenHere::~OpenHere()
{
    if (m_file) {
        OpenFiles& open = openFiles();
        const std::scoped_lock lock(open.mutex);
        open.files.erase(open.files.find(*m_file));
    }
}

} // namespace ullage::store
