// Paints the picture of the README: the Shelf on the demo's book, with a developer chosen whose
// strips and films are on its card. readme_picture FILE. The target ullage_readme_picture writes it
// where the README looks for it; day and units are fixed, so that it changes only with the program.
#include "app/cli/demo_book.h"
#include "app/session/preferences.h"
#include "app/session/session.h"
#include "app/session/starter.h"
#include "app/shelf/shelf_page.h"
#include "app/widgets/theme.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "app/window/run_window.h"
#include "tests/app/screens/every_screen.h"
#include "tests/app/screens/offscreen_screen.h"

#include <QApplication>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>

using namespace ullage;
using namespace ullage::app;

namespace
{

constexpr QSize kSize{1280, 800};

// What is used up film by film, and tested with strips: something to show on each of its cards.
bool tellsMost(const Bottle& bottle)
{
    return bottle.batch.solution->role == formulary::Role::Developer &&
           !bottle.batch.solution->replenishPerFilm && bottle.batch.strips.size() > 1;
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 2)
        qFatal("readme_picture FILE");
    qputenv("TZ", "UTC");
    qputenv("LC_ALL", "en_GB.UTF-8");
    QTemporaryDir scratch;
    useOffscreen(kSize, scratch.path());
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    auto& theme = Theme::instance();
    theme.setMode(ThemeMode::Light);
    theme.install(application);
    installLanguage(QStringLiteral("en"));
    using namespace std::chrono;
    constexpr auto kEvening = sys_days{2026y / November / 20} + 20h;
    const auto clock = [=] { return time_point_cast<milliseconds>(kEvening); };
    const auto book = createDemoBook(scratch.path(), clock);
    if (!book)
        qFatal("no demo: %s", book.error().text.c_str());

    Preferences preferences(scratch.filePath(QStringLiteral("settings.ini")));
    preferences.setLanguage(QStringLiteral("en"));
    SessionOptions options;
    options.clock = clock;
    options.starter = kStarterFormulary;
    Session session(options);
    MainWindow window;
    Controller controller(window, session, preferences);
    controller.openBook(*book);
    window.show();
    window.resize(kSize);
    const auto bottles = session.bottles();
    const auto shown = std::find_if(bottles.begin(), bottles.end(), tellsMost);
    if (shown == bottles.end())
        qFatal("the demo has no such developer");
    window.shelf()->selectBottle(QString::fromStdString(shown->batch.id));
    letSettle();
    return window.grab().save(QString::fromLocal8Bit(argv[1])) ? 0 : 1;
}
