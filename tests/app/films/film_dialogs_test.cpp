// From a film to its bottles and back, marks, and what went wrong: real dialogs on a real book.
#include "app/daybook/day_book_page.h"
#include "app/films/compare_dialog.h"
#include "app/films/film_card.h"
#include "app/films/films_dialog.h"
#include "app/shelf/shelf_page.h"
#include "tests/app/daybook/day_driver.h"
#include "tests/app/films/films_fixture.h"
#include "tests/app/scripted_prompts.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTreeWidget>

namespace ullage::app
{

TEST_F(FilmsTest, ACardTellsBottlesAsTheyWereAndTimesPlannedAndReal)
{
    FilmCard card(desk.door(), idOf("Lantern"));
    card.show();
    const FilmView& view = card.view();
    EXPECT_EQ(view.name, QStringLiteral("Lantern"));
    ASSERT_EQ(view.bottles.size(), 2u);
    EXPECT_EQ(view.bottles[0].name, QStringLiteral("Dev 1"));
    EXPECT_TRUE(view.bottles[0].then.simplified().contains(
        QStringLiteral("1 film a litre before, time × 1.1")))
        << view.bottles[0].then.toStdString();
    EXPECT_EQ(view.bottles[0].verdictText, QStringLiteral("Then: Good"));
    ASSERT_EQ(view.times.size(), 1u);
    EXPECT_EQ(view.times[0].value, QStringLiteral("10:00 → 11:30"));
    EXPECT_TRUE(view.conditions.simplified().contains(QStringLiteral("20.0 °C")));
    EXPECT_TRUE(view.conditions.contains(QStringLiteral("Two reels")));
    EXPECT_FALSE(named<QPushButton>(card, QStringLiteral("Show Dev 1"))->isHidden());
    QSignalSpy wanted(&card, &FilmCard::bottleRequested);
    press(card, QStringLiteral("Show Fix 1"));
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted[0][0].toString().toStdString(), fix);
}

TEST_F(FilmsTest, MarksAreMadeWithAMenuTakenBackWithAReasonAndUndone)
{
    const QString lantern = idOf("Lantern");
    FilmCard card(desk.door(), lantern);
    card.show();
    type(card, QStringLiteral("What you see on the negatives"), QStringLiteral("by half"));
    choose(card, QStringLiteral("Thin"));
    ASSERT_EQ(card.view().standing.size(), 1u);
    EXPECT_EQ(card.view().standing[0].text, QStringLiteral("Thin: by half"));
    EXPECT_EQ(marksOf(lantern), 1u);

    asked.answer(QStringLiteral("dim light table"));
    press(card, QStringLiteral("Take the mark “Thin: by half” back"));
    EXPECT_TRUE(card.view().standing.empty());
    EXPECT_EQ(marksOf(lantern), 0u);
    EXPECT_TRUE(desk.journal().contains("dim light table"));
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(card.view().standing.size(), 1u) << "undo shows on the open card";
    ASSERT_TRUE(desk.session().undo());
    EXPECT_TRUE(card.view().standing.empty());
    ASSERT_TRUE(desk.session().redo());
    EXPECT_EQ(card.view().standing.size(), 1u);
    press(card, QStringLiteral("Take the mark “Thin: by half” back"));
    EXPECT_EQ(marksOf(lantern), 1u) << "no reason given, nothing taken back";
}

TEST_F(FilmsTest, AllFilmsOfARunAreMarkedAtOnceIfTicked)
{
    const QString lantern = idOf("Lantern");
    FilmCard card(desk.door(), lantern);
    card.show();
    auto* all = card.findChild<QCheckBox*>();
    ASSERT_TRUE(all && all->isVisible());
    all->setChecked(true);
    choose(card, QStringLiteral("Uneven"));
    std::size_t marked = 0;
    for (const auto& film : films())
        marked += film.marks.size();
    EXPECT_EQ(marked, 2u);
    FilmCard alone(desk.door(), idOf("Dunes"));
    alone.show();
    EXPECT_FALSE(alone.findChild<QCheckBox*>()->isVisible());
}

