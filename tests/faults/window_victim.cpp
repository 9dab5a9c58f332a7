// A real window on a book that is used until it is killed: it turns pages, opens the Day book's
// thread, backs up, and logs a note every few milliseconds. On standard output stands, line by
// line, the text of each note that was confirmed.
//   ullage_window_victim BOOK MARK
#include "app/session/starter.h"
#include "app/widgets/theme.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <cstdio>

using namespace ullage;
using namespace ullage::app;

namespace
{

constexpr int kPauseMs = 7;
constexpr int kTurnEvery = 5; // notes

chemistry::Instant now()
{
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    const QStringList words = QApplication::arguments();
    Theme::instance().install(application);
    const QTemporaryDir folder;
    Preferences preferences(folder.filePath("settings.ini"));
    SessionOptions options;
    options.clock = now;
    options.starter = kStarterFormulary;
    options.copies = CopyPlaces{QFileInfo(words.at(1)).dir().filePath("copies"), {}};
    options.seats = QFileInfo(words.at(1)).dir().filePath("seats");
    options.machine = QStringLiteral("here");
    options.lookMs = 50;
    options.idleMs = 60;
    Session session(options);
    MainWindow window;
    const Controller controller(window, session, preferences);
    if (const auto opened = session.open(words.at(1)); !opened) {
        std::fprintf(stderr, "%s\n", opened.error().text.c_str());
        return 3;
    }
    window.show();

    QTimer timer;
    int count = 0;
    QObject::connect(&timer, &QTimer::timeout, &application, [&] {
        if (session.bottles().empty())
            return;
        const std::string text = words.at(2).toStdString() + '-' + std::to_string(++count);
        const auto batch = session.bottles().front().batch.id;
        const auto done = session.doing([&](ledger::Book& book) {
            return book.record(batch, ledger::Noted{text}, {now(), {}});
        });
        if (done) {
            std::printf("%s\n", text.c_str());
            std::fflush(stdout);
        } else if (done.error().code != ErrorCode::Busy) {
            std::fprintf(stderr, "refused: %d %s\n", static_cast<int>(done.error().code),
                         done.error().text.c_str());
        }
        if (count % kTurnEvery == 0)
            window.showPage(static_cast<Page>(count / kTurnEvery % kPages));
    });
    timer.start(kPauseMs);
    return QApplication::exec();
}
