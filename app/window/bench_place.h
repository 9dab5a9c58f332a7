// The Bench in the window: its full view is the whole screen.
#pragma once

#include <QObject>
#include <QPointer>

#include "app/bench/alert_sounds.h"
#include "app/bench/bench_memory.h"
#include "app/paper/paper_document.h"
#include "app/window/window_parts.h"
#include "core/ledger/run_clock.h"

namespace ullage::app
{

class BenchPage;

class BenchPlace : public QObject
{
    Q_OBJECT

public:
    /// `steady` is the clock of the runs.
    BenchPlace(const WindowParts& parts, ledger::SteadyClock steady, QObject* parent = nullptr);
    ~BenchPlace() override;

    /// Shows the Bench with a run planned through this bottle.
    void plan(const QString& batch);
    /// Makes the page of the run that is planned, or in hand; says so where there is none.
    void printSheet();

signals:
    /// To be looked at and printed.
    void paperRequested(const ullage::app::PaperDocument& document);
    /// Of two fixing baths the first is to make room.
    void exchangeRequested(const QString& first);

private:
    void make();
    void wordAnew();
    void bookOpened();

    WindowParts m_parts;
    ledger::SteadyClock m_steady;
    BenchMemory m_memory;
    AlertSounds m_sounds;
    QString m_language;         ///< that the page was made in: it words itself then
    QPointer<BenchPage> m_page; ///< the window's, but it goes before what it stands on
};

} // namespace ullage::app
