// Reckons the statistics of the open book on a thread of its own: one period at a time, the last
// that was asked for.
#pragma once

#include <QObject>

#include "app/session/door.h"
#include "app/session/store_thread.h"
#include "core/ledger/statistics.h"

#include <atomic>
#include <memory>
#include <optional>

namespace ullage::app
{

/// Every method and signal is for the window's thread.
class StatisticsCount : public QObject
{
    Q_OBJECT

public:
    /// `door` outlives it.
    explicit StatisticsCount(Door& door, QObject* parent = nullptr);
    ~StatisticsCount() override;

    /// Reads the book that is open from now on; waits for what reads the one before.
    void takeBook();
    void letGoOfBook();

    /// A reckoning of another period that is under way gives up, unheard. Of the one under way
    /// nothing is begun: once it ends, outgrown() is told, since the book may have grown.
    void begin(const ledger::Period& period);
    void giveUp();
    /// What is being reckoned.
    [[nodiscard]] const std::optional<ledger::Period>& underWay() const { return m_underWay; }
    /// Whether that period was the last to be told by counted().
    [[nodiscard]] bool hasCounted(const ledger::Period& period) const
    {
        return m_basis && m_basis->period == period;
    }

signals:
    void progressed(int done, int all);
    /// None is under way any more; before what it came to is told.
    void ended();
    void counted(const ullage::ledger::Statistics& statistics,
                 const ullage::ledger::Period& period);
    /// The book has not grown since the same period was counted.
    void unchanged();
    /// The book could not be read, as readStatistics() refuses.
    void failed(const ullage::Error& error);
    void outgrown();

private:
    /// What a reckoning is of: the same again gives the same.
    struct Basis {
        std::int64_t lastEntry = 0;
        ledger::Period period;
        bool operator==(const Basis&) const = default;
    };
    void post(const ledger::Period& period, const ledger::StatisticsRequest& request,
              int generation);
    /// The reckoning of that number is over; false if it is not the one waited for.
    bool end(int generation);

    Door& m_door;
    std::unique_ptr<StoreThread> m_thread; ///< gone before what its jobs tell
    std::optional<Basis> m_basis;          ///< of what was counted last
    std::optional<ledger::Period> m_underWay;
    bool m_again = false; ///< the book may have grown since that began
    /// Number of the reckoning that is waited for; read on the thread, so it lives as long as jobs.
    std::shared_ptr<std::atomic<int>> m_generation = std::make_shared<std::atomic<int>>(0);
};

} // namespace ullage::app
