#include "app/widgets/rail.h"

#include <QAbstractButton>
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

TEST(Rail, SaysWhatItIs)
{
    Rail rail;
    EXPECT_FALSE(rail.accessibleName().isEmpty());
    QStringList names;
    for (const auto* button : rail.findChildren<QAbstractButton*>())
        names << button->accessibleName();
    EXPECT_EQ(names, QStringList({"Shelf", "Bench", "Day book", "Cupboard", "Formulary"}));
}
