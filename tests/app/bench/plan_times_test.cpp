// Planning: which time a film gets, and two films of different times in one tank.
#include "bench_kit.h"

#include <QComboBox>
#include <QCompleter>
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

QString timeShown(Bench& bench) { return qobject_cast<QLineEdit*>(bench.find("baseTime"))->text(); }

void enterTime(Bench& bench, const char* id, const char* film, const char* dilution,
               std::optional<double> index, double seconds)
{
    formulary::DevelopmentFigure made;
    made.id = id;
    made.film = film;
    made.developer = "mq";
    made.dilution = dilution;
    made.exposureIndex = index;
    made.times = {{Celsius(20), Seconds(seconds)}};
    EXPECT_TRUE(bench.shelf.book->add(made));
}

void nameFilm(Bench& bench, const QString& name)
{
    auto* edit = qobject_cast<QLineEdit*>(bench.find("filmName"));
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, name);
    QTest::keyClick(edit, Qt::Key_Return);
}

QLineEdit* exposureIndex(const BenchPage& page)
{
    QLineEdit* last = nullptr;
    for (auto* edit : page.findChildren<QLineEdit*>()) {
        if (edit->accessibleName() == QStringLiteral("Exposure index"))
            last = edit;
    }
    return last;
}

TEST(BenchTime, OfStockIsNotThatOfADilution)
{
    Bench bench;
    BenchPage& page = bench.open();
    EXPECT_EQ(timeShown(bench), "10:00");
    dilutionBox(page)->setValue(1);
    EXPECT_EQ(timeShown(bench), "") << "1+1 has a time of its own";
    EXPECT_FALSE(bench.find("start")->isEnabled());
    QTest::keyClicks(bench.find("baseTime"), QStringLiteral("14:00"));
    bench.click("start");
    EXPECT_EQ(bench.host.baseTimes("mq").front().time, Seconds(600)) << "stock's stays stock's";
    EXPECT_EQ(bench.host.baseTimes("mq", 1).front().time, Seconds(840));
}

TEST(BenchTime, ARowThatFitsExactlyIsTakenByItself)
{
    Bench bench(false);
    enterTime(bench, "t1", "Quay 400", "stock", {}, 480);
    enterTime(bench, "t2", "Quay 400", "1+1", {}, 700);
    enterTime(bench, "t3", "Quay 400", "stock", 800, 620);
    BenchPage& page = bench.open();
    nameFilm(bench, QStringLiteral("quay 400"));
    EXPECT_EQ(timeShown(bench), "8:00");
    const auto* what = qobject_cast<QLabel*>(bench.find("timeFor"));
    EXPECT_TRUE(what->text().contains(QStringLiteral("quay 400 · stock · MQ borax")))
        << what->text().toStdString();
    dilutionBox(page)->setValue(1);
    EXPECT_EQ(timeShown(bench), "11:40");
    EXPECT_TRUE(what->text().contains(QStringLiteral("1+1")));
    dilutionBox(page)->setValue(0);
    exposureIndex(page)->setFocus();
    QTest::keyClicks(exposureIndex(page), QStringLiteral("800"));
    QTest::keyClick(exposureIndex(page), Qt::Key_Return);
    EXPECT_EQ(timeShown(bench), "10:20");
    dilutionBox(page)->setValue(3);
    EXPECT_EQ(timeShown(bench), "") << "no row, no time";
}

// Two named films of different times, the second in a line of its own.
void nameTwo(Bench& bench, const QString& first, const QString& second)
{
    nameFilm(bench, first);
    bench.click("addFilm");
    QLineEdit* last = nullptr;
    for (auto* edit : bench.page->findChildren<QLineEdit*>()) {
        if (edit->objectName() == QStringLiteral("filmName"))
            last = edit;
    }
    last->setFocus();
    QTest::keyClicks(last, second);
    QTest::keyClick(last, Qt::Key_Return);
    QApplication::processEvents();
}

std::vector<QPushButton*> buttons(const Bench& bench, const char* name)
{
    std::vector<QPushButton*> all;
    for (auto* button : bench.page->findChildren<QPushButton*>()) {
        if (button->objectName() == QLatin1String(name) && button->isVisible())
            all.push_back(button);
    }
    return all;
}

class TwoTimes : public testing::Test
{
protected:
    TwoTimes()
    {
        enterTime(bench, "t1", "Quay 400", "stock", {}, 585);
        enterTime(bench, "t2", "Lantern 100", "stock", {}, 450);
        bench.open();
    }
    QString said() { return qobject_cast<QLabel*>(bench.find("timesApart"))->text(); }
    Bench bench{false};
};

TEST_F(TwoTimes, AreSaidAndNeitherIsTakenByItself)
{
    nameFilm(bench, QStringLiteral("Quay 400"));
    EXPECT_EQ(timeShown(bench), "9:45");
    EXPECT_FALSE(bench.find("timesApart")->isVisible());
    nameTwo(bench, QStringLiteral("Quay 400"), QStringLiteral("lantern 100"));
    ASSERT_TRUE(bench.find("timesApart")->isVisible());
    EXPECT_TRUE(said().contains(QStringLiteral("Quay 400: 9:45"))) << said().toStdString();
    EXPECT_TRUE(said().contains(QStringLiteral("lantern 100: 7:30")));
    EXPECT_TRUE(said().contains(QStringLiteral("2:15 apart")));
    EXPECT_TRUE(said().simplified().contains(QStringLiteral("30 %")));
    EXPECT_EQ(timeShown(bench), "");
    EXPECT_FALSE(bench.find("start")->isEnabled());
    const auto* first = qobject_cast<QLabel*>(bench.find("firstToDo"));
    EXPECT_TRUE(first->text().contains(QStringLiteral("say which one rules")));
}

