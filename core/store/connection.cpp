#include "core/store/connection.h"

#include <QFileInfo>
#include <QSqlQuery>
#include <QUrl>
#include <QVariant>

#include <atomic>

namespace ullage::store
{

namespace
{

QString uri(const QString& path, FileMode mode)
{
    const QString address = QString::fromLatin1(
        QUrl::fromLocalFile(QFileInfo(path).absoluteFilePath()).toEncoded(QUrl::FullyEncoded));
    switch (mode) {
    case FileMode::Create:
        return address + QStringLiteral("?mode=rwc");
    case FileMode::Write:
    case FileMode::Read:
        return address + QStringLiteral("?mode=rw");
    case FileMode::Untouched:
        return address + QStringLiteral("?mode=ro");
    case FileMode::Frozen:
        break;
    }
    return address + QStringLiteral("?mode=ro&immutable=1");
}

// SQLite's result codes: the low byte of the one that is reported, which may say more.
constexpr int kBusy = 5;
constexpr int kLocked = 6;
constexpr int kReadOnly = 8;
constexpr int kCorrupt = 11;
constexpr int kCannotOpen = 14;
constexpr int kNotADatabase = 26;

int resultOf(int code)
{
    constexpr int kPrimary = 0xFF;
    return code & kPrimary;
}

int resultOf(const Error& failure)
{
    return failure.number ? resultOf(static_cast<int>(*failure.number)) : 0;
}

QString uniqueName()
{
    static std::atomic<quint64> count{0};
    return QStringLiteral("ullage-%1").arg(++count);
}

} // namespace

Error storeFailure(const QString& message)
{
    return {.code = ErrorCode::StoreFailed, .text = message.toStdString()};
}

Error storeFailure(const QSqlError& error)
{
    const QString said = error.databaseText().isEmpty() ? error.driverText() : error.databaseText();
    const QString code = error.nativeErrorCode();
    if (code.isEmpty()) {
        return storeFailure(said);
    }
    Error failure = storeFailure(QStringLiteral("%1 (%2)").arg(said, code));
    failure.number = code.toInt();
    if (const int result = resultOf(failure); result == kBusy || result == kLocked) {
        failure.code = ErrorCode::Busy;
    }
    return failure;
}

bool saysNoDatabase(const Error& failure) { return resultOf(failure) == kNotADatabase; }

bool saysReadOnly(const Error& failure)
{
    return resultOf(failure) == kReadOnly || resultOf(failure) == kCannotOpen;
}

bool saysDamaged(const Error& failure)
{
    return resultOf(failure) == kCorrupt || resultOf(failure) == kNotADatabase;
}

QString sqlQuoted(QString text) { return '\'' + text.replace('\'', QLatin1String("''")) + '\''; }

Result<std::unique_ptr<Connection>> Connection::open(const QString& path, FileMode mode,
                                                     int busyTimeoutMs)
{
    std::unique_ptr<Connection> connection(new Connection(uniqueName()));
    auto database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection->m_name);
    database.setConnectOptions(
        QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(busyTimeoutMs));
    database.setDatabaseName(uri(path, mode));
    if (!database.open()) {
        return refuse(storeFailure(database.lastError()));
    }
    connection->m_file = identityOf(path);
#ifdef Q_OS_UNIX
    if (!connection->m_file && mode != FileMode::Create) {
        return refuse(storeFailure(QStringLiteral("the file is gone")));
    }
#endif
    connection->m_openHere = std::make_unique<OpenHere>(connection->m_file);
    QStringList settings{QStringLiteral("PRAGMA foreign_keys = ON"),
                         QStringLiteral("PRAGMA recursive_triggers = ON"),
                         QStringLiteral("PRAGMA synchronous = FULL"),
                         QStringLiteral("PRAGMA trusted_schema = OFF")};
    if (mode != FileMode::Create && mode != FileMode::Write) {
        settings += QStringLiteral("PRAGMA query_only = ON");
    }
    for (const QString& setting : settings) {
        if (auto fine = connection->run(setting); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    return connection;
}

Result<std::unique_ptr<Connection>> Connection::inMemory()
{
    std::unique_ptr<Connection> connection(new Connection(uniqueName()));
    auto database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection->m_name);
    database.setDatabaseName(QStringLiteral(":memory:"));
    if (!database.open()) {
        return refuse(storeFailure(database.lastError()));
    }
    return connection;
}

Connection::~Connection()
{
    database().close();
    QSqlDatabase::removeDatabase(m_name);
}

QSqlDatabase Connection::database() const { return QSqlDatabase::database(m_name, false); }

Result<void> Connection::run(const QString& sql)
{
    QSqlQuery query(database());
    query.setForwardOnly(true);
    if (!query.exec(sql)) {
        return refuse(storeFailure(query.lastError()));
    }
    while (query.next()) {
    }
    if (query.lastError().isValid()) {
        return refuse(storeFailure(query.lastError()));
    }
    return {};
}

Result<QString> Connection::text(const QString& sql)
{
    QSqlQuery query(database());
    query.setForwardOnly(true);
    if (!query.exec(sql) || !query.next()) {
        return refuse(query.lastError().isValid() ? storeFailure(query.lastError())
                                                  : storeFailure(QStringLiteral("no row")));
    }
    return query.value(0).toString();
}

Result<std::int64_t> Connection::number(const QString& sql)
{
    return text(sql).map([](const QString& read) { return std::int64_t{read.toLongLong()}; });
}

} // namespace ullage::store
