// The menus of the window.
#include "app/window/main_window.h"

#include "app/shelf/shelf_page.h"

#include <QActionGroup>
#include <QMenuBar>

namespace ullage::app
{

QMenu* MainWindow::addMenu(const char* text, QMenu* in)
{
    QMenu* menu = in ? in->addMenu(QString()) : menuBar()->addMenu(QString());
    m_menus.push_back({menu, text});
    return menu;
}

QAction* MainWindow::addEntry(QMenu* menu, const char* text, const QKeySequence& keys)
{
    QAction* action = menu->addAction(QString());
    action->setShortcut(keys);
    m_entries.push_back({action, text});
    return action;
}

QAction* MainWindow::addBookEntry(QMenu* menu, const char* text, const QKeySequence& keys)
{
    m_ofBook.push_back(addEntry(menu, text, keys));
    return m_ofBook.back();
}

void MainWindow::makeMenus()
{
    QMenu* file = addMenu(QT_TR_NOOP("&File"));
    connect(addEntry(file, QT_TR_NOOP("&New book…")), &QAction::triggered, this,
            &MainWindow::newBookRequested);
    connect(addEntry(file, QT_TR_NOOP("&Open book…"), QKeySequence::Open), &QAction::triggered,
            this, &MainWindow::openBookRequested);
    file->addSeparator();
    connect(addBookEntry(file, QT_TR_NOOP("&Import…")), &QAction::triggered, this,
            &MainWindow::importRequested);
    connect(addBookEntry(file, QT_TR_NOOP("&Export…"), QKeySequence(Qt::CTRL | Qt::Key_E)),
            &QAction::triggered, this, &MainWindow::exportRequested);
    connect(addBookEntry(file, QT_TR_NOOP("Export &a table…")), &QAction::triggered, this,
            &MainWindow::tableRequested);
    connect(addBookEntry(file, QT_TR_NOOP("&Labels…")), &QAction::triggered, this,
            &MainWindow::labelsRequested);
    connect(addBookEntry(file, QT_TR_NOOP("&Write a calendar…")), &QAction::triggered, this,
            &MainWindow::calendarRequested);
    QMenu* paper = addMenu(QT_TR_NOOP("Prin&t"), file);
    const auto addPaper = [&](const char* text, PaperKind kind) {
        connect(addBookEntry(paper, text), &QAction::triggered, this,
                [this, kind] { emit paperRequested(kind); });
    };
    connect(addBookEntry(paper, QT_TR_NOOP("&Run sheet…")), &QAction::triggered, this,
            &MainWindow::runSheetRequested);
    addPaper(QT_TR_NOOP("&Shelf list…"), PaperKind::Shelf);
    addPaper(QT_TR_NOOP("The &bottle's card…"), PaperKind::Card);
    addPaper(QT_TR_NOOP("Shopping &list…"), PaperKind::Shopping);
    addPaper(QT_TR_NOOP("&Month's report…"), PaperKind::Month);
    addPaper(QT_TR_NOOP("&Hand-over list…"), PaperKind::HandOver);
    file->addSeparator();
    connect(addBookEntry(file, QT_TR_NOOP("&Back up…")), &QAction::triggered, this,
            &MainWindow::backupRequested);
    connect(addEntry(file, QT_TR_NOOP("Co&pies…")), &QAction::triggered, this,
            &MainWindow::copiesRequested);
    connect(addEntry(file, QT_TR_NOOP("&Restore…")), &QAction::triggered, this,
            &MainWindow::restoreRequested);
    connect(addEntry(file, QT_TR_NOOP("Sal&vage a damaged book…")), &QAction::triggered, this,
            &MainWindow::salvageRequested);
    connect(addBookEntry(file, QT_TR_NOOP("&Check the book")), &QAction::triggered, this,
            &MainWindow::checkRequested);
    file->addSeparator();
    QAction* quit = addEntry(file, QT_TR_NOOP("&Quit"), QKeySequence::Quit);
    quit->setMenuRole(QAction::QuitRole);
    connect(quit, &QAction::triggered, this, &QWidget::close);

    QMenu* edit = addMenu(QT_TR_NOOP("&Edit"));
    m_undo = edit->addAction(QString(), this, &MainWindow::undoRequested);
    m_undo->setShortcut(QKeySequence::Undo);
    m_redo = edit->addAction(QString(), this, &MainWindow::redoRequested);
    m_redo->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    edit->addSeparator();
    connect(addBookEntry(edit, QT_TR_NOOP("&Who is working…")), &QAction::triggered, this,
            &MainWindow::personRequested);

    m_bottleMenu = addMenu(QT_TR_NOOP("&Bottle"));
    connect(addBookEntry(m_bottleMenu, QT_TR_NOOP("Mi&x a batch…"), QKeySequence::New),
            &QAction::triggered, this, &MainWindow::mixRequested);
    connect(addBookEntry(m_bottleMenu, QT_TR_NOOP("&Enter a bottle…")), &QAction::triggered, this,
            &MainWindow::enterRequested);
    m_bottleMenu->addSeparator();
    m_shelf->actions()->fill(*m_bottleMenu);

    makeViewMenu();

    QMenu* help = addMenu(QT_TR_NOOP("&Help"));
    connect(addEntry(help, QT_TR_NOOP("&Cautions")), &QAction::triggered, this,
            &MainWindow::cautionsRequested);
    connect(addEntry(help, QT_TR_NOOP("Look around in a &demo")), &QAction::triggered, this,
            &MainWindow::demoRequested);
    QAction* about = addEntry(help, QT_TR_NOOP("&About Ullage"));
    about->setMenuRole(QAction::AboutRole);
    connect(about, &QAction::triggered, this, &MainWindow::aboutRequested);
}

void MainWindow::makeViewMenu()
{
    QMenu* view = addMenu(QT_TR_NOOP("&View"));
    const auto choice = [this](QMenu* menu, QActionGroup* group, const char* text) {
        QAction* action = addEntry(menu, text);
        action->setCheckable(true);
        group->addAction(action);
        return action;
    };

    QMenu* volume = addMenu(QT_TR_NOOP("&Volumes in"), view);
    auto* volumes = new QActionGroup(this);
    m_millilitres = choice(volume, volumes, QT_TR_NOOP("&Millilitres"));
    m_fluidOunces = choice(volume, volumes, QT_TR_NOOP("US &fluid ounces"));
    QMenu* temperature = addMenu(QT_TR_NOOP("&Temperatures in"), view);
    auto* temperatures = new QActionGroup(this);
    m_celsius = choice(temperature, temperatures, QT_TR_NOOP("°&C"));
    m_fahrenheit = choice(temperature, temperatures, QT_TR_NOOP("°&F"));
    for (QActionGroup* group : {volumes, temperatures})
        connect(group, &QActionGroup::triggered, this, [this] { emit unitsChosen(chosenUnits()); });
    setUnits({});

    view->addSeparator();
    QMenu* theme = addMenu(QT_TR_NOOP("T&heme"), view);
    auto* themes = new QActionGroup(this);
    m_themes = {choice(theme, themes, QT_TR_NOOP("As the &system")),
                choice(theme, themes, QT_TR_NOOP("&Light")),
                choice(theme, themes, QT_TR_NOOP("&Dark"))};
    for (std::size_t i = 0; i < m_themes.size(); ++i)
        connect(m_themes[i], &QAction::triggered, this,
                [this, i] { emit themeChosen(static_cast<ThemeMode>(i)); });
    showTheme(Theme::instance().mode());
    theme->addSeparator();
    m_red = addEntry(theme, QT_TR_NOOP("&Red screen (fogs film outside a closed tank)"));
    m_red->setCheckable(true);
    m_red->setChecked(Theme::instance().isDarkRoom());
    connect(m_red, &QAction::triggered, this, [](bool on) { Theme::instance().setDarkRoom(on); });
    connect(&Theme::instance(), &Theme::changed, m_red,
            [red = m_red] { red->setChecked(Theme::instance().isDarkRoom()); });

    m_languageMenu = addMenu(QT_TR_NOOP("&Language"), view);
    m_languages = new QActionGroup(this);
    connect(m_languages, &QActionGroup::triggered, this,
            [this](QAction* action) { emit languageChosen(action->data().toString()); });

    view->addSeparator();
    connect(addBookEntry(view, QT_TR_NOOP("&Statistics")), &QAction::triggered, this,
            &MainWindow::statisticsRequested);
    connect(addBookEntry(view, QT_TR_NOOP("What went &wrong?…")), &QAction::triggered, this,
            &MainWindow::compareFilmsRequested);
    QAction* full = addEntry(view, QT_TR_NOOP("F&ull screen"), QKeySequence(Qt::Key_F11));
    full->setCheckable(true);
    connect(full, &QAction::triggered, this, [this](bool on) {
        setWindowState(on ? windowState() | Qt::WindowFullScreen
                          : windowState() & ~Qt::WindowFullScreen);
    });
}

void MainWindow::setLanguages(const std::vector<Language>& languages, const QString& current)
{
    m_languageMenu->clear();
    for (const Language& language : languages) {
        QAction* action = m_languageMenu->addAction(language.name);
        action->setData(language.code);
        action->setCheckable(true);
        action->setChecked(language.code == current);
        m_languages->addAction(action);
    }
    retranslate();
}

} // namespace ullage::app
