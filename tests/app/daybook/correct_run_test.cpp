// Correcting a run by the form of a forgotten one: its films, and what it took of its bottles.
#include "tests/app/daybook/correct_run_fixture.h"

#include "app/daybook/day_detail.h"
#include "app/widgets/prompts.h"
#include "tests/app/scripted_prompts.h"

#include <QLabel>
#include <QPushButton>

namespace ullage::app
{

TEST_F(CorrectRun, IsCorrectedInAllItsBaths)
{
    run(2);
    desk.record(fix, ledger::Noted{"cloudy today"}); // the newest is another
    PageOn on(desk);
    auto* dialog = correcting<CorrectRunDialog>(on, "Run · 2 × 120");
    ASSERT_NE(dialog, nullptr);
    auto* count = named<QSpinBox>(*dialog, "Number of films");
    ASSERT_NE(count, nullptr) << "with arrows, as where a run is logged";
    EXPECT_EQ(count->value(), 2);
    count->stepUp();
    type(*dialog, "Dev 1: lost", "15");
    type(*dialog, "Fix 1: lost", "15");
    waitFor([&] { return follows(*dialog).contains("6¾ films"); });
    EXPECT_TRUE(follows(*dialog).contains("Fix 1")) << follows(*dialog).toStdString();
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    for (const std::string& bath : {dev, fix}) {
        EXPECT_DOUBLE_EQ(batch(bath).filmsDone.value(), 3) << bath;
        EXPECT_DOUBLE_EQ(batch(bath).volume.value(), 985) << bath;
        EXPECT_EQ(batch(bath).loads.size(), 1U) << bath;
    }
    waitFor([&] { return on.shown().contains("Run · 3 × 120"); });
    EXPECT_TRUE(on.shown().contains("Run · 3 × 120")) << on.shown().join('|').toStdString();
    EXPECT_EQ(on.page.chosen()->event.kind(), "processed") << "stays chosen";
    ASSERT_TRUE(desk.session().undo());
    waitFor([&] { return on.shown().contains("Run · 2 × 120"); });
    EXPECT_EQ(on.page.chosen()->event.kind(), "processed") << "and when it is undone";
    for (const std::string& bath : {dev, fix}) {
        EXPECT_DOUBLE_EQ(batch(bath).filmsDone.value(), 2) << bath;
        EXPECT_DOUBLE_EQ(batch(bath).volume.value(), 1000) << bath;
    }
}

TEST_F(CorrectRun, ACountOutsideItsRangeIsToldAtTheFieldAndNothingChanges)
{
    run(2);
    const QByteArray before = desk.journal();
    PageOn on(desk);
    auto* dialog = correcting<CorrectRunDialog>(on, "Run · 2 × 120");
    ASSERT_NE(dialog, nullptr);
    for (const int wrong : {0, 10'001}) {
        spin(*dialog, "Number of films", wrong);
        dialog->accept();
        EXPECT_TRUE(dialog->isVisible()) << wrong;
        EXPECT_TRUE(dialog->problemOf("films").contains("is not allowed")) << wrong;
    }
    EXPECT_EQ(desk.journal(), before);
    spin(*dialog, "Number of films", 1);
    waitFor([&] { return follows(*dialog).contains("Fix 1"); });
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    EXPECT_DOUBLE_EQ(batch(fix).filmsDone.value(), 1);
}

TEST_F(CorrectRun, OpensWithWhatWasEnteredAndChangesNoMoreThanIsAsked)
{
    log({dev, fix});
    PageOn on(desk);
    auto* dialog = open(on);
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(offered(*dialog, true), QStringList({"Dev 1", "Fix 1"}));
    EXPECT_TRUE(offered(*dialog).contains("Dev 2"));
    const auto found = all<QLineEdit>(*dialog, "Name of the film");
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0]->text(), "Harbour");
    EXPECT_EQ(found[1]->text(), "Dunes");
    EXPECT_EQ(all<QLineEdit>(*dialog, "Exposure index")[0]->text(), "400");
    EXPECT_EQ(all<QLineEdit>(*dialog, "Notes on the film")[1]->text(), "windy");
    correctAndClose(on, *dialog);
    EXPECT_EQ(names(), QStringList({"120 Harbour", "120 Dunes"}));
    EXPECT_EQ(films()[1].film.notes, "windy");
    EXPECT_EQ(desk.journal().count(R"("type":"film")"), 2) << "no line that says nothing new";
    EXPECT_DOUBLE_EQ(filmsThrough(dev), 2);
}

