#include "app/shelf/shelf_page.h"
#include "app/window/main_window.h"
#include "tests/app/gallery/samples.h"

#include <QAbstractButton>
#include <QAction>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTranslator>

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

using namespace ullage::app;

namespace
{

QAction* entry(const MainWindow& window, const QString& text)
{
    for (QAction* action : window.findChildren<QAction*>()) {
        if (action->text().remove(u'&') == text)
            return action;
    }
    return nullptr;
}

} // namespace

TEST(MainWindow, AltAndANumberChangeThePage)
{
    MainWindow window;
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    QSignalSpy chosen(&window, &MainWindow::pageChosen);
    QTest::keyClick(&window, Qt::Key_3, Qt::AltModifier);
    EXPECT_EQ(window.page(), Page::DayBook);
    EXPECT_FALSE(window.shelf()->isVisible());
    QTest::keyClick(&window, Qt::Key_1, Qt::AltModifier);
    EXPECT_TRUE(window.shelf()->isVisible());
    EXPECT_EQ(chosen.count(), 2);
}

TEST(MainWindow, ANewcomerFindsTheDemoOnTheEmptyShelfAndInTheHelp)
{
    MainWindow window;
    QSignalSpy wanted(&window, &MainWindow::demoRequested);
    int ways = 0;
    for (QPushButton* button : window.shelf()->findChildren<QPushButton*>()) {
        if (button->text().contains("demo")) {
            button->click();
            ++ways;
        }
    }
    for (QAction* action : window.findChildren<QAction*>()) {
        if (action->text().contains("demo")) {
            action->trigger();
            ++ways;
        }
    }
    EXPECT_EQ(ways, 2);
    EXPECT_EQ(wanted.count(), 2);
}

TEST(MainWindow, NoTwoEntriesOfAMenuAnswerToOneLetter)
{
    MainWindow window;
    int menus = 0;
    for (const QMenu* menu : window.findChildren<QMenu*>()) {
        std::set<QChar> taken;
        ++menus;
        for (const QAction* action : menu->actions()) {
            const QString text = action->text();
            const auto at = text.indexOf(u'&');
            if (at < 0 || at + 1 >= text.size() || text[at + 1] == u'&')
                continue;
            EXPECT_TRUE(taken.insert(text[at + 1].toLower()).second)
                << menu->title().toStdString() << ": " << text.toStdString();
        }
    }
    EXPECT_GT(menus, 4);
}

// Longer, it would go on in a second column, over all of the window.
TEST(MainWindow, EveryMenuFitsTheHeightOfASmallScreen)
{
    constexpr int kSmall = 700;
    MainWindow window;
    for (QMenu* menu : window.findChildren<QMenu*>()) {
        menu->ensurePolished();
        int height = 0;
        for (QAction* action : menu->actions())
            height = std::max(height, menu->actionGeometry(action).bottom());
        EXPECT_LT(height, kSmall) << menu->title().toStdString();
    }
}

TEST(MainWindow, UndoAndRedoCarryTheNameOfTheDeed)
{
    MainWindow window;
    window.setUndo(QStringLiteral("mixing Dev & Fix"), std::nullopt);
    QAction* undo = nullptr;
    for (QAction* action : window.findChildren<QAction*>()) {
        if (action->shortcut() == QKeySequence(QKeySequence::Undo))
            undo = action;
    }
    ASSERT_NE(undo, nullptr);
    EXPECT_EQ(undo->text(), QStringLiteral("&Undo mixing Dev && Fix"));
    EXPECT_TRUE(undo->isEnabled());
    QSignalSpy asked(&window, &MainWindow::undoRequested);
    undo->trigger();
    EXPECT_EQ(asked.count(), 1);
    window.setUndo(std::nullopt, QStringLiteral("mixing Dev 15"));
    EXPECT_FALSE(undo->isEnabled());
    EXPECT_NE(entry(window, QStringLiteral("Redo mixing Dev 15")), nullptr);
}

