// Writes the run in hand on a thread of its own, so that a slow disk never holds the clock's hands.
#pragma once

#include <QThread>

#include "app/bench/run_file.h"

#include <functional>
#include <memory>
#include <mutex>
#include <optional>

namespace ullage::app
{

/// For the window's thread. A kill loses what was handed over in the last moment before it at most;
/// the file is whole at every time, and the run goes on from it by the clock.
class RunKeeper
{
public:
    using Written = std::function<void(const Result<void>&)>;

    /// `written` is called after each save() that was carried out, on the window's thread, and not
    /// any more once the keeper is gone.
    RunKeeper(const QString& path, Written written);
    /// What was handed over is on disk when it returns.
    ~RunKeeper();
    RunKeeper(const RunKeeper&) = delete;
    RunKeeper& operator=(const RunKeeper&) = delete;

    [[nodiscard]] const RunFile& file() const { return m_file; }

    /// Hands it over and returns at once. Of several that wait the last alone is written.
    void save(const ledger::RunState& state);
    /// Returns when it is on disk, in the place of all that was handed over before.
    Result<void> saveNow(const ledger::RunState& state);
    /// Forgets the run, with all that was handed over. True when no file is left.
    bool remove();
    /// Returns when all that was handed over is on disk.
    void wait();

private:
    void writeWaiting();
    void onThread(const std::function<void()>& work);

    RunFile m_file;
    QObject m_told; ///< on the window's thread
    Written m_written;
    std::mutex m_mutex;
    std::optional<ledger::RunState> m_waiting; ///< by the mutex
    QThread m_thread;
    std::unique_ptr<QObject> m_worker; ///< lives on the thread
};

} // namespace ullage::app
