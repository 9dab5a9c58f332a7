#include "app/widgets/choice_dialog.h"

#include <QListWidget>
#include <QTest>

#include <gtest/gtest.h>

namespace ullage::app
{

TEST(ChoiceDialog, showsAllWaysAndGoesOnWithTheOneChosen)
{
    ChoiceDialog dialog("Where is the book?", "<b>home</b> is not there.",
                        {"Choose the book…", "Restore a copy", "Begin anew"});
    dialog.show();
    auto* ways = dialog.findChild<QListWidget*>();
    ASSERT_EQ(ways->count(), 3);
    EXPECT_EQ(dialog.chosen(), 0);
    EXPECT_GE(ways->viewport()->height(), ways->visualItemRect(ways->item(2)).bottom());
    QTest::keyClick(ways, Qt::Key_Down);
    QTest::keyClick(ways, Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(dialog.chosen(), 1);
}

TEST(ChoiceDialog, escapeGoesBack)
{
    ChoiceDialog dialog("Where is the book?", "It is not there.", {"Choose the book…"});
    dialog.show();
    QTest::keyClick(dialog.findChild<QListWidget*>(), Qt::Key_Escape);
    EXPECT_EQ(dialog.result(), QDialog::Rejected);
    EXPECT_FALSE(dialog.isVisible());
}

} // namespace ullage::app
