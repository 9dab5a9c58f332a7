#include "app/widgets/rail.h"

#include <QAbstractButton>
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
