// Corrections as a person makes them: from the entry in the Day book, with what follows beside it.
#include "tests/app/daybook/correct_fixture.h"

#include "app/daybook/correct_mark_dialog.h"
#include "app/daybook/correct_thing_dialog.h"
#include "app/daybook/take_back_dialog.h"
#include "core/ledger/run_state.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

#include <algorithm>

namespace ullage::app
{

namespace
{

using chemistry::Millilitres;

class CorrectDialogTest : public CorrectFixture
{
};

} // namespace

// The entry "dissolved", made by the dialog itself, once stood in the way.
TEST_F(CorrectDialogTest, AWrongMixingDateIsPutRightInOneActionAndUndoneAsOne)
{
    run(2);
    PageOn on(desk);
    auto* dialog = correcting(on, "Mixed, Dev 1");
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(named<QLineEdit>(*dialog, "Name")->text(), "Dev 1") << "as it was entered";
    EXPECT_EQ(named<QLineEdit>(*dialog, "Volume")->text(), "1,000 ml");
    const auto earlier = mixed - std::chrono::hours(24 * 20);
    setMoment(*dialog, earlier);
    waitFor([&] { return follows(*dialog).contains("→"); });
    EXPECT_TRUE(follows(*dialog).contains("Dev 1")) << follows(*dialog).toStdString();
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    on.settle();
    waitFor([&] { return on.page.chosen() && !on.page.chosen()->taken; });
    EXPECT_EQ(on.page.chosen()->event.kind(), "mixed") << "what comes in its place is chosen";
    EXPECT_EQ(on.page.chosen()->event.at, earlier);
    EXPECT_EQ(batch(dev).mixedAt, earlier);
    EXPECT_TRUE(batch(dev).dissolved) << "what was entered with it came along";
    EXPECT_EQ(batch(dev).loads.size(), 1U) << "what came later stays";
    EXPECT_EQ(batch(dev).vessel->id, "starter-glass-1000");
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(batch(dev).mixedAt, mixed);
    EXPECT_TRUE(batch(dev).dissolved);
    ASSERT_TRUE(desk.session().redo());
    EXPECT_EQ(batch(dev).mixedAt, earlier);
}

TEST_F(CorrectDialogTest, AMixingIsOfAnotherSolutionInAnotherBottle)
{
    run(2);
    const std::string was = batch(dev).solution->id;
    PageOn on(desk);
    auto* dialog = correcting(on, "Mixed, Dev 1");
    ASSERT_NE(dialog, nullptr);
    auto* solution = named<QComboBox>(*dialog, "Solution");
    auto* vessel = named<QComboBox>(*dialog, "Bottle");
    ASSERT_TRUE(solution && vessel);
    EXPECT_EQ(solution->currentData(), QString::fromStdString(was));
    EXPECT_EQ(vessel->currentData(), "starter-glass-1000");
    for (int i = 0; i < solution->count(); ++i) {
        const auto one =
            desk.session().formulary().solution(solution->itemData(i).toString().toStdString());
        EXPECT_EQ(one->role, formulary::Role::Developer) << one->id;
    }
    solution->setCurrentIndex(solution->findData("starter-pq-ascorbate"));
    vessel->setCurrentIndex(vessel->findData("starter-glass-2000"));
    waitFor([&] { return follows(*dialog).contains("→"); });
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    EXPECT_EQ(batch(dev).solution->id, "starter-pq-ascorbate");
    EXPECT_EQ(batch(dev).vessel->id, "starter-glass-2000");
    EXPECT_EQ(batch(dev).loads.size(), 1U) << "what came later stays";
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(batch(dev).solution->id, was);
    EXPECT_EQ(batch(dev).vessel->id, "starter-glass-1000");
}

// What was weighed out is no other solution.
TEST_F(CorrectDialogTest, AMixingThatChemicalsWereTakenForKeepsItsSolution)
{
    const auto made = desk.session().doing([&](ledger::Book& book) -> Result<std::string> {
        const auto sulfite =
            book.add(ledger::Chemical{.id = {}, .name = "Sodium sulfite", .grams = 500});
        if (!sulfite)
            return sulfite;
        ledger::NewBatch weighed{
            "starter-mq-borax", "starter-glass-500", Millilitres(500), "Dev 3", {}, false};
        weighed.takes = {{*sulfite, 50}};
        return book.mix(weighed, {desk.now(), {}});
    });
    ASSERT_TRUE(made);
    PageOn on(desk);
    auto* dialog = correcting(on, "Mixed, Dev 3");
    ASSERT_NE(dialog, nullptr);
    for (const auto* box : dialog->findChildren<QComboBox*>())
        EXPECT_NE(box->accessibleName(), "Solution");
    EXPECT_NE(named<QComboBox>(*dialog, "Bottle"), nullptr);
}

TEST_F(CorrectDialogTest, WhatIsNotChangedKeepsItsMoment)
{
    desk.passMinutes(1);
    const auto at = desk.now() + std::chrono::seconds(41);
    desk.record(dev, ledger::Noted{"cloudy"});
    PageOn on(desk);
    auto* dialog = correcting(on, "Mixed, Dev 1");
    ASSERT_NE(dialog, nullptr);
    type(*dialog, "Name", "Dev A");
    type(*dialog, "Why, if you like", "the label says so");
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    EXPECT_EQ(batch(dev).name, "Dev A");
    EXPECT_EQ(batch(dev).mixedAt, mixed);
    EXPECT_LT(batch(dev).mixedAt, at);
    EXPECT_TRUE(desk.journal().contains("the label says so"));
}

TEST_F(CorrectDialogTest, ATestIsEnteredAnewAsItWasReadIn)
{
    desk.record(fix, ledger::ClearingTested{chemistry::Seconds(45), chemistry::Celsius(20)});
    PageOn on(desk);
    on.page.list()->setCurrentIndex(on.page.model()->index(1));
    const QString title = on.page.model()->index(1).data().toString();
    auto* dialog = correcting(on, title);
    ASSERT_NE(dialog, nullptr) << title.toStdString();
    EXPECT_EQ(named<QLineEdit>(*dialog, "Cleared after (m:ss)")->text(), "0:45");
    type(*dialog, "Cleared after (m:ss)", "54");
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    ASSERT_EQ(batch(fix).tests.size(), 1U);
    EXPECT_DOUBLE_EQ(batch(fix).tests.front().at20.value(), 54);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(batch(fix).tests.front().at20.value(), 45);
}

TEST_F(CorrectDialogTest, AReasonOfTheProgramStandsInWordsAndStaysWhatItIs)
{
    desk.record(dev, ledger::Drawn{chemistry::Millilitres(100), "make-room", {}});
    const auto before = desk.session().book().events(dev);
    ASSERT_TRUE(before);
    CorrectDialog dialog(desk.door(), "Drawn off", {before->back()});
    dialog.show();
    EXPECT_EQ(named<QLineEdit>(dialog, "What for")->text(), "to make room for the top-up");
    type(dialog, "Volume taken out", "120");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    const auto after = desk.session().book().events(dev);
    ASSERT_TRUE(after);
    const auto anew = std::find_if(after->begin(), after->end(), [](const ledger::Event& event) {
        const auto* drawn = std::get_if<ledger::Drawn>(&event.what);
        return drawn && drawn->volume.value() == 120;
    });
    ASSERT_NE(anew, after->end());
    EXPECT_EQ(std::get<ledger::Drawn>(anew->what).why, "make-room");
}

TEST_F(CorrectDialogTest, TheOtherHalfOfAFillingGoesAlong)
{
    const auto poured = desk.session().doing([&](ledger::Book& book) {
        ledger::NewBatch part{"starter-mq-borax", "starter-pp-1000", Millilitres(300), "Dev 1b"};
        part.from = dev;
        return book.mix(part, {desk.now(), {}});
    });
    ASSERT_TRUE(poured);
    PageOn on(desk);
    auto* dialog = correcting(on, "Mixed, Dev 1b");
    ASSERT_NE(dialog, nullptr);
    type(*dialog, "Volume", "400");
    waitFor([&] { return follows(*dialog).contains("600"); });
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    EXPECT_DOUBLE_EQ(batch(*poured).volume.value(), 400);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 600);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(batch(*poured).volume.value(), 300);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 700);
}

