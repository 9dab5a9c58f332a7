#include "app/dialogs/base_times_edit.h"
#include "app/dialogs/run_dialog.h"
#include "app/dialogs/side_column.h"
#include "app/widgets/films_edit.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/dialogs/run_film_fixture.h"
#include "tests/app/scripted_prompts.h"

#include <QPushButton>
#include <QScrollBar>

namespace ullage::app
{

TEST_F(RunFilm, timesTheLoadByItsFactors)
{
    desk.run(dev, 4);
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    EXPECT_FALSE(dialog.timeShown().contains(u':')) << "no figure, no time";
    type(dialog, "Leaflet time", "9:30");
    EXPECT_EQ(dialog.timeShown(), "13:20"); // 570 s × 1.40 = 798 s, to 5 s
    type(dialog, "Thermometer", "24");
    // 570 × 1.9^(−0.4) × 1.4 = 617.3 s
    EXPECT_EQ(dialog.timeShown(), "10:15");
    type(dialog, "Thermometer", "5");
    EXPECT_FALSE(dialog.timeShown().contains(u':'));
    EXPECT_FALSE(dialog.warnings().isEmpty());
}

TEST_F(RunFilm, scrollsAsOneWhereTheFormStandsAboveTheCards)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    dialog.resize(700, 600);
    QTest::qWait(1);
    const auto* side = dialog.findChild<SideColumn*>();
    ASSERT_NE(side, nullptr);
    EXPECT_GT(side->width(), 400) << "below the form";
    EXPECT_EQ(side->verticalScrollBar()->maximum(), 0) << "no bar beside the dialog's own";
    dialog.resize(1300, 600);
    QTest::qWait(1);
    EXPECT_LT(side->width(), 400) << "beside it again";
    EXPECT_LT(side->height(), 600);
}

TEST_F(RunFilm, saysWhatFollowsOnceItIsDatedBack)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    spin(dialog, "Number of films", 2);
    QTest::qWait(250);
    EXPECT_TRUE(dialog.consequences().isEmpty()) << "now it stands on the card";
    const QByteArray before = desk.journal();
    setMoment(dialog, desk.now() - std::chrono::hours(48));
    QTest::qWait(250);
    const QString said = dialog.consequences().join('|');
    EXPECT_TRUE(said.contains("Dev 14|")) << said.toStdString();
    EXPECT_TRUE(said.contains("Films left: 10 films → 8 films")) << said.toStdString();
    EXPECT_TRUE(said.contains("Fix 9|")) << said.toStdString();
    EXPECT_EQ(desk.journal(), before);
}

TEST_F(RunFilm, takesTheTimeOfAKnownFilmFromTheNotebook)
{
    const auto enter = [&](const char* id, const char* film, const char* developer,
                           std::vector<chemistry::TimeAtTemperature> times) {
        formulary::DevelopmentFigure figure;
        figure.id = id;
        figure.film = film;
        figure.developer = developer;
        figure.dilution = "stock";
        figure.exposureIndex = 400;
        figure.times = std::move(times);
        figure.source = "the leaflet";
        ASSERT_TRUE(desk.session().doing([&](ledger::Book& book) { return book.add(figure); }));
    };
    using chemistry::Celsius;
    using chemistry::Seconds;
    enter("t1", "Quay 400", "starter-mq-borax", {{Celsius(20), Seconds(570)}});
    enter("t2", "Lantern 1600", "starter-mq-borax",
          {{Celsius(18), Seconds(960)}, {Celsius(20), Seconds(840)}});
    enter("t3", "Elsewhere 100", "starter-metol-sulfite", {{Celsius(20), Seconds(400)}});
    desk.run(dev, 4);
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    auto* known = named<QComboBox>(dialog, "Times of the Formulary");
    ASSERT_NE(known, nullptr);
    EXPECT_TRUE(known->isVisible());
    ASSERT_EQ(known->count(), 3) << "of this developer only, and the typed one";
    EXPECT_EQ(known->currentIndex(), 0);
    known->setFocus();
    QTest::keyClick(known, Qt::Key_Down);
    EXPECT_EQ(known->currentText(), QString::fromUtf8("Quay 400 · EI 400 · stock"));
    EXPECT_EQ(dialog.timeShown(), "13:20"); // 570 s × 1.40
    QTest::keyClick(known, Qt::Key_Down);
    EXPECT_EQ(dialog.timeShown(), "19:35"); // 840 s × 1.40 = 1176 s
    type(dialog, "Leaflet time", "9:30");
    EXPECT_EQ(known->currentIndex(), 0) << "what is typed stands above what was picked";
}

TEST_F(RunFilm, offersNoNotebookWhereItHoldsNothing)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    EXPECT_FALSE(named<QComboBox>(dialog, "Times of the Formulary")->isVisible());
}

