// One moment's view of the book for several statements: what others write meanwhile stays unseen.
#pragma once

#include "core/store/connection.h"

#include <memory>

namespace ullage::store
{

/// Holds the view until it goes. Within a transaction, or another view, it is that one's.
class ReadView
{
public:
    static Result<std::unique_ptr<ReadView>> open(Connection& connection)
    {
        return connection.run(QStringLiteral("SAVEPOINT view")).map([&] {
            return std::unique_ptr<ReadView>(new ReadView(connection));
        });
    }
    ReadView(const ReadView&) = delete;
    ReadView& operator=(const ReadView&) = delete;
    ~ReadView()
    {
        // Nothing was written: there is nothing to lose if the view is gone already.
        (void)m_connection->run(QStringLiteral("RELEASE view"));
    }

private:
    explicit ReadView(Connection& connection) : m_connection(&connection) {}
    Connection* m_connection;
};

} // namespace ullage::store
