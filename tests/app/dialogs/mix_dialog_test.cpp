#include "app/dialogs/bottle_choice.h"
#include "app/dialogs/mix_dialog.h"
#include "app/widgets/caution_box.h"
#include "app/words/cautions.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/scripted_prompts.h"

#include <QLabel>

namespace ullage::app
{

namespace
{

void choose(const QWidget& dialog, const QString& field, const QString& id)
{
    auto* combo = named<QComboBox>(dialog, field);
    const int index = combo->findData(id);
    ASSERT_GE(index, 0) << id.toStdString();
    combo->setCurrentIndex(index);
}

} // namespace

TEST(MixDialog, proposesEverythingAndMixesIt)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-pet-1000", 500, "Dev 14");
    MixDialog dialog(desk.door());
    dialog.show();
    EXPECT_EQ(named<QLineEdit>(dialog, "Name on the label")->text(), "Dev 15");
    EXPECT_EQ(named<QComboBox>(dialog, "Bottle")->currentData().toString(), "starter-glass-1000");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible());
    const Bottle* mixed = desk.session().bottle(dialog.mixed());
    ASSERT_NE(mixed, nullptr);
    EXPECT_EQ(mixed->batch.name, "Dev 15");
    EXPECT_DOUBLE_EQ(mixed->batch.volume.value(), 1000);
    EXPECT_EQ(mixed->batch.mixedAt, desk.now());
}

TEST(MixDialog, asksHowManyFilmsABottleHasDone)
{
    Desk desk;
    MixDialog dialog(desk.door());
    dialog.show();
    type(dialog, "Films it has done already", "-1");
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(dialog.problemOf("films_before").isEmpty());
    type(dialog, "Films it has done already", "4");
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    const Bottle* mixed = desk.session().bottle(dialog.mixed());
    ASSERT_NE(mixed, nullptr);
    EXPECT_DOUBLE_EQ(mixed->batch.filmsDone.value(), 4);
    EXPECT_DOUBLE_EQ(mixed->assessment.filmsLeft->value(), 6);
    EXPECT_TRUE(mixed->batch.loads.empty()) << "no load, so no pace";
    EXPECT_TRUE(desk.journal().contains("\"films_before\":4"));
}

TEST(MixDialog, aFoundBottleIsNotAskedForItsFilms)
{
    Desk desk;
    MixDialog dialog(desk.door());
    dialog.show();
    type(dialog, "Films it has done already", "4");
    for (auto* box : dialog.findChildren<QCheckBox*>()) {
        if (box->text().contains("Found bottle"))
            box->setChecked(true);
    }
    EXPECT_FALSE(named<QLineEdit>(dialog, "Films it has done already")->isVisible());
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_FALSE(desk.journal().contains("films_before"));
}

TEST(MixDialog, nameFollowsTheSolutionUntilItIsTyped)
{
    Desk desk;
    MixDialog dialog(desk.door());
    choose(dialog, "Solution", "starter-acid-fixer");
    EXPECT_EQ(named<QLineEdit>(dialog, "Name on the label")->text(), "Fix 1");
    type(dialog, "Name on the label", "Old faithful");
    choose(dialog, "Solution", "starter-wash-aid");
    EXPECT_EQ(named<QLineEdit>(dialog, "Name on the label")->text(), "Old faithful");
}

TEST(MixDialog, warnsOfWhatTheSolutionContains)
{
    Desk desk;
    MixDialog dialog(desk.door());
    dialog.show();
    const auto said = [&dialog] {
        QString text;
        for (const auto* box : dialog.findChildren<CautionBox*>()) {
            for (const auto* label : box->findChildren<QLabel*>())
                text += label->text();
        }
        return text;
    };
    choose(dialog, "Solution", "starter-mq-borax");
    EXPECT_TRUE(said().contains(Cautions::borax()));
    choose(dialog, "Solution", "starter-acetic-stop");
    EXPECT_TRUE(said().contains(Cautions::glacialAcid()));
    choose(dialog, "Solution", "starter-citric-stop");
    EXPECT_FALSE(said().contains("H226"));
    EXPECT_TRUE(said().contains(Cautions::foodBottles()));
}

TEST(MixDialog, refusesWhatDoesNotFitAndKeepsWhatWasTyped)
{
    Desk desk;
    const QByteArray before = desk.journal();
    MixDialog dialog(desk.door());
    dialog.show();
    for (const char* bad : {"", "0", "-1", "2000", "abc", "nan"}) {
        type(dialog, "Volume mixed", bad);
        dialog.accept();
        EXPECT_TRUE(dialog.isVisible()) << bad;
        EXPECT_FALSE(dialog.problemOf("volume_ml").isEmpty()) << bad;
    }
    EXPECT_EQ(named<QLineEdit>(dialog, "Volume mixed")->text(), "nan");
    type(dialog, "Volume mixed", "1000");
    type(dialog, "Name on the label", " ");
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("batch-name").isEmpty());
    type(dialog, "Name on the label", "Dev 1");
    setMoment(dialog, desk.now() + std::chrono::hours(30));
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("at").isEmpty());
    EXPECT_EQ(desk.journal(), before);
}

