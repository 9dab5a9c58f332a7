// What gives way where there is little room: it scrolls, folds or goes on in another line, and
// nothing of it is cut.
#include "app/widgets/edge_fade.h"
#include "app/widgets/elided_box.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/flow_layout.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/page_room.h"
#include "app/widgets/scroll_room.h"
#include "app/widgets/wrapping_button.h"

#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTest>
#include <QVBoxLayout>

#include <cmath>
#include <initializer_list>
#include <utility>

#include <gtest/gtest.h>

using namespace ullage::app;

namespace
{

// Fields one below the other.
QWidget* fields(int count)
{
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    for (int i = 0; i < count; ++i) {
        auto* field = new QLineEdit;
        field->setFixedHeight(40);
        column->addWidget(field);
    }
    return content;
}

QWidget* box(int least, int height)
{
    auto* made = new QWidget;
    made->setMinimumSize(least, height);
    return made;
}

} // namespace

TEST(ScrollRoom, ScrollsOnlyWhereItMust)
{
    ScrollRoom room(fields(5));
    room.resize(400, 220);
    room.show();
    QTest::qWait(1);
    const int whole = room.widget()->sizeHint().height();
    ASSERT_GT(whole, 150);
    ASSERT_LT(whole, 220);
    EXPECT_EQ(room.verticalScrollBar()->maximum(), 0);
    EXPECT_EQ(room.widget()->width(), room.viewport()->width());
    room.resize(400, 150);
    QTest::qWait(1);
    EXPECT_EQ(room.verticalScrollBar()->maximum(), whole - room.viewport()->height());
    EXPECT_EQ(room.horizontalScrollBar()->maximum(), 0) << "its bar makes it no wider";
    EXPECT_EQ(room.sizeHint().height(), whole) << "it asks for all that is in it";
}

TEST(ScrollRoom, BringsIntoSightWhatGetsTheKeys)
{
    ScrollRoom room(fields(12));
    room.resize(400, 150);
    room.show();
    room.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&room));
    auto* last = room.widget()->findChildren<QLineEdit*>().back();
    last->setFocus(Qt::ShortcutFocusReason);
    EXPECT_TRUE(room.viewport()->rect().contains(
        QRect(last->mapTo(room.viewport(), QPoint()), last->size())));
}

TEST(ScrollRoom, WordsThatWrapGetTheHeightTheyNeed)
{
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    auto* words = new QLabel(QStringLiteral("words that wrap ").repeated(60));
    words->setWordWrap(true);
    column->addWidget(words);
    ScrollRoom room(content);
    room.resize(300, 200);
    room.show();
    QTest::qWait(1);
    EXPECT_GT(room.verticalScrollBar()->maximum(), 0);
    EXPECT_GE(words->height(), words->heightForWidth(words->width()));
}

TEST(PageRoom, OnlyThePageThatIsSeenCounts)
{
    auto* pages = new QStackedWidget;
    pages->addWidget(box(300, 100));
    pages->addWidget(box(900, 700));
    PageRoom room(pages);
    room.resize(500, 300);
    room.show();
    QTest::qWait(1);
    EXPECT_EQ(room.horizontalScrollBar()->maximum(), 0);
    EXPECT_EQ(room.verticalScrollBar()->maximum(), 0);
    pages->setCurrentIndex(1);
    QTest::qWait(1);
    EXPECT_GE(pages->currentWidget()->width(), 900);
    EXPECT_GT(room.horizontalScrollBar()->maximum(), 0);
    EXPECT_GT(room.verticalScrollBar()->maximum(), 0);
    pages->setCurrentIndex(0);
    QTest::qWait(1);
    EXPECT_EQ(room.verticalScrollBar()->maximum(), 0);
}

TEST(FoldingRow, FoldsWhereThereIsNoWidthForAll)
{
    QWidget window;
    auto* row = new FoldingRow(&window);
    auto* left = box(300, 50);
    auto* right = box(200, 60);
    row->addColumn(left, 1);
    row->addColumn(right);
    window.resize(700, 400);
    window.show();
    QTest::qWait(1);
    EXPECT_FALSE(row->isFolded());
    EXPECT_EQ(left->y(), right->y());
    EXPECT_EQ(right->geometry().right(), 699);
    EXPECT_EQ(row->heightForWidth(700), 60);
    window.resize(400, 400);
    QTest::qWait(1);
    EXPECT_TRUE(row->isFolded());
    EXPECT_GE(right->y(), left->geometry().bottom());
    EXPECT_GE(right->width(), 200);
    EXPECT_EQ(row->heightForWidth(400), 50 + row->spacing() + 60);
    EXPECT_EQ(row->minimumSize().width(), 300);
    window.resize(700, 400);
    QTest::qWait(1);
    EXPECT_FALSE(row->isFolded());
}

// A line of words made all of its card as high as it would like to be, and pushed what was said out
// of a low window.
TEST(FoldingRow, BesideWordsThatWrapTheRestGivesWay)
{
    QWidget window;
    auto* row = new FoldingRow(&window);
    auto* card = new QWidget;
    auto* column = new QVBoxLayout(card);
    auto* list = new QScrollArea;
    list->setWidget(fields(20));
    auto* words = new QLabel(QStringLiteral("What is in the way is said here, on as many lines as "
                                            "it takes, and none of them is lost."));
    words->setWordWrap(true);
    column->addWidget(list);
    column->addWidget(words);
    row->addColumn(card, 1);
    row->addColumn(box(250, 50));
    window.resize(300, 900);
    window.show();
    QTest::qWait(1);
    ASSERT_TRUE(row->isFolded());
    const int least = row->minimumHeightForWidth(300);
    EXPECT_LT(least, row->heightForWidth(300));
    window.resize(300, least);
    QTest::qWait(1);
    EXPECT_GE(words->height(), words->heightForWidth(words->width()));
    EXPECT_GE(list->height(), list->minimumSizeHint().height());
    EXPECT_LT(list->height(), list->sizeHint().height());
}

