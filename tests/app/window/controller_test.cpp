// The window on a real book: mix, run film, see the verdict change, discard, undo, restart.
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/mix_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/mixing/mixing_page.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/shelf_view.h"
#include "app/widgets/prompts.h"
#include "app/window/controller.h"
#include "app/window/copies_dialog.h"
#include "app/window/main_window.h"
#include "app/window/salvage_dialog.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/core/store/damaged_book.h"

#include <QAction>
#include <QDir>
#include <QFile>
#include <QListWidget>
#include <QMenuBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTreeWidget>

namespace ullage::app
{

namespace
{

struct Window {
    explicit Window(Desk& desk)
        : controller(window, desk.session(), desk.preferences()), force(asked)
    {
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    template <class Dialog>
    Dialog* dialog()
    {
        auto* found = window.findChild<Dialog*>();
        EXPECT_NE(found, nullptr);
        return found;
    }
    const BottleView* bottle(const QString& name)
    {
        auto* model = qobject_cast<ShelfModel*>(window.shelf()->view()->model());
        for (const BottleView& view : model->bottles()) {
            if (view.name == name)
                return &view;
        }
        return nullptr;
    }
    QAction* action(const QString& start)
    {
        for (QAction* action : window.findChildren<QAction*>()) {
            if (action->text().remove(u'&').startsWith(start))
                return action;
        }
        return nullptr;
    }
    // A dialog that has closed is deleted on the next turn of the loop.
    static void settle()
    {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }

    MainWindow window;
    ScriptedPrompts asked;
    Controller controller;
    PromptsInForce force;
};

} // namespace

// What another window did is not undone here, and the menu says where it is.
TEST(Controller, undoTellsWhereOthersDeedsAreTakenBack)
{
    Desk desk;
    Window at(desk);
    EXPECT_FALSE(at.action("Undo")->isEnabled());
    SessionOptions options;
    options.clock = [&] { return desk.now(); };
    options.seats = desk.seats();
    options.machine = Desk::kMachine;
    Session other(options);
    ASSERT_TRUE(other.open(desk.bookPath()));
    ASSERT_TRUE(other.doing([&](ledger::Book& book) {
        return book.mix(
            {"starter-mq-borax", "starter-glass-1000", chemistry::Millilitres(1000), "Theirs"},
            {desk.now(), {}});
    }));
    desk.session().lookForChanges();
    QAction* undo = at.action("Undo");
    ASSERT_NE(at.bottle("Theirs"), nullptr);
    EXPECT_EQ(undo->text().remove(u'&'), "Undo");
    ASSERT_TRUE(undo->isEnabled());
    const QByteArray before = desk.journal();
    undo->trigger();
    ASSERT_EQ(at.asked.asked().size(), 1);
    EXPECT_TRUE(at.asked.asked().front().contains("taken back from the Day book"))
        << at.asked.asked().front().toStdString();
    EXPECT_EQ(desk.journal(), before);
    desk.mix("starter-mq-borax", "starter-glass-500", 500, "Ours");
    EXPECT_EQ(at.action("Undo")->text().remove(u'&'), "Undo mixing Ours");
}

TEST(Controller, fromMixingToDiscardAndBackThroughTheWindow)
{
    Desk desk;
    {
        Window at(desk);
        emit at.window.mixRequested();
        auto* guide = at.window.findChild<MixingPage*>();
        ASSERT_NE(guide, nullptr);
        EXPECT_TRUE(guide->isVisible());
        emit guide->plainLogWanted();
        auto* mix = at.dialog<MixDialog>();
        type(*mix, "Name on the label", "Dev 1");
        mix->accept();
        Window::settle();
        ASSERT_NE(at.bottle("Dev 1"), nullptr);
        EXPECT_EQ(at.bottle("Dev 1")->verdict, VerdictLook::Good);
        EXPECT_EQ(at.window.shelf()->currentBottle(), at.bottle("Dev 1")->id);

        desk.passMinutes(30);
        at.window.shelf()->actions()->action(BottleAction::RunFilm)->trigger();
        auto* run = at.dialog<RunDialog>();
        type(*run, "Count", "9");
        run->accept();
        Window::settle();
        EXPECT_EQ(at.bottle("Dev 1")->verdict, VerdictLook::NearItsEnd);
        EXPECT_DOUBLE_EQ(at.bottle("Dev 1")->filmsDone, 9);
        ASSERT_NE(at.action("Undo running film in Dev 1"), nullptr);

        desk.passMinutes(30);
        at.window.shelf()->actions()->action(BottleAction::Discard)->trigger();
        at.dialog<BottleDialog>()->accept();
        Window::settle();
        EXPECT_EQ(at.bottle("Dev 1"), nullptr);

        ASSERT_NE(at.action("Undo discarding Dev 1"), nullptr);
        at.action("Undo discarding Dev 1")->trigger();
        ASSERT_NE(at.bottle("Dev 1"), nullptr);
        EXPECT_NE(at.action("Redo discarding Dev 1"), nullptr);
    }
    desk.reopen();
    Window again(desk);
    ASSERT_NE(again.bottle("Dev 1"), nullptr);
    EXPECT_DOUBLE_EQ(again.bottle("Dev 1")->filmsDone, 9);
    EXPECT_EQ(again.bottle("Dev 1")->verdict, VerdictLook::NearItsEnd);
    ASSERT_NE(again.action("Redo discarding Dev 1"), nullptr) << "also after a restart";
    again.action("Redo discarding Dev 1")->trigger();
    EXPECT_EQ(again.bottle("Dev 1"), nullptr);
}

TEST(Controller, everyDeedOpensItsDialogAndEscapeLeavesTheBook)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    Window at(desk);
    const QByteArray before = desk.journal();
    const QString id = at.window.shelf()->currentBottle();
    for (int i = 0; i < kBottleActions; ++i) {
        const auto which = static_cast<BottleAction>(i);
        at.controller.doWith(which, id);
        if (which == BottleAction::Bench) {
            EXPECT_EQ(at.window.page(), Page::Bench);
            at.window.showPage(Page::Shelf);
            continue;
        }
        auto* dialog = at.dialog<QDialog>();
        ASSERT_NE(dialog, nullptr) << i;
        EXPECT_TRUE(dialog->isVisible());
        QTest::keyClick(dialog, Qt::Key_Escape);
        Window::settle();
        EXPECT_EQ(at.window.findChild<QDialog*>(), nullptr) << i;
    }
    EXPECT_EQ(desk.journal(), before);
}

TEST(Controller, unitsChangeWhatIsReadAndNothingStored)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    Window at(desk);
    const QByteArray before = desk.journal();
    emit at.window.unitsChosen({VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit});
    EXPECT_EQ(desk.preferences().wording().units.volume, VolumeUnit::FluidOunce);
    at.controller.doWith(BottleAction::TopUp, at.window.shelf()->currentBottle());
    auto* dialog = at.dialog<DeedDialog>();
    EXPECT_EQ(named<QLineEdit>(*dialog, "Fresh solution added")->placeholderText(), "fl oz");
    dialog->reject();
    EXPECT_EQ(desk.journal(), before);
}

