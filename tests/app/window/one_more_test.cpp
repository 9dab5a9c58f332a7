// One gesture on a bottle counts one more film, through the baths of the last one, and is undone as
// one.
#include "app/dialogs/deed_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/widgets/done_line.h"
#include "tests/app/window/window_kit.h"

#include <QPushButton>

namespace ullage::app
{

namespace
{

class OneMoreFilm : public testing::Test
{
protected:
    OneMoreFilm()
    {
        desk.pass(-20);
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
        fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
        desk.pass(10);
    }
    void run(const char* format, double count, const std::vector<std::string>& batches)
    {
        ledger::FilmRun run{.load = {{{format, count}}, {}}};
        for (const std::string& batch : batches)
            run.baths.push_back({batch, chemistry::Millilitres(600), {}, false, {}});
        ASSERT_TRUE(desk.session().doing(
            [&](ledger::Book& book) { return book.process(run, desk.now()); }));
        desk.passMinutes(30);
    }
    double done(const std::string& batch)
    {
        return desk.session().book().batch(batch, desk.now())->filmsDone.value();
    }
    static QPushButton* plusOne(const Window& at)
    {
        return named<QPushButton>(at.window, "One more film, as the last one");
    }
    static DoneLine* said(const Window& at) { return at.window.findChild<DoneLine*>(); }

    Desk desk;
    std::string dev;
    std::string fix;
};

} // namespace

TEST_F(OneMoreFilm, ByOneKeyOnTheBottleAndTakenBackAsOne)
{
    run("120", 2, {dev, fix});
    Window at(desk);
    ASSERT_TRUE(at.window.shelf()->selectBottle(QString::fromStdString(dev)));
    at.window.shelf()->view()->setFocus();
    EXPECT_FALSE(said(at)->isVisible());
    QTest::keyClick(at.window.shelf()->view(), Qt::Key_Plus);
    Window::settle();
    EXPECT_EQ(at.window.findChild<QDialog*>(), nullptr) << "no dialog";
    EXPECT_DOUBLE_EQ(done(dev), 3);
    EXPECT_DOUBLE_EQ(done(fix), 3);
    ASSERT_TRUE(said(at)->isVisible());
    EXPECT_EQ(said(at)->text(), "1 film of 120 on Dev 1 and Fix 1");
    EXPECT_EQ(at.window.shelf()->currentBottle().toStdString(), dev) << "it stays selected";
    const auto films = desk.session().films().ofBatch(dev);
    ASSERT_TRUE(films);
    EXPECT_EQ(films->size(), 1u) << "with a line of its own";

    auto* undo = said(at)->undoButton();
    EXPECT_EQ(undo->accessibleName(), "Undo: 1 film of 120 on Dev 1 and Fix 1");
    QTest::mouseClick(undo, Qt::LeftButton);
    EXPECT_DOUBLE_EQ(done(dev), 2);
    EXPECT_DOUBLE_EQ(done(fix), 2);
    EXPECT_NE(at.action("Redo running film in Dev 1, Fix 1"), nullptr);

    // What was done before it can be undone there too, by its name.
    ASSERT_TRUE(said(at)->isVisible());
    EXPECT_EQ(said(at)->text(), "Undone: running film in Dev 1, Fix 1");
    EXPECT_EQ(undo->text(), "Undo running film in Dev 1, Fix 1");
    EXPECT_EQ(undo->accessibleName(), undo->text());
    QTest::mouseClick(undo, Qt::LeftButton);
    EXPECT_DOUBLE_EQ(done(dev), 0);
    EXPECT_TRUE(undo->text().startsWith("Undo mixing ")) << undo->text().toStdString();
    desk.record(dev, ledger::Noted{"a note"});
    EXPECT_FALSE(said(at)->isVisible()) << "the next would be something else";
}

TEST_F(OneMoreFilm, ByTheButtonOfItsCardAsOftenAsPressed)
{
    run("135-36", 1, {dev});
    Window at(desk);
    ASSERT_TRUE(at.window.shelf()->selectBottle(QString::fromStdString(dev)));
    const QPoint place = plusOne(at)->mapTo(&at.window, QPoint());
    QTest::mouseClick(plusOne(at), Qt::LeftButton);
    Window::settle();
    EXPECT_EQ(plusOne(at)->mapTo(&at.window, QPoint()), place) << "the pointer is there still";
    QTest::mouseClick(plusOne(at), Qt::LeftButton);
    EXPECT_DOUBLE_EQ(done(dev), 3);
    EXPECT_DOUBLE_EQ(done(fix), 0) << "the last film went without it";
    ASSERT_TRUE(said(at)->isVisible());
    EXPECT_TRUE(said(at)->text().endsWith("on Dev 1")) << said(at)->text().toStdString();
    desk.record(fix, ledger::Noted{"a note"});
    EXPECT_FALSE(said(at)->isVisible()) << "Undo would take back something else";
}

TEST_F(OneMoreFilm, TheKeyIsTheShelfsOnly)
{
    run("120", 1, {dev});
    Window at(desk);
    ASSERT_TRUE(at.window.shelf()->selectBottle(QString::fromStdString(dev)));
    at.window.showPage(Page::DayBook);
    Window::settle();
    QTest::keyClick(&at.window, Qt::Key_Plus);
    EXPECT_DOUBLE_EQ(done(dev), 1);
}

TEST_F(OneMoreFilm, OfABottleThatHasDoneNoneIsAskedWhatItWas)
{
    Window at(desk);
    at.controller.doWith(BottleAction::OneMore, QString::fromStdString(dev));
    auto* dialog = at.dialog<RunDialog>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->refusal().contains("No film has gone through Dev 1 yet"))
        << dialog->refusal().toStdString();
    EXPECT_DOUBLE_EQ(done(dev), 0);
}

