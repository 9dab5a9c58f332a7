// Correcting a run by the form of a forgotten one: its films, its bottles and what it took of them.
#include "tests/app/daybook/correct_fixture.h"

#include "app/daybook/correct_run_dialog.h"
#include "app/daybook/day_detail.h"
#include "app/widgets/prompts.h"
#include "tests/app/scripted_prompts.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>

namespace ullage::app
{

namespace
{

// Two named films through a developer, and no fixer yet.
class CorrectRun : public CorrectFixture
{
protected:
    CorrectRun()
    {
        desk.pass(-2);
        other = desk.mix("starter-mq-borax", "starter-glass-500", 500, "Dev 2");
        desk.pass(2);
    }

    void log(std::vector<std::string> bottles)
    {
        std::vector<ledger::Bath> baths;
        for (const std::string& id : bottles)
            baths.push_back({id, {}, {}, false, {}});
        const std::vector<ledger::RunFilm> films{{"120", 1, "Harbour", 400, {}},
                                                 {"120", 1, "Dunes", {}, "windy"}};
        const auto done = desk.session().doing([&](ledger::Book& book) {
            return book.process(ledger::runOf(films, baths), desk.now());
        });
        ASSERT_TRUE(done);
        runId = *done;
    }
    CorrectRunDialog* open(PageOn& on)
    {
        return correcting<CorrectRunDialog>(on, on.shown().filter("Run · ").value(0));
    }
    static QListWidget* list(const CorrectRunDialog& dialog)
    {
        return named<QListWidget>(dialog, "Went through, of those that stood then");
    }
    static QStringList offered(const CorrectRunDialog& dialog, bool ticked = false)
    {
        QStringList names;
        for (int i = 0; i < list(dialog)->count(); ++i) {
            const auto* item = list(dialog)->item(i);
            if (!ticked || item->checkState() == Qt::Checked)
                names << item->text();
        }
        return names;
    }
    static void tick(const CorrectRunDialog& dialog, const QString& name, bool on = true)
    {
        const auto found = list(dialog)->findItems(name, Qt::MatchExactly);
        ASSERT_EQ(found.size(), 1) << name.toStdString();
        found.front()->setCheckState(on ? Qt::Checked : Qt::Unchecked);
    }
    // The fields of this name, a film after the other.
    template <class Widget>
    static std::vector<Widget*> all(const QWidget& within, const QString& name)
    {
        std::vector<Widget*> found;
        for (Widget* widget : within.findChildren<Widget*>()) {
            if (widget->accessibleName() == name && !widget->isHidden())
                found.push_back(widget);
        }
        return found;
    }
    void correctAndClose(PageOn& on, CorrectRunDialog& dialog)
    {
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible())
            << (dialog.refusal() + dialog.problemOf("films") + dialog.problemOf("baths"))
                   .toStdString();
        waitForRows(on);
    }
    // The rows as the book has them now.
    void waitForRows(PageOn& on)
    {
        waitFor([&] {
            return !on.page.model()->isWaiting() &&
                   on.page.model()->lastEntry() == desk.door().entries();
        });
        on.settle();
    }
    std::vector<ledger::FilmTrace> films() { return *desk.door().filmsOfRun(runId); }
    QStringList names()
    {
        QStringList found;
        for (const auto& one : films())
            found << QString::fromStdString(one.film.format + " " + one.film.name);
        return found;
    }
    double filmsThrough(const std::string& id) { return batch(id).filmsDone.value(); }

    std::string other;
    std::string runId;
};

} // namespace

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

// Five alike are one row; one that is marked has a row of its own.
TEST(RunFilms, AreRowsOfThoseAlikeAndComeToLinesOfWhatChanged)
{
    const auto film = [](const std::string& id, const std::string& name, bool marked = false) {
        ledger::FilmTrace trace;
        trace.film = {.id = id, .run = "r", .format = "120", .name = name, .notes = {}};
        if (marked)
            trace.marks = {{"m", id, {}, ledger::FilmFault::Thin, {}, {}, {}}};
        return trace;
    };
    const ledger::Load load{{{"120", 6}, {"135-36", 2}}, {}};
    const auto rows = runFilmRows(load, {film("a", ""), film("b", ""), film("c", "", true),
                                         film("d", "Mole"), film("e", "")});
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[0].film.count, 4) << "three with a line, and one that never had one";
    EXPECT_EQ(rows[0].lines.size(), 3U);
    EXPECT_TRUE(rows[1].marked);
    EXPECT_EQ(rows[2].film.name, "Mole");
    EXPECT_EQ(rows[3].film.format, "135-36");
    RunFilmsNow now{filmsOf(rows), filmsOf(rows), {0, 1, 2, 3}};
    EXPECT_TRUE(runFilmLines(rows, now, "r").empty());
    EXPECT_EQ(markedAndGone(rows, now), nullptr);
    now.films[0].count = 2; // "e" goes
    now.films[3].count = 3; // one more, without a name as the others
    const auto lines = runFilmLines(rows, now, "r");
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].format, "135-36");
    EXPECT_TRUE(lines[0].replaces.empty());
    EXPECT_EQ(lines[1].replaces, "e");
    EXPECT_TRUE(lines[1].withdrawn);
    now.films.erase(now.films.begin() + 1);
    now.origins.erase(now.origins.begin() + 1);
    ASSERT_NE(markedAndGone(rows, now), nullptr);
    EXPECT_EQ(markedAndGone(rows, now)->id, "c");
}

} // namespace ullage::app
