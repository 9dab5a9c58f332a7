// The wizard for a spreadsheet, driven as a person would; what it shows is made up here.
#include "app/dialogs/sheet_dialog.h"

#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/scripted_prompts.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTreeWidget>

namespace ullage::app
{

namespace
{

SheetView sheetUnderstood()
{
    SheetView view;
    view.reading = {{"&Letters", {"UTF-8", "Windows-1252"}, 1, {}},
                    {"&Order of days", {"day, month", "month, day"}, 0, "03/04/26 can be both."}};
    view.fields = {"not used", "bottle's name", "mixed on", "films done"};
    view.columns = {{"Flasche", 1, {"Dev 1", "Fix 2"}},
                    {"angesetzt", 2, {"03/04/26", "05/04/26"}},
                    {"", 0, {"=1+1", ""}}};
    view.mapping = "Found by the headings.";
    view.solutions = {"choose…", "MQ borax developer", "Acid fixer"};
    view.unknown = {{"my D", 0}};
    view.coming = "2 bottles";
    view.bottles = {"Dev 1", "Fix 2"};
    view.refused = {{7, "Filme", "-3", "From 0 to 10,000 films."}};
    view.refusedCount = 1;
    return view;
}

struct SheetDialogTest : testing::Test {
    SheetDialogTest() : force(asked), dialog("paper.csv", nullptr)
    {
        dialog.setView(sheetUnderstood());
        dialog.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&dialog));
    }
    QPushButton* button(const QString& text)
    {
        for (auto* button : dialog.findChildren<QPushButton*>()) {
            if (button->text().remove(u'&') == text)
                return button;
        }
        return nullptr;
    }

    ScriptedPrompts asked;
    PromptsInForce force;
    SheetDialog dialog;
};

} // namespace

TEST_F(SheetDialogTest, ShowsHowItWasReadAndTheFirstRows)
{
    EXPECT_EQ(dialog.step(), SheetDialog::Step::Reading);
    EXPECT_EQ(named<QComboBox>(dialog, "Letters")->currentText(), "Windows-1252");
    auto* preview = named<QTableWidget>(dialog, "First rows of the sheet");
    ASSERT_EQ(preview->rowCount(), 2);
    EXPECT_EQ(preview->item(0, 1)->text(), "03/04/26");
    EXPECT_EQ(preview->horizontalHeaderItem(0)->text(), "Flasche");
}

TEST_F(SheetDialogTest, KeysBeginWhereAnAnswerIsWanted)
{
    SheetView view = sheetUnderstood();
    view.reading[1].chosen = -1;
    SheetDialog open("paper.csv", nullptr);
    open.setView(view);
    open.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&open));
    EXPECT_EQ(open.focusWidget(), named<QComboBox>(open, "Order of days"));
    open.setStep(SheetDialog::Step::Coming);
    EXPECT_EQ(open.focusWidget(), named<QComboBox>(open, "Solution that “my D” is"));
    EXPECT_EQ(dialog.focusWidget(), button("Next")) << "nothing is open in this one";
}

TEST_F(SheetDialogTest, TellsOnceWhatWasChosenAndWaitsForWhatFollows)
{
    QSignalSpy decided(&dialog, &SheetDialog::decided);
    named<QComboBox>(dialog, "Order of days")->setCurrentIndex(1);
    dialog.setStep(SheetDialog::Step::Columns);
    named<QComboBox>(dialog, "What the column Column 3 is")->setCurrentIndex(3);
    EXPECT_EQ(decided.count(), 0);
    ASSERT_TRUE(decided.wait(5'000));
    EXPECT_EQ(decided.count(), 1);
    EXPECT_EQ(dialog.picks(), (SheetPicks{{1, 1}, {1, 2, 3}, {0}}));
}

TEST_F(SheetDialogTest, ImportsOnlyWhereNothingIsRefusedOrOpen)
{
    dialog.setStep(SheetDialog::Step::Coming);
    QPushButton* import = button("Import");
    EXPECT_FALSE(import->isEnabled());
    auto* refused = named<QTreeWidget>(dialog, "Rows that are refused");
    ASSERT_EQ(refused->topLevelItemCount(), 1);
    EXPECT_EQ(refused->topLevelItem(0)->text(0), "7");
    EXPECT_EQ(refused->topLevelItem(0)->text(3), "From 0 to 10,000 films.");
    SheetView view = sheetUnderstood();
    view.refused.clear();
    view.refusedCount = 0;
    view.notYet = "Say which solution “my D” is.";
    dialog.setView(view);
    EXPECT_FALSE(import->isEnabled());
    view.notYet.clear();
    dialog.setJudging(true);
    dialog.setView(view);
    EXPECT_FALSE(import->isEnabled());
    dialog.setJudging(false);
    QSignalSpy wanted(&dialog, &SheetDialog::importWanted);
    QTest::mouseClick(import, Qt::LeftButton);
    EXPECT_EQ(wanted.count(), 1);
}

TEST_F(SheetDialogTest, EscapeAsksOnlyWhereSomethingWasChosen)
{
    named<QComboBox>(dialog, "Order of days")->setCurrentIndex(1);
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_EQ(asked.asked().size(), 1);
    EXPECT_TRUE(dialog.isVisible());
    asked.answer(true);
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(SheetDialogTest, EscapeAsksOfWhatWasChosenOnAnotherStep)
{
    dialog.setStep(SheetDialog::Step::Columns);
    named<QComboBox>(dialog, "What the column Column 3 is")->setCurrentIndex(3);
    dialog.setStep(SheetDialog::Step::Reading);
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_EQ(asked.asked().size(), 1);
    EXPECT_TRUE(dialog.isVisible());
}

TEST_F(SheetDialogTest, EscapeClosesWhereNothingWasChosen)
{
    QTest::mouseClick(button("Next"), Qt::LeftButton);
    EXPECT_EQ(dialog.step(), SheetDialog::Step::Columns);
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_TRUE(asked.asked().isEmpty());
}

TEST_F(SheetDialogTest, NamesWhatIsPassedOverAndWhatMayBeThereAlready)
{
    SheetView view = sheetUnderstood();
    view.doubts = {"Row 2: perhaps Dev 1"};
    view.passedOver = {"Row 9: Total · 12"};
    dialog.setView(view);
    dialog.setStep(SheetDialog::Step::Coming);
    auto* lines = named<QTreeWidget>(dialog, "What comes in");
    ASSERT_EQ(lines->topLevelItemCount(), 3);
    EXPECT_EQ(lines->topLevelItem(0)->child(0)->text(0), "Row 2: perhaps Dev 1");
    EXPECT_EQ(lines->topLevelItem(2)->child(0)->text(0), "Row 9: Total · 12");
    view = {};
    view.notYet = "Nothing in the sheet can come in.";
    dialog.setView(view);
    EXPECT_FALSE(lines->isVisibleTo(&dialog)) << "an empty list says nothing";
}

} // namespace ullage::app
