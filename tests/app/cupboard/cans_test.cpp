// Cans for waste: what is said of them, and what is done with them.
#include "app/cupboard/can_dialogs.h"
#include "app/cupboard/can_views.h"
#include "app/dialogs/can_choice.h"
#include "app/dialogs/exchange_dialog.h"
#include "app/dialogs/happening_dialog.h"
#include "app/words/waste_words.h"
#include "tests/app/cupboard/cupboard_kit.h"
#include "tests/app/dialogs/dialog_driver.h"

#include <QLabel>

namespace ullage::app
{

namespace
{

ledger::Container aCan(const std::string& id, ledger::Waste holds, double ml)
{
    ledger::Container made;
    made.id = id;
    made.name = id;
    made.holds = holds;
    made.capacity = chemistry::Millilitres(ml);
    return made;
}

ledger::CanHere canHere(Desk& desk, const std::string& id)
{
    for (const ledger::CanHere& one : snapshotOf(desk).state.cans) {
        if (one.can.id == id)
            return one;
    }
    ADD_FAILURE() << id;
    return {};
}

bool cansSay(const QWidget& within, const QString& words)
{
    for (const auto* label : within.findChildren<QLabel*>()) {
        if (label->isVisible() && label->text().contains(words))
            return true;
    }
    return false;
}

} // namespace

TEST(CanViews, tellHowFullACanIsItsSilverAndTheYear)
{
    Desk desk;
    shelve(desk, {aCan("Fixer can", ledger::Waste::Fixer, 2000)});
    happen(desk, ledger::PouredIn{"Fixer can", chemistry::Millilitres(1850), {}});
    auto state = snapshotOf(desk).state;
    auto view = canViews(state, desk.door().wording()).front();
    EXPECT_EQ(view.contents, "1,850\u00a0ml of 2,000\u00a0ml · silver not known");
    EXPECT_NEAR(view.filled, 0.925, 1e-12);
    EXPECT_TRUE(view.full);
    EXPECT_FALSE(view.warning.isEmpty()) << "said, not only drawn";
    desk.passMinutes(1);
    happen(desk, ledger::HandedOver{"Fixer can", "the town's collection", {}, "no. 7"});
    state = snapshotOf(desk).state;
    view = canViews(state, desk.door().wording()).front();
    EXPECT_FALSE(view.full);
    EXPECT_EQ(yearLines(state, desk.now(), desk.door().wording()),
              QStringList("Fixer: 1,850\u00a0ml poured in, 1,850\u00a0ml handed over"));
    EXPECT_TRUE(
        yearLines(state, desk.now() + std::chrono::days(60), desk.door().wording()).isEmpty())
        << "that is another year";
    EXPECT_EQ(handedLines(state, desk.now(), desk.door().wording()),
              QStringList("25 Nov: 1,850\u00a0ml of Fixer can to the town's collection (no. 7)"));
    EXPECT_TRUE(
        handedLines(state, desk.now() + std::chrono::days(60), desk.door().wording()).isEmpty());
}

TEST(CanDialog, entersACanAndGivesItAnewWithWhatIsInIt)
{
    Desk desk;
    {
        CanDialog dialog(desk.door(), {});
        dialog.show();
        type(dialog, "It holds", "5000");
        dialog.accept();
        EXPECT_TRUE(dialog.isVisible());
        EXPECT_FALSE(dialog.problemOf("name").isEmpty());
        type(dialog, "Name", "Old canister");
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible())
            << dialog.refusal().toStdString() << dialog.problemOf("name").toStdString()
            << dialog.problemOf("capacity_ml").toStdString() << " with "
            << named<QLineEdit>(dialog, "Name")->text().toStdString() << ", "
            << named<QLineEdit>(dialog, "It holds")->text().toStdString();
    }
    auto one = snapshotOf(desk).state.cans.front();
    EXPECT_EQ(one.can.holds, ledger::Waste::Developer);
    happen(desk, ledger::PouredIn{one.can.id, chemistry::Millilitres(700), {}});
    {
        CanDialog dialog(desk.door(), one.can);
        dialog.show();
        type(dialog, "It holds", "10000");
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    }
    one = snapshotOf(desk).state.cans.front();
    EXPECT_EQ(one.can.capacity, chemistry::Millilitres(10'000));
    EXPECT_EQ(one.stock.volume, chemistry::Millilitres(700));
}

TEST(PourInDialog, warnsOfWrongMixingAndRefusesMoreThanTheCanHolds)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    shelve(desk, {aCan("Stop can", ledger::Waste::Stop, 300)});
    PourInDialog dialog(desk.door(), canHere(desk, "Stop can"));
    dialog.show();
    auto* from = named<QComboBox>(dialog, "What it is, from");
    from->setCurrentIndex(from->findText("Dev 1"));
    EXPECT_TRUE(cansSay(dialog, "sulfur dioxide. Take another can")) << "acid meets sulfite";
    type(dialog, "Volume", "301");
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(dialog.problemOf("volume_ml").isEmpty());
    EXPECT_EQ(canHere(desk, "Stop can").stock.volume, chemistry::Millilitres(0));
}

TEST(HandOverDialog, keepsWhoTookItAndTheDocument)
{
    Desk desk;
    shelve(desk, {aCan("Fixer can", ledger::Waste::Fixer, 2000)});
    happen(desk, ledger::PouredIn{"Fixer can", chemistry::Millilitres(900), {}});
    desk.passMinutes(5);
    HandOverDialog dialog(desk.door(), canHere(desk, "Fixer can"));
    dialog.show();
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("to").isEmpty());
    type(dialog, "Who takes it", "the town's collection");
    type(dialog, "Document", "no. 7");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    const auto stock = canHere(desk, "Fixer can").stock;
    EXPECT_EQ(stock.volume, chemistry::Millilitres(0));
    ASSERT_EQ(stock.handed.size(), 1u);
    EXPECT_EQ(stock.handed[0].document, "no. 7");
    EXPECT_EQ(stock.handed[0].to, "the town's collection");
    EXPECT_EQ(stock.handed[0].at, desk.now());
    EXPECT_EQ(stock.handed[0].volume, chemistry::Millilitres(900)) << "all of it";
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(canHere(desk, "Fixer can").stock.volume, chemistry::Millilitres(900));
}

