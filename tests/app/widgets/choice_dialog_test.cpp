#include "app/widgets/choice_dialog.h"

#include <QPushButton>
#include <QScrollArea>
#include <QTest>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

QPushButton* button(const QDialog& dialog, const QString& text)
{
    for (auto* one : dialog.findChildren<QPushButton*>()) {
        if (one->text() == text)
            return one;
    }
    return nullptr;
}

} // namespace

TEST(ChoiceDialog, aButtonForEachWayGoesOnWithIt)
{
    const QStringList ways{"Choose the book…", "Restore a copy", "Begin anew"};
    for (int i = 0; i < ways.size(); ++i) {
        ChoiceDialog dialog("Where is the book?", "<b>home</b> is not there.", ways);
        dialog.show();
        QTest::qWait(1); // laid out
        auto* way = button(dialog, ways[i]);
        ASSERT_NE(way, nullptr);
        const auto* area = dialog.findChild<QScrollArea*>();
        EXPECT_TRUE(area->viewport()->rect().contains(
            QRect(way->mapTo(area->viewport(), QPoint()), way->size())))
            << "all of them are seen: " << way->mapTo(area->viewport(), QPoint()).y() << " + "
            << way->height() << " of " << area->viewport()->height() << ", "
            << way->mapTo(area->viewport(), QPoint()).x() << " + " << way->width() << " of "
            << area->viewport()->width();
        QTest::mouseClick(way, Qt::LeftButton);
        EXPECT_EQ(dialog.result(), QDialog::Accepted);
        EXPECT_EQ(dialog.chosen(), i);
    }
}

TEST(ChoiceDialog, theKeysGoFromWayToWay)
{
    ChoiceDialog dialog("Where is the book?", "It is not there.",
                        {"Choose the book…", "Restore a copy", "Begin anew"});
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    ASSERT_EQ(dialog.focusWidget(), button(dialog, "Choose the book…"));
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Down);
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(dialog.chosen(), 1);
}

TEST(ChoiceDialog, anAmpersandIsNoKey)
{
    ChoiceDialog dialog("Where?", "Which one?", {"Dev & Fix"});
    EXPECT_NE(button(dialog, "Dev && Fix"), nullptr);
}

TEST(ChoiceDialog, escapeGoesBack)
{
    ChoiceDialog dialog("Where is the book?", "It is not there.", {"Choose the book…"});
    dialog.show();
    QTest::keyClick(button(dialog, "Choose the book…"), Qt::Key_Escape);
    EXPECT_EQ(dialog.result(), QDialog::Rejected);
    EXPECT_FALSE(dialog.isVisible());
}

} // namespace ullage::app
