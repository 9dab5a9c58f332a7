// Leads between the window and the book: makes the parts that each serve one side of the window,
// and connects them with the menus and with each other. It knows no rule and shows nothing itself.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QObject>

#include "app/shelf/bottle_actions.h"
#include "app/window/window_parts.h"
#include "app/words/units.h"
#include "core/ledger/run_clock.h"

namespace ullage::app
{

class BenchPlace;
class BookCopies;
class BookFiles;
class BookStanding;
class BottleDeeds;
class CalendarPlace;
class CupboardPlace;
class DayBookPlace;
class FilmDialogs;
class FormularyPlace;
class MixingPlace;
class PaperPlace;
class ShelfFeed;
class TablePlace;

class Controller : public QObject
{
    Q_OBJECT

public:
    /// All of them outlive it. `steady` is the clock of the runs, the system's if empty.
    Controller(MainWindow& window, Session& session, Preferences& preferences,
               QObject* parent = nullptr, ledger::SteadyClock steady = {});
    ~Controller() override;

    /// As BookFiles has them.
    bool openBook(const QString& path);
    void openKnownBook(const QString& path);
    /// As BottleDeeds has it.
    void doWith(BottleAction action, const QString& batch);

signals:
    /// The user chose another language; whoever has the translators installs it.
    void languageChosen(const QString& code);

private:
    void connectFileMenu();
    void connectEntries();
    void connectLook();
    void connectFilms();
    void connectPages();
    void showBottle(const QString& id, const QString& name);
    void showLogged(const QStringList& batches);
    void setUnits(const Units& units);
    void setLanguage(const QString& code);

    WindowParts m_parts;
    BookFiles* m_files;
    BookCopies* m_copies;
    BookStanding* m_standing;
    ShelfFeed* m_shelf;
    BottleDeeds* m_deeds;
    BenchPlace* m_bench;
    FormularyPlace* m_formulary;
    MixingPlace* m_mixing;
    DayBookPlace* m_dayBook;
    CupboardPlace* m_cupboard;
    FilmDialogs* m_films;
    PaperPlace* m_paper;
    TablePlace* m_tables;
    CalendarPlace* m_calendar;
};

} // namespace ullage::app
