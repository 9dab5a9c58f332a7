#include "app/cli/terminal_progress.h"

#include <QElapsedTimer>

#include <csignal>
#include <memory>
#include <unistd.h>

namespace ullage::app
{

namespace
{

constexpr qint64 kBetween = 200; // ms
constexpr int kWhole = 100;      // per cent

volatile std::sig_atomic_t interrupted = 0;

extern "C" void onInterrupt(int)
{
    interrupted = 1;
    std::signal(SIGINT, SIG_DFL);
}

struct Shown {
    QElapsedTimer since;
    bool any = false;
};

} // namespace

decltype(Surroundings::progress) terminalProgress(QIODevice& err)
{
    const bool terminal = ::isatty(STDERR_FILENO) == 1;
    auto shown = std::make_shared<Shown>();
    return [&err, terminal, shown](const QString& what, const store::Progress& progress) {
        if (!shown->since.isValid()) {
            std::signal(SIGINT, onInterrupt);
            shown->since.start();
        }
        const bool over = interrupted != 0 || (progress.all > 0 && progress.done >= progress.all);
        if (terminal && over && shown->any) {
            err.write("\r\033[K");
            shown->any = false;
        } else if (terminal && !over && progress.all > 0 && shown->since.elapsed() >= kBetween) {
            err.write(QStringLiteral("\r%1 … %2 %")
                          .arg(what)
                          .arg(progress.done * kWhole / progress.all)
                          .toUtf8());
            shown->any = true;
            shown->since.restart();
        }
        return interrupted == 0;
    };
}

} // namespace ullage::app
