#include "core/store/interruptibly.h"

#include "core/store/sqlite_handle.h"

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace ullage::store
{

namespace
{

constexpr std::chrono::milliseconds kBetween{5};

} // namespace

// By a thread and not by SQLite's progress handler: that is called between the steps of a
// statement, and walking all pages of a file is a single step of the checks.
Result<void> interruptibly(Connection& connection, const Watch& watch,
                           const std::function<Result<void>()>& work)
{
    if (auto fine = goOn(watch, {}); !fine) {
        return fine;
    }
    sqlite3* const handle = handleOf(connection);
    if (!watch || !handle) {
        return work();
    }
    std::mutex mutex;
    std::condition_variable changed;
    bool over = false;
    bool stopped = false;
    std::thread beside([&] {
        std::unique_lock lock(mutex);
        do {
            stopped = stopped || !watch({});
            if (stopped) {
                sqlite3_interrupt(handle); // those that run; `work` may be about to begin one
            }
        } while (!changed.wait_for(lock, kBetween, [&] { return over; }));
    });
    auto done = work();
    {
        const std::scoped_lock lock(mutex);
        over = true;
    }
    changed.notify_one();
    beside.join();
    return stopped ? refuse({.code = ErrorCode::Cancelled}) : std::move(done);
}

} // namespace ullage::store
