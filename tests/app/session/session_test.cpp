#include "tests/app/desk.h"

#include <QFile>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace ullage::app
{

TEST(Session, aNewBookBeginsWithTheStarterFormulary)
{
    Desk desk;
    EXPECT_GT(desk.session().formulary().solutions().size(), 5u);
    EXPECT_GT(desk.session().formulary().vessels().size(), 3u);
    EXPECT_FALSE(desk.session().book().undoable()) << "what came with the book is not undone";
    const QByteArray before = desk.journal();
    desk.reopen();
    EXPECT_EQ(desk.journal(), before) << "a second start adds nothing";
}

TEST(Session, doingTellsOnceAndARefusalTellsNothing)
{
    Desk desk;
    QSignalSpy changed(&desk.session(), &Session::changed);
    const auto id = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    EXPECT_EQ(changed.count(), 1);
    ASSERT_EQ(desk.session().bottles().size(), 1u);
    const QByteArray before = desk.journal();
    const auto refused = desk.session().doing([&](ledger::Book& book) {
        return book.drawOff(id, chemistry::Millilitres(2000), "", {desk.now(), {}});
    });
    EXPECT_FALSE(refused);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(desk.journal(), before);
}

TEST(Session, undoAndRedoWorkAfterARestart)
{
    Desk desk;
    const auto id = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.passMinutes(5);
    desk.run(id, 2);
    desk.reopen();
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(desk.session().bottles().front().batch.filmsDone.value(), 0);
    desk.reopen();
    ASSERT_TRUE(desk.session().redo());
    EXPECT_DOUBLE_EQ(desk.session().bottles().front().batch.filmsDone.value(), 2);
}

TEST(Session, seesWhatAnotherWindowWrote)
{
    Desk desk;
    SessionOptions options;
    options.clock = [&] { return desk.now(); };
    Session other(options);
    ASSERT_TRUE(other.open(desk.bookPath()));
    ASSERT_TRUE(other.doing([&](ledger::Book& book) {
        return book.mix(
            {"starter-mq-borax", "starter-glass-1000", chemistry::Millilitres(1000), "Theirs"},
            {desk.now(), {}});
    }));
    QSignalSpy changed(&desk.session(), &Session::changed);
    desk.session().lookForChanges();
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(desk.session().bottles().size(), 1u);
    EXPECT_EQ(desk.session().batchNames(), QStringList{"Theirs"});
    desk.session().lookForChanges();
    EXPECT_EQ(changed.count(), 1) << "nothing new, nothing told";
}

TEST(Session, aBookThatCannotBeOpenedLeavesTheOneThatIs)
{
    Desk desk;
    QFile other(desk.file("letter.txt"));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("Dear harbour master, this is no book but a letter of some length.");
    other.close();
    const auto opened = desk.session().open(other.fileName());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, ErrorCode::NotABook);
    EXPECT_TRUE(desk.session().isOpen());
    EXPECT_EQ(desk.session().path(), desk.bookPath());
    ASSERT_TRUE(other.open(QIODevice::ReadOnly));
    EXPECT_TRUE(other.readAll().startsWith("Dear"));
}

TEST(Preferences, keepWhatWasSet)
{
    Desk desk;
    const QString file = desk.file("other.ini");
    {
        Preferences preferences(file);
        preferences.setUnits({VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit});
        preferences.setBaseTimes("a/b \"c\"",
                                 {{chemistry::Celsius(20.5), chemistry::Seconds(570.25)}});
        preferences.setLook(Preferences::Look::Dark);
        preferences.setLastBook("/somewhere/home.ullage");
    }
    const Preferences again(file);
    EXPECT_EQ(again.wording().units, (Units{VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit}));
    const auto pairs = again.baseTimes("a/b \"c\"");
    ASSERT_EQ(pairs.size(), 1u);
    EXPECT_DOUBLE_EQ(pairs[0].time.value(), 570.25);
    EXPECT_DOUBLE_EQ(pairs[0].temperature.value(), 20.5);
    EXPECT_EQ(again.look(), Preferences::Look::Dark);
    EXPECT_EQ(again.lastBook(), "/somewhere/home.ullage");
    EXPECT_TRUE(again.baseTimes("another").empty());
}

TEST(Preferences, figuresSpoiledByHandAreLeftOut)
{
    Desk desk;
    const QString file = desk.file("spoiled.ini");
    {
        QSettings settings(file, QSettings::IniFormat);
        settings.setValue("times/6d71", QStringList{"nine@20", "570@nan", "600@20", "@", ""});
        settings.setValue("last/tank", "inf");
    }
    const Preferences preferences(file);
    EXPECT_EQ(preferences.baseTimes("mq").size(), 1u);
    EXPECT_FALSE(preferences.lastFigure("tank"));
}

} // namespace ullage::app