TEST_F(FilmsTest, AFilmWhoseRunWasTakenBackSaysSoAndCannotBeMarked)
{
    const QString dunes = idOf("Dunes");
    ASSERT_TRUE(desk.session().undo());
    FilmCard card(desk.door(), dunes);
    EXPECT_TRUE(card.view().bottles.empty());
    EXPECT_EQ(card.view().run, QStringLiteral("its run was taken back"));
    const auto* mark =
        named<QPushButton>(card, QStringLiteral("Mark the film: what is wrong with its negatives"));
    EXPECT_FALSE(mark->isEnabled());
}

TEST_F(FilmsTest, TheListSaysHowManyWentThroughThatHaveNoCard)
{
    const auto counted = [&] {
        FilmsDialog list(desk.door(), QString::fromStdString(dev), QStringLiteral("Dev 1"));
        return texts(list).filter(QStringLiteral("Choose one for its card.")).value(0);
    };
    EXPECT_TRUE(counted().startsWith(QStringLiteral("4 film"))) << counted().toStdString();
    EXPECT_FALSE(counted().contains(QStringLiteral("in all")));
    ledger::FilmRun plain;
    plain.load.films = {{"120", 3}};
    plain.baths.push_back({dev, {}, {}, false, {}});
    ASSERT_TRUE(
        desk.session().doing([&](ledger::Book& book) { return book.process(plain, desk.now()); }));
    EXPECT_TRUE(counted().contains(QStringLiteral("of 7 film"))) << counted().toStdString();
}

TEST_F(FilmsTest, TheListOfABottleLeadsToCardsByClickAndKey)
{
    FilmsDialog list(desk.door(), QString::fromStdString(dev), QStringLiteral("Dev 1"));
    list.show();
    auto* rows = list.list();
    ASSERT_EQ(rows->topLevelItemCount(), 4);
    EXPECT_EQ(rows->topLevelItem(0)->text(1), QStringLiteral("Dunes")) << "newest first";
    QSignalSpy wanted(&list, &FilmsDialog::filmRequested);
    QTest::mouseClick(rows->viewport(), Qt::LeftButton, {},
                      rows->visualItemRect(rows->topLevelItem(0)).center());
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted[0][0].toString(), idOf("Dunes"));
    QTest::keyClick(rows, Qt::Key_Down);
    QTest::keyClick(rows, Qt::Key_Return);
    ASSERT_EQ(wanted.size(), 2);
    EXPECT_NE(wanted[1][0].toString(), idOf("Dunes"));
}

TEST_F(FilmsTest, ATankThatWasCutShortIsTheFirstThingSaid)
{
    run({"Harbour", "Mole"}, 634, 59);
    const QString harbour = idOf("Harbour");
    ASSERT_TRUE(desk.session().doing([&](ledger::Book& book) {
        return book.markFilms({harbour.toStdString()}, ledger::FilmFault::Thin, "");
    }));
    CompareDialog dialog(desk.door(), harbour);
    dialog.show();
    EXPECT_EQ(dialog.compared().good, 4) << "not the film that lay in the same tank";
    const auto times = dialog.lines().indexOf(QStringLiteral("Develop: 0:59 of 10:34"));
    ASSERT_GT(times, 0) << dialog.lines().join(u'\n').toStdString();
    EXPECT_EQ(dialog.lines()[times + 1], QStringLiteral("1 of 1 marked"));
    EXPECT_LT(times, dialog.lines().indexOf(QStringLiteral("What sets them apart")));
}

TEST_F(FilmsTest, SixWeeksAreFortyTwoDays)
{
    desk.pass(42);
    run({"Mole"}, 600, 600);
    const QString mole = idOf("Mole");
    ASSERT_TRUE(desk.session().doing([&](ledger::Book& book) {
        return book.markFilms({mole.toStdString()}, ledger::FilmFault::Thin, "");
    }));
    CompareDialog dialog(desk.door(), mole);
    EXPECT_EQ(dialog.compared().good, 0) << "the last of the others is 43 days older";
    named<QComboBox>(dialog, QStringLiteral("Films of which period"))->setCurrentIndex(2);
    EXPECT_EQ(dialog.compared().good, 4);
}

