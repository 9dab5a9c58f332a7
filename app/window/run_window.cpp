#include "app/window/run_window.h"

#include "app/session/starter.h"
#include "app/widgets/prompts.h"
#include "app/widgets/theme.h"
#include "app/window/book_jobs.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "core/store/book_file.h"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QLibraryInfo>
#include <QProcess>
#include <QStandardPaths>
#include <QTranslator>

namespace ullage::app
{

namespace
{

const QString kTranslations = QStringLiteral(":/i18n");
const QString kPrefix = QStringLiteral("ullage_");

std::vector<MainWindow::Language> languages()
{
    std::vector<MainWindow::Language> found{{}};
    const auto files = QDir(kTranslations).entryList({kPrefix + QStringLiteral("*.qm")});
    for (const QString& file : files) {
        const QString code = QFileInfo(file).completeBaseName().mid(kPrefix.size());
        found.push_back({code, languageName(code)});
    }
    return found;
}

} // namespace

// Of English Qt names the country's kind; the words here are anybody's.
QString languageName(const QString& code)
{
    if (code == QLatin1String("en"))
        return QStringLiteral("English");
    QString name = QLocale(code).nativeLanguageName();
    if (!name.isEmpty())
        name[0] = name[0].toUpper();
    return name;
}

QString usualBook()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    return folder + QStringLiteral("/home.ullage");
}

CopyPlaces copyPlaces(const Preferences& preferences)
{
    return {QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
                QStringLiteral("/copies"),
            preferences.secondCopies()};
}

QString lastSeenFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
           QStringLiteral("/seen");
}

QString seatFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
           QStringLiteral("/seats");
}

void installLanguage(const QString& code)
{
    // Plurals of English are a translation too, so one is always installed.
    static QTranslator* installed = nullptr;
    // The system's own region where it speaks that language: 25 Nov or Nov 25, 20.5 or 20,5.
    const QLocale system = QLocale::system();
    const bool asSystem = code.isEmpty() || QLocale(code).language() == system.language();
    const QLocale locale = asSystem ? system : QLocale(code);
    QLocale::setDefault(locale); // charts and tally marks word their figures by it
    auto* translator = new QTranslator(QCoreApplication::instance());
    if (!translator->load(locale, QStringLiteral("ullage"), QStringLiteral("_"), kTranslations) &&
        !translator->load(kPrefix + QStringLiteral("en"), kTranslations)) {
        delete translator;
        return;
    }
    if (installed) {
        QCoreApplication::removeTranslator(installed);
        installed->deleteLater();
    }
    installed = translator;
    QCoreApplication::installTranslator(translator);

    // Qt's own words, on the buttons of its dialogs; without its package they stay English, and
    // where it has none for this language they are English again.
    static QTranslator* qtInstalled = nullptr;
    if (qtInstalled) {
        QCoreApplication::removeTranslator(qtInstalled);
        qtInstalled->deleteLater();
        qtInstalled = nullptr;
    }
    auto* qtWords = new QTranslator(QCoreApplication::instance());
    if (qtWords->load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
                      QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
        qtInstalled = qtWords;
        QCoreApplication::installTranslator(qtWords);
    } else {
        delete qtWords;
    }
}

int runWindow(const WindowOptions& options)
{
    Preferences preferences(options.settingsFile);
    installLanguage(preferences.language());
    auto& theme = Theme::instance();
    theme.setMode(static_cast<ThemeMode>(preferences.look()));
    theme.install(*qApp);

    SessionOptions settings;
    settings.clock = options.clock;
    settings.starter = kStarterFormulary;
    settings.lastSeen = options.lastSeen;
    settings.seats = options.seats;
    settings.machine = preferences.machine();
    if (options.backUp)
        settings.copies = copyPlaces(preferences);
    settings.wholeCheck = [seen = options.lastSeen](const QString& book,
                                                    const store::Watch& watch) {
        return checkWhole(book, seen, watch);
    };
    Session session(settings);
    MainWindow window;
    window.setLanguages(languages(), preferences.language());
    window.restoreLayout(preferences.windowGeometry());
    Controller controller(window, session, preferences);
    QObject::connect(&controller, &Controller::languageChosen, installLanguage);
    QObject::connect(&window, &MainWindow::demoRequested, &window, [&window] {
        if (!QProcess::startDetached(QCoreApplication::applicationFilePath(),
                                     {QStringLiteral("demo")}))
            prompts().fail(&window, MainWindow::tr("The demo did not open"),
                           MainWindow::tr("Open it from a terminal with “ullage demo”."));
    });
    window.show();

    const QString before = preferences.lastBook();
    const QString wanted = !options.book.isEmpty() ? options.book
                           : !before.isEmpty()     ? before
                                                   : usualBook();
    // Only what was never used before is made without asking.
    if (wanted != before && !QFileInfo::exists(wanted) && !store::hasLog(wanted))
        controller.openBook(wanted);
    else
        controller.openKnownBook(wanted);
    if (!options.remember)
        preferences.setLastBook(before);
    return QApplication::exec();
}

} // namespace ullage::app