TEST(MainWindow, UndoSaysWhereThereIsNothingOfThisWindow)
{
    MainWindow window;
    window.setUndo(std::nullopt, std::nullopt);
    QAction* undo = entry(window, QStringLiteral("Undo (nothing entered in this window)"));
    ASSERT_NE(undo, nullptr);
    EXPECT_FALSE(undo->isEnabled());
    EXPECT_TRUE(undo->toolTip().contains("Day book")) << undo->toolTip().toStdString();
    // What was entered here and taken back stands at Redo.
    window.setUndo(std::nullopt, QStringLiteral("mixing Dev 15"));
    EXPECT_EQ(undo->text(), QStringLiteral("&Undo (nothing left to undo)"));
    EXPECT_FALSE(undo->isEnabled());
}

TEST(MainWindow, WithoutABookEveryPageOffersToGetOne)
{
    MainWindow window;
    window.shelf()->setBottles({});
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    const auto says = [&](const QString& text) {
        const auto labels = window.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
            return label->isVisible() && label->text() == text;
        });
    };
    const auto button = [&](const QString& text) -> QPushButton* {
        for (auto* one : window.findChildren<QPushButton*>()) {
            if (one->isVisible() && one->text() == text)
                return one;
        }
        return nullptr;
    };
    window.setBookOpen(false);
    EXPECT_EQ(window.focusWidget(), button("Open book…"));
    QSignalSpy open(&window, &MainWindow::openBookRequested);
    QSignalSpy copies(&window, &MainWindow::copiesRequested);
    QSignalSpy salvage(&window, &MainWindow::salvageRequested);
    QSignalSpy fresh(&window, &MainWindow::newBookRequested);
    int pages = 0;
    for (const Page page :
         {Page::Shelf, Page::Bench, Page::DayBook, Page::Cupboard, Page::Formulary}) {
        window.showPage(page);
        ++pages;
        EXPECT_TRUE(says("No book is open")) << pages;
        EXPECT_TRUE(says(pageName(page))) << pages;
        EXPECT_FALSE(says("No bottle stands here yet")) << pages;
        for (const char* text : {"Open book…", "Restore a copy…", "Salvage…", "New book…"}) {
            ASSERT_NE(button(text), nullptr) << text << pages;
            QTest::mouseClick(button(text), Qt::LeftButton);
        }
        for (const QSignalSpy* spy : {&open, &copies, &salvage, &fresh})
            EXPECT_EQ(spy->count(), pages);
    }
    window.showPage(Page::Shelf);
    window.setBookOpen(true);
    EXPECT_TRUE(says("No bottle stands here yet"));
    EXPECT_EQ(button("Open book…"), nullptr);
    EXPECT_NE(button("Mix a batch…"), nullptr);
}

TEST(MainWindow, WhatNeedsABookCannotBeChosenWithoutOneAndSaysWhy)
{
    MainWindow window;
    window.setBookOpen(false);
    QSignalSpy mixing(&window, &MainWindow::mixRequested);
    // In its own words: a menu shows the keyboard and a screen reader nothing else.
    for (const char* text :
         {"Import… (no book is open)", "Export… (no book is open)", "Back up… (no book is open)",
          "Check the book (no book is open)", "Undo (no book is open)", "Redo (no book is open)",
          "Who is working… (no book is open)", "Mix a batch… (no book is open)",
          "Enter a bottle… (no book is open)", "Log a run… (no bottle is chosen)",
          "Statistics (no book is open)", "What went wrong?… (no book is open)"}) {
        const QAction* action = entry(window, QString::fromUtf8(text));
        ASSERT_NE(action, nullptr) << text;
        EXPECT_FALSE(action->isEnabled()) << text;
    }
    for (const char* text : {"New book…", "Open book…", "Copies…", "Restore…",
                             "Salvage a damaged book…", "Quit", "Cautions"})
        EXPECT_TRUE(entry(window, QString::fromUtf8(text))->isEnabled()) << text;
    entry(window, "Mix a batch… (no book is open)")->trigger();
    EXPECT_EQ(mixing.count(), 0) << "the key does no more than the entry";
    window.setBookOpen(true);
    ASSERT_NE(entry(window, "Mix a batch…"), nullptr) << "without a reason again";
    EXPECT_TRUE(entry(window, "Mix a batch…")->isEnabled());
}

