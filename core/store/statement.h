// A prepared statement and the rows it gives.
#pragma once

#include "core/store/connection.h"
#include "core/store/digest.h"

#include <QSqlQuery>
#include <QVariant>

#include <cstdint>
#include <optional>
#include <string>

namespace ullage::store
{

/// Rows of one run, read once and forward; the statement is reset when they go, so that no read
/// lock outlives them.
class Rows
{
public:
    explicit Rows(QSqlQuery& query) : m_query(&query) {}
    Rows(Rows&& other) noexcept : m_query(std::exchange(other.m_query, nullptr)) {}
    Rows& operator=(Rows&&) = delete;
    ~Rows();

    /// Goes to the next row; false after the last.
    Result<bool> next();

    [[nodiscard]] bool isNull(int column) const { return m_query->isNull(column); }
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] QByteArray bytes(int column) const;
    /// The bytes of a BLOB as they are.
    [[nodiscard]] QByteArray blob(int column) const;
    [[nodiscard]] std::int64_t number(int column) const;
    [[nodiscard]] double real(int column) const;

private:
    QSqlQuery* m_query;
};

class Statement
{
public:
    /// Prepared when first run. `connection` must outlive the statement.
    Statement(const Connection& connection, QString sql);

    /// Binds the values to the question marks in order and runs it.
    template <class... Values>
    Result<Rows> run(const Values&... values)
    {
        return runWith({toVariant(values)...});
    }

    /// The row id that the last insert was given.
    [[nodiscard]] std::int64_t lastId() const { return m_query.lastInsertId().toLongLong(); }

    /// The same for values whose number is known only when it runs.
    Result<Rows> runWith(const QVariantList& values);

private:
    static QVariant toVariant(const std::string& text) { return QString::fromStdString(text); }
    static QVariant toVariant(const QByteArray& utf8) { return QString::fromUtf8(utf8); }
    static QVariant toVariant(const Digest& digest)
    {
        return QByteArray(reinterpret_cast<const char*>(digest.data()), qsizetype(digest.size()));
    }
    static QVariant toVariant(std::int64_t number) { return QVariant(qlonglong{number}); }
    static QVariant toVariant(int number) { return QVariant(number); }
    static QVariant toVariant(double number) { return QVariant(number); }
    template <class T>
    static QVariant toVariant(const std::optional<T>& value)
    {
        return value ? toVariant(*value) : QVariant();
    }

    QSqlQuery m_query;
    QString m_sql;
    bool m_prepared = false;
};

} // namespace ullage::store
