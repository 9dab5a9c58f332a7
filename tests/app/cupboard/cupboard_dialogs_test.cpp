// Putting things into the cupboard, and what happens to them there.
#include "app/cupboard/add_item_dialog.h"
#include "app/cupboard/code_dialog.h"
#include "app/cupboard/item_deed_dialog.h"
#include "app/cupboard/item_form.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/moment_field.h"
#include "app/words/cautions.h"
#include "tests/app/cupboard/cupboard_kit.h"

#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QTest>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

// Numbers of the range that shops give out themselves; the second has a wrong last digit.
const QString kCode = QStringLiteral("2000000000015");
const QString kWrongCode = QStringLiteral("2000000000016");

template <class Field = QLineEdit>
Field* itemField(const QWidget& dialog, const QString& name)
{
    for (auto* field : dialog.findChildren<Field*>()) {
        if (field->accessibleName() == name)
            return field;
    }
    qFatal("no field %s", qPrintable(name));
}

void scanInto(AddItemDialog& dialog, const QString& code)
{
    dialog.code()->setFocus();
    QTest::keyClicks(dialog.code(), code);
    QTest::keyClick(dialog.code(), Qt::Key_Return);
}

ledger::CupboardState cupboardOf(Desk& desk) { return snapshotOf(desk).state; }

} // namespace

TEST(AddItemDialog, severalPacketsAndTheirCodeAreOneActionAndOneUndo)
{
    Desk desk;
    AddItemDialog dialog(desk.door(), cupboardOf(desk));
    dialog.show();
    scanInto(dialog, kCode);
    EXPECT_TRUE(dialog.isVisible()) << "a scanner ends with Return, which enters nothing";
    dialog.item()->setSolution("starter-mq-borax");
    dialog.item()->findChild<QSpinBox*>()->setValue(3);
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    const auto state = cupboardOf(desk);
    ASSERT_EQ(state.items.size(), 3u);
    EXPECT_EQ(state.items[0].item.solution, "starter-mq-borax");
    EXPECT_EQ(state.items[0].bought, "2026-11-25") << "today";
    ASSERT_EQ(state.barcodes.size(), 1u);
    EXPECT_EQ(state.barcodes[0].of, "starter-mq-borax");
    ASSERT_TRUE(desk.session().undo());
    EXPECT_TRUE(cupboardOf(desk).items.empty());
    EXPECT_TRUE(cupboardOf(desk).barcodes.empty());
}

TEST(AddItemDialog, aWrongLastDigitIsRefusedByNameAndNothingIsEntered)
{
    Desk desk;
    AddItemDialog dialog(desk.door(), cupboardOf(desk));
    dialog.show();
    scanInto(dialog, kWrongCode);
    EXPECT_TRUE(dialog.problemOf("code").contains(kWrongCode));
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(dialog.problemOf("code").startsWith("Code"));
    EXPECT_TRUE(cupboardOf(desk).items.empty());
}

TEST(AddItemDialog, aKnownCodeFillsTheForm)
{
    Desk desk;
    ledger::Barcode code;
    code.code = kCode.toStdString();
    code.of = "starter-acid-fixer";
    code.amount = 500;
    shelve(desk, {concentrate("c", 500), code});
    happen(desk, ledger::ThrownAway{"c", {}}); // gone, and known all the same
    AddItemDialog dialog(desk.door(), cupboardOf(desk));
    dialog.show();
    scanInto(dialog, kCode);
    EXPECT_EQ(dialog.item()->kind(), ShelvedKind::Concentrate);
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    const auto state = cupboardOf(desk);
    ASSERT_EQ(state.items.size(), 1u);
    EXPECT_EQ(state.items[0].stock.left, 500);
    EXPECT_EQ(state.items[0].item.keepsOpened, chemistry::Days(60));
    EXPECT_EQ(state.barcodes.size(), 1u) << "not taught twice";
}