TEST_F(CorrectDialogTest, WhatStandsInTheWayIsNamedAndNothingChanges)
{
    run(2);
    const QByteArray before = desk.journal();
    PageOn on(desk);
    auto* dialog = correcting(on, "Mixed, Dev 1");
    ASSERT_NE(dialog, nullptr);
    desk.pass(1);
    setMoment(*dialog, desk.now()); // after its film
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_EQ(desk.journal(), before);
    const QString said = dialog->refusal() + dialog->problemOf("at") + follows(*dialog);
    expectSaid(said, "120");
    setMoment(*dialog, mixed);
    type(*dialog, "Volume", "5000");
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible()) << "more than the bottle holds";
    expectSaid(dialog->problemOf("volume_ml"), "5,000");
    type(*dialog, "Volume", "1.000");
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible()) << "two ways to read it";
    EXPECT_EQ(desk.journal(), before);
}

TEST_F(CorrectDialogTest, TakingBackShowsWhatGoesAlong)
{
    PageOn on(desk);
    on.choose("Mixed, Dev 1");
    on.page.takeBack();
    auto* dialog = on.dialog<TakeBackDialog>();
    ASSERT_NE(dialog, nullptr);
    QStringList texts;
    for (const auto* label : dialog->findChildren<QLabel*>())
        texts << label->text();
    EXPECT_TRUE(texts.join('|').contains("With it goes: ")) << texts.join('|').toStdString();
    EXPECT_FALSE(texts.join('|').contains("id-"));
    type(*dialog, "Why", "never mixed");
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    EXPECT_FALSE(desk.session().book().batch(dev, desk.now())) << "with what was entered with it";
    ASSERT_TRUE(desk.session().undo());
    EXPECT_TRUE(batch(dev).dissolved);
}