TEST(ElidedBox, SaysThatItIsCut)
{
    const QString bottle = QStringLiteral("Dev 30 · 20 films left · Harbour developer, topped up");
    ElidedBox box;
    box.addItem(bottle);
    box.resize(160, box.sizeHint().height());
    EXPECT_TRUE(box.seen().endsWith(QChar(0x2026))) << box.seen().toStdString();
    EXPECT_TRUE(box.seen().startsWith("Dev 30")) << "what tells it from others stands first";
    box.resize(700, box.height());
    EXPECT_EQ(box.seen(), bottle);
}

TEST(WrappingButton, ShowsAllItsWords)
{
    const QString name = QStringLiteral("Lantern 1600 · 135-36 · EI 1600 · Evening & court");
    QWidget window;
    auto* column = new QVBoxLayout(&window);
    auto* button = new WrappingButton(name);
    column->addWidget(button);
    column->addStretch();
    window.resize(220, 200);
    window.show();
    QTest::qWait(1);
    EXPECT_TRUE(button->text().contains(u'\n'));
    EXPECT_EQ(QString(button->text())
                  .replace(u'\n', u' ')
                  .replace(QStringLiteral("&&"), QStringLiteral("&")),
              name);
    for (const QString& line : button->text().split(u'\n'))
        EXPECT_LE(button->fontMetrics().horizontalAdvance(line), button->width());
    EXPECT_GE(button->height(), button->heightForWidth(button->width()));
    window.resize(900, 200);
    QTest::qWait(1);
    EXPECT_FALSE(button->text().contains(u'\n'));
}

TEST(FactorRows, AFigureThatDoesNotFitBesideItsNameStandsBelowIt)
{
    FactorRows rows;
    rows.setRows({{QStringLiteral("Develop in a bottle of a long name"),
                   QStringLiteral("planned 12:35, real 12:41")}});
    EXPECT_GT(rows.heightForWidth(200), rows.heightForWidth(700));
    rows.resize(200, 100);
    rows.show();
    EXPECT_EQ(rows.minimumSizeHint().height(), rows.heightForWidth(200));
}

TEST(FactorRows, WhatAFigureIsOfIsNeverCut)
{
    FactorRows rows;
    rows.setRows({{QStringLiteral("Keeps, full and closed and left in the dark of a cellar"),
                   QStringLiteral("28 May")}});
    const int one = rows.heightForWidth(900);
    EXPECT_GT(rows.heightForWidth(300), one);
    EXPECT_GT(rows.heightForWidth(160), rows.heightForWidth(300)) << "another line for its words";
}

TEST(EdgeFade, StandsOnlyOverAnEdgeBeyondWhichThereIsMore)
{
    ScrollRoom room(fields(5));
    fadeEdges(room, FadeGround::Card);
    const auto fades = room.findChildren<EdgeFade*>();
    ASSERT_EQ(fades.size(), 2);
    const auto seen = [&] { return std::pair(fades[0]->isVisible(), fades[1]->isVisible()); };
    room.resize(400, 220);
    room.show();
    QTest::qWait(1);
    EXPECT_EQ(seen(), std::pair(false, false));
    room.resize(400, 120);
    QTest::qWait(1);
    EXPECT_EQ(seen(), std::pair(false, true));
    EXPECT_EQ(fades[1]->geometry().bottom(), room.viewport()->geometry().bottom());
    room.verticalScrollBar()->setValue(20);
    EXPECT_EQ(seen(), std::pair(true, true));
    room.verticalScrollBar()->setValue(room.verticalScrollBar()->maximum());
    EXPECT_EQ(seen(), std::pair(true, false));
}

TEST(FlowLayout, WhatIsWiderThanItsRoomWrapsInIt)
{
    QWidget within;
    auto* flow = new FlowLayout(&within);
    auto* button = new WrappingButton(QStringLiteral("A name that goes on for long, word by word"));
    auto* other = new WrappingButton(QStringLiteral("Films"));
    flow->addWidget(button);
    flow->addWidget(other);
    within.resize(150, 200);
    within.show();
    QTest::qWait(1);
    EXPECT_LE(button->width(), 150);
    EXPECT_GT(button->height(), other->height());
    EXPECT_GE(other->y(), button->geometry().bottom());
    EXPECT_EQ(other->width(), other->sizeHint().width()) << "and a short one is not squeezed";
}

TEST(FlowLayout, WhatExpandsTakesTheRestOfItsRowAndASecondRowBeginsWhereItShould)
{
    QWidget within;
    auto* flow = new FlowLayout(&within, 10);
    QWidget* const first = box(100, 20);
    QWidget* const second = box(100, 20);
    auto* field = new QLineEdit;
    for (QWidget* one : {first, second})
        one->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    field->setMinimumWidth(150);
    for (QWidget* one : std::initializer_list<QWidget*>{first, second, field})
        flow->addWidget(one);
    flow->setSecondRow(second);
    const auto middle = [](const QWidget* one) { return one->y() + one->height() / 2.0; };
    within.resize(600, 200);
    within.show();
    QTest::qWait(1);
    EXPECT_LT(std::abs(middle(field) - middle(first)), 1.1) << "on one middle";
    EXPECT_EQ(field->geometry().right(), 599);
    within.resize(300, 200);
    QTest::qWait(1);
    EXPECT_GT(second->y(), first->geometry().bottom()) << "not the last alone";
    EXPECT_LT(std::abs(middle(field) - middle(second)), 1.1);
    EXPECT_EQ(field->geometry().right(), 299);
}
