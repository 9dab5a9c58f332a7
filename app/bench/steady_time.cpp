#include "app/bench/steady_time.h"

#include <QtGlobal>

#if defined(Q_OS_WIN)
#include <windows.h>
#else
#include <ctime>
#endif

namespace ullage::app
{

using std::chrono::milliseconds;

namespace
{

milliseconds sinceStart()
{
#if defined(Q_OS_WIN)
    return milliseconds(GetTickCount64()); // counts sleep
#else
#if defined(CLOCK_BOOTTIME)
    constexpr auto kClock = CLOCK_BOOTTIME; // CLOCK_MONOTONIC stands still in sleep on Linux
#else
    constexpr auto kClock = CLOCK_MONOTONIC; // counts sleep on macOS
#endif
    timespec time{};
    if (clock_gettime(kClock, &time) == 0)
        return std::chrono::seconds(time.tv_sec) + milliseconds(time.tv_nsec / 1'000'000);
    return std::chrono::duration_cast<milliseconds>(
        std::chrono::steady_clock::now().time_since_epoch());
#endif
}

} // namespace

ledger::SteadyClock steadyTime() { return sinceStart; }

ledger::Clock wallTime()
{
    return [] { return std::chrono::floor<milliseconds>(std::chrono::system_clock::now()); };
}

} // namespace ullage::app