// It was once told to take back the very entry that was to come back.
TEST_F(CorrectDialogTest, WhatCannotComeBackYetSaysThatSomethingElseHasToFirst)
{
    run(1);
    for (int deed = 0; deed < 3; ++deed) // the run, Fix 1, Dev 1
        ASSERT_TRUE(desk.session().undo());
    PageOn on(desk);
    on.choose("Run · 1 × 120");
    on.page.takeBack();
    auto* dialog = on.dialog<TakeBackDialog>();
    ASSERT_NE(dialog, nullptr);
    expectSaid(follows(*dialog), "cannot count again");
    EXPECT_FALSE(follows(*dialog).contains("Take that back")) << follows(*dialog).toStdString();
    dialog->reject();
    on.choose("Mixed, Dev 1");
    on.page.takeBack();
    on.settle();
    EXPECT_FALSE(follows(*on.dialog<TakeBackDialog>()).contains("cannot count again"));
}

// It once had to be taken back and poured anew.
TEST_F(CorrectDialogTest, WhatWentIntoAnotherBottleIsCorrectedWithTheFillingOfThatOne)
{
    const auto part = desk.mix("starter-mq-borax", "starter-pp-1000", 300, "Dev 1b");
    desk.passMinutes(5);
    ASSERT_TRUE(desk.door().topUp(part, {Millilitres(100), dev, {}}, {desk.now(), {}}));
    PageOn on(desk);
    auto* dialog = correcting(on, "Drawn off, Dev 1");
    ASSERT_NE(dialog, nullptr);
    type(*dialog, "Volume added", "150");
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    EXPECT_DOUBLE_EQ(batch(part).volume.value(), 450);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 850);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(batch(part).volume.value(), 400);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 900);
}

