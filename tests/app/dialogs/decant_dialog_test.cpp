// Decanting from one dialog: several bottles, one action; what does not go is refused and stays.
#include "app/dialogs/decant_dialog.h"
#include "app/dialogs/decant_row.h"
#include "app/dialogs/history_dialog.h"
#include "app/widgets/caution_box.h"
#include "app/words/cautions.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/scripted_prompts.h"

#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>

namespace ullage::app
{

namespace
{

class Decanting : public testing::Test
{
protected:
    Decanting()
    {
        desk.pass(-30);
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 900, "Dev 14");
        desk.run(dev, 3);
        desk.pass(20);
    }

    std::vector<DecantRow*> rows(const DecantDialog& dialog)
    {
        std::vector<DecantRow*> shown;
        for (DecantRow* row : dialog.findChildren<DecantRow*>()) {
            if (!row->isHidden())
                shown.push_back(row);
        }
        return shown;
    }
    void fill(DecantRow& row, const std::string& vessel, const QString& volume)
    {
        row.chooseVessel(vessel);
        type(row, "Volume decanted", volume);
    }
    void press(const DecantDialog& dialog, const QString& text)
    {
        named<QPushButton>(dialog, text)->click();
    }
    ledger::Batch batch(const std::string& id)
    {
        return *desk.session().book().batch(id, desk.now());
    }

    Desk desk;
    std::string dev;
};

} // namespace

TEST_F(Decanting, isNotOfferedWhereNoBottleIsFree)
{
    int mixed = 0;
    const auto vessels = desk.session().formulary().currentVessels();
    for (const auto& vessel : vessels) {
        if (vessel->id != "starter-glass-1000")
            desk.mix("starter-acid-fixer", vessel->id, 200, "Fix " + std::to_string(++mixed));
    }
    DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    dialog.show();
    EXPECT_FALSE(dialog.deedButton()->isEnabled());
    EXPECT_TRUE(dialog.deedButton()->toolTip().contains("No bottle is free"));
    EXPECT_TRUE(dialog.consequences().join(' ').contains("No bottle is free")) << "at once";
    EXPECT_FALSE(rows(dialog).front()->isVisible()) << "nothing is asked";
}

TEST_F(Decanting, asksWhereABottleWouldGetHardlyAnything)
{
    ScriptedPrompts asked;
    const PromptsInForce inForce(asked);
    DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    dialog.show();
    fill(*rows(dialog)[0], "starter-pet-1000", "50");
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible()) << "it was a slip of the keys";
    ASSERT_EQ(asked.asked().size(), 1);
    asked.answer(true);
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << "it was meant";
    EXPECT_EQ(dialog.decanted().size(), 1u);
}

TEST_F(Decanting, fillsSeveralBottlesInOneActionThatIsUndoneAsOne)
{
    const QByteArray before = desk.journal();
    DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    dialog.show();
    press(dialog, "Another bottle");
    ASSERT_EQ(rows(dialog).size(), 2u);
    fill(*rows(dialog)[0], "starter-glass-500", "500");
    fill(*rows(dialog)[1], "starter-pet-1000", "250");
    EXPECT_TRUE(dialog.left().contains("150\u00a0ml stays in Dev 14"))
        << dialog.left().toStdString();
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    ASSERT_EQ(dialog.decanted().size(), 2u);
    const auto first = batch(dialog.decanted()[0]);
    EXPECT_EQ(first.name, "Dev 14 b");
    EXPECT_EQ(batch(dialog.decanted()[1]).name, "Dev 14 c");
    EXPECT_DOUBLE_EQ(first.volume.value(), 500);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 150);
    EXPECT_NEAR(first.wear.value(), 3 / 0.9, 1e-9) << "as worn as where it came from";
    EXPECT_EQ(first.madeAt, batch(dev).madeAt) << "and as old";
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 900);
    EXPECT_EQ(desk.session().bottles().size(), 1u);
    EXPECT_NE(desk.journal(), before) << "undone is not unsaid";
}

TEST_F(Decanting, allOfItEndsTheBottleItCameFrom)
{
    DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    dialog.show();
    fill(*rows(dialog)[0], "starter-pet-1000", "900");
    EXPECT_TRUE(dialog.left().contains("Nothing stays")) << dialog.left().toStdString();
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible());
    EXPECT_EQ(batch(dev).end, ledger::BatchEnd::UsedUp);
}

