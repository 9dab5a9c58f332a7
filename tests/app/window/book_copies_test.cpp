// Copies of the book through the window, also where no book can be opened.
#include "app/window/copies_dialog.h"
#include "app/window/findings_dialog.h"
#include "core/store/backup.h"
#include "core/store/connection.h"
#include "core/store/copies.h"
#include "tests/app/window/window_kit.h"

#include <QDir>
#include <QFile>
#include <QListWidget>
#include <QPushButton>
#include <QTreeWidget>

namespace ullage::app
{

TEST(BookCopies, copyAndRestoreBringTheBookBack)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    Window at(desk);
    at.asked.answer(desk.file("copy.ullage"));
    emit at.window.backupRequested();
    ASSERT_TRUE(QTest::qWaitFor([&] { return at.asked.asked().size() >= 2; }, 10'000));
    desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    ASSERT_NE(at.bottle("Fix 1"), nullptr);
    at.asked.answer(desk.file("copy.ullage"));
    at.asked.answer(true);
    emit at.window.restoreRequested();
    ASSERT_TRUE(QTest::qWaitFor([&] { return at.asked.asked().size() >= 5; }, 10'000));
    EXPECT_TRUE(at.window.isEnabled());
    EXPECT_NE(at.bottle("Dev 1"), nullptr);
    EXPECT_EQ(at.bottle("Fix 1"), nullptr) << at.asked.asked().join(u'\n').toStdString();
    emit at.window.checkRequested();
    ASSERT_TRUE(QTest::qWaitFor([&] { return at.asked.asked().size() >= 6; }, 10'000));
    EXPECT_TRUE(at.asked.asked().back().contains("sound")) << at.asked.asked().back().toStdString();
}

namespace
{

// A window that has tried to open what is no book any more.
void overwriteTheHeader(const QString& path)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    file.write(QByteArray(100, 'x'));
}

} // namespace

TEST(BookCopies, restoringWorksWhereNoBookCanBeOpened)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const auto copied = store::copyTo(desk.bookPath(), desk.file("copy.ullage"), desk.now());
    ASSERT_TRUE(copied);
    desk.session().close();
    overwriteTheHeader(desk.bookPath());
    Window at(desk);
    EXPECT_FALSE(at.controller.openBook(desk.bookPath()));
    ASSERT_FALSE(desk.session().isOpen());
    const auto told = at.asked.asked().size();
    at.asked.answer(desk.file("copy.ullage"));
    at.asked.answer(true);
    emit at.window.restoreRequested();
    ASSERT_TRUE(QTest::qWaitFor([&] { return at.asked.asked().size() >= told + 3; }, 20'000));
    EXPECT_TRUE(desk.session().isOpen());
    EXPECT_NE(at.bottle("Dev 1"), nullptr) << at.asked.asked().join(u'\n').toStdString();
}

TEST(BookCopies, aCheckListsAllThatIsWrongAndLeadsOn)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    Window at(desk);
    {
        auto behind = store::Connection::open(desk.bookPath(), store::FileMode::Write, 1000);
        ASSERT_TRUE(behind);
        ASSERT_TRUE((*behind)->run("DROP TRIGGER entry_stays"));
        ASSERT_TRUE((*behind)->run("UPDATE entry SET body = replace(body, '1000', '999') "
                                   "WHERE kind = 'mixed'"));
    }
    emit at.window.checkRequested();
    FindingsDialog* found = nullptr;
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return (found = at.window.findChild<FindingsDialog*>()) != nullptr; }, 10'000));
    EXPECT_GE(found->findChild<QListWidget*>()->count(), 3); // the trigger and both bottles
    for (QPushButton* button : found->findChildren<QPushButton*>()) {
        if (button->text().contains("copy"))
            button->click();
    }
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return at.window.findChild<CopiesDialog*>() != nullptr; }, 10'000));
}

TEST(BookCopies, theCopiesAreListedAndOneIsRestored)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const QString folder = desk.file("copies");
    ASSERT_TRUE(QDir().mkpath(folder));
    ASSERT_TRUE(store::backUp(desk.bookPath(), folder, desk.now()));
    desk.session().copies().setPlaces(CopyPlaces{folder, {}});
    desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    Window at(desk);
    emit at.window.copiesRequested();
    auto* dialog = at.dialog<CopiesDialog>();
    auto* list = dialog->findChild<QTreeWidget*>();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return list->topLevelItemCount() == 1 && !list->topLevelItem(0)->text(1).isEmpty(); },
        20'000));
    at.asked.answer(true);
    for (auto* button : dialog->findChildren<QPushButton*>()) {
        if (button->text() == "&Restore…")
            button->click();
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return at.asked.asked().size() >= 2; }, 20'000));
    EXPECT_NE(at.bottle("Dev 1"), nullptr);
    EXPECT_EQ(at.bottle("Fix 1"), nullptr) << at.asked.asked().join(u'\n').toStdString();
}

TEST(BookCopies, aSecondFolderIsChosenKeptAndLeftOut)
{
    Desk desk;
    const QString stick = desk.file("stick");
    ASSERT_TRUE(QDir().mkpath(stick));
    desk.session().copies().setPlaces(CopyPlaces{desk.file("copies"), {}});
    Window at(desk);
    emit at.window.copiesRequested();
    auto* dialog = at.dialog<CopiesDialog>();
    at.asked.answer(stick);
    emit dialog->secondRequested();
    EXPECT_EQ(desk.preferences().secondCopies(), stick);
    EXPECT_EQ(desk.session().copies().places()->second, stick);
    emit dialog->noSecondRequested();
    EXPECT_TRUE(desk.preferences().secondCopies().isEmpty());
}

} // namespace ullage::app
