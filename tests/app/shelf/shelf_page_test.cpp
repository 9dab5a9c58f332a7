#include "app/charts/chart_view.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/shelf_view.h"
#include "app/widgets/figure_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/whole_lines.h"
#include "tests/app/gallery/samples.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QSplitter>
#include <QTest>

#include <gtest/gtest.h>

using namespace ullage::app;

namespace
{

struct Window {
    ShelfPage page;

    explicit Window(int count, QSize size = {1112, 770})
    {
        const auto bottles = samples::bottles(count);
        QObject::connect(&page, &ShelfPage::bottleSelected, &page,
                         [this, bottles](const QString& id) {
                             for (const BottleView& bottle : bottles) {
                                 if (bottle.id == id)
                                     page.setSelected(samples::selected(bottle));
                             }
                         });
        page.resize(size);
        page.show();
        page.setBottles(bottles);
        QTest::qWait(1);
    }

    QPushButton* button(const QString& text)
    {
        for (auto* one : page.findChildren<QPushButton*>()) {
            if (one->text() == text && one->isVisible())
                return one;
        }
        return nullptr;
    }
};

} // namespace

TEST(ShelfPage, EmptySaysWhatToDoFirst)
{
    Window window(0);
    QPushButton* mix = window.button(QStringLiteral("Mix a batch…"));
    ASSERT_NE(mix, nullptr);
    EXPECT_EQ(window.button(QStringLiteral("Log a run…")), nullptr);
    EXPECT_FALSE(window.page.view()->isVisible());
    QSignalSpy asked(&window.page, &ShelfPage::mixRequested);
    QTest::mouseClick(mix, Qt::LeftButton);
    EXPECT_EQ(asked.count(), 1);
    QPushButton* enter = window.button(QStringLiteral("Enter a bottle…"));
    ASSERT_NE(enter, nullptr);
    QSignalSpy entering(&window.page, &ShelfPage::enterRequested);
    enter->setFocus();
    QTest::keyClick(enter, Qt::Key_Return);
    EXPECT_EQ(entering.count(), 1);
    EXPECT_FALSE(window.page.actions()->action(BottleAction::TopUp)->isEnabled());
    Window small(0, {840, 620});
    EXPECT_LE(small.page.minimumSizeHint().height(), 620) << "cards that are not seen take no room";
}

TEST(ShelfPage, SelectsTheMostUrgentAndShowsIt)
{
    Window window(6);
    EXPECT_EQ(window.page.currentBottle(), QStringLiteral("Fix 8"));
    EXPECT_EQ(window.page.actions()->bottle(), QStringLiteral("Fix 8"));
    ASSERT_TRUE(window.page.selectBottle(QStringLiteral("Dev 14")));
    bool found = false;
    for (const auto* label : window.page.findChildren<FigureLabel*>())
        found = found || (label->text() == QStringLiteral("12:35") && label->isVisible());
    EXPECT_TRUE(found);
    EXPECT_FALSE(window.page.selectBottle(QStringLiteral("nobody")));
}

TEST(ShelfPage, ButtonsNameTheBottle)
{
    Window window(6, {1700, 900}); // the card is wide enough for all its buttons
    window.page.selectBottle(QStringLiteral("Dev 14"));
    QSignalSpy asked(&window.page, &ShelfPage::actionRequested);
    for (const char* text : {"Top up…", "Test…", "Discard…", "Log a run…"}) {
        QPushButton* button = window.button(QString::fromUtf8(text));
        ASSERT_NE(button, nullptr) << text;
        QTest::mouseClick(button, Qt::LeftButton);
    }
    ASSERT_EQ(asked.count(), 4);
    const BottleAction expected[]{BottleAction::TopUp, BottleAction::Test, BottleAction::Discard,
                                  BottleAction::RunFilm};
    for (int i = 0; i < 4; ++i) {
        EXPECT_EQ(asked[i][0].value<BottleAction>(), expected[i]);
        EXPECT_EQ(asked[i][1].toString(), QStringLiteral("Dev 14"));
    }
}

