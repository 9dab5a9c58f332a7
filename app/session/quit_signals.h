// Being told by the system to end (SIGTERM, SIGINT, SIGHUP) is leaving the event loop as if the
// last window had been closed, so that what belongs to this start alone is cleared away.
#pragma once

#include <QObject>

namespace ullage::app
{

/// One of them, made on the thread of the application before its loop begins. What was told before
/// the loop begins ends it as soon as it does. Nothing where the system knows no such signals.
class QuitSignals : public QObject
{
    Q_OBJECT

public:
    explicit QuitSignals(QObject* parent = nullptr);
    ~QuitSignals() override;
};

} // namespace ullage::app