TEST(MixDialog, warnsOfTheLeakyTheFullAndTheUsed)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    MixDialog dialog(desk.door());
    choose(dialog, "Bottle", "starter-pp-1000");
    EXPECT_TRUE(dialog.warnings().contains("not the published 6 months"))
        << dialog.warnings().toStdString();
    choose(dialog, "Bottle", "starter-glass-1000");
    EXPECT_TRUE(dialog.warnings().contains("still holds Dev 1"));
    EXPECT_FALSE(dialog.warnings().contains("published"));
    type(dialog, "Volume mixed", "1200");
    EXPECT_TRUE(dialog.warnings().contains("1200") || dialog.warnings().contains("1,200"))
        << dialog.warnings().toStdString();
    type(dialog, "Name on the label", "dev 1");
    EXPECT_TRUE(dialog.warnings().contains("another bottle named"));
}

TEST(MixDialog, saysWhatABottleEnteredLateIsToday)
{
    Desk desk;
    MixDialog dialog(desk.door());
    dialog.show();
    type(dialog, "Name on the label", "Dev 1");
    EXPECT_TRUE(dialog.consequences().isEmpty());
    setMoment(dialog, desk.now() - std::chrono::hours(24 * 300));
    QTest::qWait(250);
    EXPECT_EQ(dialog.consequences().value(0), "Dev 1");
    EXPECT_TRUE(dialog.consequences().contains("Verdict: Discard"))
        << dialog.consequences().join('|').toStdString();
}

TEST(MixDialog, makesABottleOnTheWay)
{
    Desk desk;
    const auto vessels = desk.session().formulary().vessels().size();
    MixDialog dialog(desk.door());
    dialog.show();
    auto* bottle = named<QComboBox>(dialog, "Bottle");
    bottle->setCurrentIndex(bottle->count() - 1);
    type(dialog, "Holds, to the brim", "520");
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("name").isEmpty());
    EXPECT_EQ(desk.session().formulary().vessels().size(), vessels) << "not before it has a name";
    type(dialog, "Name of the new bottle", "Brown half");
    named<QCheckBox>(dialog, {})->setChecked(true); // always squeezed
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible());
    const Bottle* mixed = desk.session().bottle(dialog.mixed());
    ASSERT_NE(mixed, nullptr);
    EXPECT_EQ(mixed->batch.vessel->name, "Brown half");
    EXPECT_DOUBLE_EQ(mixed->batch.volume.value(), 500);
    EXPECT_EQ(desk.session().formulary().vessels().size(), vessels + 1);
    // One deed, and one undo.
    const auto last = desk.session().book().undoable();
    ASSERT_TRUE(last);
    EXPECT_EQ(last->what, "mix");
    const auto action = store::SqlStore::open(desk.bookPath(), {.access = store::Access::Read})
                            .value()
                            ->connection()
                            .number("SELECT action FROM entry WHERE type = 'vessel' "
                                    "ORDER BY seq DESC LIMIT 1");
    ASSERT_TRUE(action);
    EXPECT_EQ(*action, last->id);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(desk.session().bottle(dialog.mixed()), nullptr);
}

TEST(MixDialog, canBeDatedBackAndSayNothingOfThePast)
{
    Desk desk;
    MixDialog dialog(desk.door());
    dialog.show();
    const auto then = desk.now() - std::chrono::hours(24 * 12);
    setMoment(dialog, then);
    for (auto* box : dialog.findChildren<QCheckBox*>()) {
        if (box->text().contains("ound bottle"))
            box->setChecked(true);
    }
    dialog.accept();
    const Bottle* mixed = desk.session().bottle(dialog.mixed());
    ASSERT_NE(mixed, nullptr);
    EXPECT_EQ(mixed->batch.mixedAt, then);
    EXPECT_EQ(mixed->assessment.verdict, ledger::Verdict::TestFirst);
}

TEST(MixDialog, keyboardAlone)
{
    Desk desk;
    MixDialog dialog(desk.door());
    dialog.open();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    ASSERT_EQ(QApplication::focusWidget(), named<QComboBox>(dialog, "Solution"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down); // the next solution
    const QString solution = named<QComboBox>(dialog, "Solution")->currentData().toString();
    EXPECT_EQ(solution, "starter-mq-borax-1-1");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_V, Qt::AltModifier); // Volume
    ASSERT_EQ(QApplication::focusWidget(), named<QLineEdit>(dialog, "Volume mixed"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), "750");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), named<QLineEdit>(dialog, "Name on the label"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_FALSE(dialog.isVisible());
    const Bottle* mixed = desk.session().bottle(dialog.mixed());
    ASSERT_NE(mixed, nullptr);
    EXPECT_DOUBLE_EQ(mixed->batch.volume.value(), 750);
}

