// From films to bottles and days and back, in the real window.
#include "app/daybook/day_book_page.h"
#include "app/films/compare_dialog.h"
#include "app/films/film_card.h"
#include "app/films/films_dialog.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/shelf_view.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "tests/app/daybook/day_driver.h"
#include "tests/app/films/films_fixture.h"
#include "tests/app/scripted_prompts.h"

#include <QPushButton>
#include <QSignalSpy>

namespace ullage::app
{

TEST_F(FilmsTest, TheWindowLeadsBothWaysInOneClick)
{
    MainWindow window;
    Controller controller(window, desk.session(), desk.preferences());
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    window.shelf()->selectBottle(QString::fromStdString(fix));
    // From the bottle to its films.
    QPushButton* films = nullptr;
    for (auto* button : window.shelf()->findChildren<QPushButton*>()) {
        if (button->text() == QStringLiteral("Films that went through it…"))
            films = button;
    }
    ASSERT_TRUE(films && films->isVisible());
    QTest::mouseClick(films, Qt::LeftButton);
    auto* list = window.findChild<FilmsDialog*>();
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->windowTitle(), QStringLiteral("Films through Fix 1"));
    // To a film, and from it to another of its bottles.
    emit list->filmRequested(idOf("Lantern"));
    emit list->filmRequested(idOf("Lantern")); // the second half of a double click
    ASSERT_EQ(window.findChildren<FilmCard*>().size(), 1);
    press(*window.findChild<FilmCard*>(), QStringLiteral("Show Dev 1"));
    EXPECT_EQ(window.page(), Page::Shelf);
    EXPECT_EQ(window.shelf()->currentBottle().toStdString(), dev);
    EXPECT_EQ(window.findChild<FilmCard*>(), nullptr) << "nothing stands before the bottle";
    EXPECT_EQ(window.findChild<FilmsDialog*>(), nullptr);
    // A bottle that is gone has its history in the day book.
    desk.record(dev, ledger::Discarded{"collected"});
    controller.doWith(BottleAction::Films, QString::fromStdString(fix));
    emit window.findChild<FilmsDialog*>()->filmRequested(idOf("Dunes"));
    press(*window.findChild<FilmCard*>(), QStringLiteral("Show Dev 1"));
    EXPECT_EQ(window.page(), Page::DayBook);
    const auto* page = window.findChild<DayBookPage*>();
    EXPECT_EQ(page->filterBar()->filter().batch, dev);
}

TEST_F(FilmsTest, TheDayBookHasMarksAsRowsAndLeadsToCardAndShelf)
{
    const QString lantern = idOf("Lantern");
    ASSERT_TRUE(desk.session().doing([&](ledger::Book& book) {
        return book.markFilms({lantern.toStdString()}, ledger::FilmFault::NotClear, "milky");
    }));
    PageOn at(desk);
    EXPECT_TRUE(at.shown().contains(QStringLiteral("Film marked not clear")))
        << at.shown().join(u'\n').toStdString();
    QSignalSpy film(&at.page, &DayBookPage::filmRequested);
    QSignalSpy shelf(&at.page, &DayBookPage::shelfRequested);
    QSignalSpy through(&at.page, &DayBookPage::filmsRequested);
    at.choose(QStringLiteral("Run · 2 × 135-36"));
    press(at.page, QStringLiteral("Card of the film Lantern · 135-36 · EI 400"));
    ASSERT_EQ(film.size(), 1);
    EXPECT_EQ(film[0][0].toString(), lantern);
    EXPECT_TRUE(texts(at.page).contains(QStringLiteral("not clear: milky")));
    press(at.page, QStringLiteral("Dev 1 on the shelf"));
    ASSERT_EQ(shelf.size(), 1);
    press(at.page, QStringLiteral("Films through Fix 1"));
    ASSERT_EQ(through.size(), 1);
    EXPECT_EQ(through[0][0].toString().toStdString(), fix);

    // Taken back and brought back from there.
    at.choose(QStringLiteral("Film marked not clear"));
    asked.answer(QStringLiteral("it cleared in the wash"));
    at.page.takeBack();
    at.settle();
    EXPECT_EQ(marksOf(lantern), 0u);
    EXPECT_TRUE(at.shown().contains(
        QStringLiteral("Film marked not clear (taken back: it cleared in the wash)")))
        << at.shown().join(u'\n').toStdString();
    asked.answer(QStringLiteral("it did not"));
    at.choose(QStringLiteral("Film marked not clear"));
    at.page.takeBack();
    at.settle();
    EXPECT_EQ(marksOf(lantern), 1u);
}

TEST_F(FilmsTest, TheDayBookOpensWithItsListInTheKeysWay)
{
    MainWindow window;
    Controller controller(window, desk.session(), desk.preferences());
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    window.shelf()->view()->setFocus();
    window.showPage(Page::DayBook);
    EXPECT_EQ(window.focusWidget(), window.findChild<DayBookPage*>()->list());
    window.showPage(Page::Bench);
    EXPECT_EQ(window.focusWidget()->accessibleName(), QStringLiteral("Format"));
}

} // namespace ullage::app