TEST(MainWindow, ChoosingUnitsThemeAndLanguageOnlySaysSo)
{
    MainWindow window;
    window.setLanguages({{"en", "English"}, {"de", "Deutsch"}}, "en");
    QSignalSpy units(&window, &MainWindow::unitsChosen);
    QSignalSpy theme(&window, &MainWindow::themeChosen);
    QSignalSpy language(&window, &MainWindow::languageChosen);
    window.setUnits({VolumeUnit::FluidOunce, TemperatureUnit::Celsius});
    EXPECT_EQ(units.count(), 0);
    entry(window, QStringLiteral("°F"))->trigger();
    ASSERT_EQ(units.count(), 1);
    EXPECT_EQ(units[0][0].value<Units>(),
              (Units{VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit}));
    entry(window, QStringLiteral("Dark"))->trigger();
    ASSERT_EQ(theme.count(), 1);
    EXPECT_EQ(theme[0][0].value<ThemeMode>(), ThemeMode::Dark);
    EXPECT_FALSE(Theme::instance().isDark());
    entry(window, QStringLiteral("Deutsch"))->trigger();
    ASSERT_EQ(language.count(), 1);
    EXPECT_EQ(language[0][0].toString(), QStringLiteral("de"));
}

TEST(MainWindow, ShortcutsAreNotGivenTwice)
{
    MainWindow window;
    std::set<QString> seen;
    for (const QAction* action : window.findChildren<QAction*>()) {
        for (const QKeySequence& keys : action->shortcuts()) {
            if (action->shortcutContext() != Qt::WindowShortcut || keys.isEmpty())
                continue;
            EXPECT_TRUE(seen.insert(keys.toString()).second) << keys.toString().toStdString();
        }
    }
    EXPECT_GT(seen.size(), 8u);
}

TEST(MainWindow, EveryPageHasAPlaceAndCanBeReplaced)
{
    MainWindow window;
    window.show();
    auto* bench = new QLabel(QStringLiteral("bench"));
    window.setPage(Page::Bench, bench);
    EXPECT_FALSE(bench->isVisible());
    window.showPage(Page::Bench);
    EXPECT_TRUE(bench->isVisible());
    auto* other = new QLabel(QStringLiteral("other"));
    window.setPage(Page::Bench, other);
    EXPECT_TRUE(other->isVisible());
    EXPECT_EQ(window.page(), Page::Bench);
}

TEST(MainWindow, LayoutIsKeptAndRubbishIgnored)
{
    MainWindow first;
    first.resize(1500, 900);
    const QByteArray state = first.layoutState();
    MainWindow second;
    second.restoreLayout(state);
    EXPECT_EQ(second.size(), QSize(1500, 900));
    second.restoreLayout("rubbish");
    EXPECT_EQ(second.size(), QSize(1500, 900));
}

TEST(MainWindow, ALanguageIsChangedEverywhereAtOnce)
{
    // "Translates" everything by putting a mark before it.
    class Marking : public QTranslator
    {
    public:
        QString translate(const char*, const char* source, const char*, int) const override
        {
            return QStringLiteral("§") + QString::fromUtf8(source);
        }
        bool isEmpty() const override { return false; }
    };
    MainWindow window;
    window.setUndo(QStringLiteral("§"), std::nullopt);
    window.show();
    Marking marking;
    QCoreApplication::installTranslator(&marking);
    QTest::qWait(1);
    const auto check = [](const QString& text, const char* what) {
        const bool named = text.isEmpty() || text == QStringLiteral("Ullage");
        EXPECT_TRUE(named || text.contains(u'§')) << what << ": " << text.toStdString();
    };
    for (const auto* label : window.findChildren<QLabel*>())
        check(label->text(), "label");
    for (const auto* button : window.findChildren<QAbstractButton*>())
        check(button->text(), "button");
    for (const auto* action : window.findChildren<QAction*>()) {
        if (!action->isSeparator())
            check(action->text(), "action");
    }
    for (const auto* menu : window.findChildren<QMenu*>())
        check(menu->title(), "menu");
    QCoreApplication::removeTranslator(&marking);
    QTest::qWait(1);
    EXPECT_NE(entry(window, QStringLiteral("Quit")), nullptr);
}

TEST(MainWindow, FitsIntoASmallScreen)
{
    MainWindow window;
    window.shelf()->setBottles(samples::bottles(6));
    EXPECT_LE(window.minimumSizeHint().width(), 1000);
    EXPECT_LE(window.minimumSizeHint().height(), 640);
    EXPECT_LE(window.minimumWidth(), 1000);
    EXPECT_LE(window.minimumHeight(), 640);
}
