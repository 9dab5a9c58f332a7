// Planning: what is proposed, tested in place, split, and remembered.
#include "bench_kit.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

namespace ullage::app
{
namespace
{

using chemistry::Celsius;
using chemistry::Millilitres;
using chemistry::Seconds;

QSpinBox* pieces(const BenchPage& page)
{
    for (QSpinBox* box : page.findChildren<QSpinBox*>())
        if (box->accessibleName() == QStringLiteral("Number of films"))
            return box;
    return nullptr;
}

TEST(BenchPlan, SaysWhichBottleWhyAndWhatIsNext)
{
    Bench bench;
    bench.shelf.days(4);
    bench.shelf.mix("mq", "b3", "Dev 15");
    BenchPage& page = bench.open();
    const QString text = wordsOn(page);
    EXPECT_TRUE(text.contains(QStringLiteral("Dev 14")));
    EXPECT_TRUE(text.contains(QStringLiteral("The oldest that can still take this load.")));
    EXPECT_TRUE(text.contains(QStringLiteral("Next best: Dev 15")));
    EXPECT_TRUE(text.contains(QStringLiteral("4 day")));
}

TEST(BenchPlan, DueClearingTestIsMadeInPlace)
{
    Bench bench;
    bench.shelf.days(40);
    BenchPage& page = bench.open();
    auto* start = qobject_cast<QPushButton*>(bench.find("start"));
    EXPECT_EQ(start->text(), QStringLiteral("To the clock without the test"));
    EXPECT_NE(start->property("look").toString(), QStringLiteral("primary"));
    EXPECT_NE(start->property("look").toString(), QStringLiteral("danger"));
    auto* time = qobject_cast<QLineEdit*>(bench.find("clearingTime"));
    ASSERT_TRUE(time);
    QTest::keyClicks(time, QStringLiteral("1:30"));
    bench.click("enterTest");
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(start->text(), QStringLiteral("To the clock"));
    EXPECT_TRUE(wordsOn(page).contains(QStringLiteral("clearing time of 90\u00a0s")));
    bench.click("start");
    const auto state = page.run()->state();
    EXPECT_EQ(state.sheet.steps[4].planned, Seconds(180));
    EXPECT_EQ(state.sheet.steps[4].source, ledger::TimeSource::ClearingTest);
}

TEST(BenchPlan, ALoadTooBigIsSplitAndTheRestComesAfter)
{
    Bench bench;
    bench.memory.remember(ledger::Tank{"one film", Millilitres(600), {{"135-36", 1, {}}}});
    BenchPage& page = bench.open();
    pieces(page)->setValue(2);
    QApplication::processEvents();
    EXPECT_TRUE(wordsOn(page).contains(QStringLiteral("Split it into 2")));
    bench.click("takeFirstPart");
    EXPECT_EQ(pieces(page)->value(), 1);
    EXPECT_TRUE(wordsOn(page).contains(QStringLiteral("Still to come")));
    bench.click("start");
    while (page.stage() == BenchPage::Stage::Run) {
        bench.pass(1);
        bench.key(Qt::Key_Return);
    }
    bench.click("log");
    EXPECT_EQ(page.stage(), BenchPage::Stage::Plan);
    EXPECT_EQ(pieces(page)->value(), 1) << "the second part";
    EXPECT_FALSE(wordsOn(page).contains(QStringLiteral("Still to come")));
}

TEST(BenchPlan, WhatIsUsedOnceIsPouredAwayUntilSomebodySaysOtherwise)
{
    Bench bench;
    formulary::Solution once{.id = "once", .name = "Used once", .role = formulary::Role::Developer};
    once.oneShotPerFilm = Millilitres(300);
    ASSERT_TRUE(bench.shelf.book->add(once));
    const auto other = bench.shelf.mix("once", "b3", "Dev 15");
    BenchPage& page = bench.open();
    const auto box = [&] {
        for (auto* one : page.findChildren<QCheckBox*>())
            if (one->text().startsWith(QStringLiteral("one-shot")))
                return one;
        return static_cast<QCheckBox*>(nullptr);
    };
    ASSERT_TRUE(box());
    EXPECT_FALSE(box()->isChecked());
    page.plan(other);
    EXPECT_TRUE(box()->isChecked());
    box()->click();
    EXPECT_FALSE(box()->isChecked()) << "somebody said so";
    page.plan(bench.dev);
    EXPECT_FALSE(box()->isChecked());
    page.plan(other);
    EXPECT_TRUE(box()->isChecked());
}

TEST(BenchPlan, NoTimeOfTheMakerNoRun)
{
    Bench bench(false);
    bench.open();
    EXPECT_FALSE(bench.find("start")->isEnabled());
    const auto* first = qobject_cast<QLabel*>(bench.find("firstToDo"));
    ASSERT_TRUE(first && first->isVisible());
    EXPECT_TRUE(
        first->text().contains(QStringLiteral("type the time that the film's leaflet gives")))
        << first->text().toStdString();
    auto* time = qobject_cast<QLineEdit*>(bench.find("baseTime"));
    ASSERT_TRUE(time);
    QTest::keyClicks(time, QStringLiteral("9:30"));
    EXPECT_FALSE(first->isVisible()) << "the steps stand there now";
    EXPECT_TRUE(bench.find("start")->isEnabled());
}

TEST(BenchPlan, OffersTheNotebooksTimesTheFilmsOwnFirst)
{
    Bench bench(false);
    const auto figure = [&](const char* id, const char* film, const char* dilution,
                            double seconds) {
        formulary::DevelopmentFigure made;
        made.id = id;
        made.film = film;
        made.developer = "mq";
        made.dilution = dilution;
        made.times = {{chemistry::Celsius(20), Seconds(seconds)}};
        EXPECT_TRUE(bench.shelf.book->add(made));
    };
    figure("t1", "Harbour", "stock", 420);
    figure("t2", "Quay 400", "1+1", 700);
    BenchPage& page = bench.open();
    QComboBox* offer = nullptr;
    for (auto* box : page.findChildren<QComboBox*>()) {
        if (box->accessibleName() == QStringLiteral("Times of the Formulary"))
            offer = box;
    }
    ASSERT_TRUE(offer && offer->isVisible());
    ASSERT_EQ(offer->count(), 3);
    EXPECT_EQ(offer->itemText(1), QStringLiteral("Harbour · stock"));
    EXPECT_FALSE(bench.find("start")->isEnabled()) << "nothing is filled in by itself";
    for (auto* edit : page.findChildren<QLineEdit*>()) {
        if (edit->accessibleName() == QStringLiteral("Name of the film"))
            QTest::keyClicks(edit, QStringLiteral("quay 400"));
    }
    ASSERT_EQ(offer->itemText(1), QStringLiteral("Quay 400 · 1+1")) << "the film typed comes first";
    offer->setCurrentIndex(1);
    emit offer->activated(1);
    EXPECT_EQ(offer->currentIndex(), 1) << "it stays chosen";
    EXPECT_TRUE(wordsOn(page).contains(QStringLiteral("Develop 11:40 = 11:40")))
        << wordsOn(page).toStdString();
    for (auto* parts : page.findChildren<QSpinBox*>()) {
        if (parts->accessibleName() == QStringLiteral("Dilution of the developer")) {
            EXPECT_EQ(parts->value(), 1);
        }
    }
}

TEST(BenchPlan, GoesWhileAFilmIsBeingNamed)
{
    Bench bench;
    bench.open();
    bench.tabTo("filmName");
    bench.type("Ferry");
    bench.page.reset(); // the name counts when the keyboard leaves it: nothing is left to show it
    EXPECT_FALSE(bench.page);
}

TEST(BenchPlan, SaysHowMuchOfWhatIsPoured)
{
    Bench bench;
    bench.host.setBaseTimes("mq", {{Celsius(20), Seconds(840)}}, 1);
    BenchPage& page = bench.open();
    const auto poured = [&] {
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the cards before
        return qobject_cast<QLabel*>(bench.find("pour-Developer"))->text().replace(u'\u00a0', u' ');
    };
    EXPECT_EQ(poured(), QStringLiteral("Pour: 600 ml, 20 °C"));
    dilutionBox(page)->setValue(1);
    const QString diluted = QStringLiteral("300 ml stock + 300 ml water, 20 °C");
    EXPECT_EQ(poured(), QStringLiteral("Pour: ") + diluted);
    EXPECT_TRUE(wordsOn(page)
                    .replace(u'\u00a0', u' ')
                    .contains(QStringLiteral("Develop in Dev 14: ") + diluted))
        << wordsOn(page).toStdString();
    bench.click("start");
    const auto* clock = qobject_cast<QLabel*>(bench.find("pour"));
    EXPECT_TRUE(QString(clock->text())
                    .replace(u'\u00a0', u' ')
                    .contains(QStringLiteral("Have ready: Develop in Dev 14: ") + diluted))
        << clock->text().toStdString();
    bench.key(Qt::Key_Return);
    bench.nextAllTheSame();
    EXPECT_TRUE(QString(clock->text())
                    .replace(u'\u00a0', u' ')
                    .contains(QStringLiteral("Pour in: ") + diluted))
        << clock->text().toStdString();
}

TEST(BenchPlan, SaysWhatIsInABottleWhereItIsChosen)
{
    Bench bench;
    BenchPage& page = bench.open();
    EXPECT_TRUE(wordsOn(page).contains(QStringLiteral("MQ borax developer, stock")));
    for (const auto* list : page.findChildren<QComboBox*>()) {
        if (list->accessibleName() == QStringLiteral("Bottle for: Developer")) {
            EXPECT_TRUE(list->itemText(1).contains(QStringLiteral("MQ borax developer, stock")));
        }
    }
}

TEST(BenchPlan, SaysWhatIsLeftInTheWordsOfTheShelf)
{
    Bench bench;
    bench.shelf.mix("mq", "b3", "Dev 15", 930);
    BenchPage& page = bench.open();
    EXPECT_TRUE(wordsOn(page).contains(QStringLiteral("9¼ films left")))
        << wordsOn(page).toStdString();
}

TEST(BenchPlan, RemembersTankTimesAndTemplate)
{
    Bench bench;
    bench.open();
    bench.click("start");
    EXPECT_EQ(bench.memory.tanks().front().volume, Millilitres(600));
    EXPECT_EQ(bench.host.baseTimes("mq").size(), 1u);
    const ledger::RunTemplate mine{"mine", {}, ledger::usualTemplates()[1].steps};
    bench.memory.remember(mine);
    ASSERT_EQ(bench.memory.templates().size(), ledger::usualTemplates().size() + 1);
    EXPECT_EQ(bench.memory.templates()[0], mine);
    bench.memory.forgetTemplate("mine");
    EXPECT_EQ(bench.memory.templates().size(), ledger::usualTemplates().size());
    const ledger::Tank tank{"drum", Millilitres(900), {{"120", 3, Millilitres(300)}}};
    bench.memory.remember(tank);
    bench.settings.sync();
    QSettings again(bench.settings.fileName(), QSettings::IniFormat);
    EXPECT_EQ(BenchMemory(again).tanks().front(), tank);
}

} // namespace
} // namespace ullage::app
