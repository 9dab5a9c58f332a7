// Mixing takes what it is mixed from out of the cupboard.
#include "app/cupboard/cupboard_page.h"
#include "app/cupboard/item_list.h"
#include "app/dialogs/labels_dialog.h"
#include "app/dialogs/mix_dialog.h"
#include "app/mixing/choice_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_page.h"
#include "app/widgets/done_line.h"
#include "app/widgets/quantity_edit.h"
#include "tests/app/cupboard/cupboard_kit.h"
#include "tests/app/window/window_kit.h"

#include <QPrintPreviewDialog>

namespace ullage::app
{

namespace
{

void chooseSolutionOf(MixDialog& dialog, const QString& solution)
{
    auto* box = named<QComboBox>(dialog, "Solution");
    box->setCurrentIndex(box->findData(solution));
}

std::optional<double> leftOf(Desk& desk, const std::string& item)
{
    for (const ledger::ItemHere& here : snapshotOf(desk).state.items) {
        if (here.item.id == item)
            return here.stock.left;
    }
    return std::nullopt;
}

} // namespace

TEST(MixFromCupboard, aPacketIsUsedWholeAndComesBackWithUndo)
{
    Desk desk;
    shelve(desk, {powder("later", "2028-01-31"), powder("sooner", "2027-01-31"), powder("part")});
    happen(desk, ledger::Taken{"part", 0.5, {}});
    MixDialog dialog(desk.door());
    dialog.show();
    chooseSolutionOf(dialog, "starter-mq-borax");
    auto* packets = named<QComboBox>(dialog, "From the cupboard");
    EXPECT_EQ(packets->count(), 3) << "two whole ones, and none";
    EXPECT_TRUE(packets->currentText().startsWith("packet for 1,000\u00a0ml"));
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    EXPECT_FALSE(leftOf(desk, "sooner"));
    EXPECT_EQ(leftOf(desk, "later"), 1);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(leftOf(desk, "sooner"), 1);
}

// Where one chooses what to mix from, not only in the cupboard.
TEST(MixFromCupboard, whatIsPastItsTimeSaysSoWhereItIsChosen)
{
    Desk desk;
    shelve(desk,
           {powder("old", "2026-11-01"), powder("fine", "2027-11-01"), concentrate("c", 500)});
    happen(desk, ledger::Taken{"c", 100, {}});
    const auto offered = [&](const QString& solution) {
        MixDialog dialog(desk.door());
        dialog.show();
        chooseSolutionOf(dialog, solution);
        const auto* packets = named<QComboBox>(dialog, "From the cupboard");
        QStringList texts;
        for (int i = 0; i + 1 < packets->count(); ++i)
            texts << packets->itemText(i);
        return texts;
    };
    const QStringList powders = offered("starter-mq-borax");
    ASSERT_EQ(powders.size(), 2);
    EXPECT_FALSE(powders[0].contains("past")) << powders[0].toStdString();
    EXPECT_TRUE(powders[1].endsWith("past its date")) << "and last: " << powders[1].toStdString();
    EXPECT_TRUE(offered("starter-acid-fixer")
                    .front()
                    .contains(QStringLiteral("opened, to ") +
                              desk.door().wording().locale.toString(QDate(2027, 1, 24),
                                                                    QLocale::ShortFormat)))
        << offered("starter-acid-fixer").front().toStdString();
    desk.pass(61);
    EXPECT_TRUE(offered("starter-acid-fixer").front().endsWith("opened too long ago"));

    Window at(desk);
    emit at.window.mixRequested();
    auto* guide = at.window.findChild<MixingPage*>();
    ASSERT_NE(guide, nullptr);
    ASSERT_TRUE(guide->choice(0)->choosePacket("old"));
    EXPECT_TRUE(guide->choice(0)->packet()->currentText().endsWith("past its date"));
}

// 500 ml of concentrate make 2,500 ml, so a litre takes 200 ml of it.
TEST(MixFromCupboard, ofAConcentrateIsTakenWhatTheVolumeAsksFor)
{
    Desk desk;
    shelve(desk, {concentrate("c", 500)});
    MixDialog dialog(desk.door());
    dialog.show();
    chooseSolutionOf(dialog, "starter-acid-fixer");
    type(dialog, "Volume mixed", "1000");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    EXPECT_EQ(leftOf(desk, "c"), 300);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(leftOf(desk, "c"), 500) << "one deed, one undo";
}

TEST(MixFromCupboard, nothingIsTakenWhereNothingWasChosenOrTheBottleWasFound)
{
    Desk desk;
    shelve(desk, {powder("p")});
    MixDialog dialog(desk.door());
    dialog.show();
    chooseSolutionOf(dialog, "starter-mq-borax");
    auto* packets = named<QComboBox>(dialog, "From the cupboard");
    packets->setCurrentIndex(packets->count() - 1);
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    EXPECT_EQ(leftOf(desk, "p"), 1);
    MixDialog found(desk.door());
    found.show();
    chooseSolutionOf(found, "starter-mq-borax");
    found.findChild<QCheckBox*>("found")->setChecked(true);
    EXPECT_FALSE(named<QComboBox>(found, "From the cupboard")->isVisible());
}

TEST(MixFromCupboard, theGuideOpensWithThePacketThatWasChosen)
{
    Desk desk;
    shelve(desk, {powder("p"), concentrate("c", 500)});
    Window at(desk);
    at.window.showPage(Page::Cupboard);
    auto* page = at.window.findChild<CupboardPage*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return page->choose("c"); }, 10'000));
    page->actions()->action(CupboardAction::Mix)->trigger();
    auto* guide = at.window.findChild<MixingPage*>();
    ASSERT_NE(guide, nullptr);
    const auto plan = guide->choice()->plan();
    EXPECT_EQ(plan.solution->id, "starter-acid-fixer");
    ASSERT_TRUE(plan.packet);
    EXPECT_EQ(plan.packet->id, "c");
}

