// The shelf follows the book while it is seen, and makes up for what it missed when it is seen
// again.
#include "app/dialogs/mix_dialog.h"
#include "app/shelf/shelf_snapshot.h"
#include "app/widgets/verdict_label.h"
#include "tests/app/window/window_kit.h"
#include "tests/core/store/damaged_book.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

namespace ullage::app
{

namespace
{

bool says(const QWidget& page, const QString& text)
{
    for (const auto* label : page.findChildren<QLabel*>()) {
        if (label->isVisible() && label->text().contains(text))
            return true;
    }
    // A verdict's words are drawn.
    for (const auto* verdict : page.findChildren<VerdictLabel*>()) {
        if (verdict->isVisible() && verdict->accessibleName().contains(text))
            return true;
    }
    return false;
}

} // namespace

TEST(ShelfFeed, aShelfThatIsNotSeenDoesNoWork)
{
    Desk desk;
    Window at(desk);
    at.window.showPage(Page::DayBook);
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    EXPECT_EQ(at.bottle("Dev 1"), nullptr);
    at.window.showPage(Page::Shelf);
    EXPECT_NE(at.bottle("Dev 1"), nullptr);
}

TEST(ShelfFeed, tellsOfTheBottleSelectedAndOfAnother)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const auto fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    Window at(desk);
    ShelfPage* shelf = at.window.shelf();
    for (const auto& bottle : {std::pair(dev, "Dev 1, "), std::pair(fix, "Fix 1, ")}) {
        const auto& id = bottle.first; // no binding: a lambda cannot hold one
        const char* const name = bottle.second;
        ASSERT_TRUE(shelf->selectBottle(QString::fromStdString(id)));
        EXPECT_TRUE(QTest::qWaitFor([&] { return says(*shelf, name); }, 10'000)) << name;
    }
    desk.passMinutes(1);
    desk.run(fix, 3);
    EXPECT_DOUBLE_EQ(at.bottle("Fix 1")->filmsDone, 3);
    EXPECT_TRUE(says(*shelf, "Fix 1, "));
}

// It keeps its place, under its name, with what can be done about it.
TEST(ShelfFeed, aBottleThatIsNotAsItWasEnteredStaysOnTheShelf)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const auto other = desk.mix("starter-mq-borax", "starter-glass-500", 500, "Dev 2");
    desk.run(dev, 3);
    desk.run(other, 1); // so it is clear
    desk.session().close();
    store::testing::tamper(desk.bookPath(),
                           {"UPDATE entry SET body = replace(body, '\"count\":3', '\"count\":1'), "
                            "films = 1 WHERE kind = 'processed'"});
    desk.reopen();
    Window at(desk);
    Window::settle();
    const BottleView* bottle = at.bottle("Dev 1");
    ASSERT_NE(bottle, nullptr);
    EXPECT_TRUE(bottle->unread);
    EXPECT_EQ(bottle->headline, "Not as it was entered");
    EXPECT_EQ(bottle->filmsDone, 0) << "nothing of what was changed";
    ASSERT_NE(at.bottle("Dev 2"), nullptr);
    EXPECT_FALSE(at.bottle("Dev 2")->unread);
    ShelfPage* shelf = at.window.shelf();
    EXPECT_TRUE(says(*shelf, "not shown"));
    EXPECT_EQ(shelf->currentBottle(), QString::fromStdString(dev)) << "what is to be done first";
    EXPECT_TRUE(says(*shelf, "Film, Dev 1, ")) << "which entry";
    EXPECT_FALSE(at.action("Log a run")->isEnabled());
    QSignalSpy check(&at.window, &MainWindow::checkRequested);
    QSignalSpy copies(&at.window, &MainWindow::copiesRequested);
    int pressed = 0;
    for (auto* button : shelf->findChildren<QPushButton*>()) {
        if (button->isVisible() &&
            (button->text() == "Check the book" || button->text() == "Restore a copy…")) {
            button->click();
            ++pressed;
        }
    }
    EXPECT_EQ(pressed, 2);
    EXPECT_EQ(check.count(), 1);
    EXPECT_EQ(copies.count(), 1);
    ASSERT_TRUE(shelf->selectBottle(at.bottle("Dev 2")->id));
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(*shelf, "Dev 2, "); }, 10'000));
    EXPECT_TRUE(at.action("Log a run")->isEnabled());
}

// Its entries were changed after the shelf was filled: never the figures of the bottle before.
TEST(ShelfFeed, aBottleThatCannotBeReadIsNotTakenForTheOneBefore)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const auto fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    desk.run(dev, 1); // so it is clear
    desk.run(fix, 3);
    Window at(desk);
    ShelfPage* shelf = at.window.shelf();
    ASSERT_TRUE(shelf->selectBottle(QString::fromStdString(dev)));
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(*shelf, "Dev 1, "); }, 10'000));
    store::testing::tamper(desk.bookPath(),
                           {"UPDATE entry SET body = replace(body, '\"count\":3', '\"count\":1'), "
                            "films = 1 WHERE kind = 'processed'"});
    ASSERT_TRUE(shelf->selectBottle(QString::fromStdString(fix)));
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(*shelf, "Not shown"); }, 10'000));
    EXPECT_FALSE(says(*shelf, "Dev 1, "));
    EXPECT_TRUE(says(*shelf, "Fix 1")) << "which bottle it is about";
    EXPECT_TRUE(says(*shelf, "a copy from before the fault has all of it")) << "what to do";
    EXPECT_FALSE(at.action("Log a run")->isEnabled());
}

// Said when the book answers no more: what it is, and what to do.
TEST(ShelfFeed, aBottleThatCouldNotBeReadJustNowSaysSo)
{
    const SelectedBottle told = unreachedBottle({"id", "Dev 1", "MQ borax"}, "The disk is gone.");
    EXPECT_TRUE(told.unread);
    EXPECT_EQ(told.refused.size(), static_cast<std::size_t>(kBottleActions));
    EXPECT_TRUE(told.nextTime.isEmpty());
    EXPECT_TRUE(told.noTime.contains("Choose it again"));
    EXPECT_EQ(told.reasons, QStringList{"The disk is gone."});
}

TEST(ShelfFeed, aBottleMixedFromAnotherPageIsSelected)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    Window at(desk);
    at.window.showPage(Page::DayBook);
    emit at.window.enterRequested();
    auto* mix = at.dialog<MixDialog>();
    type(*mix, "Name on the label", "Dev 2");
    mix->accept();
    Window::settle();
    at.window.showPage(Page::Shelf);
    ASSERT_NE(at.bottle("Dev 2"), nullptr);
    EXPECT_EQ(at.window.shelf()->currentBottle(), at.bottle("Dev 2")->id);
}

TEST(ShelfFeed, letsGoOfTheFileWhenTheBookIsClosed)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    Window at(desk);
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(*at.window.shelf(), "Dev 1, "); }, 10'000));
    desk.session().close();
    EXPECT_FALSE(QFile::exists(desk.bookPath() + "-wal")) << "no connection is left";
}

} // namespace ullage::app
