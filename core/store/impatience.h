// A connection that waits for nobody for a while.
#pragma once

#include "core/store/connection.h"

namespace ullage::store
{

/// As long as it lives the connection does not wait for others; then as long as usual again.
class Impatience
{
public:
    Impatience(Connection& connection, int usualMs) : m_connection(connection), m_usualMs(usualMs)
    {
        wait(0);
    }
    ~Impatience() { wait(m_usualMs); }
    Impatience(const Impatience&) = delete;
    Impatience& operator=(const Impatience&) = delete;

private:
    // Touches no file and cannot fail.
    void wait(int ms)
    {
        (void)m_connection.run(QStringLiteral("PRAGMA busy_timeout = %1").arg(ms));
    }

    Connection& m_connection;
    int m_usualMs;
};

} // namespace ullage::store