TEST_F(RunFilm, logsEveryBathAtOnceAndUndoesThemAtOnce)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    spin(dialog, "Number of films", 2);
    type(dialog, "Developer: volume used", "600");
    type(dialog, "Developer: lost", "20");
    type(dialog, "Fixer: volume used", "600");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_DOUBLE_EQ(batch(dev).filmsDone.value(), 2);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 980);
    EXPECT_DOUBLE_EQ(batch(fix).filmsDone.value(), 2);
    const auto devEvents = desk.session().book().events(dev);
    const auto fixEvents = desk.session().book().events(fix);
    EXPECT_EQ(std::get<ledger::Processed>(devEvents->back().what).run,
              std::get<ledger::Processed>(fixEvents->back().what).run);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(batch(dev).filmsDone.value(), 0);
    EXPECT_DOUBLE_EQ(batch(fix).filmsDone.value(), 0);
}

TEST_F(RunFilm, refusesWholeWhatOneBathCannotGive)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    type(dialog, "Developer: volume used", "600");
    type(dialog, "Fixer: volume used", "1200");
    const QByteArray before = desk.journal();
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(dialog.problemOf("").contains("Fix 9")) << dialog.problemOf("").toStdString();
    EXPECT_EQ(desk.journal(), before);
    type(dialog, "Fixer: volume used", "60O");
    expectRefused(dialog, "baths");
}

TEST_F(RunFilm, refusesFilmThatIsNone)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    named<QComboBox>(dialog, "Format")->setEditText("130");
    expectRefused(dialog, "films");
    EXPECT_TRUE(dialog.problemOf("films").contains("130"));
    named<QComboBox>(dialog, "Format")->setEditText("126");
    expectRefused(dialog, "films"); // its length is not said
    named<QComboBox>(dialog, "Format")->setEditText("9x12cm");
    type(dialog, "Thermometer", "200");
    expectRefused(dialog, "temperature_c");
    type(dialog, "Thermometer", "20");
    setMoment(dialog, desk.now() - std::chrono::hours(24 * 15)); // before anything was mixed
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(dialog.problemOf("at").isEmpty());
}

TEST_F(RunFilm, neverProposesABottleToDiscard)
{
    desk.record(dev, ledger::Contaminated{"x"});
    RunDialog dialog(desk.door(), desk.session().bottle(QString::fromStdString(dev)));
    EXPECT_TRUE(named<QComboBox>(dialog, "Developer: bottle")->currentData().toString().isEmpty());
    EXPECT_EQ(named<QComboBox>(dialog, "Fixer: bottle")->currentData().toString().toStdString(),
              fix);
}

TEST_F(RunFilm, warnsOfMoreFilmThanIsLeft)
{
    desk.run(dev, 8);
    RunDialog dialog(desk.door(), nullptr);
    spin(dialog, "Number of films", 3);
    EXPECT_TRUE(dialog.warnings().join(' ').contains("Dev 14 has 2 films left"))
        << dialog.warnings().join(' ').toStdString();
}

TEST_F(RunFilm, asksOnceAboutMoreFilmThanCanBe)
{
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    spin(dialog, "Number of films", 999);
    const QByteArray before = desk.journal();
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible()) << "not sure";
    EXPECT_EQ(desk.journal(), before);
    ASSERT_EQ(asked.asked().size(), 1);
    EXPECT_TRUE(asked.asked().back().contains("Is it really 999 films in one load?"))
        << asked.asked().back().toStdString();
    asked.answer(true);
    type(dialog, "Fixer: volume used", "1200"); // refused for another reason
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(asked.asked().size(), 2);
    type(dialog, "Fixer: volume used", "600");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_EQ(asked.asked().size(), 2) << "sure of just that already";
    EXPECT_DOUBLE_EQ(batch(dev).filmsDone.value(), 999);
}

TEST_F(RunFilm, asksAboutMoreThanTheBottleHasLeft)
{
    desk.run(dev, 8);
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    spin(dialog, "Number of films", 2);
    setMoment(dialog, desk.now() - std::chrono::hours(24)); // then it had 10
    spin(dialog, "Number of films", 9);
    asked.answer(true);
    dialog.accept();
    EXPECT_TRUE(asked.asked().isEmpty()) << "by what it could do then";
    ASSERT_TRUE(desk.session().undo());
    RunDialog now(desk.door(), nullptr);
    now.show();
    spin(now, "Number of films", 3);
    now.accept();
    EXPECT_FALSE(now.isVisible());
    EXPECT_EQ(asked.asked().size(), 1);
}

TEST_F(RunFilm, oneShotIsGoneAfterwards)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    type(dialog, "Developer: volume used", "300");
    const auto* lost = named<QuantityEdit>(dialog, "Developer: lost");
    EXPECT_TRUE(lost->isEnabled());
    named<QCheckBox>(dialog, "Developer: one-shot")->setChecked(true);
    EXPECT_FALSE(lost->isEnabled()) << "nothing is poured back that could be less";
    dialog.accept();
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 700);
    EXPECT_DOUBLE_EQ(batch(dev).wear.value(), 0);
}