TEST(Controller, exportsAndImportsOnAThread)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const QString file = desk.file("out.jsonl");
    Window at(desk);
    const auto told = [&](int count) {
        return QTest::qWaitFor([&] { return at.asked.asked().size() >= count; }, 10'000);
    };
    at.asked.answer(file);
    emit at.window.exportRequested();
    ASSERT_TRUE(told(2));
    QFile written(file);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_EQ(written.readAll(), desk.journal());

    at.asked.answer(desk.file("second.ullage"));
    emit at.window.newBookRequested();
    EXPECT_EQ(at.bottle("Dev 1"), nullptr);
    at.asked.answer(file);
    emit at.window.importRequested();
    ASSERT_TRUE(told(5));
    EXPECT_NE(at.bottle("Dev 1"), nullptr);
}

TEST(Controller, aFileThatIsNoBookIsRefusedAndTheOpenOneStays)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    Window at(desk);
    QFile other(desk.file("letter.txt"));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("A letter, and a rather long one, that is not a book of this program.");
    other.close();
    at.asked.answer(other.fileName());
    emit at.window.openBookRequested();
    EXPECT_EQ(at.asked.asked().size(), 2);
    EXPECT_NE(at.bottle("Dev 1"), nullptr);
    EXPECT_EQ(desk.preferences().lastBook(), QString());
}

