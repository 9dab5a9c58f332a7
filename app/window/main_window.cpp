#include "app/window/main_window.h"

#include "app/shelf/shelf_page.h"
#include "app/widgets/page_room.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/why_not.h"
#include "app/window/no_book.h"

#include <QActionGroup>
#include <QApplication>
#include <QDataStream>
#include <QEvent>
#include <QHBoxLayout>
#include <QIODevice>
#include <QKeyEvent>
#include <QMenuBar>
#include <QStackedWidget>

namespace ullage::app
{

MainWindow::MainWindow(QWidget* parent)
    : QMainWindow(parent), m_rail(new Rail), m_whole(new QStackedWidget),
      m_pages(new QStackedWidget), m_noBook(new NoBook), m_shelf(new ShelfPage)
{
    auto* centre = new QWidget(this);
    auto* row = new QHBoxLayout(centre);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(m_rail);
    m_whole->addWidget(m_pages);
    m_whole->addWidget(m_noBook);
    row->addWidget(m_whole, 1);
    setCentralWidget(centre);
    m_pages->addWidget(m_shelf);
    for (int page = 1; page < kPages; ++page)
        m_pages->addWidget(new QWidget);

    connect(m_rail, &Rail::pageChosen, this, [this](Page page) {
        // Opened for the first time with the keys on the page left: not the first button on the
        // page, but what the page says the keys are for.
        QWidget* next = m_pages->widget(static_cast<int>(page));
        const bool first = !next->focusWidget() && m_pages->isAncestorOf(focusWidget());
        m_pages->setCurrentIndex(static_cast<int>(page));
        if (const auto& keys = m_firstForKeys[static_cast<std::size_t>(page)]; first && keys)
            keys()->setFocus();
        emit pageChosen(page);
    });
    connect(m_shelf, &ShelfPage::mixRequested, this, &MainWindow::mixRequested);
    connect(m_shelf, &ShelfPage::enterRequested, this, &MainWindow::enterRequested);
    connect(m_shelf, &ShelfPage::demoRequested, this, &MainWindow::demoRequested);
    connect(m_shelf, &ShelfPage::actionRequested, this, &MainWindow::bottleActionRequested);
    connect(m_shelf, &ShelfPage::checkRequested, this, &MainWindow::checkRequested);
    connect(m_shelf, &ShelfPage::copiesRequested, this, &MainWindow::copiesRequested);
    connect(m_rail, &Rail::pageChosen, m_noBook, &NoBook::setPage);
    connect(m_noBook, &NoBook::openBookRequested, this, &MainWindow::openBookRequested);
    connect(m_noBook, &NoBook::copiesRequested, this, &MainWindow::copiesRequested);
    connect(m_noBook, &NoBook::salvageRequested, this, &MainWindow::salvageRequested);
    connect(m_noBook, &NoBook::newBookRequested, this, &MainWindow::newBookRequested);
    connect(m_rail, &Rail::guideRequested, this, [this] {
        if (m_guide)
            showGuide(m_guide);
    });
    connect(m_rail, &Rail::openBookRequested, this, &MainWindow::openBookRequested);
    connect(m_rail, &Rail::newBookRequested, this, &MainWindow::newBookRequested);
    connect(m_rail, &Rail::copiesRequested, this, &MainWindow::copiesRequested);
    connect(m_rail, &Rail::salvageRequested, this, &MainWindow::salvageRequested);
    makeMenus();
    retranslate();
    // Whatever stands beside the rail scrolls where the window is too small for it.
    row->addWidget(new PageRoom(row->takeAt(1)->widget()), 1);
    // With its title and frame it has room on a screen of 1024 × 700.
    setMinimumSize(960, 600);
    resize(1280, 800);
}

void MainWindow::setPage(Page page, QWidget* widget, std::function<QWidget*()> firstForKeys)
{
    m_firstForKeys[static_cast<std::size_t>(page)] = std::move(firstForKeys);
    const int index = static_cast<int>(page);
    const bool shown = m_pages->currentIndex() == index;
    QWidget* before = m_pages->widget(index);
    m_pages->removeWidget(before);
    before->deleteLater();
    m_pages->insertWidget(index, widget);
    m_pages->setCurrentIndex(shown ? index : static_cast<int>(this->page()));
}

void MainWindow::setBare(bool bare)
{
    m_rail->setVisible(!bare);
    menuBar()->setVisible(!bare);
    if (bare) {
        m_wasMaximised = isMaximized();
        showFullScreen();
    } else if (m_wasMaximised) {
        showMaximized();
    } else {
        showNormal();
    }
}

void MainWindow::showPage(Page page)
{
    m_rail->setPage(page);
    m_pages->setCurrentIndex(static_cast<int>(page)); // a guide may stand in its place
}

void MainWindow::showGuide(QWidget* guide)
{
    if (guide != m_guide) {
        if (m_guide) {
            m_pages->removeWidget(m_guide);
            m_guide->deleteLater();
        }
        m_guide = guide;
        m_pages->addWidget(guide);
    }
    m_pages->setCurrentWidget(guide);
}

void MainWindow::takeGuideAway()
{
    if (!m_guide)
        return;
    m_pages->setCurrentIndex(static_cast<int>(page()));
    m_pages->removeWidget(m_guide);
    m_guide->deleteLater();
    m_guide = nullptr;
}

void MainWindow::setGuideLine(const QString& text) { m_rail->setGuide(text); }

Page MainWindow::page() const { return m_rail->page(); }

void MainWindow::setBookOpen(bool open)
{
    m_bookOpen = open;
    m_whole->setCurrentWidget(open ? static_cast<QWidget*>(m_pages) : m_noBook);
    if (!open) {
        setUndo({}, {});
        setStanding({});
        setBackup({});
        offerMending(false);
        m_noBook->firstForKeys()->setFocus();
    }
    allowWithBook();
}

// The reason stands at every entry that cannot be chosen.
void MainWindow::allowWithBook()
{
    for (QAction* action : m_ofBook)
        setWhyNot(action, m_bookOpen ? QString() : tr("no book is open"));
    nameUndo();
}

void MainWindow::setBook(const QString& name)
{
    m_bookName = name;
    m_rail->setBook(name);
    setWindowTitle(name.isEmpty() ? QStringLiteral("Ullage")
                                  : plainTitle(tr("%1 – Ullage").arg(name)));
}

void MainWindow::setBackup(const QString& text, bool trouble) { m_rail->setBackup(text, trouble); }

void MainWindow::setStanding(const QString& text, bool trouble, const QString& more)
{
    m_rail->setStanding(text, trouble, more);
}

void MainWindow::offerMending(bool offered) { m_rail->offerMending(offered); }

void MainWindow::setUndo(const std::optional<QString>& undo, const std::optional<QString>& redo)
{
    m_undoName = undo;
    m_redoName = redo;
    nameUndo();
}

void MainWindow::nameUndo()
{
    const bool nothing = m_bookOpen && !m_undoName && !m_redoName;
    // An ampersand in a name must not become a shortcut.
    setEntryWords(m_undo, m_undoName ? tr("&Undo %1").arg(plainCaption(*m_undoName)) : tr("&Undo"));
    setEntryWords(m_redo, m_redoName ? tr("&Redo %1").arg(plainCaption(*m_redoName)) : tr("&Redo"));
    setWhyNot(m_undo, m_undoName    ? QString()
                      : !m_bookOpen ? tr("no book is open")
                      : nothing     ? tr("nothing entered in this window")
                                    : tr("nothing left to undo"));
    setWhyNot(m_redo, m_redoName    ? QString()
                      : !m_bookOpen ? tr("no book is open")
                                    : tr("nothing was undone"));
    if (nothing)
        setPlainToolTip(m_undo, tr("What others entered is taken back from the Day book."));
}

void MainWindow::setUnits(const Units& units)
{
    (units.volume == VolumeUnit::FluidOunce ? m_fluidOunces : m_millilitres)->setChecked(true);
    (units.temperature == TemperatureUnit::Fahrenheit ? m_fahrenheit : m_celsius)->setChecked(true);
}

Units MainWindow::chosenUnits() const
{
    return {m_fluidOunces->isChecked() ? VolumeUnit::FluidOunce : VolumeUnit::Millilitre,
            m_fahrenheit->isChecked() ? TemperatureUnit::Fahrenheit : TemperatureUnit::Celsius};
}

void MainWindow::showTheme(ThemeMode mode)
{
    m_themes[static_cast<std::size_t>(mode)]->setChecked(true);
}

QByteArray MainWindow::layoutState() const
{
    QByteArray state;
    QDataStream out(&state, QIODevice::WriteOnly);
    out.setVersion(QDataStream::Qt_6_4);
    out << saveGeometry() << m_shelf->split();
    return state;
}

void MainWindow::restoreLayout(const QByteArray& state)
{
    QDataStream in(state);
    in.setVersion(QDataStream::Qt_6_4);
    QByteArray geometry;
    QByteArray split;
    in >> geometry >> split;
    if (in.status() != QDataStream::Ok)
        return;
    restoreGeometry(geometry);
    m_shelf->restoreSplit(split);
}

bool MainWindow::event(QEvent* event)
{
    if (event->type() == QEvent::ThemeChange)
        Theme::instance().systemChanged();
    return QMainWindow::event(event);
}

void MainWindow::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QMainWindow::changeEvent(event);
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    emit closing();
    QMainWindow::closeEvent(event);
}

// Esc that nothing else had a use for leaves the red screen, on whatever page.
void MainWindow::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && Theme::instance().isDarkRoom())
        Theme::instance().setDarkRoom(false);
    else
        QMainWindow::keyPressEvent(event);
}

void MainWindow::retranslate()
{
    for (const Menu& menu : m_menus)
        menu.menu->setTitle(tr(menu.text));
    for (const Entry& entry : m_entries)
        setEntryWords(entry.action, tr(entry.text));
    allowWithBook();
    setBook(m_bookName);
    for (QAction* action : m_languages->actions()) {
        if (action->data().toString().isEmpty())
            action->setText(tr("As the system"));
    }
}

} // namespace ullage::app