TEST_F(CorrectDialogTest, OfTheCupboardAndOfCans)
{
    ledger::Chemical sulfite;
    sulfite.id = "sulfite";
    sulfite.name = "Sodium sulfite";
    sulfite.grams = 500;
    ledger::Container can;
    can.id = "can";
    can.name = "Fixer can";
    can.holds = ledger::Waste::Fixer;
    can.capacity = Millilitres(2000);
    ASSERT_TRUE(desk.door().add(std::vector<ledger::CupboardLine>{sulfite, can}));
    ASSERT_TRUE(desk.door().recordOf(ledger::Taken{"sulfite", 100, {}}, desk.now()));
    desk.passMinutes(1);
    ASSERT_TRUE(desk.door().recordOf(ledger::PouredIn{"can", Millilitres(700), fix}, desk.now()));
    const auto left = [&] { return *desk.door().cupboard()->items.front().stock.left; };
    const auto held = [&] { return desk.door().cupboard()->cans.front().stock.volume; };
    PageOn on(desk);
    const auto titleOf = [&](std::string_view kind) {
        for (int row = 0; row < on.page.model()->rowCount(); ++row) {
            const store::DayEntry* entry = on.page.model()->entry(row);
            if (entry && entry->event.kind() == kind)
                return on.page.model()->index(row).data().toString();
        }
        return QString();
    };
    auto* taking = correcting<CorrectThingDialog>(on, titleOf("taken"));
    ASSERT_NE(taking, nullptr);
    type(*taking, "How much, g", "150");
    taking->accept();
    EXPECT_FALSE(taking->isVisible()) << taking->refusal().toStdString();
    EXPECT_DOUBLE_EQ(left(), 350);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(left(), 400);
    on.settle();
    auto* pouring = correcting<CorrectThingDialog>(on, titleOf("poured-in"));
    ASSERT_NE(pouring, nullptr);
    type(*pouring, "Volume", "2500");
    pouring->accept();
    EXPECT_TRUE(pouring->isVisible()) << "more than the can holds";
    type(*pouring, "Volume", "800");
    pouring->accept();
    EXPECT_FALSE(pouring->isVisible()) << pouring->refusal().toStdString();
    EXPECT_EQ(held(), Millilitres(800));
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(held(), Millilitres(700));
}

TEST_F(CorrectDialogTest, AMarkIsSetAnewAsOneDeed)
{
    const auto logged = desk.door().log(
        ledger::runOf({{"120", 1, "Harbour", {}, {}}}, {{dev, {}, {}, false, {}}}), desk.now());
    ASSERT_TRUE(logged);
    const auto marks = [&] { return desk.door().filmsOfRun(*logged)->front().marks; };
    const std::string film = desk.door().filmsOfRun(*logged)->front().film.id;
    desk.passMinutes(5);
    ASSERT_TRUE(desk.door().markFilms({film}, ledger::FilmFault::Thin, "by half"));
    const auto at = marks().front().at;
    PageOn on(desk);
    auto* dialog = correcting<CorrectMarkDialog>(on, "Film marked thin");
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(named<QLineEdit>(*dialog, "Note")->text(), "by half");
    named<QComboBox>(*dialog, "What is wrong with it")->setCurrentText("Dense");
    type(*dialog, "Note", "twice");
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible()) << dialog->refusal().toStdString();
    ASSERT_EQ(marks().size(), 1U);
    EXPECT_EQ(marks().front().fault, ledger::FilmFault::Dense);
    EXPECT_EQ(marks().front().note, "twice");
    EXPECT_EQ(marks().front().at, at);
    ASSERT_TRUE(desk.session().undo());
    ASSERT_EQ(marks().size(), 1U);
    EXPECT_EQ(marks().front().note, "by half");
    ASSERT_TRUE(desk.session().redo());
    ASSERT_EQ(marks().size(), 1U);
    EXPECT_EQ(marks().front().note, "twice");
}

} // namespace ullage::app
