// Paints every page and dialog of the program on the demo's book to PNG files for a person to look
// at, and writes what is cut, covered or out of reach to faults.txt beside them:
// ullage_screens_gallery FOLDER [WIDTHxHEIGHT [light|dark|red [LANGUAGE [PART OF A NAME]]]]
#include "app/cli/demo_book.h"
#include "app/session/starter.h"
#include "app/widgets/theme.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "app/window/run_window.h"
#include "tests/app/screens/every_screen.h"
#include "tests/app/screens/layout_inspector.h"
#include "tests/app/screens/offscreen_screen.h"

#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QScreen>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTextStream>

using namespace ullage;
using namespace ullage::app;

int main(int argc, char** argv)
{
    const auto argument = [&](int i, const char* otherwise) {
        return QString::fromLocal8Bit(argc > i ? argv[i] : otherwise);
    };
    const QString folder = argument(1, "gallery");
    const QSize size = sizeOf(argument(2, "1280x800"));
    const QString look = argument(3, "light");
    const QString language = argument(4, "en");
    const QString only = argument(5, "");
    if (size.isEmpty())
        qFatal("a size is WIDTHxHEIGHT");
    QTemporaryDir scratch;
    useOffscreen(size, scratch.path());
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    QDir().mkpath(folder);
    auto& theme = Theme::instance();
    theme.setMode(look == u"light" ? ThemeMode::Light : ThemeMode::Dark);
    theme.setDarkRoom(look == u"red");
    theme.install(application);
    installLanguage(language);
    const auto clock = [] {
        return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
    };
    const auto book = createDemoBook(scratch.path(), clock);
    if (!book)
        qFatal("no demo: %s", book.error().text.c_str());
    Preferences preferences(scratch.filePath(QStringLiteral("settings.ini")));
    preferences.setLanguage(language);
    SessionOptions options;
    options.clock = clock;
    options.starter = kStarterFormulary;
    Session session(options);
    MainWindow window;
    Controller controller(window, session, preferences);
    controller.openBook(*book);
    window.show();
    letSettle();
    if (size.width() > window.width() || size.height() > window.height())
        window.resize(size);

    QFile file(folder + QStringLiteral("/faults.txt"));
    if (!file.open(QIODevice::WriteOnly | QIODevice::Append))
        qFatal("no place for what is found");
    QTextStream faults(&file);
    const QString tail = QStringLiteral("-%1-%2-%3.png").arg(size.width()).arg(look, language);
    const auto seen = [&](QWidget& screen, const QString& name) {
        if (!name.contains(only))
            return;
        screen.grab().save(folder + u'/' + name + tail);
        QStringList found = layoutFaults(screen);
        if (qobject_cast<QDialog*>(&screen)) {
            found += tabFaults(screen);
            const QRect room = screen.screen()->availableGeometry();
            if (!room.contains(screen.frameGeometry()))
                found << QStringLiteral("reaches past the screen: %1×%2 at %3, %4")
                             .arg(screen.frameGeometry().width())
                             .arg(screen.frameGeometry().height())
                             .arg(screen.frameGeometry().x())
                             .arg(screen.frameGeometry().y());
        }
        for (const QString& fault : found)
            faults << name << tail.chopped(4) << ": " << fault << '\n';
        faults.flush();
    };
    seePages(window, session, seen);
    seeDialogs(session, preferences, seen);
    seeQtDialogs(session, preferences, [&](QWidget& screen, const QString& name) {
        if (name.contains(only))
            screen.grab().save(folder + u'/' + name + tail); // its layout is Qt's business
    });
    return 0;
}
