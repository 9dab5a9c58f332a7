// The Cupboard in the whole window.
#include "app/cupboard/cupboard_page.h"
#include "app/cupboard/item_list.h"
#include "tests/app/cupboard/cupboard_kit.h"
#include "tests/app/window/window_kit.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QPrintPreviewDialog>
#include <QPushButton>

#include <algorithm>

namespace ullage::app
{

namespace
{

int listLinesOf(Window& at)
{
    return at.window.findChild<CupboardPage*>()->list()->model()->rowCount();
}

bool listComesTo(Window& at, int lines)
{
    return QTest::qWaitFor([&] { return listLinesOf(at) == lines; }, 10'000);
}

} // namespace

TEST(CupboardPage, followsTheBookWhileItIsSeenAndOnlyThen)
{
    Desk desk;
    Window at(desk);
    shelve(desk, {powder("p1")});
    QTest::qWait(50);
    EXPECT_EQ(listLinesOf(at), 0) << "it is not seen";
    at.window.showPage(Page::Cupboard);
    EXPECT_TRUE(listComesTo(at, 2)); // its heading and itself
    shelve(desk, {chemical("s", 500)});
    EXPECT_TRUE(listComesTo(at, 4));
    happen(desk, ledger::ThrownAway{"p1", {}});
    EXPECT_TRUE(listComesTo(at, 2));
    ASSERT_TRUE(desk.session().undo());
    EXPECT_TRUE(listComesTo(at, 4));
}

TEST(CupboardPage, keepsWhatWasChosenWhenTheListIsMadeAnew)
{
    Desk desk;
    shelve(desk, {powder("p1"), chemical("s", 500)});
    Window at(desk);
    at.window.showPage(Page::Cupboard);
    ASSERT_TRUE(listComesTo(at, 4));
    auto* page = at.window.findChild<CupboardPage*>();
    EXPECT_EQ(page->chosen(), "p1");
    ASSERT_TRUE(page->choose("s"));
    shelve(desk, {powder("p2")});
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            const auto first = page->list()->model()->index(1, 0);
            return first.data(ItemListModel::DetailRole).toString().startsWith(u'2');
        },
        10'000));
    EXPECT_EQ(page->chosen(), "s");
}

TEST(CupboardPage, anEmptyOneOffersWhatToDoFirst)
{
    Desk desk;
    Window at(desk);
    at.window.showPage(Page::Cupboard);
    auto* page = at.window.findChild<CupboardPage*>();
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            for (const auto* button : page->findChildren<QPushButton*>()) {
                if (button->isVisible() && button->text().startsWith("Add to the cupboard"))
                    return true;
            }
            return false;
        },
        10'000));
}

// Every second Wednesday evening: the second of those offered falls out, and Undo brings it back.
TEST(CupboardPage, workThatComesAgainIsSkippedOnce)
{
    Desk desk;
    ledger::Work course;
    course.id = "course";
    course.at = desk.now() + std::chrono::days(7);
    course.rule = "FREQ=WEEKLY;INTERVAL=2";
    course.films = chemistry::Films(4);
    course.name = "Course";
    shelve(desk, {course});
    Window at(desk);
    at.window.showPage(Page::Cupboard);
    auto* page = at.window.findChild<CupboardPage*>();
    const auto skip = [&]() -> QAction* {
        for (auto* one : page->findChildren<QAction*>()) {
            if (one->text().remove(u'&') == "Skip once…")
                return one;
        }
        return nullptr;
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return skip() != nullptr; }, 10'000));
    at.asked.answerWay(1);
    skip()->trigger();
    auto works = snapshotOf(desk).state.works;
    ASSERT_EQ(works.size(), 2u);
    std::sort(works.begin(), works.end(), [](const auto& a, const auto& b) { return a.at < b.at; });
    EXPECT_EQ(works[0].rule, "");
    EXPECT_EQ(works[0].at, course.at);
    EXPECT_EQ(works[1].at, course.at + std::chrono::days(28));
    EXPECT_EQ(works[1].rule, course.rule);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(snapshotOf(desk).state.works.size(), 1u);
}

TEST(CupboardPage, theShoppingListIsPrintedAsItIsPlanned)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    shelve(desk, {powder("p1")});
    Window at(desk);
    at.window.showPage(Page::Cupboard);
    auto* page = at.window.findChild<CupboardPage*>();
    page->setPlanFor({.weeks = 8, .films = 12, .beside = {}});
    for (auto* button : page->findChildren<QPushButton*>()) {
        if (button->text() == "Print…")
            button->click();
    }
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            const auto* preview = at.window.findChild<QPrintPreviewDialog*>();
            return preview && preview->windowTitle() == "Shopping list";
        },
        20'000));
    for (auto* preview : at.window.findChildren<QPrintPreviewDialog*>())
        preview->reject();
}

TEST(ItemListModel, isASoundModel)
{
    ItemListModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    CupboardRow one;
    one.id = "a";
    one.items = {"a", "b"};
    one.group = "Fixers";
    model.setRows({one});
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.rowOf("b"), 1);
    EXPECT_EQ(model.rowOf("c"), -1);
    EXPECT_FALSE(model.flags(model.index(0)) & Qt::ItemIsSelectable);
}

} // namespace ullage::app