// Bought again when the last is gone, given anew in between: that is what a code is for.
TEST(AddItemDialog, aCodeFindsWhatIsUsedUpAndWasGivenAnew)
{
    Desk desk;
    ledger::Barcode code;
    code.code = kCode.toStdString();
    code.of = "s";
    ledger::Chemical anew = chemical("s2", 450);
    anew.replaces = "s";
    shelve(desk, {chemical("s", 500), code});
    shelve(desk, {anew});
    happen(desk, ledger::ThrownAway{"s2", {}});
    {
        AddItemDialog dialog(desk.door(), cupboardOf(desk));
        dialog.show();
        scanInto(dialog, kCode);
        EXPECT_EQ(dialog.item()->kind(), ShelvedKind::Chemical);
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    }
    auto state = cupboardOf(desk);
    ASSERT_EQ(state.items.size(), 1u);
    EXPECT_EQ(std::get<ledger::Chemical>(state.items[0].line).cas, "7757-83-7");
    EXPECT_EQ(state.barcodes.size(), 1u) << "not taught twice";

    // Withdrawn, nobody knows it any more: then it is taught anew.
    ledger::Chemical gone = anew;
    gone.id = "s3";
    gone.replaces = "s2";
    gone.withdrawn = true;
    shelve(desk, {gone});
    AddItemDialog dialog(desk.door(), cupboardOf(desk));
    dialog.show();
    scanInto(dialog, kCode);
    dialog.item()->setSolution("starter-mq-borax");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    state = cupboardOf(desk);
    ASSERT_EQ(state.barcodes.size(), 1u) << "in the place of the other";
    EXPECT_EQ(state.barcodes[0].of, "starter-mq-borax");
}

TEST(AddItemDialog, aLineIsGivenAnewWithItsStockAsItIs)
{
    Desk desk;
    shelve(desk, {chemical("s", 500)});
    happen(desk, ledger::Taken{"s", 100, {}});
    AddItemDialog dialog(desk.door(), cupboardOf(desk), cupboardOf(desk).items[0]);
    dialog.show();
    dialog.item()->setAmount(450); // so much had been in it
    dialog.accept();
    const auto state = cupboardOf(desk);
    ASSERT_EQ(state.items.size(), 1u);
    EXPECT_EQ(state.items[0].stock.left, 350);
    const auto& line = std::get<ledger::Chemical>(state.items[0].line);
    EXPECT_EQ(line.cas, "7757-83-7");
    EXPECT_EQ(line.hazards, (std::vector<std::string>{"H319"}));
}

TEST(AddItemDialog, aPriceThatIsNoneIsRefusedUnderItsField)
{
    Desk desk;
    AddItemDialog dialog(desk.door(), cupboardOf(desk));
    dialog.show();
    itemField(dialog, "Price of one")->setText("a lot");
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(dialog.problemOf("cost").contains("a lot"));
}

TEST(AddItemDialog, aDayThatNeedNotBeKnownIsEmptiedAgainWithoutAWord)
{
    Desk desk;
    AddItemDialog dialog(desk.door(), cupboardOf(desk));
    dialog.item()->setSolution("starter-mq-borax");
    dialog.show();
    auto* useBy = itemField<MomentField>(dialog, "Use by");
    QTest::keyClicks(useBy, "1 Feb");
    EXPECT_EQ(useBy->date(), QDate(2027, 2, 1)) << "the next, not the last";
    QTest::keyClicks(useBy, " soon");
    EXPECT_TRUE(useBy->property("invalid").toBool());
    useBy->selectAll();
    QTest::keyClick(useBy, Qt::Key_Delete);
    EXPECT_FALSE(useBy->property("invalid").toBool());
    EXPECT_TRUE(useBy->toolTip().isEmpty());
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    EXPECT_EQ(std::get<ledger::Packet>(cupboardOf(desk).items.at(0).line).useBy, "");
}