TEST_F(FilmsTest, ComparesMarksOneKindAndHasABottleTestedFirst)
{
    // Another developer for the good ones, so that this one stands apart.
    const std::string marked = dev;
    const auto bad = films();
    for (const auto& film : bad) {
        ASSERT_TRUE(desk.session().doing([&](ledger::Book& book) {
            return book.markFilms({film.film.id}, ledger::FilmFault::Thin, "");
        }));
    }
    dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 2");
    fix = desk.mix("starter-acid-fixer", "starter-glass-1000", 1000, "Fix 2");
    run({"Quay"}, 600, 601);
    run({"Dunes"}, 600, 600);
    CompareDialog dialog(desk.door(), QString());
    dialog.show();
    EXPECT_EQ(dialog.compared().marked, 4);
    EXPECT_EQ(dialog.compared().good, 2);
    EXPECT_TRUE(dialog.lines().contains(QStringLiteral("Developed in Dev 1")))
        << dialog.lines().join(u'\n').toStdString();
    EXPECT_TRUE(dialog.lines().contains(QStringLiteral("4 of 4 marked · 0 of 2 good")));
    // All of them went through another fixer as well; but a fixer can't thin a film.
    const auto line = dialog.lines().indexOf(QStringLiteral("Fixed in Fix 1"));
    ASSERT_GT(line, dialog.lines().indexOf(QStringLiteral("Different as well, but not a cause")));
    EXPECT_EQ(dialog.lines()[line + 1],
              QStringLiteral("Not the reason for “thin”: it comes after the "
                             "image is developed and takes nothing of "
                             "it."));
    for (auto* button : dialog.findChildren<QPushButton*>())
        EXPECT_FALSE(button->text().contains(QStringLiteral("Fix 1")));

    const QString id = QString::fromStdString(marked);
    ASSERT_EQ(desk.session().bottle(id)->assessment.verdict, ledger::Verdict::Good);
    press(dialog, QStringLiteral("Have Dev 1 tested before its next film"));
    const Bottle* bottle = desk.session().bottle(id);
    EXPECT_EQ(bottle->assessment.verdict, ledger::Verdict::TestFirst);
    EXPECT_EQ(bottle->assessment.reasons.front().code, ledger::ReasonCode::TestAsked);
    EXPECT_TRUE(dialog.lines().contains(QStringLiteral("Dev 1 to be tested first")));
    EXPECT_TRUE(texts(dialog).contains(QStringLiteral("to be tested first")));
    QSignalSpy test(&dialog, &CompareDialog::testRequested);
    press(dialog, QStringLiteral("Test Dev 1 now"));
    ASSERT_EQ(test.size(), 1);
    desk.record(marked, ledger::Looked{true, "leader test"});
    EXPECT_EQ(desk.session().bottle(id)->assessment.verdict, ledger::Verdict::Good);

    // Another kind of mark: none are so.
    named<QComboBox>(dialog, QStringLiteral("Films marked as"))->setCurrentIndex(3);
    EXPECT_EQ(dialog.compared().marked, 0);
    EXPECT_EQ(dialog.lines().size(), 1);
}

TEST_F(FilmsTest, ANoteOnTheNegativesIsAskedAboutBeforeItIsLost)
{
    FilmCard card(desk.door(), QString::fromStdString(films().front().film.id));
    card.show();
    card.reject();
    EXPECT_FALSE(card.isVisible()) << "nothing was written";
    EXPECT_TRUE(asked.asked().isEmpty());
    card.show();
    auto* note = card.findChild<QLineEdit*>();
    ASSERT_NE(note, nullptr);
    note->setText("thin at one end");
    card.reject();
    EXPECT_TRUE(card.isVisible());
    EXPECT_EQ(note->text(), "thin at one end");
    EXPECT_EQ(asked.asked().size(), 1);
    asked.answer(true);
    card.reject();
    EXPECT_FALSE(card.isVisible());
}

} // namespace ullage::app