TEST_F(TwoTimes, OneOfThemRulesTheTank)
{
    nameTwo(bench, QStringLiteral("Quay 400"), QStringLiteral("Lantern 100"));
    const auto rule = buttons(bench, "ruleTime");
    ASSERT_EQ(rule.size(), 2u);
    EXPECT_EQ(rule[1]->text(), QStringLiteral("All for 7:30, as Lantern 100"));
    QTest::mouseClick(rule[1], Qt::LeftButton);
    EXPECT_EQ(timeShown(bench), "7:30");
    EXPECT_TRUE(qobject_cast<QLabel*>(bench.find("timeFor"))
                    ->text()
                    .startsWith(QStringLiteral("for Lantern 100 · stock")));
    EXPECT_TRUE(said().contains(QStringLiteral("all develop for 7:30"))) << "it stays said";
    ASSERT_TRUE(bench.find("start")->isEnabled());
    QTest::mouseClick(buttons(bench, "ruleTime")[0], Qt::LeftButton);
    EXPECT_EQ(timeShown(bench), "9:45");
    bench.click("start");
    ASSERT_TRUE(bench.page->run());
    EXPECT_EQ(bench.page->run()->state().films.size(), 2u);
    EXPECT_EQ(bench.host.baseTimesFor("mq").size(), 1u) << "remembered as the ruling film's own";
    EXPECT_EQ(bench.host.baseTimesFor("mq").front().name, "Quay 400");
}

TEST_F(TwoTimes, OrTheLoadIsSplitAndEachHasItsOwn)
{
    nameTwo(bench, QStringLiteral("Quay 400"), QStringLiteral("Lantern 100"));
    const auto split = buttons(bench, "splitTimes");
    ASSERT_EQ(split.size(), 1u);
    EXPECT_TRUE(split[0]->text().startsWith(QStringLiteral("Split into 2 run")));
    QTest::mouseClick(split[0], Qt::LeftButton);
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(timeShown(bench), "9:45");
    EXPECT_FALSE(bench.find("timesApart")->isVisible());
    EXPECT_TRUE(wordsOn(*bench.page).contains(QStringLiteral("Still to come")));
    EXPECT_FALSE(wordsOn(*bench.page).contains(QStringLiteral("Too much at once")));
    bench.click("start");
    ASSERT_TRUE(bench.page->run());
    ASSERT_EQ(bench.page->run()->state().films.size(), 1u);
    EXPECT_EQ(bench.page->run()->state().films[0].name, "Quay 400");
    while (bench.page->stage() == BenchPage::Stage::Run) {
        bench.pass(1);
        bench.key(Qt::Key_Return);
    }
    bench.click("log");
    EXPECT_EQ(qobject_cast<QLineEdit*>(bench.find("filmName"))->text(),
              QStringLiteral("Lantern 100"));
    EXPECT_EQ(timeShown(bench), "7:30");
    EXPECT_FALSE(wordsOn(*bench.page).contains(QStringLiteral("Still to come")));
}

TEST_F(TwoTimes, WhoRulesAndLeavesRulesNoMore)
{
    nameTwo(bench, QStringLiteral("Quay 400"), QStringLiteral("Lantern 100"));
    QTest::mouseClick(buttons(bench, "ruleTime")[1], Qt::LeftButton);
    EXPECT_EQ(timeShown(bench), "7:30");
    QPushButton* away = nullptr;
    for (auto* button : bench.page->findChildren<QPushButton*>()) {
        if (button->accessibleName() == QStringLiteral("Remove this film"))
            away = button;
    }
    QTest::mouseClick(away, Qt::LeftButton);
    EXPECT_EQ(timeShown(bench), "9:45") << "of the film that is left";
}

TEST(BenchTime, OfOneFilmIsNotThatOfAnother)
{
    Bench bench(false);
    bench.open();
    QTest::keyClicks(bench.find("baseTime"), QStringLiteral("9:30"));
    nameFilm(bench, QStringLiteral("Quay 400"));
    EXPECT_EQ(timeShown(bench), "9:30") << "it is said now what the time is for";
    nameFilm(bench, QStringLiteral("Quay"));
    EXPECT_EQ(timeShown(bench), "");
}

TEST(BenchTime, IsNotLostWhileANameIsTyped)
{
    Bench bench(false);
    bench.open();
    QTest::keyClicks(bench.find("baseTime"), QStringLiteral("9:30"));
    nameFilm(bench, QStringLiteral("Quay 4"));
    auto* name = qobject_cast<QLineEdit*>(bench.find("filmName"));
    QTest::keyClicks(name, QStringLiteral("00"));
    EXPECT_EQ(timeShown(bench), "9:30");
    QTest::keyClick(name, Qt::Key_Backspace);
    QTest::keyClick(name, Qt::Key_Backspace);
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(timeShown(bench), "9:30");
}

TEST(BenchTime, ANewFilmHasNoExposureIndexOfTheOneBefore)
{
    Bench bench;
    BenchPage& page = bench.open();
    QTest::keyClicks(exposureIndex(page), QStringLiteral("400"));
    bench.click("addFilm");
    EXPECT_EQ(exposureIndex(page)->text(), "");
}

TEST(BenchTime, NamesOfKnownFilmsAreCompleted)
{
    Bench bench(false);
    enterTime(bench, "t1", "Quay 400", "stock", {}, 480);
    bench.open();
    auto* name = qobject_cast<QLineEdit*>(bench.find("filmName"));
    ASSERT_TRUE(name->completer());
    name->completer()->setCompletionPrefix(QStringLiteral("qu"));
    EXPECT_EQ(name->completer()->currentCompletion(), QStringLiteral("Quay 400"));
}

} // namespace
} // namespace ullage::app
