// Correcting a run that went through other bottles.
#include "tests/app/daybook/correct_run_fixture.h"

#include "app/daybook/day_detail.h"
#include "app/widgets/prompts.h"
#include "tests/app/scripted_prompts.h"

#include <QLabel>
#include <QPushButton>

namespace ullage::app
{

TEST_F(CorrectRun, ThroughAnotherDeveloperAndUndoneAsOne)
{
    log({dev, fix});
    PageOn on(desk);
    auto* dialog = open(on);
    ASSERT_NE(dialog, nullptr);
    tick(*dialog, "Dev 1", false);
    tick(*dialog, "Dev 2");
    waitFor([&] { return follows(*dialog).contains("Dev 2"); });
    correctAndClose(on, *dialog);
    EXPECT_DOUBLE_EQ(filmsThrough(dev), 0);
    EXPECT_DOUBLE_EQ(filmsThrough(other), 2);
    EXPECT_DOUBLE_EQ(filmsThrough(fix), 2);
    EXPECT_EQ(names(), QStringList({"120 Harbour", "120 Dunes"}));
    ASSERT_EQ(films()[0].baths.size(), 2U);
    ASSERT_EQ(on.shown().filter("Run · ").size(), 1) << on.shown().join('|').toStdString();
    ASSERT_TRUE(on.page.chosen());
    ASSERT_EQ(on.page.chosen()->baths.size(), 2U);
    EXPECT_EQ(on.page.chosen()->baths[0].name, "Dev 2") << "as film goes through them";
    for (const store::DayBath& bath : on.page.chosen()->baths)
        EXPECT_FALSE(bath.taken) << bath.name;
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(filmsThrough(dev), 2);
    EXPECT_DOUBLE_EQ(filmsThrough(other), 0);
    ASSERT_TRUE(desk.session().redo());
    EXPECT_DOUBLE_EQ(filmsThrough(other), 2);
    EXPECT_DOUBLE_EQ(filmsThrough(fix), 2);
}

TEST_F(CorrectRun, AFixerThatWasForgottenIsAddedAndOneTooManyTakenOut)
{
    log({dev});
    PageOn on(desk);
    auto* dialog = open(on);
    ASSERT_NE(dialog, nullptr);
    tick(*dialog, "Fix 1");
    type(*dialog, "Fix 1: volume used", "600");
    type(*dialog, "Fix 1: lost", "20");
    correctAndClose(on, *dialog);
    EXPECT_DOUBLE_EQ(filmsThrough(fix), 2);
    EXPECT_DOUBLE_EQ(batch(fix).volume.value(), 980);
    EXPECT_EQ(films()[0].baths.size(), 2U) << "of the same run";
    dialog = open(on);
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(named<QLineEdit>(*dialog, "Fix 1: volume used")->text(), "600 ml");
    EXPECT_EQ(named<QLineEdit>(*dialog, "Fix 1: lost")->text(), "20 ml");
    tick(*dialog, "Fix 1", false);
    correctAndClose(on, *dialog);
    EXPECT_DOUBLE_EQ(filmsThrough(fix), 0);
    EXPECT_DOUBLE_EQ(batch(fix).volume.value(), 1000);
    EXPECT_EQ(films()[0].baths.size(), 1U);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(filmsThrough(fix), 2);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(filmsThrough(fix), 0);
}

TEST_F(CorrectRun, ItsDateAndBottleAtOnceOnlyThroughWhatStoodThen)
{
    log({dev, fix});
    desk.record(other, ledger::Discarded{"by mistake", {}}); // it stood then
    PageOn on(desk);
    auto* dialog = open(on);
    ASSERT_NE(dialog, nullptr);
    const auto earlier = desk.now() - std::chrono::hours(24 * 5);
    setMoment(*dialog, earlier);
    EXPECT_FALSE(offered(*dialog).contains("Dev 2")) << "mixed two days before the run";
    const auto between = desk.now() - std::chrono::hours(24);
    setMoment(*dialog, between);
    ASSERT_TRUE(offered(*dialog).contains("Dev 2")) << offered(*dialog).join('|').toStdString();
    EXPECT_EQ(offered(*dialog, true), QStringList({"Dev 1", "Fix 1"})) << "ticks stay";
    tick(*dialog, "Dev 1", false);
    tick(*dialog, "Dev 2");
    correctAndClose(on, *dialog);
    EXPECT_DOUBLE_EQ(filmsThrough(dev), 0);
    ASSERT_FALSE(films().empty());
    EXPECT_EQ(films()[0].at, between);
    EXPECT_DOUBLE_EQ(filmsThrough(other), 2);
}

TEST_F(CorrectRun, IsRefusedWhereTheBottleWasNotThereOrHeldLess)
{
    log({dev, fix});
    const QByteArray before = desk.journal();
    PageOn on(desk);
    auto* dialog = open(on);
    ASSERT_NE(dialog, nullptr);
    tick(*dialog, "Dev 1", false);
    tick(*dialog, "Dev 2");
    type(*dialog, "Dev 2: volume used", "800");
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    expectSaid(dialog->problemOf("used_ml"), "Dev 2");
    expectSaid(dialog->problemOf("used_ml"), "800");
    EXPECT_EQ(desk.journal(), before);
    type(*dialog, "Dev 2: volume used", "400");
    setMoment(*dialog, mixed - std::chrono::hours(24)); // none was mixed
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_EQ(desk.journal(), before);
    for (const QString& name : offered(*dialog, true))
        tick(*dialog, name, false);
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_FALSE(dialog->problemOf("baths").isEmpty()) << "no bottle is ticked";
    EXPECT_EQ(desk.journal(), before);
}

TEST_F(CorrectRun, WhatWasToppedUpWithItStandsInTheWayOfItsBottleOnly)
{
    const auto done = desk.session().doing([&](ledger::Book& book) {
        ledger::FilmRun run = ledger::runOf({{"120", 1, "Harbour", {}, {}}},
                                            {{dev, {}, chemistry::Millilitres(50), false, {}}});
        run.topUps = {{.batch = dev, .volume = chemistry::Millilitres(50)}};
        return book.process(run, desk.now());
    });
    ASSERT_TRUE(done);
    runId = *done;
    const QByteArray before = desk.journal();
    PageOn on(desk);
    auto* dialog = open(on);
    ASSERT_NE(dialog, nullptr);
    tick(*dialog, "Dev 1", false);
    tick(*dialog, "Dev 2");
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    expectSaid(dialog->problemOf("baths"), "Dev 1");
    EXPECT_EQ(desk.journal(), before);
    tick(*dialog, "Dev 2", false);
    tick(*dialog, "Dev 1");
    type(*dialog, "Dev 1: lost", "60");
    correctAndClose(on, *dialog);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 990) << "the topping up stays";
    EXPECT_EQ(batch(dev).loads.size(), 1U);
}

} // namespace ullage::app