TEST_F(Decanting, refusesMoreThanIsThereTheSameBottleTwiceAndWhatDoesNotFit)
{
    const QByteArray before = desk.journal();
    DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    dialog.show();
    press(dialog, "Another bottle");
    auto shown = rows(dialog);
    fill(*shown[0], "starter-pet-1000", "500");
    fill(*shown[1], "starter-pet-1000", "100");
    dialog.accept();
    EXPECT_FALSE(shown[1]->problemOf("vessel").isEmpty());
    fill(*shown[1], "starter-glass-500", "700");
    dialog.accept();
    EXPECT_TRUE(shown[1]->problemOf("volume_ml").contains("700"));
    fill(*shown[1], "starter-glass-500", "450");
    EXPECT_TRUE(dialog.left().contains("50\u00a0ml more")) << dialog.left().toStdString();
    dialog.accept();
    EXPECT_TRUE(shown[1]->problemOf("volume_ml").contains("950"));
    type(*shown[1], "Volume decanted", "nan");
    dialog.accept();
    EXPECT_FALSE(shown[1]->problemOf("volume_ml").isEmpty());
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(desk.journal(), before);
    press(dialog, "One fewer");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << "what was taken away is not asked any more";
}

TEST_F(Decanting, saysWhatCanHurtInPouringAndInKeeping)
{
    const DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    QString said;
    for (const auto* box : dialog.findChildren<CautionBox*>()) {
        for (const auto* label : box->findChildren<QLabel*>())
            said += label->text();
    }
    EXPECT_TRUE(said.contains(Cautions::developerOnSkin()));
    EXPECT_TRUE(said.contains(Cautions::eyes()));
    EXPECT_TRUE(said.contains(Cautions::foodBottles()));
}

TEST_F(Decanting, offersOnlyBottlesThatAreFree)
{
    desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 9");
    DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    auto* vessels = named<QComboBox>(*rows(dialog)[0], "Into which bottle");
    EXPECT_LT(vessels->findData("starter-pet-1000"), 0);
    EXPECT_LT(vessels->findData("starter-glass-1000"), 0) << "the one it is in";
    EXPECT_GE(vessels->findData("starter-glass-500"), 0);
}

TEST_F(Decanting, saysWhatFollowsForAllOfThem)
{
    DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    dialog.show();
    fill(*rows(dialog)[0], "starter-glass-500", "500");
    QTest::qWait(250);
    const QString said = dialog.consequences().join('|');
    EXPECT_TRUE(said.contains("Dev 14 b")) << said.toStdString();
    EXPECT_TRUE(dialog.consequences().contains("Dev 14")) << said.toStdString();
}

TEST_F(Decanting, namesNoDateForABottleThatEnds)
{
    DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    dialog.show();
    fill(*rows(dialog)[0], "starter-pet-1000", "900");
    QTest::qWait(250);
    const QStringList said = dialog.consequences();
    EXPECT_FALSE(said.filter("→ used up").isEmpty()) << said.join('|').toStdString();
    EXPECT_TRUE(said.contains("Discard by, then: –")) << said.join('|').toStdString();
}

TEST_F(Decanting, takingOneHalfBackTakesTheOtherAndBothAreStruck)
{
    DecantDialog dialog(desk.door(), bottleOf(desk, dev));
    dialog.show();
    fill(*rows(dialog)[0], "starter-glass-500", "400");
    dialog.accept();
    const std::string heir = dialog.decanted().front();
    desk.passMinutes(5);

    HistoryDialog history(desk.door(), bottleOf(desk, dev));
    auto* entries = named<QTreeWidget>(history, "Entries, newest first");
    ASSERT_TRUE(entries->topLevelItem(0)->text(1).contains("into Dev 14 b"))
        << entries->topLevelItem(0)->text(1).toStdString();
    entries->setCurrentItem(entries->topLevelItem(0));
    QTest::qWait(250);
    const QString said = history.consequences().join('|');
    EXPECT_TRUE(said.contains("Dev 14 b")) << "both bottles are shown: " << said.toStdString();
    EXPECT_TRUE(said.contains("leaves the shelf")) << said.toStdString();
    type(history, "Why the chosen entry is taken back", "never done");
    history.show();
    history.accept();
    ASSERT_FALSE(history.isVisible()) << history.problemOf("voids").toStdString();
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 900);
    EXPECT_EQ(desk.session().bottle(QString::fromStdString(heir)), nullptr);

    HistoryDialog after(desk.door(), bottleOf(desk, dev));
    auto* struck = named<QTreeWidget>(after, "Entries, newest first")->topLevelItem(0);
    EXPECT_TRUE(struck->font(1).strikeOut());
    ASSERT_TRUE(desk.session().undo()) << "the taking back, of both";
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 500);
    EXPECT_DOUBLE_EQ(batch(heir).volume.value(), 400);
}

} // namespace ullage::app
