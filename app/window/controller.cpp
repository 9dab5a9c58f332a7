#include "app/window/controller.h"

#include "app/bench/bench_page.h"
#include "app/bench/steady_time.h"
#include "app/daybook/day_book_page.h"
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/history_dialog.h"
#include "app/dialogs/mix_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/mixing/mixing_page.h"
#include "app/shelf/shelf_charts.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/shelf_views.h"
#include "app/widgets/prompts.h"
#include "app/window/about_dialog.h"
#include "app/window/cautions_dialog.h"
#include "app/window/journal_import.h"
#include "app/window/main_window.h"
#include "app/words/error_words.h"
#include "app/words/event_words.h"
#include "app/words/moment_text.h"

#include <QFileInfo>
#include <QThread>

namespace ullage::app
{

Controller::Controller(MainWindow& window, Session& session, Preferences& preferences,
                       QObject* parent, ledger::SteadyClock steady)
    : QObject(parent), m_window(window), m_session(session), m_preferences(preferences),
      m_wording(preferences.wording()), m_steady(steady ? std::move(steady) : steadyTime()),
      m_benchHost(new SessionHost(session, preferences, this)),
      m_benchMemory(preferences.settings()), m_import(new JournalImport(window, session, this))
{
    makeBench();
    makePages();
    makeDayBook();
    makeFilms();
    connectWindow();
    connectSession();
    m_window.setUnits(m_wording.units);
    m_window.showTheme(Theme::instance().mode());
    if (m_session.isOpen()) {
        m_window.setBook(m_session.bookName());
        showStanding();
        refresh();
    } else {
        m_window.shelf()->setBookOpen(false);
    }
}

Controller::~Controller()
{
    delete m_bench;
    for (QThread* work : {m_job, m_listing}) {
        if (work)
            work->wait();
    }
}

void Controller::connectWindow()
{
    MainWindow* window = &m_window;
    connect(window, &MainWindow::mixRequested, this, &Controller::mix);
    connect(window, &MainWindow::enterRequested, this, &Controller::logMix);
    connect(window, &MainWindow::bottleActionRequested, this, &Controller::doWith);
    connect(window, &MainWindow::undoRequested, this, [this] { undoOrRedo(false); });
    connect(window, &MainWindow::redoRequested, this, [this] { undoOrRedo(true); });
    connect(window, &MainWindow::unitsChosen, this, &Controller::setUnits);
    connect(window, &MainWindow::themeChosen, this, [this](ThemeMode mode) {
        Theme::instance().setMode(mode);
        m_preferences.setLook(static_cast<Preferences::Look>(mode));
    });
    connect(window, &MainWindow::languageChosen, this, &Controller::setLanguage);
    connect(window, &MainWindow::cautionsRequested, this, &Controller::cautions);
    connect(window, &MainWindow::aboutRequested, this, &Controller::about);
    connect(window, &MainWindow::newBookRequested, this, &Controller::newBook);
    connect(window, &MainWindow::openBookRequested, this, &Controller::chooseBook);
    connect(window, &MainWindow::importRequested, this, &Controller::importInto);
    connect(window, &MainWindow::exportRequested, this, &Controller::exportTo);
    connect(window, &MainWindow::backupRequested, this, &Controller::backUpTo);
    connect(window, &MainWindow::copiesRequested, this, &Controller::openCopies);
    connect(window, &MainWindow::restoreRequested, this, &Controller::restoreFrom);
    connect(window, &MainWindow::salvageRequested, this, &Controller::salvage);
    connect(window, &MainWindow::checkRequested, this, &Controller::checkBook);
    connect(window, &MainWindow::closing, this,
            [this] { m_preferences.setWindowGeometry(m_window.layoutState()); });
    connect(window->shelf(), &ShelfPage::bottleSelected, this, &Controller::showSelected);
}

void Controller::connectSession()
{
    connect(&m_session, &Session::changed, this, &Controller::refresh);
    connect(&m_session, &Session::opened, this, [this] {
        m_window.setBook(m_session.bookName());
        m_window.shelf()->setBookOpen(true);
    });
    connect(&m_session, &Session::closing, this, [this] { m_window.shelf()->setBookOpen(false); });
    connect(&m_session, &Session::opened, this, &Controller::showBookOnBench);
    connect(&m_session, &Session::failed, this, &Controller::tellFault);
    connect(&m_session, &Session::standingChanged, this, [this] {
        showStanding();
        if (m_session.isOpen())
            showUndo();
    });
    connect(&m_session.copies(), &CopyKeeper::changed, this, [this] {
        showBackup();
        listCopies();
    });
}

bool Controller::openBook(const QString& path)
{
    m_wanted = path;
    if (const auto opened = m_session.open(path); !opened) {
        QString told = tr("%1: %2", "file, what is wrong with it")
                           .arg(QFileInfo(path).fileName(), sentence(opened.error()));
        if (!m_session.isOpen())
            told +=
                u'\n' + tr("In the File menu, “Copies…” puts a copy in its place, and “Salvage a "
                           "damaged book…” reads what is left of it into a new one.");
        prompts().fail(&m_window, tr("The book cannot be opened"), told);
        return false;
    }
    m_preferences.setLastBook(m_session.path());
    return true;
}

// What a window must know about the file: it is not alone with it, or can only read it.
void Controller::showStanding()
{
    const auto& why = m_session.readOnly();
    m_window.offerMending(isFaulty());
    if (why) {
        const bool moved = why->code == ErrorCode::BookMoved;
        const QString text = moved ? tr("Moved or replaced: nothing can be entered")
                             : why->code == ErrorCode::BookDamaged ? tr("Damaged: read only")
                                                                   : tr("Read only");
        m_window.setStanding(text, why->code != ErrorCode::ReadOnly, sentence(*why));
        return;
    }
    if (const auto& fault = m_session.fault())
        return m_window.setStanding(
            tr("Something is wrong in the book"), true,
            tr("%1 “Check the book” finds all there is.").arg(sentence(*fault)));
    const QStringList& others = m_session.elsewhere();
    m_window.setStanding(others.isEmpty() ? QString() : tr("Also open elsewhere"), false,
                         others.isEmpty() ? QString()
                                          : tr("What is entered there appears here. Open in: %1")
                                                .arg(others.join(QStringLiteral(", "))));
}

// Something is wrong in the book: what can be done about it is offered where it is said.
void Controller::tellFault(const Error& error)
{
    const QString title = tr("The book could not be read");
    if (error.code != ErrorCode::NotAsEntered && error.code != ErrorCode::BookDamaged)
        return fail(title, error);
    const auto way = prompts().choose(
        &m_window, title,
        tr("%1 What is sound is shown. What to do about the rest?").arg(sentence(error)),
        {tr("Restore a copy…"), tr("Salvage what is left into a new book…")});
    if (way) // once whoever told of it is done
        QMetaObject::invokeMethod(
            this, [this, way] { mend(*way); }, Qt::QueuedConnection);
}

bool Controller::isFaulty() const
{
    const auto& why = m_session.readOnly();
    return m_session.isOpen() &&
           (why ? why->code == ErrorCode::BookDamaged : m_session.fault().has_value());
}

void Controller::mend(int way)
{
    if (way == 0)
        openCopies();
    else
        salvage();
}

void Controller::refresh()
{
    if (!m_session.isOpen())
        return;
    std::vector<BottleView> views;
    std::optional<chemistry::Instant> next;
    const auto now = m_session.now();
    for (const Bottle& bottle : m_session.bottles()) {
        views.push_back(bottleView(bottle.batch, bottle.assessment, m_wording));
        const auto by = bottle.assessment.discardBy;
        if (by && *by > now && (!next || *by < *next))
            next = by;
    }
    ShelfPage* shelf = m_window.shelf();
    QString summary = views.empty() ? QString() : shelfSummary(views, next, now, m_wording);
    if (const auto newest = m_session.newest()) {
        if (const QString behind = clockBehindText(*newest, now, m_wording); !behind.isEmpty())
            summary = behind;
    }
    shelf->setSummary(summary);
    shelf->setBottles(std::move(views));
    showSelected(shelf->currentBottle());
    showUndo();
    showPages();
}

void Controller::showSelected(const QString& id)
{
    const Bottle* bottle = m_session.bottle(id);
    if (!bottle)
        return;
    const ledger::Batch& batch = bottle->batch;
    std::vector<ledger::Batch> past;
    for (const auto moment : pastMoments(batch)) {
        if (auto then = m_session.book().batch(batch.id, moment))
            past.push_back(std::move(*then));
    }
    constexpr double kUsual = 20;
    const chemistry::Celsius temperature(kUsual);
    KnownTimes times{m_preferences.baseTimes(batch.solution->id), {}, {}, true};
    QStringList films;
    for (const auto& film : m_preferences.baseTimesFor(batch.solution->id)) {
        if (!film.name.empty())
            films << QString::fromStdString(film.name);
    }
    times.film = films.join(QStringLiteral(", "));
    if (times.pairs.empty())
        times = notebookTimes(m_session.formulary(), *batch.solution);
    SelectedBottle selected = selectedBottle(batch, bottle->assessment, past, times,
                                             discardRange(batch), temperature, m_wording);
    addAirAdvice(selected, batch);
    addStrips(selected, batch);
    m_window.shelf()->setSelected(selected);
}

void Controller::showUndo()
{
    const auto name = [](const std::optional<ledger::Action>& action) {
        return action ? std::optional(actionName(*action)) : std::nullopt;
    };
    auto undo = name(m_session.book().undoable());
    if (!undo && m_session.book().othersHaveDone())
        undo = QString(); // asked for, it tells where others' deeds are taken back
    if (m_session.readOnly())
        m_window.setUndo({}, {});
    else
        m_window.setUndo(undo, name(m_session.book().redoable()));
}

void Controller::undoOrRedo(bool redo)
{
    if (!m_session.isOpen())
        return;
    if (const auto done = redo ? m_session.redo() : m_session.undo(); !done)
        fail(redo ? tr("That cannot be done again") : tr("That cannot be undone"), done.error());
}

// Pages that word themselves when they are made are made again; the others are told.
void Controller::setLanguage(const QString& code)
{
    m_preferences.setLanguage(code);
    emit languageChosen(code);
    m_wording = m_preferences.wording();
    emit m_benchHost->changed();
    remakeBench();
    remakeFormularyPage();
    showStanding();
    m_dayBook->setWording(m_wording);
    if (m_mixing)
        m_mixing->setWording(m_wording);
    showBackup();
    refresh();
}

void Controller::setUnits(const Units& units)
{
    m_preferences.setUnits(units);
    m_wording = m_preferences.wording();
    m_dayBook->setWording(m_wording);
    if (m_mixing)
        m_mixing->setWording(m_wording);
    m_window.setUnits(units);
    emit m_benchHost->changed();
    refresh();
}

void Controller::open(DeedDialog* dialog)
{
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void Controller::logMix()
{
    if (!m_session.isOpen())
        return;
    auto* dialog = new MixDialog({m_session, m_preferences, m_wording}, &m_window);
    connect(dialog, &QDialog::accepted, this,
            [this, dialog] { m_window.shelf()->selectBottle(dialog->mixed()); });
    open(dialog);
}

void Controller::doWith(BottleAction action, const QString& batch)
{
    if (!m_session.isOpen())
        return;
    const DialogContext context{m_session, m_preferences, m_wording};
    const Bottle* bottle = m_session.bottle(batch);
    if (action == BottleAction::RunFilm)
        return open(new RunDialog(context, bottle, &m_window));
    if (!bottle)
        return;
    const auto happened = [&](HappeningKind kind) {
        open(new BottleDialog(kind, context, *bottle, &m_window));
    };
    switch (action) {
    case BottleAction::RunFilm:
        return;
    case BottleAction::Bench:
        m_bench->plan(batch.toStdString());
        return m_window.showPage(Page::Bench);
    case BottleAction::TopUp:
        return happened(HappeningKind::TopUp);
    case BottleAction::DrawOff:
        return happened(HappeningKind::DrawOff);
    case BottleAction::Move:
        return happened(HappeningKind::Move);
    case BottleAction::Test:
        return open(
            new BottleDialog(testsOf(bottle->batch.solution->role), context, *bottle, &m_window));
    case BottleAction::Dissolved:
        return happened(HappeningKind::Dissolved);
    case BottleAction::Contaminated:
        return happened(HappeningKind::Contaminated);
    case BottleAction::Note:
        return happened(HappeningKind::Note);
    case BottleAction::Opened:
        return happened(HappeningKind::Opened);
    case BottleAction::StoodOpen:
        return happened(HappeningKind::StoodOpen);
    case BottleAction::StoredAt:
        return happened(HappeningKind::StoredAt);
    case BottleAction::Films:
        return showFilms(batch, QString::fromStdString(bottle->batch.name));
    case BottleAction::History:
        return open(new HistoryDialog(context, *bottle, &m_window));
    case BottleAction::Discard:
        return happened(HappeningKind::Discard);
    }
}

void Controller::cautions()
{
    auto* dialog = new CautionsDialog(&m_window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void Controller::about()
{
    auto* dialog = new AboutDialog(&m_window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

QString Controller::sentence(const Error& error) const { return errorSentence(error, m_wording); }

void Controller::fail(const QString& title, const Error& error)
{
    prompts().fail(&m_window, title, sentence(error));
}

} // namespace ullage::app
