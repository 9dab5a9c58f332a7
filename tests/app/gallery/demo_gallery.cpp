// Paints the window on the demo book to PNG files, for a person to look at: each page, the shelf
// with a developer, a fixer and a bottle to discard, in English and German, at two sizes, light and
// dark. demo_gallery FOLDER
#include "app/bench/wash_edit.h"
#include "app/cli/demo_book.h"
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/films/compare_dialog.h"
#include "app/films/film_card.h"
#include "app/films/films_dialog.h"
#include "app/session/preferences.h"
#include "app/session/session_door.h"
#include "app/session/starter.h"
#include "app/shelf/shelf_page.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "app/window/run_window.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QElapsedTimer>
#include <QStandardPaths>
#include <QTabBar>
#include <QTemporaryDir>

using namespace ullage;
using namespace ullage::app;

namespace
{

void settle()
{
    // What a page reads off the interface thread comes back through the event loop.
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < 500)
        QApplication::processEvents(QEventLoop::AllEvents, 20);
}

// The first bottle of each kind worth a look.
QList<std::pair<QString, QString>> worthALook(Session& session)
{
    QList<std::pair<QString, QString>> found;
    const auto add = [&](const QString& name, const auto& fits) {
        for (const Bottle& bottle : session.bottles()) {
            if (fits(bottle)) {
                found.append({name, QString::fromStdString(bottle.batch.id)});
                return;
            }
        }
    };
    const auto role = [](const Bottle& bottle) { return bottle.batch.solution->role; };
    add("developer", [&](const Bottle& bottle) {
        return role(bottle) == formulary::Role::Developer && bottle.batch.strips.size() > 1 &&
               bottle.assessment.verdict == ledger::Verdict::Good;
    });
    add("near-its-end", [&](const Bottle& bottle) {
        return bottle.assessment.verdict == ledger::Verdict::NearItsEnd;
    });
    add("topped-up",
        [&](const Bottle& bottle) { return bottle.batch.solution->replenishPerFilm.has_value(); });
    add("no-strips", [&](const Bottle& bottle) {
        return role(bottle) == formulary::Role::Developer && bottle.batch.filmsDone.value() > 0 &&
               session.strips(bottle.batch.solution->id).empty();
    });
    add("fixer", [&](const Bottle& bottle) {
        return role(bottle) == formulary::Role::Fixer &&
               bottle.assessment.verdict != ledger::Verdict::Discard;
    });
    add("discard", [&](const Bottle& bottle) {
        return bottle.assessment.verdict == ledger::Verdict::Discard;
    });
    return found;
}

// The other face of every card that has one.
void turnCards(MainWindow& window, int face)
{
    for (auto* tabs : window.shelf()->findChildren<QTabBar*>())
        tabs->setCurrentIndex(face);
}

// The dialogs that propose something: a factor for a strip, a top-up for a run.
void proposals(Session& session, Preferences& preferences, const QString& developer,
               const QString& toppedUp, const QString& end)
{
    SessionDoor door(session, preferences);
    const Bottle& tested = *session.bottle(developer);
    BottleDialog test(testsOf(tested.batch.solution->role), door, tested);
    auto* density = test.findChildren<QuantityEdit*>()[2];
    density->setValue(1.07);
    emit density->valueChanged();
    test.show();
    settle();
    test.grab().save(end.arg("strip-proposal"));
    RunDialog run(door, session.bottle(toppedUp));
    run.show();
    settle();
    run.findChild<QCheckBox*>("topUp")->setChecked(true);
    settle();
    run.grab().save(end.arg("run-top-up"));
}

// Films of a bottle, a film's card, and what went wrong, each as its own picture.
void paintFilms(MainWindow& window, Controller& controller, Session& session, const QString& folder,
                const QString& tail)
{
    const auto marked = session.films().marked();
    if (!marked || marked->empty())
        qFatal("no film of the demo is marked");
    const ledger::FilmTrace& film = marked->front();
    controller.doWith(BottleAction::Films,
                      QString::fromStdString(film.baths.front().before.batch.id));
    settle();
    auto* list = window.findChild<FilmsDialog*>();
    if (!list)
        qFatal("no list of films");
    list->grab().save(folder + "/films-list" + tail);
    emit list->filmRequested(QString::fromStdString(film.film.id));
    settle();
    window.findChild<FilmCard*>()->grab().save(folder + "/films-card" + tail);
    emit list->compareRequested(QString());
    settle();
    auto* compare = window.findChild<CompareDialog*>();
    compare->grab().save(folder + "/films-compare" + tail);
    for (const int kind : {1, 4}) {
        compare->findChildren<QComboBox*>().front()->setCurrentIndex(kind);
        settle();
        compare->grab().save(folder + QString("/films-compare-%1").arg(kind) + tail);
    }
    compare->close();
    window.findChild<FilmCard*>()->close();
    list->close();
    settle();
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    const QString folder = argc > 1 ? argv[1] : "gallery";
    QDir().mkpath(folder);
    auto& theme = Theme::instance();
    theme.install(application);
    QTemporaryDir scratch;
    const auto clock = [] {
        return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
    };
    const auto book = createDemoBook(scratch.path(), clock);
    if (!book)
        qFatal("no demo: %s", book.error().text.c_str());

    for (const QString language : {"en", "de"}) {
        installLanguage(language);
        Preferences preferences(scratch.filePath(language + ".ini"));
        preferences.setLanguage(language);
        SessionOptions options;
        options.clock = clock;
        options.starter = kStarterFormulary;
        for (const ThemeMode mode : {ThemeMode::Light, ThemeMode::Dark}) {
            theme.setMode(mode);
            Session session(options);
            MainWindow window;
            Controller controller(window, session, preferences);
            controller.openBook(*book);
            for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
                window.resize(size);
                window.show();
                const QString tail = QString("-%1-%2-%3.png")
                                         .arg(language)
                                         .arg(size.height())
                                         .arg(mode == ThemeMode::Dark ? "dark" : "light");
                for (const auto& [name, id] : worthALook(session)) {
                    window.shelf()->selectBottle(id);
                    settle();
                    window.grab().save(folder + "/shelf-" + name + tail);
                    turnCards(window, 1);
                    settle();
                    window.grab().save(folder + "/shelf-" + name + "-turned" + tail);
                    turnCards(window, 0);
                }
                if (size.height() == 800) {
                    const auto bottles = worthALook(session);
                    proposals(session, preferences, bottles[0].second, bottles[2].second,
                              folder + "/%1" + tail);
                }
                for (int page = 1; page < kPages; ++page) {
                    window.showPage(static_cast<Page>(page));
                    settle();
                    window.grab().save(folder + QString("/page-%1").arg(page) + tail);
                    if (page == int(Page::Bench)) {
                        auto* wash = window.findChild<WashEdit*>();
                        wash->setKind(ledger::WashKind::FillAndDump);
                        settle();
                        window.grab().save(folder + "/bench-wash" + tail);
                        wash->setKind(ledger::WashKind::AsTemplate);
                    }
                }
                window.showPage(Page::Shelf);
                if (size.height() == 800)
                    paintFilms(window, controller, session, folder, tail);
            }
        }
    }
    return 0;
}
