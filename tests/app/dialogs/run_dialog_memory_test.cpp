// What logging a run remembers for the next one, and what it does not.
#include "app/dialogs/run_dialog.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/dialogs/run_film_fixture.h"

namespace ullage::app
{

TEST_F(RunFilm, remembersTimesAndTankForTheNextOne)
{
    {
        RunDialog dialog(desk.door(), nullptr);
        dialog.show();
        type(dialog, "Leaflet time", "9:30");
        type(dialog, "Developer: volume used", "600");
        dialog.accept();
        ASSERT_FALSE(dialog.isVisible());
    }
    desk.passMinutes(5);
    RunDialog again(desk.door(), nullptr);
    EXPECT_EQ(again.timeShown(), "10:25"); // 570 s × 1.10 = 627 s
    EXPECT_EQ(named<QuantityEdit>(again, "Developer: volume used")->value(), 600);
}

// What fixer the next dialog offers by itself.
std::string fixerOffered(Desk& desk)
{
    RunDialog dialog(desk.door(), nullptr);
    return named<QComboBox>(dialog, "Fixer: bottle")->currentData().toString().toStdString();
}

TEST(RunWithoutFixer, IsNotRememberedWhereThereWasNone)
{
    Desk desk;
    desk.pass(-20);
    const std::string dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 14");
    desk.pass(10);
    {
        RunDialog dialog(desk.door(), nullptr);
        dialog.show();
        EXPECT_TRUE(dialog.warnings().join('|').contains("No fixer is chosen"))
            << dialog.warnings().join('|').toStdString();
        dialog.accept();
        ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    }
    const std::string fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 9");
    desk.passMinutes(90);
    EXPECT_EQ(fixerOffered(desk), fix);
}

TEST_F(RunFilm, keepsGoingWithoutAFixerOnlyWhereThatWasChosen)
{
    {
        RunDialog dialog(desk.door(), nullptr);
        dialog.show();
        EXPECT_FALSE(dialog.warnings().join('|').contains("No fixer"));
        named<QComboBox>(dialog, "Fixer: bottle")->setCurrentIndex(0);
        EXPECT_TRUE(dialog.warnings().join('|').contains("No fixer is chosen"));
        dialog.accept();
        ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    }
    desk.passMinutes(5);
    EXPECT_EQ(fixerOffered(desk), "") << "chosen by hand";
    {
        RunDialog dialog(desk.door(), nullptr);
        dialog.show();
        EXPECT_TRUE(dialog.warnings().join('|').contains("No fixer is chosen"));
        auto* fixer = named<QComboBox>(dialog, "Fixer: bottle");
        fixer->setCurrentIndex(fixer->findData(QString::fromStdString(fix)));
        dialog.accept();
        ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    }
    desk.passMinutes(5);
    EXPECT_EQ(fixerOffered(desk), fix);
}

} // namespace ullage::app
