#include "core/store/statement.h"

namespace ullage::store
{

Rows::~Rows()
{
    if (m_query) {
        m_query->finish();
    }
}

Result<bool> Rows::next()
{
    if (m_query->next()) {
        return true;
    }
    if (m_query->lastError().isValid()) {
        return refuse(storeFailure(m_query->lastError()));
    }
    return false;
}

std::string Rows::text(int column) const { return m_query->value(column).toString().toStdString(); }

QByteArray Rows::bytes(int column) const { return m_query->value(column).toString().toUtf8(); }

QByteArray Rows::blob(int column) const { return m_query->value(column).toByteArray(); }

std::int64_t Rows::number(int column) const { return m_query->value(column).toLongLong(); }

double Rows::real(int column) const { return m_query->value(column).toDouble(); }

Statement::Statement(const Connection& connection, QString sql)
    : m_query(connection.database()), m_sql(std::move(sql))
{
    m_query.setForwardOnly(true);
}

Result<Rows> Statement::runWith(const QVariantList& values)
{
    if (!m_prepared) {
        if (!m_query.prepare(m_sql)) {
            return refuse(storeFailure(m_query.lastError()));
        }
        m_prepared = true;
    }
    for (int i = 0; i < values.size(); ++i) {
        m_query.bindValue(i, values[i]);
    }
    if (!m_query.exec()) {
        Error error = storeFailure(m_query.lastError());
        m_query.finish();
        return refuse(std::move(error));
    }
    return Rows(m_query);
}

} // namespace ullage::store