TEST(ShelfPage, LeadsToTheBottlesItWasFilledFromAndThatItFilled)
{
    Window window(6);
    window.page.selectBottle(QStringLiteral("Dev 14"));
    SelectedBottle bottle;
    bottle.id = QStringLiteral("Dev 14");
    bottle.filled = {{QStringLiteral("Fix 8"), QStringLiteral("Fix 8"), true},
                     {QStringLiteral("nobody"), QStringLiteral("Dev 2"), false}};
    window.page.setSelected(bottle);
    QTest::qWait(1);
    const auto says = [&](const QString& text) {
        for (const auto* label : window.page.findChildren<QLabel*>()) {
            if (label->text() == text && !label->isHidden())
                return true;
        }
        return false;
    };
    EXPECT_TRUE(says("Filled from"));
    EXPECT_TRUE(says("Went into"));
    EXPECT_TRUE(says("Dev 2 (gone)")) << "it is not on the shelf any more";
    QPushButton* link = window.button("Fix 8");
    ASSERT_NE(link, nullptr);
    link->click();
    EXPECT_EQ(window.page.currentBottle(), QStringLiteral("Fix 8"));
}

TEST(ShelfPage, DiscardStandsFirstWhereItIsTheThingToDo)
{
    Window window(6);
    const auto left = [&](const char* text) {
        QPushButton* button = window.button(QString::fromUtf8(text));
        return button ? button->mapTo(&window.page, QPoint()).x() : 100'000;
    };
    SelectedBottle bottle;
    bottle.verdict = VerdictLook::Discard;
    window.page.setSelected(bottle);
    QTest::qWait(1);
    EXPECT_LT(left("Discard…"), left("Test…"));
    EXPECT_LT(left("Test…"), left("Top up…"));
    bottle.verdict = VerdictLook::Good;
    window.page.setSelected(bottle);
    QTest::qWait(1);
    EXPECT_LT(left("Top up…"), left("Test…"));
    EXPECT_LT(left("Test…"), left("Discard…"));
}

TEST(ShelfPage, ThatItIsClearStandsFirstOnARestingBottleAndNowhereElse)
{
    Window window(6);
    const auto left = [&](const char* text) {
        QPushButton* button = window.button(QString::fromUtf8(text));
        return button ? button->mapTo(&window.page, QPoint()).x() : 100'000;
    };
    EXPECT_EQ(window.button(QStringLiteral("It is clear now…")), nullptr);
    SelectedBottle bottle;
    bottle.id = QStringLiteral("Dev 14");
    bottle.verdict = VerdictLook::Resting;
    window.page.setSelected(bottle);
    QTest::qWait(1);
    QPushButton* clear = window.button(QStringLiteral("It is clear now…"));
    ASSERT_NE(clear, nullptr);
    EXPECT_LT(left("It is clear now…"), left("Top up…"));
    QSignalSpy asked(&window.page, &ShelfPage::actionRequested);
    QTest::mouseClick(clear, Qt::LeftButton);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][0].value<BottleAction>(), BottleAction::Dissolved);
    bottle.verdict = VerdictLook::Discard;
    window.page.setSelected(bottle);
    QTest::qWait(1);
    EXPECT_EQ(window.button(QStringLiteral("It is clear now…")), nullptr);
    EXPECT_LT(left("Discard…"), left("Test…"));
}

TEST(ShelfPage, WhatIsNotAllowedIsOff)
{
    Window window(6, {1700, 900}); // the card is wide enough for all its buttons
    SelectedBottle bottle;
    bottle.id = QStringLiteral("Dev 14");
    bottle.refused = refuseAll(QStringLiteral("<b>read</b> only"));
    bottle.refused.erase(BottleAction::Discard);
    window.page.setSelected(bottle);
    QPushButton* topUp = window.button(QStringLiteral("Top up…"));
    ASSERT_NE(topUp, nullptr);
    EXPECT_FALSE(topUp->isEnabled());
    EXPECT_TRUE(window.button(QStringLiteral("Discard…"))->isEnabled());
    EXPECT_EQ(topUp->accessibleDescription(), "<b>read</b> only") << "it says why";
    EXPECT_EQ(topUp->toolTip(), plainToolTip("<b>read</b> only")) << "and never as markup";
    EXPECT_EQ(window.page.actions()->action(BottleAction::TopUp)->text(),
              "&Top up… (<b>read</b> only)");
    EXPECT_EQ(window.page.actions()->action(BottleAction::Discard)->text(), "&Discard…");
}

TEST(ShelfPage, NothingIsCutOffInASmallWindow)
{
    // What is left for the page at 1280 × 800 with a menu bar.
    Window window(6, {1112, 770});
    window.page.selectBottle(QStringLiteral("Dev 14"));
    QTest::qWait(1);
    EXPECT_EQ(window.page.view()->verticalScrollBar()->maximum(), 0);
    for (auto* area : window.page.findChildren<QScrollArea*>())
        EXPECT_EQ(area->verticalScrollBar()->maximum(), 0) << "the reasons fit without scrolling";
    for (auto* chart : window.page.findChildren<ChartView*>())
        EXPECT_TRUE(window.page.rect().contains(
            QRect(chart->mapTo(&window.page, QPoint()), chart->size())));
}

