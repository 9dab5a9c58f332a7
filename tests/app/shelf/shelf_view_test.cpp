#include "app/shelf/shelf_model.h"
#include "app/shelf/shelf_view.h"
#include "tests/app/gallery/samples.h"

#include <QAbstractItemModelTester>
#include <QContextMenuEvent>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

using namespace ullage::app;

namespace
{

struct Shelf {
    ShelfModel model;
    ShelfView view;

    explicit Shelf(int count)
    {
        view.setShelfModel(&model);
        view.resize(1056, 330);
        view.show();
        model.setBottles(samples::bottles(count));
        QTest::qWait(1);
    }
};

} // namespace

TEST(ShelfModel, KeepsTheRulesOfModels)
{
    ShelfModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setBottles(samples::bottles(60));
    model.setBottles(samples::bottles(3));
    auto changed = samples::bottles(3);
    changed[0].headline = QStringLiteral("4 films left");
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    QSignalSpy data(&model, &QAbstractItemModel::dataChanged);
    model.setBottles(changed);
    EXPECT_EQ(reset.count(), 0) << "the same bottles in the same order are only repainted";
    EXPECT_EQ(data.count(), 1);
    model.setBottles({});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(ShelfModel, TheMostUrgentStandsFirst)
{
    ShelfModel model;
    model.setBottles(samples::bottles(6));
    QStringList names;
    for (int row = 0; row < model.rowCount(); ++row)
        names << model.index(row).data().toString();
    EXPECT_EQ(names.first(), QStringLiteral("Fix 8"));
    EXPECT_EQ(names.last(), QStringLiteral("Stop 3"));
}

TEST(ShelfModel, BottlesKeepTheirPlacesWithinAVerdict)
{
    auto bottles = samples::bottles(3);
    for (BottleView& bottle : bottles)
        bottle.urgency = 0;
    bottles[0].name = QStringLiteral("Dev 2");
    bottles[1].name = QStringLiteral("Dev 10");
    bottles[2].name = QStringLiteral("Dev 1");
    ShelfModel model;
    model.setBottles(bottles);
    QStringList names;
    for (int row = 0; row < model.rowCount(); ++row)
        names << model.index(row).data().toString();
    EXPECT_EQ(names, QStringList({"Dev 2", "Dev 10", "Dev 1"})) << "as they were mixed";
}

TEST(ShelfModel, SaysEverythingInWords)
{
    ShelfModel model;
    model.setBottles(samples::bottles(1));
    EXPECT_EQ(
        model.index(0).data(Qt::AccessibleTextRole).toString().toStdString(),
        "Dev 14, MQ borax developer, stock, Good, 5 films left, until 1 May, done: 7 film(s)");
    EXPECT_EQ(model.index(0).data(ShelfModel::VolumeMlRole).toDouble(), 985);
}

TEST(ShelfView, OneRowOfSixNeedsNoScrolling)
{
    Shelf shelf(6);
    EXPECT_EQ(shelf.view.verticalScrollBar()->maximum(), 0);
    const int top = shelf.view.visualRect(shelf.model.index(0)).top();
    for (int row = 0; row < 6; ++row)
        EXPECT_EQ(shelf.view.visualRect(shelf.model.index(row)).top(), top);
}

TEST(ShelfView, SixtyScrollOnlyUpAndDown)
{
    Shelf shelf(60);
    EXPECT_GT(shelf.view.verticalScrollBar()->maximum(), 0);
    EXPECT_EQ(shelf.view.horizontalScrollBar()->maximum(), 0);
    QSignalSpy selected(&shelf.view, &ShelfView::batchSelected);
    EXPECT_TRUE(shelf.view.selectBatch(shelf.model.bottles().back().id));
    EXPECT_EQ(selected.count(), 1);
    EXPECT_TRUE(shelf.view.viewport()->rect().contains(
        shelf.view.visualRect(shelf.view.currentIndex()).center()));
}

TEST(ShelfView, ArrowsSelectAndReturnOpens)
{
    Shelf shelf(6);
    shelf.view.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&shelf.view));
    shelf.view.setFocus();
    EXPECT_EQ(shelf.view.currentBatch(), QStringLiteral("Fix 8"));
    QTest::keyClick(&shelf.view, Qt::Key_Right);
    EXPECT_EQ(shelf.view.currentBatch(), QStringLiteral("Fix 9"));
    QSignalSpy opened(&shelf.view, &ShelfView::batchActivated);
    QTest::keyClick(&shelf.view, Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened[0][0].toString(), QStringLiteral("Fix 9"));
}

TEST(ShelfView, SelectionSurvivesAChangeOfOrder)
{
    Shelf shelf(6);
    shelf.view.selectBatch(QStringLiteral("Dev 14"));
    auto bottles = samples::bottles(6);
    bottles[0].urgency = 99;
    shelf.model.setBottles(bottles);
    EXPECT_EQ(shelf.view.currentBatch(), QStringLiteral("Dev 14"));
    EXPECT_EQ(shelf.view.currentIndex().row(), 0);
    bottles.erase(bottles.begin());
    shelf.model.setBottles(bottles);
    EXPECT_EQ(shelf.view.currentBatch(), QStringLiteral("Fix 8"));
}

TEST(ShelfView, MenuKeyAsksForTheSelectedBottlesMenu)
{
    Shelf shelf(6);
    shelf.view.selectBatch(QStringLiteral("Dev 13"));
    QSignalSpy menu(&shelf.view, &ShelfView::menuRequested);
    QContextMenuEvent key(QContextMenuEvent::Keyboard, QPoint(), QPoint());
    QCoreApplication::sendEvent(shelf.view.viewport(), &key);
    ASSERT_EQ(menu.count(), 1);
    EXPECT_EQ(menu[0][0].toString(), QStringLiteral("Dev 13"));
}

TEST(ShelfView, RowsAreSeenWhole)
{
    for (const int count : {6, 9, 12, 14, 30, 60}) {
        Shelf shelf(count);
        for (const QSize size : {QSize(720, 240), QSize(800, 260), QSize(1056, 330),
                                 QSize(1056, 420), QSize(1700, 560)}) {
            shelf.view.resize(size);
            QTest::qWait(1);
            const int foot = shelf.view.viewport()->height();
            for (int row = 0; row < count; ++row) {
                const QRect cell = shelf.view.visualRect(shelf.model.index(row));
                EXPECT_FALSE(cell.top() < foot - 6 && cell.bottom() > foot + 6)
                    << count << " bottles in " << size.width() << " x " << size.height()
                    << ": a row from " << cell.top() << " to " << cell.bottom();
            }
        }
    }
}

TEST(ShelfView, WordsBesideManyBottlesAreGivenTheRoomThatIsThere)
{
    Shelf shelf(14);
    shelf.view.resize(1710, 430);
    QTest::qWait(1);
    EXPECT_EQ(shelf.view.verticalScrollBar()->maximum(), 0);
    EXPECT_GE(shelf.view.visualRect(shelf.model.index(0)).width(), 236);
    shelf.view.resize(1100, 470);
    QTest::qWait(1);
    EXPECT_EQ(shelf.view.verticalScrollBar()->maximum(), 0);
    EXPECT_GE(shelf.view.visualRect(shelf.model.index(0)).width(), 236) << "another row has room";
    shelf.view.resize(1100, 350);
    QTest::qWait(1);
    EXPECT_EQ(shelf.view.verticalScrollBar()->maximum(), 0) << "none is pushed out for it";
}
