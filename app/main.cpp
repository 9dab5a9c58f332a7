// Start-up: a subcommand without a display, or the window.
#include "app/cli/command_line.h"
#include "app/cli/demo_book.h"
#include "app/cli/terminal_progress.h"
#include "app/session/preferences.h"
#include "app/session/quit_signals.h"
#include "app/window/run_window.h"
#include "app/words/error_words.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QIcon>
#include <QTemporaryDir>

#include <chrono>
#include <csignal>
#include <cstdio>
#include <memory>

namespace
{

using namespace ullage;

chemistry::Instant systemTime()
{
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

void nameProgram()
{
    QCoreApplication::setApplicationName(QStringLiteral("ullage"));
    QCoreApplication::setOrganizationName(QStringLiteral("ullage"));
    QCoreApplication::setApplicationVersion(QStringLiteral(ULLAGE_VERSION));
}

QString bookLastUsed()
{
    const QString last = app::Preferences(QString()).lastBook();
    return last.isEmpty() ? app::usualBook() : last;
}

int runInTerminal(int& argc, char** argv, const app::Arguments& arguments, QFile& out, QFile& err)
{
    // Letters come from the application with fonts; what is printed needs no display for it.
    std::unique_ptr<QCoreApplication> application;
    if (app::drawsPaper(arguments.command)) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        application = std::make_unique<QGuiApplication>(argc, argv);
    } else {
        application = std::make_unique<QCoreApplication>(argc, argv);
    }
    app::installLanguage(app::Preferences(QString()).language());
    QFile in;
    in.open(stdin, QIODevice::ReadOnly);
    app::Surroundings around{&in, &out, &err, systemTime, {}, false};
    const app::CopyPlaces places = app::copyPlaces(app::Preferences(QString()));
    if (arguments.command == u"import")
        QDir().mkpath(places.own); // where that fails the copy says so
    around.copyFolders = places.folders();
    around.lastSeen = app::lastSeenFolder();
    around.progress = app::terminalProgress(err);
    if (!arguments.has(QStringLiteral("book"))) {
        around.usualBook = bookLastUsed();
        around.usedBefore = !app::Preferences(QString()).lastBook().isEmpty();
    }
    const int code = app::runCommand(arguments, around);
    // A full disk shows only when what was printed is flushed.
    return out.flush() ? code : app::kStoreFailed;
}

int runInWindow(int& argc, char** argv, const app::Arguments& arguments, QFile& err)
{
    QApplication application(argc, argv);
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/ullage/icon/ullage.svg")));
    QApplication::setDesktopFileName(QStringLiteral("ullage"));
    // Before the demo's folder is made: it is removed however this ends.
    const app::QuitSignals signalled;
    app::WindowOptions options;
    options.clock = systemTime;
    options.book = arguments.value(QStringLiteral("book"));
    options.lastSeen = app::lastSeenFolder();
    options.seats = app::seatFolder();
    if (arguments.command.isEmpty()) {
        return app::runWindow(options);
    }
    // What the demo's people wrote is in the language in which it is opened.
    app::installLanguage(app::Preferences(QString()).language());
    const QTemporaryDir folder;
    const auto demo =
        folder.isValid()
            ? app::createDemoBook(folder.path(), systemTime)
            : refuse({.code = ErrorCode::FileFailed, .text = folder.errorString().toStdString()});
    if (!demo) {
        err.write(app::errorLine(demo.error()).toUtf8() + '\n');
        return app::kStoreFailed;
    }
    options.book = *demo;
    options.remember = false;
    options.lastSeen.clear();
    options.backUp = false;
    return app::runWindow(options);
}

} // namespace

int main(int argc, char** argv)
{
#ifdef SIGXFSZ
    // A file that may not grow is a failure to be told like any other, not the end of the program.
    std::signal(SIGXFSZ, SIG_IGN);
#endif
    nameProgram();
    QFile out;
    out.open(stdout, QIODevice::WriteOnly);
    QFile err;
    err.open(stderr, QIODevice::WriteOnly | QIODevice::Unbuffered);

    QStringList words;
    for (int i = 1; i < argc; ++i) {
        words += QString::fromLocal8Bit(argv[i]);
    }
    app::Arguments arguments;
    if (app::parse(words, arguments)) {
        const QCoreApplication application(argc, argv);
        app::installLanguage(app::Preferences(QString()).language());
        app::Arguments again;
        const auto misuse = app::parse(words, again); // in the user's language now
        err.write(misuse->sentence.toUtf8() + '\n' + app::usageText(again.command).toUtf8());
        return app::kWrongUsage;
    }
    const bool window = arguments.command.isEmpty() || arguments.command == u"demo";
    if (window && arguments.has(QStringLiteral("help"))) {
        const QCoreApplication application(argc, argv);
        app::installLanguage(app::Preferences(QString()).language());
        out.write(app::usageText(arguments.command).toUtf8());
        return app::kDone;
    }
    if (arguments.command.isEmpty() && arguments.has(QStringLiteral("version"))) {
        out.write("ullage " ULLAGE_VERSION "\n");
        return app::kDone;
    }
    return window ? runInWindow(argc, argv, arguments, err)
                  : runInTerminal(argc, argv, arguments, out, err);
}