TEST_F(OneMoreFilm, OfALoadWhoseFixerIsGoneIsAskedForTheBaths)
{
    run("120", 1, {dev, fix});
    desk.record(fix, ledger::Discarded{"collected", {}});
    desk.passMinutes(30);
    Window at(desk);
    at.controller.doWith(BottleAction::OneMore, QString::fromStdString(dev));
    auto* dialog = at.dialog<RunDialog>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->refusal().contains("Fix 1")) << dialog->refusal().toStdString();
    EXPECT_DOUBLE_EQ(done(dev), 1);
}

TEST_F(OneMoreFilm, ADeedByADialogIsToldAndTakenBackTheSame)
{
    run("120", 1, {dev});
    Window at(desk);
    at.controller.doWith(BottleAction::Discard, QString::fromStdString(dev));
    at.dialog<DeedDialog>()->reject();
    Window::settle();
    EXPECT_FALSE(said(at)->isVisible()) << "nothing was done";
    at.controller.doWith(BottleAction::RunFilm, QString::fromStdString(dev));
    at.dialog<RunDialog>()->accept();
    Window::settle();
    EXPECT_DOUBLE_EQ(done(dev), 2);
    ASSERT_TRUE(said(at)->isVisible());
    EXPECT_TRUE(said(at)->text().startsWith("Logged: running film in Dev 1"))
        << said(at)->text().toStdString();
    QTest::mouseClick(said(at)->undoButton(), Qt::LeftButton);
    EXPECT_DOUBLE_EQ(done(dev), 1);
    EXPECT_TRUE(said(at)->text().startsWith("Undone: running film in Dev 1"))
        << said(at)->text().toStdString();
}

TEST_F(OneMoreFilm, MoreThanIsLeftIsAskedAbout)
{
    run("4x5in", 2, {dev});
    run("135-36", 9, {dev});
    Window at(desk);
    const QByteArray before = desk.journal();
    at.controller.doWith(BottleAction::OneMore, QString::fromStdString(dev));
    ASSERT_EQ(at.asked.asked().size(), 1);
    EXPECT_TRUE(at.asked.asked().back().contains("Is it really 1 film in one load?"))
        << at.asked.asked().back().toStdString();
    EXPECT_EQ(desk.journal(), before);
}

} // namespace ullage::app
