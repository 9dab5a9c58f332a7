#include "app/window/controller.h"

#include "app/bench/steady_time.h"
#include "app/session/session_door.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/shelf_view.h"
#include "app/window/about_dialog.h"
#include "app/window/bench_place.h"
#include "app/window/book_copies.h"
#include "app/window/book_files.h"
#include "app/window/book_standing.h"
#include "app/window/bottle_deeds.h"
#include "app/window/calendar_place.h"
#include "app/window/cautions_dialog.h"
#include "app/window/cupboard_place.h"
#include "app/window/day_book_place.h"
#include "app/window/film_dialogs.h"
#include "app/window/formulary_place.h"
#include "app/window/main_window.h"
#include "app/window/mixing_place.h"
#include "app/window/paper_place.h"
#include "app/window/shelf_feed.h"
#include "app/window/table_place.h"

namespace ullage::app
{

Controller::Controller(MainWindow& window, Session& session, Preferences& preferences,
                       QObject* parent, ledger::SteadyClock steady)
    : QObject(parent), m_parts{window, session, preferences,
                               *new SessionDoor(session, preferences,
                                                &window)}, // pages stay in the window
      m_files(new BookFiles(m_parts, this)), m_copies(new BookCopies(m_parts, *m_files, this)),
      m_standing(new BookStanding(m_parts, *m_copies, this)), m_shelf(new ShelfFeed(m_parts, this)),
      m_deeds(new BottleDeeds(m_parts, this)),
      m_bench(new BenchPlace(m_parts, steady ? steady : steadyTime(), this)),
      m_formulary(new FormularyPlace(m_parts, this)),
      m_mixing(new MixingPlace(m_parts, steady ? steady : steadyTime(), this)),
      m_dayBook(new DayBookPlace(m_parts, this)), m_cupboard(new CupboardPlace(m_parts, this)),
      m_films(new FilmDialogs(m_parts, this)), m_paper(new PaperPlace(m_parts, this)),
      m_tables(new TablePlace(m_parts, *m_files, this)),
      m_calendar(new CalendarPlace(m_parts, *m_files, this))
{
    connectFileMenu();
    connectEntries();
    connectLook();
    connectFilms();
    connectPages();
    const auto named = [this] {
        m_parts.window.setBook(m_parts.session.bookName());
        m_parts.window.setBookOpen(true);
    };
    const Door* door = &m_parts.door;
    connect(door, &Door::wordingChanged, m_standing, &BookStanding::show);
    connect(door, &Door::wordingChanged, m_copies, &BookCopies::showStanding);
    connect(door, &Door::wordingChanged, m_deeds, &BottleDeeds::showUndo);
    connect(door, &Door::wordingChanged, m_shelf, &ShelfFeed::refresh);
    // After all parts: pages that come into sight read at once.
    connect(&session, &Session::opened, this, named);
    connect(&session, &Session::closing, this, [this] {
        m_parts.window.setBook({});
        m_parts.window.setBookOpen(false);
    });
    window.setBookOpen(session.isOpen());
    window.setUnits(m_parts.wording().units);
    window.showTheme(Theme::instance().mode());
    if (session.isOpen()) {
        named();
        m_standing->show();
        m_deeds->showUndo();
        m_shelf->refresh();
    }
}

Controller::~Controller() = default;

bool Controller::openBook(const QString& path) { return m_files->openBook(path); }

void Controller::openKnownBook(const QString& path) { m_files->openKnownBook(path); }

void Controller::doWith(BottleAction action, const QString& batch)
{
    m_deeds->doWith(action, batch);
}

void Controller::connectFileMenu()
{
    MainWindow* window = &m_parts.window;
    connect(window, &MainWindow::newBookRequested, m_files, &BookFiles::newBook);
    connect(window, &MainWindow::openBookRequested, m_files, &BookFiles::chooseBook);
    connect(window, &MainWindow::importRequested, m_files, &BookFiles::importInto);
    connect(window, &MainWindow::exportRequested, m_files, &BookFiles::exportTo);
    connect(window, &MainWindow::tableRequested, m_tables, &TablePlace::exportTable);
    connect(window, &MainWindow::calendarRequested, m_calendar, &CalendarPlace::open);
    connect(m_cupboard, &CupboardPlace::calendarRequested, m_calendar, &CalendarPlace::open);
    m_paper->setPlanFor([this] { return m_cupboard->planFor(); });
    m_tables->setPlanFor([this] { return m_cupboard->planFor(); });
    connect(m_cupboard, &CupboardPlace::paperRequested, m_paper, &PaperPlace::print);
    connect(m_cupboard, &CupboardPlace::tableOfListRequested, m_tables,
            [this] { m_tables->exportThe(BookTable::Shopping); });
    connect(m_cupboard, &CupboardPlace::besideChanged, m_calendar, &CalendarPlace::anew);
    connect(m_calendar, &CalendarPlace::failingChanged, m_standing,
            [this] { m_standing->setCalendarFailing(m_calendar->failing()); });
    connect(window, &MainWindow::checkRequested, m_files, &BookFiles::checkBook);
    connect(m_files, &BookFiles::copiesRequested, m_copies, &BookCopies::openCopies);
    connect(m_files, &BookFiles::salvageRequested, m_copies, &BookCopies::salvage);
    connect(window, &MainWindow::backupRequested, m_copies, &BookCopies::backUpTo);
    connect(window, &MainWindow::copiesRequested, m_copies, &BookCopies::openCopies);
    connect(window, &MainWindow::restoreRequested, m_copies, &BookCopies::restoreFrom);
    connect(window, &MainWindow::salvageRequested, m_copies, &BookCopies::salvage);
}

void Controller::connectEntries()
{
    MainWindow* window = &m_parts.window;
    connect(window, &MainWindow::mixRequested, m_mixing, &MixingPlace::open);
    connect(window, &MainWindow::enterRequested, m_deeds, &BottleDeeds::logMix);
    connect(window, &MainWindow::bottleActionRequested, m_deeds, &BottleDeeds::doWith);
    connect(window, &MainWindow::labelsRequested, m_deeds, [this] { m_deeds->printLabels({}); });
    connect(window, &MainWindow::paperRequested, m_paper, &PaperPlace::print);
    connect(m_mixing, &MixingPlace::paperMade, m_paper, &PaperPlace::preview);
    connect(m_mixing, &MixingPlace::labelsRequested, m_deeds, &BottleDeeds::printLabels);
    connect(window, &MainWindow::runSheetRequested, m_bench, &BenchPlace::printSheet);
    connect(window, &MainWindow::undoRequested, m_deeds, &BottleDeeds::undo);
    connect(window->shelf(), &ShelfPage::undoRequested, this, [this] {
        const auto last = m_parts.session.isOpen() ? m_parts.session.book().undoable()
                                                   : std::optional<ledger::Action>();
        if (m_deeds->undo() && last)
            m_shelf->tellUndone(*last);
    });
    connect(window, &MainWindow::redoRequested, m_deeds, &BottleDeeds::redo);
    connect(window, &MainWindow::personRequested, m_dayBook, &DayBookPlace::askPerson);
}

void Controller::connectLook()
{
    MainWindow* window = &m_parts.window;
    connect(window, &MainWindow::unitsChosen, this, &Controller::setUnits);
    connect(window, &MainWindow::languageChosen, this, &Controller::setLanguage);
    connect(window, &MainWindow::themeChosen, this, [this](ThemeMode mode) {
        Theme::instance().setMode(mode);
        m_parts.preferences.setLook(static_cast<Preferences::Look>(mode));
    });
    connect(window, &MainWindow::cautionsRequested, this,
            [window] { openOnce(new CautionsDialog(window)); });
    connect(window, &MainWindow::aboutRequested, this,
            [window] { openOnce(new AboutDialog(window)); });
    connect(window, &MainWindow::closing, this,
            [this] { m_parts.preferences.setWindowGeometry(m_parts.window.layoutState()); });
}

void Controller::connectFilms()
{
    connect(&m_parts.window, &MainWindow::compareFilmsRequested, m_films,
            [this] { m_films->compareFilms(QString()); });
    connect(m_dayBook, &DayBookPlace::filmRequested, m_films, &FilmDialogs::showFilm);
    connect(m_dayBook, &DayBookPlace::filmsRequested, m_films, &FilmDialogs::showFilms);
    connect(m_deeds, &BottleDeeds::filmsRequested, m_films, &FilmDialogs::showFilms);
    connect(m_deeds, &BottleDeeds::deedDone, m_shelf, &ShelfFeed::tellDone);
    connect(m_films, &FilmDialogs::bottleRequested, this, &Controller::showBottle);
    connect(m_films, &FilmDialogs::testRequested, m_deeds,
            [this](const QString& batch) { m_deeds->doWith(BottleAction::Test, batch); });
}

void Controller::connectPages()
{
    connect(&m_parts.window, &MainWindow::statisticsRequested, m_dayBook,
            &DayBookPlace::showStatistics);
    connect(m_dayBook, &DayBookPlace::paperRequested, m_paper, &PaperPlace::preview);
    connect(m_dayBook, &DayBookPlace::mixRequested, m_mixing, &MixingPlace::open);
    connect(m_dayBook, &DayBookPlace::shelfRequested, this,
            [this](const QString& id, const QString& name) {
                m_films->closeAll();
                showBottle(id, name);
            });
    connect(m_deeds, &BottleDeeds::bottleMade, this, [this](const QString& batch, bool ofGuide) {
        m_mixing->loggedPlainly(ofGuide);
        showLogged({batch});
    });
    connect(m_cupboard, &CupboardPlace::mixRequested, m_mixing, &MixingPlace::openWith);
    connect(m_deeds, &BottleDeeds::benchRequested, m_bench, &BenchPlace::plan);
    connect(m_bench, &BenchPlace::paperRequested, m_paper, &PaperPlace::preview);
    connect(m_bench, &BenchPlace::exchangeRequested, m_deeds,
            [this](const QString& first) { m_deeds->doWith(BottleAction::ExchangeBaths, first); });
    connect(m_mixing, &MixingPlace::plainLogWanted, m_deeds, &BottleDeeds::logMixOfGuide);
    connect(m_mixing, &MixingPlace::batchesLogged, this, &Controller::showLogged);
    connect(m_mixing, &MixingPlace::finished, this, [this](const QString& batch) {
        m_parts.window.showPage(Page::Shelf);
        if (!batch.isEmpty())
            m_shelf->select(batch);
    });
}

// On the shelf if it stands there; of one that is gone the day book tells what happened to it.
void Controller::showBottle(const QString& id, const QString& name)
{
    if (!m_parts.session.bottle(id))
        return m_dayBook->showBottle(id, name);
    m_parts.window.showPage(Page::Shelf);
    m_shelf->select(id);
    m_parts.window.shelf()->view()->setFocus();
}

void Controller::showLogged(const QStringList& batches)
{
    m_parts.window.showPage(Page::Shelf);
    m_shelf->select(batches.front());
    QStringList names;
    for (const QString& batch : batches) {
        if (const Bottle* bottle = m_parts.session.bottle(batch))
            names << QString::fromStdString(bottle->batch.name);
    }
    m_shelf->tellDone(names.isEmpty() ? QString()
                                      : tr("%1 logged").arg(names.join(QStringLiteral(", "))));
    for (const QString& batch : batches)
        m_deeds->offerFreshTest(batch);
}

void Controller::setUnits(const Units& units)
{
    m_parts.preferences.setUnits(units);
    m_parts.window.setUnits(units);
    emit m_parts.door.wordingChanged();
}

void Controller::setLanguage(const QString& code)
{
    m_parts.preferences.setLanguage(code);
    emit languageChosen(code);
    emit m_parts.door.wordingChanged();
}

} // namespace ullage::app
