// Whether the files that were opened, the book and what SQLite keeps beside it, are still those at
// its path.
#pragma once

#include "core/store/connection.h"
#include "core/store/file_identity.h"

#include <QString>

#include <optional>

namespace ullage::store
{

class BookPlace
{
public:
    /// `connection` must outlive it.
    BookPlace(const Connection& connection, QString path);

    [[nodiscard]] const QString& path() const { return m_path; }
    /// From now on the log there now, and its index, are the book's.
    void keepLog();
    /// Whether keepLog() found one.
    [[nodiscard]] bool hasLog() const { return m_log.has_value(); }

    /// BookMoved, with "replaced", "missing" or, of the log, "log".
    [[nodiscard]] Result<void> inPlace() const;
    /// Whether the book itself is there; its log may be another one.
    [[nodiscard]] bool fileInPlace() const;

private:
    const Connection* m_connection;
    QString m_path;
    std::optional<FileIdentity> m_log;
    std::optional<FileIdentity> m_index;
};

} // namespace ullage::store