TEST_F(CorrectRun, OfAnotherFormatKeepsTheFilmAndWhatWasFound)
{
    log({dev});
    const std::string harbour = films()[0].film.id;
    ASSERT_TRUE(desk.door().markFilms({harbour}, ledger::FilmFault::Thin, "by half"));
    {
        PageOn on(desk);
        auto* dialog = open(on);
        ASSERT_NE(dialog, nullptr);
        all<QComboBox>(*dialog, "Format")[0]->setEditText("135-36");
        correctAndClose(on, *dialog);
        EXPECT_TRUE(on.shown().filter("Run · ").value(0).contains("135-36"));
    }
    EXPECT_EQ(names(), QStringList({"135-36 Harbour", "120 Dunes"}));
    EXPECT_EQ(films()[0].film.id, harbour);
    EXPECT_EQ(films()[0].film.exposureIndex, 400);
    ASSERT_EQ(films()[0].marks.size(), 1U) << "the mark stays with its film";
    EXPECT_EQ(films()[0].marks[0].note, "by half");
    EXPECT_EQ(batch(dev).loads.size(), 1U);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(names(), QStringList({"120 Harbour", "120 Dunes"}));
    EXPECT_EQ(films()[0].marks.size(), 1U);
    desk.reopen();
    ASSERT_TRUE(desk.session().redo());
    EXPECT_EQ(names(), QStringList({"135-36 Harbour", "120 Dunes"}));
}

TEST_F(CorrectRun, OneOfTwoFilmsIsRemovedUnlessItIsMarked)
{
    log({dev});
    const std::string harbour = films()[0].film.id;
    ASSERT_TRUE(desk.door().markFilms({harbour}, ledger::FilmFault::Thin, ""));
    const QByteArray before = desk.journal();
    PageOn on(desk);
    auto* dialog = open(on);
    ASSERT_NE(dialog, nullptr);
    all<QPushButton>(*dialog, "Remove this film")[0]->click();
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    expectSaid(dialog->problemOf("films"), "Harbour");
    EXPECT_EQ(desk.journal(), before);
    ScriptedPrompts prompts;
    prompts.answer(true); // what was changed may be lost
    const PromptsInForce inForce(prompts);
    dialog->reject();
    EXPECT_FALSE(dialog->isVisible());
    ASSERT_TRUE(desk.session().undo()); // the mark
    waitForRows(on);
    dialog = open(on);
    all<QPushButton>(*dialog, "Remove this film")[0]->click();
    correctAndClose(on, *dialog);
    EXPECT_EQ(names(), QStringList({"120 Dunes"}));
    EXPECT_DOUBLE_EQ(filmsThrough(dev), 1);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(names(), QStringList({"120 Harbour", "120 Dunes"}));
    EXPECT_DOUBLE_EQ(filmsThrough(dev), 2);
}

TEST_F(CorrectRun, AFilmIsAdded)
{
    log({dev});
    PageOn on(desk);
    auto* dialog = open(on);
    ASSERT_NE(dialog, nullptr);
    dialog->findChild<QPushButton*>("addFilm")->click();
    all<QLineEdit>(*dialog, "Name of the film")[2]->setText("Mole");
    correctAndClose(on, *dialog);
    EXPECT_EQ(names(), QStringList({"120 Harbour", "120 Dunes", "120 Mole"}));
    EXPECT_DOUBLE_EQ(filmsThrough(dev), 3);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(names(), QStringList({"120 Harbour", "120 Dunes"}));
    ASSERT_TRUE(desk.session().redo());
    EXPECT_EQ(names(), QStringList({"120 Harbour", "120 Dunes", "120 Mole"}));
}

TEST_F(CorrectRun, IsReachedFromAMarkOnItsFilm)
{
    log({dev});
    desk.passMinutes(5);
    ASSERT_TRUE(desk.door().markFilms({films()[1].film.id}, ledger::FilmFault::Dense, ""));
    PageOn on(desk);
    on.choose("Film marked dense");
    on.page.correctFilm();
    auto* dialog = on.dialog<CorrectRunDialog>();
    ASSERT_NE(dialog, nullptr);
    all<QLineEdit>(*dialog, "Name of the film")[1]->setText("Dunes at noon");
    correctAndClose(on, *dialog);
    EXPECT_EQ(films()[1].film.name, "Dunes at noon");
    EXPECT_EQ(films()[1].marks.size(), 1U);
    ASSERT_TRUE(on.page.chosen()->mark) << "the mark stays chosen";
    EXPECT_EQ(on.page.chosen()->films.front().name, "Dunes at noon");
}

TEST_F(CorrectRun, WhatCannotBeCorrectedSaysHowItIsPutRight)
{
    run(1);
    ASSERT_TRUE(desk.session().undo());
    PageOn on(desk);
    on.choose("Run · 1 × 120");
    on.settle();
    const auto* button = [&]() -> QPushButton* {
        for (auto* one : on.page.findChild<DayDetail*>()->findChildren<QPushButton*>()) {
            if (one->text().startsWith("&Correct"))
                return one;
        }
        return nullptr;
    }();
    ASSERT_NE(button, nullptr);
    EXPECT_FALSE(button->isEnabled());
    EXPECT_TRUE(button->toolTip().contains("Bring it back first"))
        << button->toolTip().toStdString();
    on.choose("Mixed, Dev 1");
    on.settle();
    EXPECT_TRUE(button->isEnabled());
}

} // namespace ullage::app