TEST(BottleChoice, oldestUsableFirstAndOneToDiscardLast)
{
    Desk desk;
    desk.pass(-60);
    const auto worn = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Worn");
    desk.passMinutes(10);
    const auto older = desk.mix("starter-mq-borax", "starter-glass-1000-b", 1000, "Older");
    desk.pass(5);
    desk.mix("starter-mq-borax", "starter-pet-1000", 1000, "Newer");
    desk.passMinutes(10);
    desk.run(worn, 10);
    const auto& bottles = desk.session().bottles();
    const auto found = bottlesFor(formulary::Role::Developer, bottles);
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found.front()->batch.id, older);
    EXPECT_EQ(found.back()->batch.id, worn);
    EXPECT_TRUE(bottlesFor(formulary::Role::Fixer, bottles).empty());
}

TEST(BottleChoice, emptyTightBottlesBeforeLeakyAndUsedOnes)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const auto choices = vesselsFor(chemistry::Millilitres(1000), desk.session().formulary(),
                                    desk.session().bottles());
    EXPECT_EQ(choices.front().vessel->id, "starter-glass-1000-b");
    EXPECT_EQ(choices.back().vessel->id, "starter-glass-1000");
    EXPECT_NE(choices.back().holds, nullptr);
}

TEST(BottleChoice, usualVolumes)
{
    const auto usual = [](double capacity) {
        formulary::Vessel vessel;
        vessel.capacity = chemistry::Millilitres(capacity);
        return usualVolume(vessel).value();
    };
    EXPECT_DOUBLE_EQ(usual(1030), 1000);
    EXPECT_DOUBLE_EQ(usual(520), 500);
    EXPECT_DOUBLE_EQ(usual(5300), 5250);
    EXPECT_DOUBLE_EQ(usual(120), 120);
}

// "1.000" was mixed as 1 ml, without a word.
TEST(MixDialog, asksOnceWhetherABottleIsToStandAllButEmpty)
{
    Desk desk;
    ScriptedPrompts asked;
    const PromptsInForce inForce(asked);
    MixDialog dialog(desk.door());
    dialog.show();
    const auto volume = [&] { return named<QLineEdit>(dialog, "Volume mixed"); };
    type(dialog, "Volume mixed", "1.000");
    EXPECT_EQ(dialog.problemOf("volume_ml").toStdString(),
              "Volume mixed: “1.000” can mean 1 ml or 1000 ml; write the one that is meant.")
        << "said at once";
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(asked.asked().isEmpty());
    EXPECT_EQ(volume()->text(), "1.000") << "what was typed stays";

    const QByteArray before = desk.journal();
    type(dialog, "Volume mixed", "90 ml");
    dialog.accept();
    ASSERT_EQ(asked.asked().size(), 1);
    EXPECT_TRUE(asked.asked().front().contains("90")) << asked.asked().front().toStdString();
    EXPECT_TRUE(dialog.isVisible()) << "not like that";
    EXPECT_EQ(desk.journal(), before);
    asked.answer(true);
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_DOUBLE_EQ(desk.session().bottle(dialog.mixed())->batch.volume.value(), 90);

    MixDialog enough(desk.door());
    enough.show();
    type(enough, "Volume mixed", "1,010 ml");
    EXPECT_EQ(enough.problemOf("volume_ml"), "Read as 1010 ml.") << "as it was understood";
    enough.accept();
    EXPECT_FALSE(enough.isVisible()) << enough.problemOf("volume_ml").toStdString();
    EXPECT_EQ(asked.asked().size(), 2) << "only where it is little";
}

TEST(MixDialog, isNotClosedOverWhatWasFilledInWithoutAsking)
{
    Desk desk;
    ScriptedPrompts asked;
    const PromptsInForce inForce(asked);
    MixDialog dialog(desk.door());
    dialog.show();
    dialog.reject();
    EXPECT_FALSE(dialog.isVisible()) << "nothing was changed";
    EXPECT_TRUE(asked.asked().isEmpty());

    MixDialog filled(desk.door());
    filled.show();
    const QString name = named<QLineEdit>(filled, "Name on the label")->text();
    type(filled, "Name on the label", "Evening course");
    QTest::keyClick(&filled, Qt::Key_Escape);
    EXPECT_TRUE(filled.isVisible());
    EXPECT_EQ(asked.asked().size(), 1);
    EXPECT_EQ(named<QLineEdit>(filled, "Name on the label")->text(), "Evening course");
    asked.answer(true);
    filled.close(); // by the window's frame, which is no other way out
    EXPECT_FALSE(filled.isVisible());
    EXPECT_EQ(asked.asked().size(), 2);

    MixDialog back(desk.door());
    back.show();
    type(back, "Name on the label", "Evening course");
    type(back, "Name on the label", name);
    back.reject();
    EXPECT_FALSE(back.isVisible()) << "changed back is not changed";
    EXPECT_EQ(asked.asked().size(), 2);
}

} // namespace ullage::app
