#include "app/widgets/done_line.h"
#include "app/widgets/page_header.h"
#include "app/widgets/three_columns.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

using namespace ullage::app;

namespace
{

const QString kLine = QStringLiteral("12 bottles in use · 1 to discard · next to discard 8 Dec");

QLabel* lineOf(const QWidget& header)
{
    for (auto* label : header.findChildren<QLabel*>()) {
        if (label->text() == kLine)
            return label;
    }
    return nullptr;
}

QWidget* box(int width, int height)
{
    auto* widget = new QWidget;
    widget->setMinimumSize(width, height);
    return widget;
}

} // namespace

TEST(PageHeader, ItsLineStandsBesideTheTitleOrWholeBelowIt)
{
    QWidget window;
    auto* column = new QVBoxLayout(&window);
    column->setContentsMargins(0, 0, 0, 0);
    auto* header = new PageHeader(QStringLiteral("Shelf"));
    column->addWidget(header);
    column->addStretch();
    QPushButton* run = header->addButton(QStringLiteral("Log a run…"));
    header->addButton(QStringLiteral("Mix a batch…"), true);
    header->setDetail(kLine);
    window.resize(1100, 300);
    window.show();
    QTest::qWait(1);
    const QLabel* line = lineOf(*header);
    ASSERT_NE(line, nullptr);
    const auto words = line->fontMetrics().horizontalAdvance(kLine);
    EXPECT_EQ(header->height(), 38);
    EXPECT_GE(line->width(), words);
    EXPECT_LT(line->geometry().right(), run->x());
    window.resize(520, 300);
    QTest::qWait(1);
    EXPECT_GE(line->y(), run->geometry().bottom());
    EXPECT_GE(line->height(), line->heightForWidth(line->width()));
    EXPECT_GE(header->height(), line->geometry().bottom());
    window.resize(1100, 300);
    QTest::qWait(1);
    EXPECT_EQ(header->height(), 38);
    EXPECT_LT(line->geometry().right(), run->x());
    EXPECT_GE(line->width(), words);
}

TEST(DoneLine, OneUndoAfterTheOtherIsPressedInOnePlace)
{
    DoneLine line;
    line.resize(900, 40);
    line.tell(QStringLiteral("Undone: correcting Dev 1"),
              QStringLiteral("Undo running film in Dev 1"));
    line.show();
    QTest::qWait(1);
    const QPoint place = line.undoButton()->geometry().center();
    line.tell(QStringLiteral("Undone: running film in Dev 1, Fix 1, Wash aid 2"),
              QStringLiteral("Undo mixing Fix 1"));
    QTest::qWait(1);
    EXPECT_TRUE(line.undoButton()->geometry().adjusted(0, 0, 40, 0).contains(place));
    EXPECT_EQ(line.undoButton()->x(), 0);
    line.tell(QStringLiteral("Dev 1 logged"));
    QTest::qWait(1);
    EXPECT_GT(line.undoButton()->x(), 0) << "what is told comes first where it is what is undone";
}

// A second press in the same place has to find what the first one found.
TEST(PageHeader, WhatStandsInItsLinesPlaceMovesNothing)
{
    QWidget window;
    auto* column = new QVBoxLayout(&window);
    column->setContentsMargins(0, 0, 0, 0);
    auto* header = new PageHeader(QStringLiteral("Shelf"));
    column->addWidget(header);
    column->addStretch();
    QPushButton* run = header->addButton(QStringLiteral("Log a run…"));
    header->setDetail(kLine);
    auto* done = new DoneLine;
    header->setInstead(done);
    window.resize(1100, 300);
    window.show();
    QTest::qWait(1);
    const QLabel* line = lineOf(*header);
    ASSERT_TRUE(line->isVisible());
    done->tell(QStringLiteral("1 film of 135-36 on Dev 1 and Fix 1"));
    QTest::qWait(1);
    EXPECT_EQ(header->height(), 38);
    EXPECT_FALSE(line->isVisible());
    ASSERT_TRUE(done->isVisible());
    EXPECT_GE(done->width(), done->sizeHint().width());
    EXPECT_LT(done->geometry().right(), run->x());
    window.resize(480, 300); // on two lines, where there is less room beside the title
    QTest::qWait(1);
    EXPECT_LT(done->geometry().right(), run->x());
    EXPECT_LE(done->heightForWidth(done->width()), done->height());
    const int height = header->height();
    done->tell({});
    QTest::qWait(1);
    EXPECT_TRUE(line->isVisible());
    EXPECT_EQ(header->height(), height);
    done->tell(QStringLiteral("1 film of 135-36 on Dev 1 and Fix 1"));
    window.resize(330, 300); // below, whole, where there is none
    QTest::qWait(1);
    EXPECT_GE(done->y(), run->geometry().bottom());
    EXPECT_GE(done->height(), done->heightForWidth(done->width()));
    EXPECT_GE(header->height(), done->geometry().bottom());
    window.resize(1100, 300);
    done->tell({});
    QTest::qWait(1);
    EXPECT_TRUE(line->isVisible());
    EXPECT_EQ(header->height(), 38);
}

TEST(ThreeColumns, TheThirdStandsUnderAnotherWhereThereIsNoWidth)
{
    for (const auto under : {ThreeColumns::Under::First, ThreeColumns::Under::Second}) {
        QWidget* first = box(200, 50);
        QWidget* second = box(300, 60);
        QWidget* third = box(250, 70);
        QWidget page; // a window of its own may not become smaller than its layout
        page.resize(1000, 500);
        ThreeColumns columns(under, &page);
        for (QWidget* column : {first, second, third})
            columns.addColumn(column, 1);
        columns.resize(900, 400);
        page.show();
        QTest::qWait(1);
        EXPECT_FALSE(columns.isFolded());
        EXPECT_EQ(third->y(), first->y());
        EXPECT_GT(third->x(), second->geometry().right());
        columns.resize(600, 400);
        QTest::qWait(1);
        EXPECT_TRUE(columns.isFolded());
        const QWidget* over = under == ThreeColumns::Under::First ? first : second;
        EXPECT_TRUE(QTest::qWaitFor([&] { return third->x() == over->x(); }));
        EXPECT_EQ(third->x(), over->x());
        EXPECT_GT(third->y(), over->geometry().bottom());
        EXPECT_LE(columns.minimumSizeHint().width(), 600);
        columns.resize(900, 400);
        QTest::qWait(1);
        EXPECT_FALSE(columns.isFolded());
    }
}

TEST(ThreeColumns, WhatIsHiddenTakesNoRoom)
{
    QWidget* second = box(300, 60);
    QWidget* first = box(200, 50);
    QWidget* third = box(250, 70);
    ThreeColumns columns(ThreeColumns::Under::First);
    for (QWidget* column : {first, second, third})
        columns.addColumn(column, 1);
    columns.resize(900, 400);
    columns.show();
    QTest::qWait(1);
    first->hide();
    third->hide();
    QTest::qWait(1);
    EXPECT_GE(second->width(), 850);
}
