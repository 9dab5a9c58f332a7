// Planning: what is proposed, tested in place, split, and remembered.
#include "bench_kit.h"

#include "app/bench/run_codec.h"

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

QString words(const BenchPage& page)
{
    QStringList all;
    for (const QLabel* label : page.findChildren<QLabel*>())
        if (label->isVisible())
            all << label->text();
    return all.join(u'\n');
}

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
    const QString text = words(page);
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
    EXPECT_TRUE(words(page).contains(QStringLiteral("clearing time of 1:30")));
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
    EXPECT_TRUE(words(page).contains(QStringLiteral("Split it into 2")));
    bench.click("takeFirstPart");
    EXPECT_EQ(pieces(page)->value(), 1);
    EXPECT_TRUE(words(page).contains(QStringLiteral("Still to come")));
    bench.click("start");
    while (page.stage() == BenchPage::Stage::Run) {
        bench.pass(1);
        bench.key(Qt::Key_Return);
    }
    bench.click("log");
    EXPECT_EQ(page.stage(), BenchPage::Stage::Plan);
    EXPECT_EQ(pieces(page)->value(), 1) << "the second part";
    EXPECT_FALSE(words(page).contains(QStringLiteral("Still to come")));
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
    EXPECT_TRUE(words(page).contains(QStringLiteral("Develop 11:40 = 11:40")))
        << words(page).toStdString();
    for (auto* parts : page.findChildren<QSpinBox*>()) {
        if (parts->accessibleName() == QStringLiteral("Dilution of the developer")) {
            EXPECT_EQ(parts->value(), 1);
        }
    }
}

QSpinBox* dilution(const BenchPage& page)
{
    for (auto* parts : page.findChildren<QSpinBox*>()) {
        if (parts->accessibleName() == QStringLiteral("Dilution of the developer"))
            return parts;
    }
    return nullptr;
}

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
    dilution(page)->setValue(1);
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
    dilution(page)->setValue(1);
    EXPECT_EQ(timeShown(bench), "11:40");
    EXPECT_TRUE(what->text().contains(QStringLiteral("1+1")));
    dilution(page)->setValue(0);
    exposureIndex(page)->setFocus();
    QTest::keyClicks(exposureIndex(page), QStringLiteral("800"));
    QTest::keyClick(exposureIndex(page), Qt::Key_Return);
    EXPECT_EQ(timeShown(bench), "10:20");
    dilution(page)->setValue(3);
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
    EXPECT_TRUE(words(*bench.page).contains(QStringLiteral("Still to come")));
    EXPECT_FALSE(words(*bench.page).contains(QStringLiteral("Too much at once")));
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
    EXPECT_FALSE(words(*bench.page).contains(QStringLiteral("Still to come")));
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
    dilution(page)->setValue(1);
    const QString diluted = QStringLiteral("300 ml stock + 300 ml water, 20 °C");
    EXPECT_EQ(poured(), QStringLiteral("Pour: ") + diluted);
    EXPECT_TRUE(words(page)
                    .replace(u'\u00a0', u' ')
                    .contains(QStringLiteral("Develop in Dev 14: ") + diluted))
        << words(page).toStdString();
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
    EXPECT_TRUE(words(page).contains(QStringLiteral("MQ borax developer, stock")));
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
    EXPECT_TRUE(words(page).contains(QStringLiteral("9¼ films left"))) << words(page).toStdString();
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

TEST(RunCodec, EveryFieldComesBack)
{
    Bench bench;
    bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.pass(10);
    bench.nextAllTheSame();
    bench.pass(31.25);
    ASSERT_TRUE(bench.page->run()->accept(Celsius(19.5)));
    ledger::RunState state = bench.page->run()->state();
    state.films[0].exposureIndex = 400;
    state.films[0].name = "Hafen “früh”";
    state.loggedAt = state.savedAt;
    const QByteArray json = runToJson(state);
    const auto again = runFromJson(json);
    ASSERT_TRUE(again) << again.error().field;
    EXPECT_EQ(runToJson(*again), json);
    EXPECT_EQ(again->films, state.films);
    EXPECT_EQ(again->tank, state.tank);
    EXPECT_EQ(again->sheet.steps, state.sheet.steps);
    EXPECT_EQ(again->sheet.basis.pairs, state.sheet.basis.pairs);
    EXPECT_EQ(again->savedAt, state.savedAt);
    EXPECT_EQ(again->current, 1u);
    EXPECT_EQ(again->times[1].real, state.times[1].real);
    EXPECT_EQ(again->times[1].target, state.times[1].target);
    EXPECT_EQ(again->readings.size(), 1u);
}

TEST(RunCodec, RefusesWhatIsNotOurs)
{
    EXPECT_FALSE(runFromJson(""));
    EXPECT_FALSE(runFromJson("[1,2"));
    EXPECT_FALSE(runFromJson("{\"type\":\"other\"}"));
    EXPECT_EQ(runFromJson("{\"type\":\"ullage-run\",\"version\":2}").error().code,
              ErrorCode::NewerBook);
    Bench bench;
    bench.open();
    bench.click("start");
    const QByteArray json = runToJson(bench.page->run()->state());
    ASSERT_TRUE(runFromJson(json));
    for (const auto& [from, to] : {std::pair{"\"current\":0", "\"current\":99"},
                                   {"\"current\":0", "\"current\":-1"},
                                   {"\"real_s\":0", "\"real_s\":-5"},
                                   {"\"kind\":\"fix\"", "\"kind\":\"tea\""},
                                   {"\"phase\":\"ready\"", "\"phase\":\"asleep\""}}) {
        QByteArray bad = json;
        bad.replace(from, to);
        ASSERT_NE(bad, json) << from;
        EXPECT_FALSE(runFromJson(bad)) << to;
    }
    for (qsizetype cut = 0; cut < json.size(); cut += 97)
        EXPECT_FALSE(runFromJson(json.left(cut)));
}

TEST(RunFile, AFolderThatCannotBeWrittenIsARefusal)
{
    Bench bench;
    bench.open();
    bench.click("start");
    const RunFile nowhere(bench.folder.filePath(QStringLiteral("no/such/folder/run")));
    EXPECT_EQ(nowhere.save(bench.page->run()->state()).error().code, ErrorCode::StoreFailed);
    EXPECT_TRUE(nowhere.load().has_value());
    EXPECT_FALSE(nowhere.load()->has_value());
}

} // namespace
} // namespace ullage::app