TEST(DiscardIntoCan, aBottleGoesIntoTheCanOfItsKindAndUndoBringsItBack)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    shelve(desk, {aCan("Fixer can", ledger::Waste::Fixer, 5000),
                  aCan("Developer can", ledger::Waste::Developer, 5000)});
    desk.passMinutes(1);
    {
        BottleDialog dialog(HappeningKind::Discard, desk.door(), bottleOf(desk, dev));
        dialog.show();
        auto* into = named<QComboBox>(dialog, "Into the can");
        EXPECT_TRUE(into->currentText().startsWith("Developer can"));
        into->setCurrentIndex(1);
        EXPECT_TRUE(cansSay(dialog, "another kind of waste"));
        into->setCurrentIndex(2);
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    }
    EXPECT_EQ(canHere(desk, "Developer can").stock.volume, chemistry::Millilitres(1000));
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(canHere(desk, "Developer can").stock.volume, chemistry::Millilitres(0));
    EXPECT_NE(desk.session().bottle(QString::fromStdString(dev)), nullptr);
}

TEST(DiscardIntoCan, aFixingBathThatMakesRoomForTheSecondGoesIntoItsCanToo)
{
    Desk desk;
    const auto first = desk.mix("starter-acid-fixer", "starter-glass-1000", 1000, "Fix 1");
    const auto second = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 2");
    shelve(desk, {aCan("Developer can", ledger::Waste::Developer, 5000),
                  aCan("Fixer can", ledger::Waste::Fixer, 5000)});
    desk.passMinutes(1);
    {
        ExchangeDialog dialog(desk.door(), bottleOf(desk, first));
        dialog.show();
        EXPECT_TRUE(named<QComboBox>(dialog, "Into the can")->currentText().startsWith("Fixer"));
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    }
    EXPECT_EQ(canHere(desk, "Fixer can").stock.volume, chemistry::Millilitres(1000));
    EXPECT_NE(desk.session().bottle(QString::fromStdString(second)), nullptr);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(canHere(desk, "Fixer can").stock.volume, chemistry::Millilitres(0));
    EXPECT_NE(desk.session().bottle(QString::fromStdString(first)), nullptr);
}

TEST(DiscardIntoCan, thatNoneWasWantedIsRememberedForTheKind)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    shelve(desk, {aCan("Developer can", ledger::Waste::Developer, 5000),
                  aCan("Fixer can", ledger::Waste::Fixer, 5000)});
    desk.passMinutes(1);
    BottleDialog dialog(HappeningKind::Discard, desk.door(), bottleOf(desk, dev));
    dialog.show();
    named<QComboBox>(dialog, "Into the can")->setCurrentIndex(0);
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    EXPECT_EQ(canHere(desk, "Developer can").stock.volume, chemistry::Millilitres(0));
    const auto cans = snapshotOf(desk).state.cans;
    EXPECT_EQ(canOffered(formulary::Role::Developer, cans, desk.door()), -1);
    EXPECT_EQ(canOffered(formulary::Role::Fixer, cans, desk.door()), 1);
}

} // namespace ullage::app
