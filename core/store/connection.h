// One connection to an SQLite file through Qt Sql, closed when it goes.
//
// Every failure comes back as StoreFailed with the database's own message, or as Busy where another
// program's lock was waited for in vain; nothing is swallowed.
// A connection belongs to the thread that opened it.
#pragma once

#include "core/chemistry/result.h"
#include "core/store/file_identity.h"

#include <QSqlDatabase>
#include <QSqlError>
#include <QString>

#include <cstdint>
#include <memory>

namespace ullage::store
{

enum class FileMode {
    Create,    ///< reads and writes; makes the file if there is none
    Write,     ///< reads and writes; the file must be there
    Read,      ///< reads only; may make the files that SQLite keeps beside a book while it is open
    Untouched, ///< reads only, the file itself stays as it is whatever stands beside it
    Frozen,    ///< reads only and makes no files beside it: for folders that cannot be written
};

class Connection
{
public:
    static Result<std::unique_ptr<Connection>> open(const QString& path, FileMode mode,
                                                    int busyTimeoutMs);
    /// An empty one that is gone with the connection.
    static Result<std::unique_ptr<Connection>> inMemory();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    ~Connection();

    /// Runs one statement that gives no rows, or whose rows do not matter.
    Result<void> run(const QString& sql);
    /// The first column of the first row; StoreFailed if there is none.
    Result<QString> text(const QString& sql);
    Result<std::int64_t> number(const QString& sql);

    [[nodiscard]] QSqlDatabase database() const;
    /// Which file it was when it was opened.
    [[nodiscard]] const std::optional<FileIdentity>& file() const { return m_file; }

private:
    explicit Connection(QString name) : m_name(std::move(name)) {}

    QString m_name;
    std::optional<FileIdentity> m_file;
    std::unique_ptr<OpenHere> m_openHere;
};

/// StoreFailed, or Busy, with the database's message; `number` is its result code.
Error storeFailure(const QSqlError& error);
Error storeFailure(const QString& message);

/// What a storeFailure() says: the file is no database at all.
bool saysNoDatabase(const Error& failure);
/// It cannot be opened for reading only: a killed program's work must be settled first, in writing.
bool saysReadOnly(const Error& failure);
/// Pages of the file do not fit together.
bool saysDamaged(const Error& failure);

/// `text` in single quotes, quotes in it doubled.
QString sqlQuoted(QString text);

} // namespace ullage::store
