// The window on a real book: mix, run film, see the verdict change, discard, undo, restart.
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/mix_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/dialogs/when_edit.h"
#include "app/mixing/choice_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_page.h"
#include "app/mixing/mixing_set.h"
#include "app/widgets/done_line.h"
#include "tests/app/window/window_kit.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

namespace ullage::app
{

// What another window did is not undone here, and the menu says so before it is chosen.
TEST(Controller, undoIsGreyedWhereOnlyOthersEnteredSomething)
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
    EXPECT_EQ(undo->text().remove(u'&'), "Undo (nothing entered in this window)");
    EXPECT_FALSE(undo->isEnabled());
    EXPECT_TRUE(undo->toolTip().contains("taken back from the Day book"));
    desk.mix("starter-mq-borax", "starter-glass-500", 500, "Ours");
    EXPECT_EQ(at.action("Undo")->text().remove(u'&'), "Undo mixing Ours");
    EXPECT_TRUE(undo->isEnabled());
}

TEST(Controller, theGuideStandsInTheRailAndIsGoneBackTo)
{
    Desk desk;
    Window at(desk);
    emit at.window.mixRequested();
    auto* guide = at.window.findChild<MixingPage*>();
    ASSERT_NE(guide, nullptr);
    QTest::mouseClick(at.window.findChild<Rail*>()->findChildren<QAbstractButton*>().front(),
                      Qt::LeftButton);
    EXPECT_TRUE(at.window.shelf()->isVisible()) << "Shelf in the rail leads to the shelf";
    emit at.window.mixRequested();
    Window::settle();
    guide = at.window.findChild<MixingPage*>();
    guide->next();
    guide->next();
    at.window.showPage(Page::Shelf);
    EXPECT_TRUE(at.window.shelf()->isVisible());
    const auto line = [&] { return at.window.findChild<QPushButton*>("guide"); };
    ASSERT_TRUE(QTest::qWaitFor([&] { return line() && line()->isVisible(); }));
    EXPECT_TRUE(line()->text().startsWith("Mixing ")) << line()->text().toStdString();
    QTest::mouseClick(line(), Qt::LeftButton);
    EXPECT_TRUE(guide->isVisible());
    EXPECT_EQ(guide->step(), MixingPage::Step::Water) << "where it was";

    guide->next();
    guide->dissolve()->pour();
    guide->dissolve()->clearBox()->setChecked(true);
    const QString name = guide->choice()->plan().name;
    for (int i = 0; i < 3; ++i)
        guide->next();
    EXPECT_TRUE(at.window.shelf()->isVisible()) << "logged, and with the bottle";
    ASSERT_NE(at.bottle(name), nullptr);
    EXPECT_EQ(at.bottle(name)->verdict, VerdictLook::Good);
    EXPECT_EQ(at.window.shelf()->currentBottle(), at.bottle(name)->id);
    auto* done = at.window.findChild<DoneLine*>();
    ASSERT_TRUE(done->isVisible());
    EXPECT_EQ(done->text(), QStringLiteral("%1 logged").arg(name));
    QTest::mouseClick(done->undoButton(), Qt::LeftButton);
    Window::settle();
    EXPECT_EQ(at.bottle(name), nullptr) << "mixed and clear are one deed";
    EXPECT_FALSE(done->isVisible());
}

TEST(Controller, loggingPlainlyClosesTheGuideThatLedToItAndNoOther)
{
    Desk desk;
    Window at(desk);
    emit at.window.mixRequested();
    auto* guide = at.window.findChild<MixingPage*>();
    auto* solution = guide->choice()->solution();
    solution->setCurrentIndex(solution->findText(QStringLiteral("PQ ascorbate developer")));
    guide->choice()->makes()->setQuantity(chemistry::Millilitres(700));
    for (int i = 0; i < 3; ++i)
        guide->next();
    emit at.window.enterRequested();
    type(*at.dialog<MixDialog>(), "Name on the label", "Found");
    at.dialog<MixDialog>()->accept();
    Window::settle();
    ASSERT_NE(at.window.findChild<MixingPage*>(), nullptr) << "that was another bottle";
    emit at.window.findChild<MixingPage*>()->plainLogWanted();
    EXPECT_EQ(named<QComboBox>(*at.dialog<MixDialog>(), "Solution")->currentData(),
              QStringLiteral("starter-pq-ascorbate"))
        << "what was chosen in the guide is not asked for again";
    EXPECT_EQ(named<QuantityEdit>(*at.dialog<MixDialog>(), "Volume mixed")->value(), 700);
    type(*at.dialog<MixDialog>(), "Name on the label", "Dev 7");
    at.dialog<MixDialog>()->accept();
    Window::settle();
    EXPECT_EQ(at.window.findChild<MixingPage*>(), nullptr);
    EXPECT_TRUE(at.window.shelf()->isVisible());
    EXPECT_EQ(at.window.shelf()->currentBottle(), at.bottle("Dev 7")->id);
    EXPECT_EQ(at.window.findChild<DoneLine*>()->text(), "Dev 7 logged");
    desk.record(at.bottle("Found")->id.toStdString(), ledger::Contaminated{"fixer"});
    Window::settle();
    EXPECT_TRUE(at.window.findChild<DoneLine*>()->text().isEmpty())
        << "undo would take back something else by now";
}