TEST(AddItemDialog, manyStatementsFindRoomInTheirField)
{
    Desk desk;
    AddItemDialog dialog(desk.door(), cupboardOf(desk));
    dialog.item()->setKind(ShelvedKind::Chemical);
    dialog.show();
    itemField(dialog, "Name")->setText("Hydroquinone");
    QStringList codes;
    for (int code = 300; code < 360; ++code)
        codes << QStringLiteral("H%1").arg(code);
    itemField(dialog, "Hazard statements on its label")->setText(codes.join(", "));
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    const auto state = cupboardOf(desk);
    EXPECT_EQ(std::get<ledger::Chemical>(state.items.at(0).line).hazards.size(), 60u);
}

TEST(ItemDeedDialog, moreThanIsThereIsRefusedUnderTheAmount)
{
    Desk desk;
    shelve(desk, {concentrate("c", 500)});
    ItemDeedDialog dialog(CupboardAction::Take, desk.door(), cupboardOf(desk).items);
    dialog.show();
    dialog.amount()->setValue(501);
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(dialog.problemOf("amount").isEmpty());
    dialog.amount()->setValue(120);
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    EXPECT_EQ(cupboardOf(desk).items[0].stock.left, 380);
}

TEST(ItemDeedDialog, openingCountingThrowingAwayAndWithdrawingAreUndoneOneByOne)
{
    Desk desk;
    shelve(desk, {concentrate("c", 500)});
    const auto deed = [&](CupboardAction which, std::optional<double> amount = {}) {
        ItemDeedDialog dialog(which, desk.door(), cupboardOf(desk).items);
        dialog.show();
        if (amount)
            dialog.amount()->setValue(amount);
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    };
    deed(CupboardAction::Open);
    EXPECT_TRUE(cupboardOf(desk).items[0].stock.openedAt);
    deed(CupboardAction::Count, 440);
    EXPECT_EQ(cupboardOf(desk).items[0].stock.left, 440);
    deed(CupboardAction::ThrowAway);
    EXPECT_TRUE(cupboardOf(desk).items.empty());
    ASSERT_TRUE(desk.session().undo());
    deed(CupboardAction::Withdraw);
    EXPECT_TRUE(cupboardOf(desk).items.empty());
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(cupboardOf(desk).items[0].stock.left, 440);
    ASSERT_TRUE(desk.session().undo());
    ASSERT_TRUE(desk.session().undo());
    EXPECT_FALSE(cupboardOf(desk).items[0].stock.openedAt);
}

// Opening carried no caution at all, and a liquid asked for a dust mask.
TEST(ItemDeedDialog, whatCanHurtIsSaidWhereItIsOpenedTakenAndThrownAway)
{
    Desk desk;
    shelve(desk, {concentrate("c", 500)});
    for (const CupboardAction deed :
         {CupboardAction::Open, CupboardAction::Take, CupboardAction::ThrowAway}) {
        const ItemDeedDialog dialog(deed, desk.door(), cupboardOf(desk).items);
        QString said;
        for (const auto* box : dialog.findChildren<CautionBox*>()) {
            for (const auto* label : box->findChildren<QLabel*>())
                said += label->text() + u'\n';
        }
        EXPECT_EQ(said.count(Cautions::eyes()), 1) << static_cast<int>(deed);
        EXPECT_EQ(said.count(Cautions::glovesAndEyes()), 1) << static_cast<int>(deed);
        EXPECT_FALSE(said.contains(Cautions::powders())) << static_cast<int>(deed);
        EXPECT_EQ(said.contains(Cautions::oneCanEach()), deed == CupboardAction::ThrowAway);
    }
}

TEST(CodeDialog, teachesAnewWhatACodeStandsFor)
{
    Desk desk;
    ledger::Barcode code;
    code.code = kCode.toStdString();
    code.of = "starter-acid-fixer";
    shelve(desk, {powder("p"), code});
    CodeDialog dialog(desk.door(), cupboardOf(desk), cupboardOf(desk).items[0]);
    dialog.show();
    dialog.code()->setText("2000 0000 00015");
    dialog.accept();
    const auto state = cupboardOf(desk);
    ASSERT_EQ(state.barcodes.size(), 1u);
    EXPECT_EQ(state.barcodes[0].of, "starter-mq-borax");
    EXPECT_EQ(state.barcodes[0].code, kCode.toStdString());
}

} // namespace ullage::app
