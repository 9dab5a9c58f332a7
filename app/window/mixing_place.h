// The guide to mixing in the window: one at a time, left and found again where it was.
#pragma once

#include <QObject>
#include <QPointer>

#include "app/window/window_parts.h"
#include "core/ledger/run_clock.h"

namespace ullage::app
{

class MixingPage;

class MixingPlace : public QObject
{
    Q_OBJECT

public:
    /// `steady` is what the guide's clocks count by.
    MixingPlace(const WindowParts& parts, ledger::SteadyClock steady, QObject* parent = nullptr);

    /// Opens the guide, or goes back to the one under way; nothing while no book is open.
    void open();
    /// A batch was logged without the guide: one that has only begun to ask is taken away.
    void logged();
    /// The language or the units changed.
    void setWording();

signals:
    /// The plain dialog is wanted instead.
    void plainLogWanted();
    /// The guide is left; `batch` is empty if nothing was mixed.
    void finished(const QString& batch);

private:
    WindowParts m_parts;
    ledger::SteadyClock m_steady;
    QPointer<MixingPage> m_guide;
};

} // namespace ullage::app