TEST_F(RunFilm, whatIsUsedOnceIsPouredAwayUnlessSomebodySaysOtherwise)
{
    auto solution = *desk.session().book().formulary().solution("starter-mq-borax");
    solution.id = "once";
    solution.name = "Used once";
    solution.capacity.reset();
    solution.oneShotPerFilm = chemistry::Millilitres(150);
    ASSERT_TRUE(desk.session().doing([&](ledger::Book& book) { return book.add(solution); }));
    const auto once = desk.mix("once", "starter-glass-500", 450, "Dev 15");
    const Bottle begun = bottleOf(desk, once);
    RunDialog dialog(desk.door(), &begun);
    dialog.show();
    auto* box = named<QCheckBox>(dialog, "Developer: one-shot");
    EXPECT_TRUE(box->isChecked());
    auto* bottle = named<QComboBox>(dialog, "Developer: bottle");
    bottle->setCurrentIndex(bottle->findData(QString::fromStdString(dev)));
    EXPECT_FALSE(box->isChecked());
    bottle->setCurrentIndex(bottle->findData(QString::fromStdString(once)));
    type(dialog, "Developer: volume used", "150");
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_DOUBLE_EQ(batch(once).volume.value(), 300);
    EXPECT_TRUE(batch(once).usedOnce());
}

TEST_F(RunFilm, severalFormatsInOneTank)
{
    FilmsEdit rows({}, nullptr);
    rows.setFilms({{"135-36", 1, {}, {}, {}}, {"120", 2, {}, {}, {}}, {"135-36", 1, {}, {}, {}}});
    const auto load = ledger::loadOf(rows.films());
    ASSERT_EQ(load.films.size(), 2u);
    EXPECT_DOUBLE_EQ(load.films[0].count, 2);
    EXPECT_DOUBLE_EQ(load.units().value(), 4);
}

TEST_F(RunFilm, leavesARecordOfEveryFilm)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    spin(dialog, "Number of films", 2);
    type(dialog, "Name of the film", "Quay 400");
    type(dialog, "Exposure index", "800");
    type(dialog, "Notes on the film", "roll 3");
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    const auto films = desk.session().films().ofBatch(dev);
    ASSERT_TRUE(films);
    ASSERT_EQ(films->size(), 2u);
    for (const auto& film : *films) {
        EXPECT_EQ(film.film.name, "Quay 400");
        EXPECT_EQ(film.film.exposureIndex, 800);
        EXPECT_EQ(film.film.notes, "roll 3");
        EXPECT_EQ(film.film.format, "135-36");
        EXPECT_EQ(film.baths.size(), 2u);
    }
}

TEST_F(RunFilm, aDilutionHasTimesOfItsOwnAndIsPouredAway)
{
    desk.preferences().setLastFigure("tank", 600);
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    type(dialog, "Leaflet time", "9:30");
    spin(dialog, "Dilution of the developer", 1);
    EXPECT_FALSE(dialog.timeShown().contains(u':')) << "stock's time is not 1+1's";
    EXPECT_EQ(named<QuantityEdit>(dialog, "Developer: volume used")->value(), 300);
    auto* oneShot = named<QCheckBox>(dialog, "Developer: one-shot");
    EXPECT_TRUE(oneShot->isChecked());
    EXPECT_FALSE(oneShot->isEnabled());
    type(dialog, "Leaflet time", "14:00");
    EXPECT_EQ(dialog.timeShown(), "14:00");
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 700);
    EXPECT_EQ(desk.preferences().baseTimes("starter-mq-borax", 1).size(), 1u);
    EXPECT_TRUE(desk.preferences().baseTimes("starter-mq-borax").empty());
    EXPECT_EQ(desk.preferences().lastFigure("tank"), 600) << "the tank's, not the stock's";
}

TEST_F(RunFilm, keyboardAlone)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.open();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    ASSERT_EQ(QApplication::focusWidget(), named<QComboBox>(dialog, "Format"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), named<QSpinBox>(dialog, "Number of films"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), "2");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_L, Qt::AltModifier);
    ASSERT_EQ(QApplication::focusWidget(), named<QLineEdit>(dialog, "Leaflet time"));
    QTest::keyClicks(QApplication::focusWidget(), "9:30");
    EXPECT_EQ(dialog.timeShown(), "9:30");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_DOUBLE_EQ(batch(dev).filmsDone.value(), 2);

    const QByteArray before = desk.journal();
    RunDialog left(desk.door(), nullptr);
    left.open();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&left));
    QTest::keyClick(&left, Qt::Key_Escape);
    EXPECT_FALSE(left.isVisible());
    EXPECT_EQ(desk.journal(), before);
}

// A fourth digit was dropped without a word, and 999 films logged for 9999.
TEST_F(RunFilm, keepsEveryDigitOfHowManyAndSaysTheRange)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    auto* count = named<QSpinBox>(dialog, "Number of films");
    count->setFocus();
    count->selectAll();
    QTest::keyClicks(count, "9999");
    EXPECT_EQ(count->value(), 9999);
    const QByteArray before = desk.journal();
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(dialog.problemOf("films").contains("from 1 to 1,000"))
        << dialog.problemOf("films").toStdString();
    EXPECT_EQ(desk.journal(), before);
    count->setValue(1000);
    count->stepUp();
    EXPECT_EQ(count->value(), 1000) << "the arrows stay within the range";
}

} // namespace ullage::app