TEST(Controller, aSetIsLoggedPlainlyOneAfterTheOther)
{
    Desk desk;
    Window at(desk);
    emit at.window.mixRequested();
    auto* guide = at.window.findChild<MixingPage*>();
    guide->set()->tooBox(2)->setChecked(true);
    emit guide->plainLogWanted();
    type(*at.dialog<MixDialog>(), "Name on the label", "Dev 1");
    const auto mixedAt = desk.now() - std::chrono::hours(48);
    at.dialog<MixDialog>()->findChild<WhenEdit*>()->setMoment(mixedAt);
    at.dialog<MixDialog>()->accept();
    Window::settle();
    ASSERT_NE(at.bottle("Dev 1"), nullptr);
    auto* second = at.dialog<MixDialog>();
    ASSERT_NE(second, nullptr);
    const auto fixer = desk.session().formulary().solution(
        named<QComboBox>(*second, "Solution")->currentData().toString().toStdString());
    ASSERT_TRUE(fixer);
    EXPECT_EQ(fixer->role, formulary::Role::Fixer) << "the fixer that was ticked too";
    const auto minute = [](auto moment) {
        return std::chrono::floor<std::chrono::minutes>(moment);
    };
    const auto dated = second->datedBack();
    ASSERT_TRUE(dated) << "the day is said once for both";
    EXPECT_EQ(minute(*dated), minute(mixedAt));
    at.asked.answer(false); // no fresh test now
    type(*second, "Name on the label", "Fix 1");
    second->accept();
    Window::settle();
    EXPECT_NE(at.bottle("Fix 1"), nullptr);
    EXPECT_EQ(at.window.findChild<MixDialog*>(), nullptr) << "and no third";
}

TEST(Controller, theRedScreenIsAmongTheLooksAndLeftFromAnyPage)
{
    Desk desk;
    Window at(desk);
    QAction* red = at.action("Red screen (fogs film outside a closed tank)");
    ASSERT_NE(red, nullptr);
    EXPECT_FALSE(red->isChecked());
    red->trigger();
    EXPECT_TRUE(Theme::instance().isDarkRoom());
    for (const Page page : {Page::Shelf, Page::DayBook, Page::Formulary, Page::Bench}) {
        Theme::instance().setDarkRoom(true);
        EXPECT_TRUE(red->isChecked());
        at.window.showPage(page);
        Window::settle();
        QWidget* focus = at.window.focusWidget();
        QTest::keyClick(focus ? focus : &at.window, Qt::Key_Escape);
        EXPECT_FALSE(Theme::instance().isDarkRoom()) << static_cast<int>(page);
        EXPECT_FALSE(red->isChecked());
    }
    Theme::instance().setDarkRoom(false);
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
        EXPECT_TRUE(at.window.shelf()->isVisible()) << "with the bottle, not the guide again";
        ASSERT_NE(at.bottle("Dev 1"), nullptr);
        EXPECT_EQ(at.bottle("Dev 1")->verdict, VerdictLook::Good);
        EXPECT_EQ(at.window.shelf()->currentBottle(), at.bottle("Dev 1")->id);

        desk.passMinutes(30);
        at.window.shelf()->actions()->action(BottleAction::RunFilm)->trigger();
        auto* run = at.dialog<RunDialog>();
        spin(*run, "Number of films", 9);
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

// The second is a liquid: there is nothing to dissolve, and nobody marks it so.
TEST(Controller, aFixerThatIsMixedEndsWithItsFreshTest)
{
    for (const char* solution : {"starter-acid-fixer", "starter-rapid-fixer"}) {
        SCOPED_TRACE(solution);
        Desk desk;
        Window at(desk);
        at.asked.answer(true);
        emit at.window.enterRequested();
        auto* dialog = at.dialog<MixDialog>();
        auto* what = named<QComboBox>(*dialog, "Solution");
        what->setCurrentIndex(what->findData(QString(solution)));
        dialog->accept();
        ASSERT_EQ(at.asked.asked().size(), 1);
        EXPECT_TRUE(at.asked.asked().front().contains("it is the fresh value"));
        EXPECT_EQ(at.dialog<BottleDialog>()->kind(), HappeningKind::ClearingTest);
    }
}

TEST(Controller, aDeveloperThatIsMixedIsAskedForNoTest)
{
    Desk desk;
    Window at(desk);
    emit at.window.enterRequested();
    at.dialog<MixDialog>()->accept();
    EXPECT_TRUE(at.asked.asked().isEmpty());
    EXPECT_EQ(at.window.findChild<BottleDialog*>(), nullptr);
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
    EXPECT_EQ(named<QLineEdit>(*dialog, "Volume added")->placeholderText(), "fl oz");
    dialog->reject();
    EXPECT_EQ(desk.journal(), before);
}

} // namespace ullage::app
