#include "app/widgets/rail.h"

#include <QAbstractButton>
#include <QAction>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

using namespace ullage::app;

TEST(Rail, KeysMoveBetweenPages)
{
    Rail rail;
    QSignalSpy chosen(&rail, &Rail::pageChosen);
    rail.show();
    rail.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&rail));
    const auto buttons = rail.findChildren<QAbstractButton*>();
    ASSERT_EQ(buttons.size(), kPages);
    buttons[0]->setFocus();

    QTest::keyClick(buttons[0], Qt::Key_Down);
    EXPECT_EQ(rail.page(), Page::Bench);
    EXPECT_EQ(rail.focusWidget(), buttons[1]);
    QTest::keyClick(buttons[1], Qt::Key_Up);
    EXPECT_EQ(rail.page(), Page::Shelf);
    QTest::keyClick(buttons[0], Qt::Key_Up);
    EXPECT_EQ(rail.page(), Page::Shelf) << "there is no page above the first";
    QTest::keyClick(&rail, Qt::Key_5, Qt::AltModifier);
    EXPECT_EQ(rail.page(), Page::Formulary);
    EXPECT_EQ(chosen.count(), 3);
}

TEST(Rail, TheChosenPageCanBeChosenAgain)
{
    Rail rail;
    rail.show();
    rail.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&rail));
    QSignalSpy chosen(&rail, &Rail::pageChosen);
    auto* shelf = rail.findChildren<QAbstractButton*>().front();
    QTest::mouseClick(shelf, Qt::LeftButton);
    ASSERT_EQ(chosen.count(), 1) << "a guide may stand in its place";
    EXPECT_EQ(chosen[0][0].value<Page>(), Page::Shelf);
    QTest::mouseClick(rail.findChildren<QAbstractButton*>()[1], Qt::LeftButton);
    EXPECT_EQ(chosen.count(), 2) << "and another once";
    QTest::keyClick(&rail, Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(chosen.count(), 3);
}

TEST(Rail, AGuideInHandIsGoneBackToFromHere)
{
    Rail rail;
    rail.resize(rail.width(), 700);
    rail.show();
    EXPECT_EQ(rail.findChild<QPushButton*>("guide"), nullptr);
    rail.setGuide(QStringLiteral("Mixing Dev 2 · 9:44"));
    auto* guide = rail.findChild<QPushButton*>("guide");
    ASSERT_NE(guide, nullptr);
    EXPECT_TRUE(guide->isVisible());
    EXPECT_EQ(guide->text(), QStringLiteral("Mixing Dev 2 · 9:44"));
    EXPECT_EQ(guide->accessibleName(), guide->text());
    QSignalSpy wanted(&rail, &Rail::guideRequested);
    QTest::mouseClick(guide, Qt::LeftButton);
    EXPECT_EQ(wanted.count(), 1);
    rail.setGuide(QStringLiteral("Mixing Second developer 9 · 9:44"));
    EXPECT_TRUE(guide->text().contains(QStringLiteral("9\n9:44"))) << guide->text().toStdString();
    EXPECT_LE(guide->sizeHint().width(), rail.width()) << "cut off";
    rail.setGuide(QStringLiteral("Mixing the second developer · 10:44"));
    EXPECT_TRUE(guide->text().endsWith(QStringLiteral("\n10:44"))) << "the time is never cut";
    EXPECT_LE(guide->sizeHint().width(), rail.width()) << "cut off";
    rail.setGuide({});
    EXPECT_FALSE(guide->isVisible());
}

TEST(Rail, TheBooksNameIsWhereAnotherIsOpened)
{
    Rail rail;
    rail.resize(rail.width(), 700);
    rail.show();
    rail.setBook(QStringLiteral("harbour-town-darkroom-2026.ullage"));
    auto* book = rail.findChild<QPushButton*>("book");
    ASSERT_NE(book, nullptr);
    EXPECT_TRUE(book->isVisible());
    EXPECT_EQ(book->accessibleName(), QStringLiteral("Book: harbour-town-darkroom-2026.ullage"));
    EXPECT_LE(book->sizeHint().width(), rail.width()) << "cut off";
    rail.setBook(QStringLiteral("harbour.ullage"));
    EXPECT_EQ(book->text(), QStringLiteral("Book: harbour")) << "the room is for its name";
    EXPECT_EQ(book->accessibleName(), QStringLiteral("Book: harbour.ullage"));
    QSignalSpy open(&rail, &Rail::openBookRequested);
    QSignalSpy fresh(&rail, &Rail::newBookRequested);
    ASSERT_EQ(book->menu()->actions().size(), 2);
    for (QAction* action : book->menu()->actions())
        action->trigger();
    EXPECT_EQ(open.count(), 1);
    EXPECT_EQ(fresh.count(), 1);
    rail.setBook({});
    EXPECT_FALSE(book->isVisible());
}

TEST(Rail, OffersWhatCanBeDoneOnlyWhereSomethingIsWrong)
{
    Rail rail;
    rail.resize(rail.width(), 700);
    rail.show();
    const auto shown = [&] {
        QStringList texts;
        for (const auto* button : rail.findChildren<QPushButton*>()) {
            if (button->isVisible())
                texts << button->text();
        }
        return texts;
    };
    rail.setStanding("Also open elsewhere");
    rail.offerMending(false);
    EXPECT_EQ(shown(), QStringList());
    rail.setStanding("Damaged: read only", true);
    rail.offerMending(true);
    ASSERT_EQ(shown(), QStringList({"Restore a copy…", "Salvage…"}));
    QSignalSpy copies(&rail, &Rail::copiesRequested);
    QSignalSpy salvage(&rail, &Rail::salvageRequested);
    for (auto* button : rail.findChildren<QPushButton*>()) {
        EXPECT_LE(button->geometry().right(), rail.width()) << "cut off";
        button->click();
    }
    EXPECT_EQ(copies.count(), 1);
    EXPECT_EQ(salvage.count(), 1);
    rail.offerMending(false);
    EXPECT_EQ(shown(), QStringList());
}

TEST(Rail, SaysWhatItIs)
{
    Rail rail;
    EXPECT_FALSE(rail.accessibleName().isEmpty());
    QStringList names;
    for (const auto* button : rail.findChildren<QAbstractButton*>())
        names << button->accessibleName();
    EXPECT_EQ(names, QStringList({"Shelf", "Bench", "Day book", "Cupboard", "Formulary"}));
}
