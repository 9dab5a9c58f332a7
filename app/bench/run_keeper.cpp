#include "app/bench/run_keeper.h"

#include <utility>

namespace ullage::app
{

RunKeeper::RunKeeper(const QString& path, Written written)
    : m_file(path), m_written(std::move(written)), m_worker(std::make_unique<QObject>())
{
    m_worker->moveToThread(&m_thread);
    m_thread.start();
}

RunKeeper::~RunKeeper()
{
    wait();
    m_thread.quit();
    m_thread.wait();
}

void RunKeeper::onThread(const std::function<void()>& work)
{
    QMetaObject::invokeMethod(m_worker.get(), work, Qt::BlockingQueuedConnection);
}

void RunKeeper::save(const ledger::RunState& state)
{
    {
        const std::lock_guard lock(m_mutex);
        if (std::exchange(m_waiting, state))
            return; // its turn comes
    }
    QMetaObject::invokeMethod(
        m_worker.get(), [this] { writeWaiting(); }, Qt::QueuedConnection);
}

void RunKeeper::writeWaiting()
{
    std::optional<ledger::RunState> state;
    {
        const std::lock_guard lock(m_mutex);
        state = std::exchange(m_waiting, std::nullopt);
    }
    if (!state)
        return;
    const auto done = m_file.save(*state);
    QMetaObject::invokeMethod(
        &m_told, [this, done] { m_written(done); }, Qt::QueuedConnection);
}

Result<void> RunKeeper::saveNow(const ledger::RunState& state)
{
    Result<void> done;
    onThread([&] {
        {
            const std::lock_guard lock(m_mutex);
            m_waiting.reset();
        }
        done = m_file.save(state);
    });
    return done;
}

bool RunKeeper::remove()
{
    bool gone = false;
    onThread([&] {
        {
            const std::lock_guard lock(m_mutex);
            m_waiting.reset();
        }
        gone = m_file.remove();
    });
    return gone;
}

void RunKeeper::wait()
{
    onThread([this] { writeWaiting(); });
}

} // namespace ullage::app