TEST(Controller, aNewBookNeverOverwrites)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const QByteArray before = desk.journal();
    Window at(desk);
    at.asked.answer(desk.bookPath());
    emit at.window.newBookRequested();
    EXPECT_EQ(at.asked.asked().size(), 2);
    EXPECT_EQ(desk.journal(), before);
}

TEST(Controller, copyAndRestoreBringTheBookBack)
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

TEST(Controller, restoringWorksWhereNoBookCanBeOpened)
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

TEST(Controller, theCopiesAreListedAndOneIsRestored)
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

TEST(Controller, aSecondFolderIsChosenKeptAndLeftOut)
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

// Where something is wrong in the book, and said, stands what can be done about it.
TEST(Controller, aChangedLineOffersACopyAndSalvageRightThere)
{
    Desk desk;
    Window at(desk);
    const auto shown = [&](const QString& text) -> QPushButton* {
        for (auto* button : at.window.findChildren<QPushButton*>()) {
            if (button->text() == text && button->isVisible())
                return button;
        }
        return nullptr;
    };
    EXPECT_EQ(shown("Salvage…"), nullptr);
    desk.session().close();
    EXPECT_NE(shown("Open book…"), nullptr) << "no book is open";
    store::testing::tamper(desk.bookPath(),
                           {"UPDATE entry SET body = replace(body, 'glass', 'Glass') "
                            "WHERE id = 'starter-glass-1000'"});
    at.asked.answerWay(0);
    ASSERT_TRUE(at.controller.openBook(desk.bookPath()));
    ASSERT_EQ(at.asked.asked().size(), 1);
    EXPECT_TRUE(at.asked.asked().front().startsWith("The book could not be read|"))
        << at.asked.asked().front().toStdString();
    EXPECT_TRUE(at.asked.asked().front().contains("not as it was entered"));
    EXPECT_EQ(at.window.findChild<CopiesDialog*>(), nullptr) << "not before the book is open";
    Window::settle();
    ASSERT_NE(at.window.findChild<CopiesDialog*>(), nullptr);
    EXPECT_TRUE(at.window.findChild<CopiesDialog*>()->isVisible());
    at.window.findChild<CopiesDialog*>()->close();
    Window::settle();

    QPushButton* salvage = shown("Salvage…");
    ASSERT_NE(salvage, nullptr);
    at.asked.answer(desk.file("fresh.ullage"));
    salvage->click();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return at.window.findChild<SalvageDialog*>() != nullptr; }, 20'000));
    EXPECT_EQ(at.asked.asked().size(), 2) << "which book it is needs no asking";
    at.dialog<SalvageDialog>()->accept();
    Window::settle();
    EXPECT_EQ(QFileInfo(desk.session().path()).fileName(), "fresh.ullage");
    EXPECT_EQ(shown("Salvage…"), nullptr) << "that one is sound";
}

TEST(Controller, aDamagedBookIsSalvagedFromTheWindow)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.session().close();
    {
        auto book = store::Connection::open(desk.bookPath(), store::FileMode::Write, 1000);
        ASSERT_TRUE(book);
        const auto page = (*book)->number("SELECT max(pageno) FROM dbstat WHERE name = 'entry' "
                                          "AND pagetype = 'leaf'");
        ASSERT_TRUE(page);
        book->reset();
        QFile file(desk.bookPath());
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        ASSERT_TRUE(file.seek((*page - 1) * 4096));
        file.write(QByteArray(4096, '\xAA'));
    }
    Window at(desk);
    at.asked.answer(desk.bookPath());
    const QString fresh = desk.file("fresh.ullage");
    at.asked.answer(fresh);
    emit at.window.salvageRequested();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return at.window.findChild<SalvageDialog*>() != nullptr; }, 20'000))
        << at.asked.asked().join(u'\n').toStdString();
    auto* dialog = at.dialog<SalvageDialog>();
    auto* missing = dialog->findChild<QListWidget*>();
    ASSERT_NE(missing, nullptr);
    EXPECT_GT(missing->count(), 0);
    dialog->accept();
    EXPECT_EQ(desk.session().path(), fresh);
}

} // namespace ullage::app