TEST(ShelfPage, ReasonsThatScrollAreNotCutWithinALine)
{
    Window window(14, {1112, 770});
    SelectedBottle bottle;
    bottle.id = QStringLiteral("Dev 14");
    bottle.nextTime = QStringLiteral("12:35");
    bottle.factors = {{QStringLiteral("Leaflet time"), QStringLiteral("9:30")},
                      {QStringLiteral("Wear"), QStringLiteral("× 1.32")}};
    for (int i = 0; i < 20; ++i)
        bottle.reasons << QStringLiteral("Reason %1").arg(i);
    bottle.closing = QStringLiteral("Films run out first.");
    const int before = window.page.view()->height();
    window.page.setSelected(bottle);
    QTest::qWait(1);
    auto* area = window.page.findChild<WholeLines*>();
    ASSERT_NE(area, nullptr);
    const int line = area->fontMetrics().lineSpacing();
    EXPECT_GT(area->verticalScrollBar()->maximum(), 0);
    EXPECT_GE(area->viewport()->height(), 3 * line);
    EXPECT_EQ(area->viewport()->height() % line, 0);
    EXPECT_EQ(area->verticalScrollBar()->maximum() % line, 0) << "nor at the end";
    EXPECT_EQ(window.page.view()->height(), before) << "bottles keep their places";
}

TEST(ShelfPage, WhatIsDoneWithABottleIsInSightInALowWindow)
{
    Window window(2, {840, 620});
    QPushButton* button = nullptr;
    for (auto* one : window.page.findChildren<QPushButton*>()) {
        if (one->isVisible() && one->text().startsWith("+ 1 film"))
            button = one;
    }
    ASSERT_NE(button, nullptr);
    EXPECT_LE(button->mapTo(&window.page, button->rect().bottomLeft()).y(), 620);
}

TEST(ShelfPage, ASplitThatWasMovedIsKept)
{
    Window first(6);
    EXPECT_TRUE(first.page.split().isEmpty()) << "by itself it goes by the bottles there are";
    auto* splitter = first.page.findChild<QSplitter*>();
    const int before = splitter->sizes().front();
    QSplitterHandle* handle = splitter->handle(1);
    QTest::mousePress(handle, Qt::LeftButton, {}, QPoint(200, 4));
    QTest::mouseMove(handle, QPoint(200, -16));
    QTest::mouseRelease(handle, Qt::LeftButton, {}, QPoint(200, -16));
    EXPECT_LT(splitter->sizes().front(), before);
    const QByteArray split = first.page.split();
    Window second(6);
    second.page.restoreSplit(split);
    EXPECT_EQ(second.page.split(), split);
}

TEST(ShelfPage, TheFormOfTheBottlesGoesByTheRoomForThem)
{
    struct Case {
        int bottles;
        QSize page; ///< of a window without its rail and its menus
        bool compact;
    };
    for (const Case& one :
         {Case{1, {1112, 770}, false}, Case{6, {1112, 770}, false}, Case{14, {1112, 770}, true},
          Case{6, {1752, 1050}, false}, Case{14, {1752, 1050}, false}, Case{40, {1752, 1050}, true},
          Case{14, {2392, 1410}, false}}) {
        const Window window(one.bottles, one.page);
        const ShelfView& view = *window.page.view();
        EXPECT_EQ(view.isCompact(), one.compact)
            << one.bottles << " bottles at " << one.page.width() << " by " << one.page.height();
        const bool many = one.bottles > 20; // they may scroll
        EXPECT_TRUE(many || view.verticalScrollBar()->maximum() == 0) << one.bottles;
    }
}

TEST(ShelfPage, TheHeightGoesByTheBottlesThereAre)
{
    Window many(14, {1112, 770});
    EXPECT_EQ(many.page.view()->verticalScrollBar()->maximum(), 0)
        << "all are seen where the cards can do with less";
    Window tall(14, {1750, 1050});
    const ShelfView& view = *tall.page.view();
    const QRect last = view.visualRect(view.model()->index(13, 0));
    EXPECT_LT(view.viewport()->height() - last.bottom(), last.height() / 2)
        << "and no room stays empty below them";
}