// A packet is used whole; of 500 ml that make 2,500 ml a bottle of 1,000 ml takes 200 ml.
TEST(MixFromCupboard, aSetTakesFromBothAndEndsWithBothLabels)
{
    Desk desk;
    shelve(desk, {powder("p"), concentrate("c", 500)});
    Window at(desk);
    emit at.window.mixRequested();
    auto* guide = at.window.findChild<MixingPage*>();
    ASSERT_NE(guide, nullptr);
    ASSERT_TRUE(guide->choice()->choosePacket("p"));
    guide->set()->tooBox(2)->setChecked(true);
    for (int left = 20; left > 0 && guide->step() != MixingPage::Step::Done; --left) {
        if (guide->step() == MixingPage::Step::Choice && guide->bottle() == 2) {
            EXPECT_EQ(guide->choice(2)->plan().packet->id, "c");
            guide->choice(2)->makes()->setValue(1000);
        }
        if (guide->step() == MixingPage::Step::Dissolve)
            guide->dissolve(guide->bottle())->pour();
        guide->next();
    }
    ASSERT_EQ(guide->step(), MixingPage::Step::Done);
    EXPECT_TRUE(at.window.shelf()->isVisible());
    EXPECT_FALSE(leftOf(desk, "p"));
    EXPECT_EQ(leftOf(desk, "c"), 300);
    const QStringList names{guide->choice(0)->plan().name, guide->choice(2)->plan().name};
    EXPECT_EQ(at.window.findChild<DoneLine*>()->text(), names.join(", ") + " logged");
    guide->labelButton()->click();
    auto* labels = at.dialog<LabelsDialog>();
    ASSERT_NE(labels, nullptr);
    ASSERT_TRUE(labels->job());
    EXPECT_EQ(labels->job()->faces.size(), 2U);
    labels->close();
    ASSERT_TRUE(desk.session().undo());
    Window::settle();
    EXPECT_EQ(at.bottle(names[0]), nullptr);
    EXPECT_EQ(at.bottle(names[1]), nullptr);
    EXPECT_EQ(leftOf(desk, "p"), 1);
    EXPECT_EQ(leftOf(desk, "c"), 500);
}

// Half a litre of the stock takes 50 g of sulfite; the rest of it is not kept here.
TEST(MixFromCupboard, whatIsWeighedOutLeavesTheCupboardAndIsPrintedFirst)
{
    Desk desk;
    shelve(desk, {chemical("s", 80)});
    Window at(desk);
    emit at.window.mixRequested();
    auto* guide = at.window.findChild<MixingPage*>();
    ASSERT_NE(guide, nullptr);
    guide->choice()->raw()->setChecked(true);
    guide->choice()->makes()->setValue(500);
    emit guide->choice()->makes()->valueChanged();
    guide->choice()->sheetButton()->click();
    auto* preview = at.window.findChild<QPrintPreviewDialog*>();
    ASSERT_NE(preview, nullptr);
    EXPECT_EQ(preview->windowTitle(), "To weigh out: " + guide->choice()->plan().name);
    preview->close();
    at.asked.answer(true); // the others lack
    for (int left = 10; left > 0 && guide->step() != MixingPage::Step::Done; --left) {
        if (guide->step() == MixingPage::Step::Dissolve)
            guide->dissolve()->pour();
        guide->next();
    }
    ASSERT_EQ(guide->step(), MixingPage::Step::Done);
    EXPECT_EQ(leftOf(desk, "s"), 30);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(leftOf(desk, "s"), 80) << "one deed, one undo";
}

} // namespace ullage::app
