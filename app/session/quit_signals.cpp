#include "app/session/quit_signals.h"

#include <QCoreApplication>
#include <QSocketNotifier>

#ifdef Q_OS_UNIX
#include <cerrno>
#include <csignal>
#include <fcntl.h>
#include <unistd.h>
#endif

namespace ullage::app
{

#ifdef Q_OS_UNIX

namespace
{

constexpr int kSignals[]{SIGTERM, SIGINT, SIGHUP};
int s_pipe[2]{-1, -1};

// In a handler hardly anything is allowed; the loop does the rest.
void told(int)
{
    const int before = errno;
    const char one = 1;
    [[maybe_unused]] const auto written = ::write(s_pipe[1], &one, 1);
    errno = before;
}

} // namespace

QuitSignals::QuitSignals(QObject* parent) : QObject(parent)
{
    if (::pipe(s_pipe) != 0)
        return; // then it ends as the system has it
    for (const int end : s_pipe)
        ::fcntl(end, F_SETFD, FD_CLOEXEC);
    ::fcntl(s_pipe[1], F_SETFL, O_NONBLOCK);
    auto* notifier = new QSocketNotifier(s_pipe[0], QSocketNotifier::Read, this);
    connect(notifier, &QSocketNotifier::activated, this, [notifier] {
        notifier->setEnabled(false);
        // Not quit(): that asks the windows, and one with something unsaved would stay.
        QCoreApplication::exit(0);
    });
    for (const int signal : kSignals)
        std::signal(signal, told);
}

QuitSignals::~QuitSignals()
{
    for (const int signal : kSignals)
        std::signal(signal, SIG_DFL);
    for (int& end : s_pipe) {
        if (end >= 0)
            ::close(end);
        end = -1;
    }
}

#else

QuitSignals::QuitSignals(QObject* parent) : QObject(parent) {}
QuitSignals::~QuitSignals() = default;

#endif

} // namespace ullage::app
