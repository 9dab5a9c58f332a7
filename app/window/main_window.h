// The window: rail, pages and menus. It shows what it is told and says what the user wants; who
// made it connects both to the book.
#pragma once

#include "app/paper/book_papers.h"
#include "app/shelf/bottle_actions.h"
#include "app/widgets/rail.h"
#include "app/widgets/theme.h"
#include "app/words/units.h"

#include <QMainWindow>

#include <array>
#include <functional>
#include <optional>
#include <vector>

class QActionGroup;
class QStackedWidget;

namespace ullage::app
{

class NoBook;
class ShelfPage;

class MainWindow : public QMainWindow
{
    Q_OBJECT

public:
    struct Language {
        QString code; ///< "en", "de"; empty for the system's
        QString name; ///< in itself: "English", "Deutsch"; not looked at for the system's
    };

    explicit MainWindow(QWidget* parent = nullptr);

    /// There from the beginning. The others are empty until they are put in their places.
    [[nodiscard]] ShelfPage* shelf() const { return m_shelf; }
    /// Puts a page in the place of what is there; the window owns it. `firstForKeys` tells which
    /// of its fields the keys are for when the page is opened for the first time; without it, it
    /// is the first in the order of Tab. Not a focus proxy: that would take the page out of it.
    void setPage(Page page, QWidget* widget, std::function<QWidget*()> firstForKeys = {});
    /// As if it were chosen in the rail.
    void showPage(Page page);
    /// Shows a guide in the place of the pages until one of them is chosen or it is taken away; the
    /// window owns it. There is one at a time: another deletes the one before.
    void showGuide(QWidget* guide);
    void takeGuideAway();
    /// In the rail, as Rail::setGuide() has it; choosing it there shows the guide again.
    void setGuideLine(const QString& text);
    /// Chosen in the rail, also while a guide stands in its place.
    [[nodiscard]] Page page() const;

    /// Nothing but the page, as large as the screen; and back to the size before.
    void setBare(bool bare);

    /// Without a book every page is replaced by what offers to get one, and what needs one cannot
    /// be chosen. To begin with there is one.
    void setBookOpen(bool open);
    /// In title and rail; empty for no book.
    void setBook(const QString& name);
    /// In the rail: how the copies stand.
    void setBackup(const QString& text, bool trouble = false);
    /// In the rail: who else has the book open, or why it can only be read.
    void setStanding(const QString& text, bool trouble = false, const QString& more = {});
    /// There too: what can be done about a book in which something is wrong.
    void offerMending(bool offered);
    /// Names of what would be undone and redone ("mixing Dev 15"); none disables. Where there is
    /// neither in a book that can be written, undo says so.
    void setUndo(const std::optional<QString>& undo, const std::optional<QString>& redo);
    // What is ticked in the View menu; none of these tells that it was chosen.
    void setUnits(const Units& units);
    /// `current` is a code; the languages stand in their order.
    void setLanguages(const std::vector<Language>& languages, const QString& current);
    void showTheme(ThemeMode mode);

    /// Size, place and split of the window, to be kept between starts.
    [[nodiscard]] QByteArray layoutState() const;
    /// Nothing for what layoutState() did not make.
    void restoreLayout(const QByteArray& state);

signals:
    // Menu entries, buttons of the Shelf and the rail. By itself the window changes pages only.
    void newBookRequested();
    void openBookRequested();
    void importRequested();
    void exportRequested();
    void tableRequested();
    void labelsRequested();
    void calendarRequested();
    void paperRequested(ullage::app::PaperKind kind);
    void runSheetRequested();
    void backupRequested();
    void copiesRequested();
    void restoreRequested();
    void salvageRequested();
    void checkRequested();
    void undoRequested();
    void redoRequested();
    void personRequested();
    void statisticsRequested();
    void compareFilmsRequested();
    void mixRequested();
    void enterRequested();
    /// `batch` is the bottle's id.
    void bottleActionRequested(ullage::app::BottleAction action, const QString& batch);
    /// The page is shown already.
    void pageChosen(ullage::app::Page page);
    void unitsChosen(const ullage::app::Units& units);
    /// A Language::code.
    void languageChosen(const QString& code);
    void themeChosen(ullage::app::ThemeMode mode);
    void cautionsRequested();
    /// A book of invented work, in a window of its own.
    void demoRequested();
    void aboutRequested();
    /// The window goes; it cannot be stopped.
    void closing();

protected:
    bool event(QEvent* event) override;
    void changeEvent(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    // Every menu entry with the words it shows, so that a change of language finds them all.
    struct Entry {
        QAction* action;
        const char* text; // QT_TR_NOOP
    };
    struct Menu {
        QMenu* menu;
        const char* text;
    };

    QMenu* addMenu(const char* text, QMenu* in = nullptr);
    QAction* addEntry(QMenu* menu, const char* text, const QKeySequence& keys = {});
    QAction* addBookEntry(QMenu* menu, const char* text, const QKeySequence& keys = {});
    void makeMenus();
    void makeViewMenu();
    void retranslate();
    [[nodiscard]] Units chosenUnits() const;
    void nameUndo();
    void allowWithBook();

    Rail* m_rail;
    QStackedWidget* m_whole; ///< the pages, or what stands there without a book
    QStackedWidget* m_pages;
    NoBook* m_noBook;
    ShelfPage* m_shelf;
    std::array<std::function<QWidget*()>, kPages> m_firstForKeys;
    QWidget* m_guide = nullptr;
    std::vector<Menu> m_menus;
    std::vector<Entry> m_entries;
    std::vector<QAction*> m_ofBook; ///< entries that need a book
    bool m_bookOpen = true;
    QMenu* m_bottleMenu = nullptr;
    QMenu* m_languageMenu = nullptr;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
    std::optional<QString> m_undoName;
    std::optional<QString> m_redoName;
    QString m_bookName;
    bool m_wasMaximised = false;
    QAction* m_millilitres = nullptr;
    QAction* m_fluidOunces = nullptr;
    QAction* m_celsius = nullptr;
    QAction* m_fahrenheit = nullptr;
    std::array<QAction*, 3> m_themes{};
    QAction* m_red = nullptr;
    QActionGroup* m_languages = nullptr;
};

} // namespace ullage::app
