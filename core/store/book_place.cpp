#include "core/store/book_place.h"

namespace ullage::store
{

BookPlace::BookPlace(const Connection& connection, QString path)
    : m_connection(&connection), m_path(std::move(path))
{
}

void BookPlace::keepLog()
{
    m_log = identityOf(m_path + QLatin1String("-wal"));
    m_index = identityOf(m_path + QLatin1String("-shm"));
}

bool BookPlace::fileInPlace() const { return identityOf(m_path) == m_connection->file(); }

Result<void> BookPlace::inPlace() const
{
    const auto moved = [this](const char* how) {
        return refuse({.code = ErrorCode::BookMoved, .text = how, .file = m_path.toStdString()});
    };
    const auto now = identityOf(m_path);
    if (now != m_connection->file()) {
        return moved(now ? "replaced" : "missing");
    }
    // Without them others write to a log and take locks that we know nothing of.
    if ((m_log && identityOf(m_path + QLatin1String("-wal")) != m_log) ||
        (m_index && identityOf(m_path + QLatin1String("-shm")) != m_index)) {
        return moved("log");
    }
    return {};
}

} // namespace ullage::store
