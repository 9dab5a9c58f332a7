// Connects the window to the book: what the session holds to what is shown, what the user asks for
// to the dialogs that do it.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QDateTime>
#include <QObject>
#include <QPointer>

#include "app/bench/bench_memory.h"
#include "app/bench/cues.h"
#include "app/bench/session_host.h"
#include "app/session/preferences.h"
#include "app/session/session.h"
#include "app/shelf/bottle_actions.h"
#include "app/window/book_jobs.h"
#include "core/ledger/range.h"
#include "core/ledger/run_clock.h"

#include <QPointer>

namespace ullage::app
{

class BenchPage;
class CopiesDialog;
class DayBookPage;
class DeedDialog;
class FormularyPage;
class JournalImport;
class MainWindow;
class MixingPage;
struct SelectedBottle;

class Controller : public QObject
{
    Q_OBJECT

public:
    /// All of them outlive it. `steady` is the clock of the runs, the system's if empty.
    Controller(MainWindow& window, Session& session, Preferences& preferences,
               QObject* parent = nullptr, ledger::SteadyClock steady = {});
    ~Controller() override;

    /// Opens a book and remembers it as the last one; says why if it cannot be. False then.
    bool openBook(const QString& path);
    /// The same for a book that must have been there before: if it is missing or empty, asks what
    /// to do once its copies are found.
    void openKnownBook(const QString& path);

    /// Opens the guide, or goes back to the one under way.
    void mix();
    /// The plain dialog.
    void logMix();
    void doWith(BottleAction action, const QString& batch);

signals:
    /// The user chose another language; whoever has the translators installs it.
    void languageChosen(const QString& code);

private:
    void connectWindow();
    void connectSession();
    void makeBench();
    void remakeBench();
    void showBookOnBench();
    void refresh();
    void showSelected(const QString& id);
    void showUndo();
    void open(DeedDialog* dialog);
    void undoOrRedo(bool redo);
    void setUnits(const Units& units);
    void setLanguage(const QString& code);
    void showBackup();
    void showStanding();
    void tellFault(const Error& error);
    void mend(int way);
    [[nodiscard]] bool isFaulty() const;
    void cautions();
    void about();

    // Pages (controller_pages.cpp).
    void makePages();
    void remakeFormularyPage();
    void showPages();
    [[nodiscard]] std::vector<std::shared_ptr<const formulary::Vessel>> freeVessels();
    [[nodiscard]] std::optional<ledger::DateRange> discardRange(const ledger::Batch& batch);
    void addAirAdvice(SelectedBottle& selected, const ledger::Batch& batch);
    void addStrips(SelectedBottle& selected, const ledger::Batch& batch);

    // The day book (controller_day_book.cpp).
    void makeDayBook();
    void askPerson();

    // Films (controller_films.cpp).
    void makeFilms();
    void showFilms(const QString& batch, const QString& name);
    void showFilm(const QString& film);
    void compareFilms(const QString& film);
    void showBottle(const QString& id, const QString& name);
    template <class Dialog>
    void openFilmDialog(Dialog* dialog);

    // Files (controller_files.cpp).
    void insteadOf(const QString& path, const std::vector<store::Copy>& copies);
    void newBook();
    void chooseBook();
    void importInto();
    void exportTo();
    void checkBook();
    bool isOpenBook(const QString& title, const QString& file);
    void run(const QString& doing, BookJob job, std::function<QString(int)> done);

    // Copies (controller_copies.cpp).
    void backUpTo();
    void openCopies();
    void listCopies();
    void showCopies();
    void chooseSecondFolder();
    void setSecondFolder(const QString& folder);
    void restoreFrom();
    void restoreCopy(const store::Copy& copy);
    void putBack(const QString& copy, const QString& path);
    void salvage();
    void showSalvaged(const store::Salvaged& done, const QString& fresh);
    [[nodiscard]] QStringList copyFolders() const;
    [[nodiscard]] QString bookInHand() const;

    [[nodiscard]] QString sentence(const Error& error) const;
    void fail(const QString& title, const Error& error);

    MainWindow& m_window;
    Session& m_session;
    Preferences& m_preferences;
    Wording m_wording;
    ledger::SteadyClock m_steady;
    SessionHost* m_benchHost;
    BenchMemory m_benchMemory;
    AlertSounds m_sounds;
    QPointer<BenchPage> m_bench; ///< the window's, but it goes before what it stands on
    QThread* m_job = nullptr;
    JournalImport* m_import;
    FormularyPage* m_formularyPage = nullptr;
    QPointer<MixingPage> m_mixing;
    DayBookPage* m_dayBook = nullptr;
    std::vector<QPointer<QDialog>> m_filmDialogs; ///< open ones, each over the one before
    QString m_wanted; ///< the book that was to be opened last, whether it could be or not
    QPointer<CopiesDialog> m_copiesDialog;
    std::vector<store::Copy> m_copies; ///< of the book in hand, as they were last listed
    QThread* m_listing = nullptr;
    bool m_listAgain = false; ///< something changed while they were listed
    QString m_restored;       ///< the book that a job puts a copy in the place of
    bool m_reopens = false;   ///< it was open, and is opened again if that fails
};

} // namespace ullage::app
